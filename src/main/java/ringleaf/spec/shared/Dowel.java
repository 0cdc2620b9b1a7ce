// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.List;
import java.util.OptionalDouble;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Problems;

/**
 * A parallel dowel pin of one diameter, in the lengths in which it is sold.
 *
 * @param diameter mm; the entry's name
 * @param standard by which it is ordered, in words
 * @param lengths mm
 * @param entry values with their sources
 */
public record Dowel(double diameter, String standard, List<Double> lengths, Entry entry) {
    static final Field<String> STANDARD =
            Field.text("standard", 60).help("standard by which it is ordered").byDefaultWords("none");
    static final Field<List<Double>> LENGTHS = Field.length("lengths")
            .help("lengths in which it is sold")
            .atLeast(0.5, "nothing shorter is sold")
            .atMost(500, "no model holds a longer one")
            .list(60)
            .required();

    /** The fields of an entry; its diameter is its name. */
    public static final FieldSet FIELDS = FieldSet.of(STANDARD, LENGTHS);

    /** The dowel; null, after it was reported, when its name is no diameter. */
    static Dowel of(Entry entry, Problems problems) {
        double diameter = Diameters.of(entry, "dowel", problems);
        return Double.isNaN(diameter)
                ? null
                : new Dowel(
                        diameter,
                        entry.values().get(STANDARD).orElse(""),
                        entry.values().require(LENGTHS),
                        entry);
    }

    /** The longest that is sold and no longer than {@code room}, mm. */
    public OptionalDouble within(double room) {
        return Sold.nextDown(lengths, room);
    }

    /** What to order, e.g. {@code dowel pin 3 x 8, ISO 2338}. */
    public String order(double length) {
        return "dowel pin " + Decimal.of(diameter) + " x " + Decimal.of(length, 6)
                + (standard.isEmpty() ? "" : ", " + standard);
    }
}
