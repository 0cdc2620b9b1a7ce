// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as people read them, without a locale. */
public final class Words {
    private Words() {}

    /** At most {@code decimals} decimals, no trailing zeros. */
    public static String number(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return "none";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** An angle in rad, shown in degrees. */
    public static String degrees(double angle, int decimals) {
        return number(Math.toDegrees(angle), decimals) + "°";
    }

    /** Millimetres with two decimals at most. */
    public static String mm(double value) {
        return number(value, 2) + " mm";
    }
}
