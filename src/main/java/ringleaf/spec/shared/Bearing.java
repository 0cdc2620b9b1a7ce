// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Problems;

/**
 * A deep-groove ball bearing, mm.
 *
 * @param name its designation, {@code z} behind it for the shielded form where that is wider
 * @param bore inner diameter
 * @param outside outer diameter
 * @param width along the axis
 * @param entry values with their sources
 */
public record Bearing(String name, double bore, double outside, double width, Entry entry) {
    /** Two rings and the balls between them take at least this much of the diameter, mm; common practice, no source. */
    private static final double LEAST_RINGS = 1;

    static final Field<Double> BORE = size("bore", "inner diameter");
    static final Field<Double> OUTSIDE = size("outside", "outer diameter");
    static final Field<Double> WIDTH = size("width", "width along the axis");

    /** The fields of an entry. */
    public static final FieldSet FIELDS = FieldSet.of(BORE, OUTSIDE, WIDTH);

    private static Field<Double> size(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(0.5, "no bearing is smaller")
                .atMost(300, "no model holds a larger one")
                .required();
    }

    /** What to buy, for people. */
    public String words() {
        return "ball bearing " + name + ", " + Decimal.of(bore) + " x " + Decimal.of(outside) + " x "
                + Decimal.of(width) + " mm";
    }

    /** The bearing; null, after it was reported, when its rings leave no room for balls. */
    static Bearing of(Entry entry, Problems problems) {
        double bore = entry.values().require(BORE);
        double outside = entry.values().require(OUTSIDE);
        if (outside < bore + LEAST_RINGS) {
            problems.at(
                    entry.values().where(OUTSIDE),
                    Decimal.of(outside) + " mm leaves no room for two rings and their balls round a bore of "
                            + Decimal.of(bore) + " mm",
                    "the least that works is " + Decimal.of(bore + LEAST_RINGS) + " mm; see the bearing's drawing");
            return null;
        }
        return new Bearing(
                entry.name(),
                entry.values().require(BORE),
                entry.values().require(OUTSIDE),
                entry.values().require(WIDTH),
                entry);
    }
}
