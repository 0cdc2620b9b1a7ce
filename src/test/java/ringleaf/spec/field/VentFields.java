// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.List;

/** An invented kind of mechanism: a flap vent, with a field of every type. */
public final class VentFields {
    public static final Field<Double> OPENING = Field.length("full-opening")
            .help("height that must be clear")
            .atLeast(1, "a smaller gap is closed by its own burrs")
            .atMost(2000, "larger flaps sag")
            .required()
            .example("64", "2 1/2 in");
    public static final Field<Integer> FLAPS = Field.count("flaps")
            .help("number of flaps")
            .atLeast(3, "two flaps cannot close a round opening")
            .atMost(64, "more than 64 flaps are too many hinges")
            .required()
            .example("14");
    public static final Field<Double> SHEET =
            Field.length("flap-thickness").help("thickness of one flap").atLeast(0, "a flap has two faces");
    public static final Field<Bound> WIDTH = Field.length("outer-width")
            .help("outer width")
            .byDefaultWords("solved")
            .bound();
    public static final Field<Bound> SPAN =
            Field.angle("flap-span").help("angle of a flap").bound().byDefaultWords("solved");
    public static final Field<Double> LAP = Field.length("lap")
            .help("least overlap of neighbours")
            .atLeast(0, "less than nothing is a leak")
            .byDefault("0.6mm");
    public static final Field<String> PIN = Field.choice("pin-style")
            .help("how the pins are held")
            .option("two-holes", "both are wire")
            .option("posts", "the base carries posts")
            .byDefault("two-holes");
    public static final Field<List<Double>> STOPS =
            Field.length("stops").help("openings that are marked").list(20).byDefaultWords("none");
    public static final Field<Boolean> MARKS =
            Field.flag("marks").help("whether marks are engraved").byDefault("true");
    public static final Field<String> NOTE =
            Field.text("note", 40).help("engraved text").byDefaultWords("none");

    public static final Field<String> BY = Field.choice("by")
            .help("what turns it")
            .option("pinion", "a pinion on a servo")
            .option("hand", "an arm")
            .byDefault("pinion");
    public static final Field<Double> AT =
            Field.angle("at").help("direction of the pinion from the axis").byDefault("270");
    public static final Field<Double> MODULE = Field.millimetres("module")
            .help("module of the teeth")
            .atLeast(0.2, "finer teeth cannot be cut")
            .atMost(10, "coarser teeth leave no rim")
            .byDefault("0.8");
    public static final Field<Double> TORQUE = Field.torque("torque")
            .help("stall torque of the motor")
            .atLeast(1, "less does not turn anything")
            .atMost(100_000, "more breaks the teeth")
            .example("1.8kgcm");
    public static final Field<Double> SPARE = Field.percent("spare")
            .help("torque kept in hand")
            .atLeast(0, "less than none is a stall")
            .atMost(90, "more leaves nothing")
            .byDefault("50%");
    public static final Field<String> SCREW =
            Field.name("screw", "screws.yaml").help("screw that holds it").byDefault("M2");
    public static final FieldSet DRIVE_FIELDS = FieldSet.of(BY, AT, MODULE, TORQUE, SPARE, SCREW);
    public static final Field<Values> DRIVE =
            Field.group("drive", DRIVE_FIELDS).help("how it is turned").byDefaultWords("by hand");

    public static final FieldSet FIELDS =
            FieldSet.of(OPENING, FLAPS, SHEET, WIDTH, SPAN, LAP, PIN, STOPS, MARKS, NOTE, DRIVE);

    private VentFields() {}
}
