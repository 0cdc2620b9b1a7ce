// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * The involute function and its inverse.
 *
 * <p>inv a = tan a - a is the polar angle that an involute has gained where its pressure angle is a. Source: the
 * definition (ISO 21771 family; handbook knowledge, from memory).
 */
public final class Involute {
    /** Below this angle the difference tan a - a loses digits, and the power series is taken. */
    private static final double SERIES_BELOW = 0.2;
    /** Coefficients of a^3, a^5, … in the power series of the tangent. */
    private static final double[] TANGENT_SERIES = {
        1.0 / 3,
        2.0 / 15,
        17.0 / 315,
        62.0 / 2835,
        1382.0 / 155925,
        21844.0 / 6081075,
        929569.0 / 638512875,
        6404582.0 / 10854718875.0,
        443861162.0 / 1856156927625.0
    };

    private Involute() {}

    /**
     * inv a = tan a - a, in rad, for |a| &lt; pi/2 (outside it has no meaning for a tooth). Error: a few units in the
     * last place (measured against published digits).
     */
    public static double inv(double angle) {
        if (Math.abs(angle) >= SERIES_BELOW) {
            return Math.tan(angle) - angle;
        }
        double square = angle * angle;
        double sum = 0;
        for (int i = TANGENT_SERIES.length - 1; i >= 0; i--) {
            sum = sum * square + TANGENT_SERIES[i];
        }
        return sum * square * angle;
    }

    /**
     * The angle a in [0, pi/2) whose involute function is {@code value}, rad.
     *
     * @throws IllegalArgumentException when the value is negative or no number: no involute reaches there
     */
    public static double arcInv(double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("the involute function takes no value " + value);
        }
        if (value == 0) {
            return 0;
        }
        // Newton on u = tan a, where inv = u - atan u is convex, so that steps from above never overshoot. The start
        // is above the root: atan u < pi/2, and u - atan u >= u^3/(3 (1 + u^2)).
        double u = value + Math.PI / 2;
        double near = Math.cbrt(3 * value);
        u = Math.min(u, near * (1 + near * near));
        for (int i = 0; i < 60; i++) {
            double excess = inv(Math.atan(u)) - value;
            double step = excess * (1 + u * u) / (u * u);
            u -= step;
            if (Math.abs(step) <= 1e-16 * u) {
                break;
            }
        }
        return Math.atan(u);
    }
}
