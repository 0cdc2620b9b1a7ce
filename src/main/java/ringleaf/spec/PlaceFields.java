// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;

/** Where a mechanism stands: keys that every kind takes beside its own. */
public final class PlaceFields {
    private static final double FAR = 5000;
    private static final String WHY = "5 m is as far as anything here reaches";

    /** What every mechanism may stand on. */
    public static final String GROUND = "ground";

    static final Field<String> ON = Field.text("on", 90)
            .help("what it stands on and moves with: ground, or a body of another mechanism")
            .example("turntable.driven")
            .byDefault(GROUND);
    static final Field<Double> AT_X = shift("x", "to the right");
    static final Field<Double> AT_Y = shift("y", "up");
    static final Field<Double> AT_Z = shift("z", "forward, along the axis of what lies in the carrier's plane");
    static final Field<Double> TURN_X = turn("x");
    static final Field<Double> TURN_Y = turn("y");
    static final Field<Double> TURN_Z = turn("z");
    static final Field<Values> AT = Field.group("at", FieldSet.of(AT_X, AT_Y, AT_Z))
            .help("where its origin stands in the carrier's frame")
            .byDefaultWords("in the carrier's origin");
    static final Field<Values> TURN = Field.group("turn", FieldSet.of(TURN_X, TURN_Y, TURN_Z))
            .help("turns about the carrier's axes, one after another in the order written")
            .byDefaultWords("not turned");
    static final FieldSet INNER = FieldSet.of(ON, AT, TURN);

    /** The key as a whole. */
    static final Field<Values> PLACE = Field.group("place", INNER)
            .help("where the mechanism stands, and on what")
            .byDefaultWords("on the ground, in the origin");

    /** What every mechanism takes beside its kind's own fields. */
    public static final FieldSet ALL = FieldSet.of(PLACE);

    private PlaceFields() {}

    private static Field<Double> shift(String axis, String where) {
        return Field.length(axis)
                .help("along the carrier's " + axis + ", " + where)
                .atLeast(-FAR, WHY)
                .atMost(FAR, WHY)
                .byDefault("0");
    }

    private static Field<Double> turn(String axis) {
        return Field.angle(axis)
                .help("about the carrier's " + axis + ", counter-clockwise as seen from where it points to")
                .byDefault("0");
    }
}
