// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Numeric;
import ringleaf.spec.field.Quantity;

/**
 * One thing that could be changed in a spec.
 *
 * @param path of the field, or of its limit
 * @param numeric what kind of number it takes; null for names
 * @param now the number that holds at present, in the unit that is shown; not a number for names
 * @param nowText the same in words
 * @param names that could stand there instead; empty for numbers
 * @param down whether smaller numbers are worth trying
 * @param up whether larger numbers are
 * @param sold numbers that can be had, ascending, in the unit that is shown; empty when any can
 * @param goal what the design came to where this is a limit of it; not a number where nothing is known
 * @param units of the document
 * @param along by name, what has to change with it
 */
record Knob(
        SpecPath path,
        Numeric numeric,
        double now,
        String nowText,
        List<String> names,
        boolean down,
        boolean up,
        double[] sold,
        double goal,
        LengthUnit units,
        Map<String, Attempts.Setting> along) {

    Knob(
            SpecPath path,
            Numeric numeric,
            double now,
            String nowText,
            List<String> names,
            boolean down,
            boolean up,
            double[] sold,
            double goal,
            LengthUnit units) {
        this(path, numeric, now, nowText, names, down, up, sold, goal, units, Map.of());
    }

    private static final int FEW = 100;

    boolean isNumber() {
        return numeric != null && names.isEmpty();
    }

    /** Every whole number that the field takes, where these are few enough to be tried one by one. */
    boolean isFew() {
        return isNumber() && numeric.whole() && most() - least() < FEW;
    }

    Attempts.Setting set(String text) {
        return new Attempts.Setting(path.keys(), text, Optional.ofNullable(along.get(text)));
    }

    double least() {
        return shown(numeric.least());
    }

    double most() {
        return shown(numeric.most());
    }

    private double shown(double inner) {
        return numeric.shown(units) == null ? inner : numeric.shown(units).from(inner);
    }

    String text(double number) {
        return numeric.text(number, units);
    }

    boolean isInRange(double value) {
        return value >= least() - 1e-12 && value <= most() + 1e-12;
    }

    /**
     * By how much it changes, as a share. A direction changes by what it is turned either way round, whatever it is; half
     * a turn, which leaves every size as it is, counts like an eighth of a size (assumed).
     */
    double share(double value) {
        if (numeric.quantity() == Quantity.ANGLE && sold.length > 0) {
            double turn = shown(2 * Math.PI);
            return Math.abs(Math.IEEEremainder(value - now, turn)) / (4 * turn);
        }
        return Math.abs(value - now) / scale();
    }

    /** So many steps of the grid as this share comes to, at least one. */
    long steps(double share) {
        return Math.max(1, (long) Math.rint(share * scale() / grid()));
    }

    /** On the grid: as many steps up (1) or down (-1) from the present value, rounded away from it. */
    double value(int sense, long steps) {
        double grid = grid();
        double from = now / grid;
        double at = sense > 0 ? Math.floor(from + 1e-6) + steps : Math.ceil(from - 1e-6) - steps;
        // Dividing by a whole number gives the double nearest to the decimal.
        return grid < 1 ? at / Math.rint(1 / grid) : at * grid;
    }

    /** What a change is a share of. */
    double scale() {
        if (now != 0) {
            return Math.abs(now);
        }
        return switch (numeric.quantity()) {
            case LENGTH -> shown(1);
            case ANGLE -> shown(Math.toRadians(10));
            default -> 1;
        };
    }

    /** Steps of values that are neither too fine to be of use nor too coarse to be near: a power of ten. */
    double grid() {
        return numeric.whole() ? 1 : Math.pow(10, Math.floor(Math.log10(0.002 * scale() * (1 + 1e-9))));
    }
}
