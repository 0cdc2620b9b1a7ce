package ringleaf.explore;

import java.util.List;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Numeric;

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
 * @param units of the document
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
        LengthUnit units) {

    boolean isNumber() {
        return numeric != null && names.isEmpty();
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
