// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import ringleaf.curve.Distances;
import ringleaf.curve.Flattening;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * Contours as rings of corners, so that contours which run along one another have the same corners there: every end
 * of a piece that lies on another piece is a corner of that one too, and between two corners an arc takes the fewest
 * equal chords that the tolerance allows.
 */
final class Rings {
    /** No chord spans more than this of its circle, whatever the tolerance, rad. */
    private static final double WIDEST = 2 * Math.PI / 3;

    private final Corners corners;
    private final double near;
    private final Tolerance chord;
    private final int[] byX;
    private final double[] xs;

    /**
     * Rings of these contours.
     *
     * @param near points closer than this are one, mm
     * @param shared whether contours may run along one another in part
     */
    Rings(List<Contour> contours, double near, Tolerance chord, boolean shared) {
        this.near = near;
        this.chord = chord;
        corners = new Corners(near);
        for (Contour contour : contours) {
            for (Segment segment : contour.segments()) {
                corners.number(segment.start());
            }
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; shared && i < corners.points().size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> corners.points().get(i).x()));
        byX = new int[order.size()];
        xs = new double[order.size()];
        for (int i = 0; i < byX.length; i++) {
            byX[i] = order.get(i);
            xs[i] = corners.points().get(byX[i]).x();
        }
    }

    List<Point> points() {
        return corners.points();
    }

    /**
     * The corners of the contour, each once, in its own direction.
     *
     * @throws IllegalStateException when fewer than three are left
     */
    int[] of(Contour contour) {
        List<Integer> ring = new ArrayList<>();
        for (Segment segment : contour.segments()) {
            add(ring, segment);
        }
        while (ring.size() > 1 && ring.get(0).equals(ring.get(ring.size() - 1))) {
            ring.remove(ring.size() - 1);
        }
        if (ring.size() < 3) {
            throw new IllegalStateException("a contour that is smaller than its chords' tolerance");
        }
        int[] numbers = new int[ring.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = ring.get(i);
        }
        return numbers;
    }

    /** A corner on a piece, by its share of the piece's length. */
    private record Stop(double share, int corner) {}

    /** All corners of the piece but its last. */
    private void add(List<Integer> ring, Segment segment) {
        List<Stop> stops = stops(segment);
        for (int i = 0; i + 1 < stops.size(); i++) {
            push(ring, stops.get(i).corner);
            if (segment instanceof Arc arc) {
                double from = stops.get(i).share;
                double to = stops.get(i + 1).share;
                int n = chords(arc, to - from);
                for (int k = 1; k < n; k++) {
                    double angle = arc.startAngle() + arc.sweep() * (from + (to - from) * k / n);
                    push(ring, corners.number(arc.centre().plus(Point.polar(arc.radius(), angle))));
                }
            }
        }
    }

    private static void push(List<Integer> ring, int corner) {
        if (ring.isEmpty() || ring.get(ring.size() - 1) != corner) {
            ring.add(corner);
        }
    }

    private int chords(Arc arc, double share) {
        double sweep = arc.sweep() * share;
        int least = (int) Math.ceil(Math.abs(sweep) / WIDEST - 1e-9);
        Arc part = new Arc(arc.centre(), arc.radius(), arc.startAngle(), sweep, arc.start(), arc.end());
        return Math.max(least, Flattening.chords(part, chord));
    }

    private List<Stop> stops(Segment segment) {
        int first = corners.number(segment.start());
        int last = corners.number(segment.end());
        List<Stop> stops = new ArrayList<>();
        stops.add(new Stop(0, first));
        if (byX.length > 0) {
            Box box = segment.box().grown(near);
            int i = Arrays.binarySearch(xs, box.minX());
            for (i = i < 0 ? -i - 1 : i; i < byX.length && xs[i] <= box.maxX(); i++) {
                Point p = corners.points().get(byX[i]);
                boolean inside = byX[i] != first && byX[i] != last && p.y() >= box.minY() && p.y() <= box.maxY();
                double share = inside && Distances.distance(segment, p) <= near ? share(segment, p) : -1;
                // beside an end, but not between both: that of an arc would be most of a turn away
                if (share > 0 && share < 1) {
                    stops.add(new Stop(share, byX[i]));
                }
            }
        }
        stops.add(new Stop(1, last));
        stops.sort(Comparator.comparingDouble(Stop::share));
        return stops;
    }

    private static double share(Segment segment, Point p) {
        if (segment instanceof Arc arc) {
            return arc.shareOf(p.minus(arc.centre()).angle());
        }
        Line line = (Line) segment;
        Point along = line.end().minus(line.start());
        return p.minus(line.start()).dot(along) / along.dot(along);
    }
}
