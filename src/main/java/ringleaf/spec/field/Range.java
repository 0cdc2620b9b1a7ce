// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import ringleaf.spec.text.Decimal;

/**
 * What a number may be, both ends included, each with its reason.
 *
 * @param least in the quantity's shown unit
 * @param whyLeast what goes wrong below it
 * @param most in the quantity's shown unit
 * @param whyMost what goes wrong above it
 */
public record Range(double least, String whyLeast, double most, String whyMost) {
    /** Lengths of anything that is made: 0.01 mm to 5 m. */
    static final Range LENGTHS =
            new Range(0.01, "no process here makes anything smaller", 5000, "no sheet or bed here holds more than 5 m");
    /** Directions and turns: a full turn either way. */
    static final Range ANGLES = new Range(-360, "a full turn is all there is", 360, "a full turn is all there is");

    public Range {
        if (!(least <= most)) {
            throw new IllegalArgumentException("a range from " + least + " to " + most);
        }
        if (whyLeast.isEmpty() || whyMost.isEmpty()) {
            throw new IllegalArgumentException("a range states its reasons");
        }
    }

    /** {@code 0.01 to 5000 mm}. */
    String text(Quantity quantity) {
        Unit unit = quantity.shown();
        String end = unit == null ? "" : unit.spelling().equals("%") ? "%" : ' ' + unit.spelling();
        return Decimal.of(least) + " to " + Decimal.of(most) + end;
    }

    /** Both reasons in one phrase. */
    String reasons() {
        return whyLeast.equals(whyMost) ? whyLeast : "least: " + whyLeast + "; most: " + whyMost;
    }
}
