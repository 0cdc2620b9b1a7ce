// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import ringleaf.spec.text.Decimal;

/**
 * What a field takes that is a number, or limits of one.
 *
 * @param quantity what kind of number
 * @param whole whether only whole numbers will do
 * @param alwaysMm whether a bare length is in mm whatever the document's units
 * @param least inner units
 * @param most inner units
 */
public record Numeric(Quantity quantity, boolean whole, boolean alwaysMm, double least, double most) {
    private static final int DIGITS = 9;

    /** The unit that values are shown in; null for plain numbers. */
    public Unit shown(LengthUnit units) {
        Unit bare = bare(units);
        return bare == null ? quantity.shown() : bare;
    }

    /** A number of that unit as it can stand in a spec and be read by people. */
    public String text(double number, LengthUnit units) {
        Unit unit = shown(units);
        String digits = Decimal.of(whole ? Math.rint(number) : number, DIGITS);
        return unit == null ? digits : digits + (unit.spelling().equals("%") ? "" : " ") + unit.spelling();
    }

    /** The unit of a bare number; null for plain numbers and where a unit must stand. */
    public Unit bare(LengthUnit units) {
        if (quantity == Quantity.LENGTH) {
            return alwaysMm ? LengthUnit.MM.unit() : units.unit();
        }
        return quantity.takesBare() ? quantity.shown() : null;
    }
}
