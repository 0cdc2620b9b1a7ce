// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

/** Pieces of JSON Schema that stand for how numbers are written. */
final class SchemaText {
    private static final String NUMBER = "([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][-+]?[0-9]+)?";
    private static final String FRACTION = "(( +[0-9]+)?/[0-9]+)?";

    private SchemaText() {}

    /** A pattern that every text the reader takes meets; the reader is stricter. */
    static String pattern(Quantity quantity) {
        StringBuilder units = new StringBuilder();
        for (Unit unit : quantity.units()) {
            units.append(units.length() == 0 ? "" : "|").append(unit.spelling());
        }
        String number = NUMBER + FRACTION;
        String unit = units.length() == 0 ? "" : " *(" + units + ')' + (quantity.takesBare() ? "?" : "");
        String term = number + unit;
        String more = quantity.takesSums() ? "( *[-+] *" + term + ")*" : "";
        return "^ *[-+]? *" + term + more + " *$";
    }

    /** A bound in mm as a bare number, loosened so that it holds in every unit a document can have. */
    static double loosest(double bound, boolean upper) {
        double loosest = bound;
        for (LengthUnit unit : LengthUnit.values()) {
            double there = unit.unit().from(bound);
            loosest = upper ? Math.max(loosest, there) : Math.min(loosest, there);
        }
        return loosest;
    }
}
