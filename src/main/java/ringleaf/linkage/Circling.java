// SPDX-License-Identifier: Apache-2.0
package ringleaf.linkage;

/**
 * The equation a cos q + b sin q = k, to which a point on a circle at a given distance from another point comes down.
 * Its two roots are atan2(b, a) plus and minus acos(k / hypot(a, b)).
 */
final class Circling {
    private Circling() {}

    /**
     * One of the two roots, rad, in (-pi, pi]; not a number where there is none.
     *
     * @param side 1 for the root ahead of the direction (a, b), -1 for the one behind it
     */
    static double root(double a, double b, double k, int side) {
        double cosine = k / Math.hypot(a, b);
        if (!(Math.abs(cosine) <= 1)) {
            return Double.NaN;
        }
        return Math.IEEEremainder(Math.atan2(b, a) + side * Math.acos(cosine), 2 * Math.PI);
    }

    /** On which side of the direction (a, b) a known root stands: 1 ahead of it or on it, -1 behind it. */
    static int side(double a, double b, double q) {
        return Math.IEEEremainder(q - Math.atan2(b, a), 2 * Math.PI) >= 0 ? 1 : -1;
    }
}
