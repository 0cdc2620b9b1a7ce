// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Place;

/** What the types of numbers share: the check of the range. */
final class NumberType {
    private static final double ROUNDING = 1e-12;

    private NumberType() {}

    /**
     * The value where it lies in its range; else the nearest that does, after it was reported.
     *
     * @param value inner value
     * @param written as it stands in the text
     * @param unit it was written in, for the nearest value that works; null where that is the bound itself
     */
    static double within(
            double value, String written, Unit unit, Quantity quantity, Range range, Place place, Reading reading) {
        double least = quantity.inner(range.least());
        double most = quantity.inner(range.most());
        if (value < least - Math.abs(least) * ROUNDING) {
            String reason = written + " is below the least of " + QuantityReader.shown(least, quantity);
            reading.problems()
                    .nearest(place, reason + " (" + range.whyLeast() + ")", nearest(least, unit, quantity, true));
            return least;
        }
        if (value > most + Math.abs(most) * ROUNDING) {
            String reason = written + " is above the most of " + QuantityReader.shown(most, quantity);
            reading.problems()
                    .nearest(place, reason + " (" + range.whyMost() + ")", nearest(most, unit, quantity, false));
            return most;
        }
        return value;
    }

    /** The bound in the unit that was written, rounded to the side that works; empty when the bound says it already. */
    private static String nearest(double bound, Unit unit, Quantity quantity, boolean up) {
        if (unit == null || quantity.shown() == null || sameScale(unit, quantity.shown())) {
            return "";
        }
        double number = unit.from(bound);
        double step = Math.pow(10, Math.floor(Math.log10(Math.max(Math.abs(number), 1e-9))) - 3);
        double steps = number / step;
        boolean whole = Math.abs(steps - Math.rint(steps)) < 1e-9 * Math.abs(steps);
        double rounded = whole ? Math.rint(steps) : up ? Math.ceil(steps) : Math.floor(steps);
        return "the nearest that works is " + Decimal.of(rounded * step, 6) + unit.spelling();
    }

    private static boolean sameScale(Unit a, Unit b) {
        return a.times() == b.times() && a.per() == b.per();
    }
}
