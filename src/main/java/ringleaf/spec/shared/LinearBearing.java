// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Problems;

/**
 * A bearing that runs along a round rod, mm.
 *
 * @param name rod, outside and length, e.g. {@code 3x7x10}
 * @param rod diameter of the rod it runs on
 * @param outside outer diameter
 * @param length along the rod
 * @param entry values with their sources
 */
public record LinearBearing(String name, double rod, double outside, double length, Entry entry) {
    /** A sleeve and the balls round the rod take at least this much of the diameter, mm; common practice, no source. */
    private static final double LEAST_SLEEVE = 1;

    static final Field<Double> ROD = size("rod", "diameter of the rod it runs on");
    static final Field<Double> OUTSIDE = size("outside", "outer diameter");
    static final Field<Double> LENGTH = size("length", "length along the rod");

    /** The fields of an entry. */
    public static final FieldSet FIELDS = FieldSet.of(ROD, OUTSIDE, LENGTH);

    private static Field<Double> size(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(0.5, "no bearing is smaller")
                .atMost(200, "no model holds a larger one")
                .required();
    }

    /** What to buy, for people. */
    public String words() {
        return "linear bearing for a rod of " + Decimal.of(rod) + " mm, " + Decimal.of(outside) + " mm outside, "
                + Decimal.of(length) + " mm long";
    }

    /** The bearing; null, after it was reported, when its sleeve has no room. */
    static LinearBearing of(Entry entry, Problems problems) {
        double rod = entry.values().require(ROD);
        double outside = entry.values().require(OUTSIDE);
        if (outside < rod + LEAST_SLEEVE) {
            problems.at(
                    entry.values().where(OUTSIDE),
                    Decimal.of(outside) + " mm leaves no room for a sleeve round a rod of " + Decimal.of(rod) + " mm",
                    "the least that works is " + Decimal.of(rod + LEAST_SLEEVE) + " mm; see the bearing's drawing");
            return null;
        }
        return new LinearBearing(entry.name(), rod, outside, entry.values().require(LENGTH), entry);
    }
}
