// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

/** Angles in radians, brought into the range a formula wants. */
public final class Angles {
    public static final double TURN = 2 * Math.PI;

    private Angles() {}

    /** The same direction in [0, 2 pi). */
    public static double positive(double angle) {
        double a = angle % TURN;
        if (a < 0) {
            a += TURN;
        }
        return a >= TURN ? 0 : a;
    }

    /** The same direction in (-pi, pi]. */
    public static double signed(double angle) {
        double a = positive(angle);
        return a > Math.PI ? a - TURN : a;
    }

    /** The angle brought into [0, period), for a figure that repeats every {@code period} rad. */
    public static double folded(double angle, double period) {
        double a = angle - Math.floor(angle / period) * period;
        return a >= period ? 0 : a;
    }
}
