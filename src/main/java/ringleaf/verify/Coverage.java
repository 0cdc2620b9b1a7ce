// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import ringleaf.geom.Angles;
import ringleaf.geom.Point;
import ringleaf.part.LeafFamily;

/**
 * What the leaves leave uncovered in one state: decided exactly by walking along all edges, measured by polygon
 * overlay. Leaves and opening are drawn full and the clear
 * area lean, by a twentieth of the tolerance, so whatever is found uncovered truly is: a tight design never fails by
 * its chords, while a slit narrower than a tenth of the tolerance goes unseen and wider ones measure less by at most
 * that width. When all leaves are turned copies, one sector of the clear area stands for all.
 */
final class Coverage {
    /** An uncovered area, mm², and a point of it. */
    record Leak(double area, Point at) {
        static final Leak NONE = new Leak(0, Point.ORIGIN);
    }

    private final Scene scene;
    private final LeafFamily family;
    private final Pose pose;
    private final Leaves leaves;
    private final double fine;
    private final Shape clear;
    /** How far beside an edge to look, mm. */
    private final double hair;

    private final boolean bySector;

    Coverage(Scene scene, LeafFamily family, Pose pose, Leaves leaves) {
        this.scene = scene;
        this.family = family;
        this.pose = pose;
        this.leaves = leaves;
        this.fine = scene.tolerance / 20;
        this.hair = scene.tolerance / 1000;
        this.clear = Shape.of(family.clear());
        this.bySector = leaves.alike() && leaves.count() > 2 && turnsIntoItself(clear);
    }

    /** What is uncovered: looked for exactly, and where something is found, or when thorough, by polygons. */
    Leak leak(LeafCovers covers, Shape opening, boolean thorough) {
        return thorough || leaks(covers, opening) ? overlaid(covers, opening) : Leak.NONE;
    }

    /** Whether anything wider than the hair is uncovered, exactly. */
    boolean leaks(LeafCovers covers, Shape opening) {
        List<Inset> insets = new ArrayList<>();
        int first = 0;
        for (int k = 0; k < leaves.count(); k++) {
            insets.addAll(covers.insets(k, pose.members[family.members().get(k)]));
            first = k == 0 ? insets.size() : first;
        }
        boolean sector = bySector && turnsIntoItself(opening);
        int pieces = opening.pieces.length;
        int share = sector && pieces % leaves.count() == 0 ? pieces / leaves.count() : pieces;
        return new EdgeWalk(clear, opening, insets, hair).leaks(sector ? first : insets.size(), share);
    }

    private Leak overlaid(LeafCovers covers, Shape opening) {
        boolean sector = bySector && turnsIntoItself(opening);
        Geometry left = difference(room(sector), Chords.full(opening, fine));
        double copies = sector ? leaves.count() : 1;
        List<Integer> order = order(opening, sector);
        for (int i = 0; i < order.size(); i++) {
            if (left.getArea() * copies < CoverCheck.LEAST_LEAK) {
                return Leak.NONE;
            }
            int leaf = order.get(i);
            Geometry polygon = covers.placed(leaf, pose.members[family.members().get(leaf)]);
            if (polygon.getEnvelopeInternal().intersects(left.getEnvelopeInternal())) {
                left = difference(left, polygon);
            }
        }
        double area = left.getArea() * copies;
        return area < CoverCheck.LEAST_LEAK ? Leak.NONE : new Leak(area, place(left));
    }

    private static Geometry difference(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE);
    }

    /** What two neighbours in laying order share: the least that any two do, mm². */
    double neighbourOverlap() {
        int n = leaves.count();
        double least = n < 2 ? 0 : Double.POSITIVE_INFINITY;
        for (int k = 0; n > 1 && k < (leaves.alike() ? 1 : n); k++) {
            double shared = 0;
            for (Shape a : leaves.shapes(k)) {
                for (Shape b : leaves.shapes((k + 1) % n)) {
                    shared += SharedArea.of(a, b, hair);
                }
            }
            least = Math.min(least, shared);
        }
        return least;
    }

    /** Whether a turn by one leaf's share carries each piece's start and centre onto another's. */
    private boolean turnsIntoItself(Shape shape) {
        double turn = Angles.TURN / leaves.count();
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        if (shape.isDisc()) {
            return Math.hypot(shape.pieces[0].cx, shape.pieces[0].cy) <= scene.hair;
        }
        for (Piece p : shape.pieces) {
            Piece moved = p.moved(cos, sin, 0, 0);
            boolean found = false;
            for (int i = 0; i < shape.pieces.length && !found; i++) {
                Piece q = shape.pieces[i];
                found = Math.hypot(moved.x0 - q.x0, moved.y0 - q.y0) <= scene.tolerance * 1e-3
                        && Math.hypot(moved.cx - q.cx, moved.cy - q.cy) <= scene.tolerance * 1e-3;
            }
            if (!found) {
                return false;
            }
        }
        return true;
    }

    private Geometry room(boolean sector) {
        Polygon all = Chords.lean(clear, fine);
        if (!sector) {
            return all;
        }
        double share = Angles.TURN / leaves.count();
        double far = clear.farthestFrom(0, 0).norm() * 1.01 / Math.cos(share / 2);
        Coordinate[] wedge = {
            new Coordinate(0, 0),
            new Coordinate(far, 0),
            new Coordinate(far * Math.cos(share), far * Math.sin(share)),
            new Coordinate(0, 0)
        };
        return OverlayNGRobust.overlay(all, Chords.FACTORY.createPolygon(wedge), OverlayNG.INTERSECTION);
    }

    /**
     * The leaves in an order that covers soonest: each next one covers most of a grid of points that is left. Only
     * the pace depends on it.
     */
    private List<Integer> order(Shape opening, boolean sector) {
        List<Point> points = grid(opening, sector);
        List<Integer> order = new ArrayList<>();
        boolean[] used = new boolean[leaves.count()];
        while (order.size() < used.length) {
            int best = -1;
            int most = -1;
            for (int k = 0; k < used.length; k++) {
                int n = used[k] ? -1 : points.isEmpty() ? 0 : covered(k, points);
                if (n > most) {
                    most = n;
                    best = k;
                }
            }
            used[best] = true;
            order.add(best);
            List<Point> rest = new ArrayList<>();
            for (Point p : points) {
                if (!leaves.covers(best, p.x(), p.y())) {
                    rest.add(p);
                }
            }
            points = rest;
        }
        return order;
    }

    private int covered(int leaf, List<Point> points) {
        int n = 0;
        for (Point p : points) {
            n += leaves.covers(leaf, p.x(), p.y()) ? 1 : 0;
        }
        return n;
    }

    private List<Point> grid(Shape opening, boolean sector) {
        double share = sector ? Angles.TURN / leaves.count() : Angles.TURN;
        int rays = sector ? 4 : 4 * leaves.count();
        double far = clear.farthestFrom(0, 0).norm();
        List<Point> points = new ArrayList<>();
        for (int ray = 0; ray < rays; ray++) {
            for (int ring = 0; ring < 8; ring++) {
                Point p = Point.polar(far * Math.sqrt((ring + 0.5) / 8), share * (ray + 0.5) / rays);
                if (clear.contains(p.x(), p.y()) && !opening.contains(p.x(), p.y())) {
                    points.add(p);
                }
            }
        }
        return points;
    }

    /** A point inside the largest piece of what is left. */
    private static Point place(Geometry left) {
        Polygon largest = null;
        for (Polygon polygon : Reach.polygons(left)) {
            if (largest == null || polygon.getArea() > largest.getArea()) {
                largest = polygon;
            }
        }
        Coordinate c = largest.getInteriorPoint().getCoordinate();
        return new Point(c.x, c.y);
    }
}
