// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Saying;

/**
 * Finds necks: places where one contour comes nearer to itself than the web, through material, with more than a web's
 * width of material on both sides. Tips of teeth and sharp corners are thin too but hold nothing beyond them, so they
 * are no necks; nor is an arm that is thin over its whole length to its end.
 *
 * <p>Near pieces are found exactly. A neck has to part the region once it is shrunk by half the web; that is looked
 * at by a polygon, and only when what lies beyond the thin place could hold a circle of the web's width at all.
 */
final class Necks {
    /** A thin place between two pieces of one contour. */
    private record Thin(double width, Point from, Point to, int first, int second) {}

    private final List<Segment> segments;
    private final Piece[] pieces;
    /** Area terms of the segments before each index, mm². */
    private final double[] area;
    /** Lengths of the segments before each index, mm. */
    private final double[] run;

    private final double web;
    private final double tolerance;

    private Necks(Contour contour, double web, double tolerance) {
        this.segments = contour.segments();
        this.web = web;
        this.tolerance = tolerance;
        int n = segments.size();
        pieces = new Piece[n];
        area = new double[n + 1];
        run = new double[n + 1];
        for (int i = 0; i < n; i++) {
            pieces[i] = Piece.of(segments.get(i));
            area[i + 1] = area[i] + segments.get(i).areaTerm();
            run[i + 1] = run[i] + segments.get(i).length();
        }
    }

    /** The narrowest neck under {@code web}, or null when there is none. */
    static Web narrowest(Region region, double web, double tolerance) {
        Shape shape = Shape.of(region);
        List<Point> parted = null;
        Web least = null;
        for (Contour contour : region.contours()) {
            Necks necks = new Necks(contour, web, tolerance);
            for (Thin thin : necks.candidates(shape)) {
                if (least != null && thin.width >= least.width()) {
                    break;
                }
                parted = parted == null ? parted(shape, web, tolerance) : parted;
                if (necks.parts(thin, parted)) {
                    least = new Web(thin.width, thin.from.towards(thin.to, 0.5), Saying.of("verify.neck"));
                }
            }
        }
        return least;
    }

    /** A point in each piece that is left when the region is shrunk by half the web. */
    private static List<Point> parted(Shape shape, double web, double tolerance) {
        Geometry left = Chords.full(shape, tolerance).buffer(tolerance - web / 2, 16);
        List<Point> points = new ArrayList<>();
        for (Polygon polygon : Reach.polygons(left)) {
            Coordinate c = polygon.getInteriorPoint().getCoordinate();
            points.add(new Point(c.x, c.y));
        }
        return points;
    }

    /** Thin places that could be necks, the thinnest first. */
    private List<Thin> candidates(Shape shape) {
        int n = pieces.length;
        Integer[] byX = new Integer[n];
        for (int i = 0; i < n; i++) {
            byX[i] = i;
        }
        Arrays.sort(byX, Comparator.comparingDouble(i -> pieces[i].minX));
        List<Thin> found = new ArrayList<>();
        for (int a = 0; a < n; a++) {
            Piece p = pieces[byX[a]];
            double right = p.maxX + web;
            double top = p.maxY + web;
            double bottom = p.minY - web;
            for (int b = a + 1; b < n; b++) {
                Piece q = pieces[byX[b]];
                if (q.minX >= right) {
                    break;
                }
                if (q.minY < top && q.maxY > bottom) {
                    add(Math.min(byX[a], byX[b]), Math.max(byX[a], byX[b]), shape, found);
                }
            }
        }
        found.sort(Comparator.comparingDouble(Thin::width)
                .thenComparingInt(Thin::first)
                .thenComparingInt(Thin::second));
        return found;
    }

    private void add(int i, int j, Shape shape, List<Thin> found) {
        int n = pieces.length;
        if (j - i < 2 || j - i > n - 2) {
            return;
        }
        // A run this short encloses, with the thin place, less than a circle of the web's width: no contour of a given
        // length encloses more than a circle does.
        double between = run[j + 1] - run[i];
        if (Math.min(between, run[n] - run[j] + run[i + 1]) + web <= Math.PI * web
                || Piece.gap(pieces[i], pieces[j]) >= web) {
            return;
        }
        Nearest nearest = new Nearest(web - tolerance);
        nearest.between(pieces[i], pieces[j]);
        if (nearest.distance >= web - tolerance) {
            return;
        }
        // The pieces may be offered to either side: put each end back on its own piece.
        Point middle = nearest.middle();
        Point from = pieces[i].nearestTo(middle.x(), middle.y());
        Point to = pieces[j].nearestTo(middle.x(), middle.y());
        Thin thin = new Thin(nearest.distance, from, to, i, j);
        double beyond = Math.abs(cutOff(thin));
        double all = Math.abs(area[n]);
        if (Math.min(beyond, Math.abs(all - beyond)) > Math.PI / 4 * web * web
                && (nearest.distance <= tolerance || shape.contains(middle.x(), middle.y()))) {
            found.add(thin);
        }
    }

    /** The area between the thin place and the contour's run from its first to its second piece, mm². */
    private double cutOff(Thin thin) {
        double sum = area[thin.second] - area[thin.first + 1] + thin.to.cross(thin.from) / 2;
        Segment head = rest(segments.get(thin.first), thin.from, true);
        Segment tail = rest(segments.get(thin.second), thin.to, false);
        return sum + (head == null ? 0 : head.areaTerm()) + (tail == null ? 0 : tail.areaTerm());
    }

    /** The piece from the point on, or up to it; null when nothing is left. */
    private static Segment rest(Segment s, Point p, boolean after) {
        double u =
                s instanceof Arc arc ? arc.shareOf(p.minus(arc.centre()).angle()) : p.distance(s.start()) / s.length();
        if (u > 1) {
            u = p.distance(s.start()) < p.distance(s.end()) ? 0 : 1;
        }
        if (after) {
            return u > 1 - 1e-9 ? null : u < 1e-9 ? s : s.part(u, 1);
        }
        return u < 1e-9 ? null : u > 1 - 1e-9 ? s : s.part(0, u);
    }

    /** Whether the thin place has parts of the shrunk region on both sides. */
    private boolean parts(Thin thin, List<Point> parted) {
        List<Segment> side = new ArrayList<>();
        Segment head = rest(segments.get(thin.first), thin.from, true);
        Segment tail = rest(segments.get(thin.second), thin.to, false);
        if (head != null) {
            side.add(head);
        }
        side.addAll(segments.subList(thin.first + 1, thin.second));
        if (tail != null) {
            side.add(tail);
        }
        side.add(new Line(side.get(side.size() - 1).end(), side.get(0).start()));
        Shape beyond = Shape.of(Region.of(new Contour(side)));
        int inside = 0;
        for (Point p : parted) {
            inside += beyond.contains(p.x(), p.y()) ? 1 : 0;
        }
        return inside > 0 && inside < parted.size();
    }
}
