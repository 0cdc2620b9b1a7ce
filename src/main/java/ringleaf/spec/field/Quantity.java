// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.List;

/**
 * What kind of number a field takes, with the units it can be written in.
 *
 * <p>Inner units: mm, rad, N mm, MPa, g/cm3 and fractions of 1. An inch is 25.4 mm exactly (international yard and
 * pound agreement, 1959); a kilogram-force is 9.80665 N exactly (3rd CGPM, 1901); a pound is 0.45359237 kg exactly.
 */
public enum Quantity {
    LENGTH(
            "a length",
            "64, 64mm, 2.5in, 2 1/2 in or 12thou",
            true,
            List.of(
                    LengthUnit.MM.unit(),
                    LengthUnit.CM.unit(),
                    LengthUnit.IN.unit(),
                    new Unit("\"", 25.4, 1),
                    LengthUnit.THOU.unit())),
    ANGLE(
            "an angle",
            "250, 250deg or 1.2rad",
            true,
            List.of(new Unit("deg", Math.PI, 180), new Unit("°", Math.PI, 180), new Unit("rad", 1, 1))),
    TORQUE(
            "a torque",
            "1.8kgcm, 0.2Nm or 25ozin",
            false,
            List.of(
                    new Unit("Nmm", 1, 1),
                    new Unit("mNm", 1, 1),
                    new Unit("Nm", 1000, 1),
                    new Unit("kgcm", 98.0665, 1),
                    new Unit("ozin", 0.45359237 * 9.80665 * 25.4, 16))),
    STRESS("a stress", "434MPa or 110GPa", false, List.of(new Unit("MPa", 1, 1), new Unit("GPa", 1000, 1))),
    DENSITY("a density", "8.5g/cm3", false, List.of(new Unit("g/cm3", 1, 1), new Unit("kg/m3", 1, 1000))),
    PERCENT("a percentage", "20%", false, List.of(new Unit("%", 1, 100))),
    NUMBER("a number", "1.5", true, List.of());

    private final String words;
    private final String samples;
    private final boolean bare;
    private final List<Unit> units;

    Quantity(String words, String samples, boolean bare, List<Unit> units) {
        this.words = words;
        this.samples = samples;
        this.bare = bare;
        this.units = units;
    }

    /** E.g. {@code a length}. */
    public String words() {
        return words;
    }

    /** How it can be written, for messages. */
    public String samples() {
        return samples;
    }

    /** Whether a number without a unit says enough. */
    public boolean takesBare() {
        return bare;
    }

    public List<Unit> units() {
        return units;
    }

    /** The unit ranges are declared in and values are shown in; null for plain numbers. */
    public Unit shown() {
        return units.isEmpty() ? null : units.get(0);
    }

    /** The inner value of a number in the shown unit. */
    public double inner(double shownNumber) {
        return units.isEmpty() ? shownNumber : shown().inner(shownNumber);
    }

    /** Whether sums make sense: a diameter and its clearance, an angle and an offset. */
    public boolean takesSums() {
        return this == LENGTH || this == ANGLE;
    }

    /** All spellings of the units, for messages. */
    public String spellings() {
        StringBuilder out = new StringBuilder();
        for (Unit unit : units) {
            out.append(out.length() == 0 ? "" : ", ").append(unit.spelling());
        }
        return out.toString();
    }
}
