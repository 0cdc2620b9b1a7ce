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

    /** An inner value as it can stand in a spec, with its unit; at most nine significant digits. */
    public String text(double inner) {
        if (whole) {
            return Decimal.of(Math.rint(inner));
        }
        Unit unit = quantity.shown();
        return unit == null ? Decimal.of(inner, DIGITS) : Decimal.of(unit.from(inner), DIGITS) + unit.spelling();
    }

    /** The unit of a bare number; null for plain numbers and where a unit must stand. */
    public Unit bare(LengthUnit units) {
        if (quantity == Quantity.LENGTH) {
            return alwaysMm ? LengthUnit.MM.unit() : units.unit();
        }
        return quantity.takesBare() ? quantity.shown() : null;
    }
}
