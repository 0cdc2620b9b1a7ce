// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.mesh;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Flattening;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
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

    private final Stops stops;
    private final Tolerance chord;

    /**
     * Rings of these contours.
     *
     * @param near points closer than this are one, mm
     * @param shared whether contours may run along one another in part
     */
    Rings(List<Contour> contours, double near, Tolerance chord, boolean shared) {
        this.chord = chord;
        stops = new Stops(contours, near, shared);
    }

    List<Point> points() {
        return stops.points();
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

    /** All corners of the piece but its last. */
    private void add(List<Integer> ring, Segment segment) {
        List<Stops.Stop> on = stops.on(segment);
        for (int i = 0; i + 1 < on.size(); i++) {
            push(ring, on.get(i).corner());
            if (segment instanceof Arc arc) {
                double from = on.get(i).share();
                double to = on.get(i + 1).share();
                int n = chords(arc, to - from);
                for (int k = 1; k < n; k++) {
                    double angle = arc.startAngle() + arc.sweep() * (from + (to - from) * k / n);
                    push(ring, stops.number(arc.centre().plus(Point.polar(arc.radius(), angle))));
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
}
