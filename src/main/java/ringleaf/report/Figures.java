// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import ringleaf.draw.Decimals;

/** Numbers as they stand in tables and in design.json. */
public final class Figures {
    /** Enough to lose nothing that is measured, few enough that the last bits of a calculation do not show. */
    private static final int DIGITS = 12;

    private static final int DECIMALS = 9;
    /** For people. */
    private static final int SHORT_DIGITS = 5;

    private static final int SHORT_DECIMALS = 4;

    private Figures() {}

    static boolean isNumber(double value) {
        return !Double.isNaN(value) && !Double.isInfinite(value);
    }

    /** At most 12 significant digits and 9 decimals; what is no finite number gives {@code otherwise}. */
    static String full(double value, String otherwise) {
        return isNumber(value) ? Decimals.significant(value, DIGITS, DECIMALS) : otherwise;
    }

    /** At most 5 significant digits and 4 decimals, for reading. */
    public static String shown(double value) {
        if (!isNumber(value)) {
            return Double.isNaN(value) ? "none" : value > 0 ? "without limit" : "below every limit";
        }
        return Decimals.significant(value, SHORT_DIGITS, SHORT_DECIMALS);
    }
}
