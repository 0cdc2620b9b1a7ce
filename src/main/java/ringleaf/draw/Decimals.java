// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as text: a full stop as the decimal mark, no exponent, no grouping, no trailing zeros, whatever the locale.
 */
public final class Decimals {
    private static final long[] POWER = new long[16];
    /** Up to here a scaled value is a whole number that a double still holds exactly: 2^53. */
    private static final double WHOLE = 9007199254740992.0;

    static {
        POWER[0] = 1;
        for (int i = 1; i < POWER.length; i++) {
            POWER[i] = 10 * POWER[i - 1];
        }
    }

    private Decimals() {}

    /**
     * The value rounded to at most so many decimals, e.g. {@code -0.5}; never {@code -0}. Error: half a unit of the
     * last decimal and one unit in the last place of the value (proved: one multiplication, one rounding).
     *
     * @throws IllegalArgumentException for what is not a finite number, so that none ever reaches a file
     */
    public static String of(double value, int decimals) {
        StringBuilder out = new StringBuilder(16);
        append(out, value, decimals);
        return out.toString();
    }

    /** Appends what {@link #of} gives; {@code decimals} is from 0 to 15. */
    public static void append(StringBuilder out, double value, int decimals) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("not a number that can be written: " + value);
        }
        double scaled = Math.rint(value * POWER[decimals]);
        if (Math.abs(scaled) >= WHOLE) {
            out.append(trimmed(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN)));
            return;
        }
        appendScaled(out, (long) scaled, decimals);
    }

    /**
     * The value in units of its last decimal, rounded: what stays equal is written equal.
     *
     * @throws IllegalArgumentException for what is no finite number or is over 2^53 such units
     */
    public static long scaled(double value, int decimals) {
        double scaled = Math.rint(value * POWER[decimals]);
        if (!(Math.abs(scaled) < WHOLE)) {
            throw new IllegalArgumentException("not a number that can be written: " + value);
        }
        return (long) scaled;
    }

    /** Appends a value that {@link #scaled} gave. */
    public static void appendScaled(StringBuilder out, long scaled, int decimals) {
        // All figures go into one array from the last to the first, for a builder takes its time over each call.
        char[] figures = new char[20];
        int at = figures.length;
        long rest = Math.abs(scaled);
        boolean written = false;
        for (int place = 0; place <= decimals || rest > 0; place++) {
            if (place == decimals && written) {
                figures[--at] = '.';
            }
            char figure = (char) ('0' + rest % 10);
            rest /= 10;
            written |= place >= decimals || figure != '0';
            if (written) {
                figures[--at] = figure;
            }
        }
        if (scaled < 0) {
            figures[--at] = '-';
        }
        out.append(figures, at, figures.length - at);
    }

    /**
     * The value rounded to {@code digits} significant digits and to at most {@code decimals} decimals, so that the
     * last bits of a calculation do not show.
     */
    public static String significant(double value, int digits, int decimals) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("not a number that can be written: " + value);
        }
        double size = Math.abs(value);
        // Figures in front of the decimal mark; below 0.1 less than none, by the zeros that follow the mark.
        int before = 0;
        for (double limit = 1; limit <= size && before < digits; limit *= 10) {
            before++;
        }
        for (double limit = 0.1; size < limit && digits - before < decimals; limit /= 10) {
            before--;
        }
        if (size < WHOLE / POWER[Math.min(15, digits)]) {
            return of(value, Math.min(decimals, digits - before));
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        return trimmed(rounded.setScale(Math.max(0, Math.min(decimals, rounded.scale())), RoundingMode.HALF_EVEN));
    }

    /** The value that the written text stands for. */
    public static double rounded(double value, int decimals) {
        double scaled = Math.rint(value * POWER[decimals]);
        return Math.abs(scaled) >= WHOLE ? value : scaled / POWER[decimals] + 0.0;
    }

    private static String trimmed(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
