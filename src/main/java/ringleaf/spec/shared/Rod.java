// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Problems;

/**
 * Wire or rod of one diameter, of which pins and axles are cut.
 *
 * @param diameter mm; the entry's name
 * @param goods what it is sold as
 * @param standard by which it is ordered, in words
 * @param entry values with their sources
 */
public record Rod(double diameter, String goods, String standard, Entry entry) {
    static final Field<String> GOODS =
            Field.text("goods", 80).help("what it is sold as").required();
    static final Field<String> STANDARD =
            Field.text("standard", 60).help("standard by which it is ordered").byDefaultWords("none");

    /** The fields of an entry; its diameter is its name. */
    public static final FieldSet FIELDS = FieldSet.of(GOODS, STANDARD);

    /** The rod; null, after it was reported, when its name is no diameter. */
    static Rod of(Entry entry, Problems problems) {
        double diameter = Diameters.of(entry, "rod", problems);
        if (Double.isNaN(diameter)) {
            return null;
        }
        return new Rod(
                diameter,
                entry.values().require(GOODS),
                entry.values().get(STANDARD).orElse(""),
                entry);
    }

    /** What to order, e.g. {@code 2 mm silver steel rod, DIN 175}. */
    public String order() {
        return Decimal.of(diameter) + " mm " + goods + (standard.isEmpty() ? "" : ", " + standard);
    }
}
