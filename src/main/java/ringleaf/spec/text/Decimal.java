// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Writes numbers for people, the same in every locale. */
public final class Decimal {
    private Decimal() {}

    /** At most nine significant digits, no exponent between 1e-6 and 1e12, no trailing zeros. */
    public static String of(double value) {
        return of(value, 9);
    }

    /** At most so many significant digits, rounded half to even. */
    public static String of(double value, int digits) {
        if (value == Math.rint(value) && Math.abs(value) < 1e9) {
            return Long.toString((long) value);
        }
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return Double.toString(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        double size = Math.abs(value);
        if (size < 1e-6 || size >= 1e12) {
            return rounded.stripTrailingZeros().toString();
        }
        return rounded.stripTrailingZeros().toPlainString();
    }
}
