// SPDX-License-Identifier: Apache-2.0
package ringleaf.groove;

import java.util.function.DoubleUnaryOperator;

/**
 * A root between two places at which a function differs in sign: false position, the value at an end that stays twice
 * in a row halved each time (Dowell and Jarratt's first variant), which converges faster than any halving and never
 * leaves the bracket; halvings finish where a function is too crooked for it.
 */
public final class FalsePosition {
    private static final int STEPS = 60;

    private FalsePosition() {}

    /**
     * Where {@code f} vanishes between {@code a} and {@code b}, to rounding; not a number when both ends have the same
     * sign. A function that is not a number somewhere inside gives no reliable root.
     */
    public static double root(DoubleUnaryOperator f, double a, double b) {
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        if (fa == 0 || fb == 0) {
            return fa == 0 ? a : b;
        }
        if (!(fa * fb < 0)) {
            return Double.NaN;
        }
        double low = a;
        double high = b;
        int side = 0;
        for (int i = 0; i < STEPS; i++) {
            double at = i % 8 == 7 ? (low + high) / 2 : low - fa * (high - low) / (fb - fa);
            double value = f.applyAsDouble(at);
            if (value == 0 || at == low || at == high) {
                return at;
            }
            if (value * fb > 0) {
                high = at;
                fb = value;
                fa = side == 1 ? fa / 2 : fa;
                side = 1;
            } else {
                low = at;
                fa = value;
                fb = side == -1 ? fb / 2 : fb;
                side = -1;
            }
            if (Math.abs(high - low) <= 4 * Math.ulp(Math.max(Math.abs(low), Math.abs(high)))) {
                break;
            }
        }
        return Math.abs(fa) < Math.abs(fb) ? low : high;
    }
}
