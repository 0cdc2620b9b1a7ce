// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Problems;

/**
 * A rotating contact that leads wires through an axle: a round body with a flange, mm.
 *
 * @param name of its class
 * @param body diameter of the body
 * @param length of the body behind the flange
 * @param flange diameter of the flange
 * @param flangeThickness of the flange
 * @param circle on which the flange's holes stand
 * @param holes how many
 * @param hole diameter of the holes
 * @param entry values with their sources
 */
public record Contact(
        String name,
        double body,
        double length,
        double flange,
        double flangeThickness,
        double circle,
        int holes,
        double hole,
        Entry entry) {
    static final Field<Double> BODY = size("body", "diameter of the body");
    static final Field<Double> LENGTH = size("length", "of the body behind the flange");
    static final Field<Double> FLANGE = size("flange", "diameter of the flange");
    static final Field<Double> FLANGE_THICKNESS = size("flange-thickness", "of the flange");
    static final Field<Double> CIRCLE = size("circle", "on which the flange's holes stand");
    static final Field<Integer> HOLES = Field.count("holes")
            .help("holes in the flange")
            .atLeast(2, "one screw lets it turn")
            .atMost(12, "no flange has more")
            .required();
    static final Field<Double> HOLE = size("hole-diameter", "of the flange's holes");

    /** The fields of an entry. */
    public static final FieldSet FIELDS = FieldSet.of(BODY, LENGTH, FLANGE, FLANGE_THICKNESS, CIRCLE, HOLES, HOLE);

    private static Field<Double> size(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(0.5, "none is smaller")
                .atMost(200, "no model holds a larger one")
                .required();
    }

    /** What to buy, for people. */
    public String words() {
        return "rotating contact " + name + ", body " + Decimal.of(body) + " mm, flange " + Decimal.of(flange) + " mm";
    }

    /** The contact; null, after it was reported, when the flange's holes do not lie in the flange. */
    static Contact of(Entry entry, Problems problems) {
        Values values = entry.values();
        Contact contact = new Contact(
                entry.name(),
                values.require(BODY),
                values.require(LENGTH),
                values.require(FLANGE),
                values.require(FLANGE_THICKNESS),
                values.require(CIRCLE),
                values.require(HOLES),
                values.require(HOLE),
                entry);
        if (contact.circle - contact.hole <= contact.body || contact.circle + contact.hole >= contact.flange) {
            problems.at(
                    values.where(CIRCLE),
                    "holes of " + Decimal.of(contact.hole) + " mm on a circle of " + Decimal.of(contact.circle)
                            + " mm do not lie between body and rim of the flange",
                    "see the contact's drawing");
            return null;
        }
        return contact;
    }
}
