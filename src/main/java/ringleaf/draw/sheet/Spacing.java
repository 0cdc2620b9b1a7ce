// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Point;
import ringleaf.geom.Tolerance;

/** Tells whether places lie evenly on a circle. */
final class Spacing {
    private static final int LEAST = 3;

    private Spacing() {}

    /**
     * The direction of the first of places that lie evenly on one circle about the centre, the first at or after 0 rad;
     * not a number where they do not, or are fewer than three.
     */
    static double firstOf(List<Point> places, Point centre, Tolerance same) {
        int n = places.size();
        if (n < LEAST) {
            return Double.NaN;
        }
        double radius = places.get(0).distance(centre);
        if (radius < 2 * same.length()) {
            return Double.NaN;
        }
        double slack = 2 * same.length() / radius;
        List<Double> angles = new ArrayList<>();
        for (Point place : places) {
            if (Math.abs(place.distance(centre) - radius) > same.length()) {
                return Double.NaN;
            }
            double angle = Angles.positive(place.minus(centre).angle());
            angles.add(angle > Angles.TURN - slack ? 0 : angle);
        }
        angles.sort(Double::compare);
        for (int i = 1; i < n; i++) {
            if (Math.abs(angles.get(i) - angles.get(0) - i * Angles.TURN / n) > slack) {
                return Double.NaN;
            }
        }
        return angles.get(0) < slack ? 0 : angles.get(0);
    }
}
