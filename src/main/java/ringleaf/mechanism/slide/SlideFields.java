// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import ringleaf.mechanism.Request;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Named;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;

/** Every field of a slide, declared once: reading, ranges, schema, help and tables follow. */
final class SlideFields {
    private SlideFields() {}

    static final Field<Double> STROKE = Field.length("stroke")
            .help("way of the carriage from one end of its travel to the other")
            .required()
            .atLeast(1, "less is no travel")
            .atMost(300, "no horn here reaches further; a rack does")
            .example("25", "1in");
    static final Field<Double> MASS = Field.number("mass")
            .help("what rides on the carriage, in kg; its own parts are small beside it and not counted")
            .atLeast(0, "nothing rides on it")
            .atMost(50, "no servo here moves more")
            .byDefault("0.1");
    static final Field<Double> SLOPE = Field.angle("slope")
            .help("how steeply it slides upwards, from level to upright")
            .atLeast(0, "downhill is the same way back")
            .atMost(90, "upright is as steep as it gets")
            .byDefault("0");
    static final Field<Double> FORCE = Field.number("force")
            .help("push in N that the carriage has to give besides weight and friction")
            .atLeast(0, "none is none")
            .atMost(10_000, "more breaks any part made here")
            .byDefault("0");

    static final Field<String> BEARING = Field.name("bearing", "linear-bearings")
            .help("linear bearings, two on each rod; they say the rods' diameter")
            .byDefaultWords("the smallest with which every check holds");
    static final Field<Double> ROD_SPACING = Field.length("rod-spacing")
            .help("between the middles of both rods")
            .atLeast(5, "bearings and holes between them need more")
            .atMost(500, "no carriage here is wider")
            .byDefaultWords("what bearings, webs and the holes for what it carries need");
    static final Field<Double> BEARING_SPREAD = Field.length("bearing-spread")
            .help("over both bearings of a rod, outer end to outer end: the further, the less it jams")
            .atLeast(5, "two bearings need more")
            .atMost(500, "no carriage here is longer")
            .byDefaultWords("what both bearings need, or as far as it takes to run freely");

    static final Field<Named> SERVO = Field.named("servo", "servos", Servo.FIELDS)
            .help("servo whose horn pushes the carriage")
            .byDefaultWords("micro-180");
    static final Field<Double> SWING = Field.angle("swing")
            .help("turn of the horn from one end of the travel to the other")
            .atLeast(10, "such a horn would be very long")
            .atMost(150, "the link would pull across the horn")
            .byDefaultWords("80 deg, or what the servo and its torque allow");
    static final Field<Double> LINK = Field.length("link-length")
            .help("between both pins of the link")
            .atLeast(5, "both ends need more")
            .atMost(600, "longer than any slide here")
            .byDefaultWords(
                    "as short as horn and carriage let it, within 5 deg of straight, or up to 15 where room is short");
    static final FieldSet DRIVE_SET = FieldSet.of(SERVO, SWING, LINK);
    static final Field<Values> DRIVE = Field.group("drive", DRIVE_SET).help("what pushes the carriage");

    static final Field<Double> PIN = Field.length("pin-diameter")
            .help("diameter of both pins of the link")
            .atLeast(0.8, "thinner pins bend")
            .atMost(10, "thicker than any link here")
            .byDefault("2mm");
    static final Field<Double> PLATE_THICKNESS = Field.length("plate-thickness")
            .help("thickness of plates, bridge, horn arm and link")
            .atLeast(0.8, "thinner plates hold no rod straight")
            .atMost(20, "thicker than any plate here")
            .byDefaultWords("that of the stock, 4 mm where it is printed");

    static final Field<Double> STOP = Field.length("stop")
            .help("room between carriage and end plates at either end of the travel")
            .atLeast(0, "it ends where the travel does")
            .atMost(50, "longer than any reserve")
            .byDefaultWords("1 mm, or what the processes ask for");
    static final Field<Double> BESIDE = Field.length("beside")
            .help("room between what moves and what stands beside it")
            .atLeast(0, "they touch")
            .atMost(20, "more only takes room")
            .byDefaultWords("0.8 mm, or what the processes ask for");
    static final Field<Double> PIVOT = Field.length("pivot")
            .help("by how much the link's bores are wider than their pins")
            .atLeast(0, "a bore as wide as its pin binds")
            .atMost(3, "more lets the carriage rattle")
            .byDefaultWords("what the process allows for a running fit, or what all sizes ask for");
    static final FieldSet CLEARANCE_SET = FieldSet.of(STOP, BESIDE, PIVOT);
    static final Field<Values> CLEARANCES =
            Field.group("clearances", CLEARANCE_SET).help("room and play by name");

    static final Field<Bound> LENGTH = Field.length("overall-length")
            .bound()
            .help("along the travel, over both end plates")
            .atLeast(10, "two plates and a carriage need more")
            .atMost(2000, "no room here is longer")
            .example("{at-most: 90}")
            .byDefaultWords("what stroke, carriage and servo come to");
    static final Field<Bound> HEIGHT = Field.length("overall-height")
            .bound()
            .help("of the end plates, from below the servo to above the rods")
            .atLeast(10, "rods and a servo need more")
            .atMost(1000, "no room here is higher")
            .example("{at-most: 60}")
            .byDefaultWords("what rods, link and servo come to");
    static final Field<String> SCREW = Field.name("screw", "screws")
            .help("holes for what the carriage carries, and to screw the end plates down")
            .byDefault("M3");
    static final Field<String> ROD_FIT = FitName.field(
                    "rod", "how the rods sit in the end plates", FitName.PRESS, FitName.GLUE)
            .byDefault("glue");
    static final Field<String> BEARING_FIT = FitName.field(
                    "bearing", "how the bearings sit in the carriage", FitName.PRESS, FitName.GLUE)
            .byDefault("glue");
    static final Field<Values> FITS = Field.group(
                    Request.FITS, FieldSet.of(ROD_FIT, BEARING_FIT, Screw.THREAD_CLEARANCE))
            .help("fits by name");

    static final FieldSet ALL = FieldSet.of(
            STROKE,
            MASS,
            SLOPE,
            FORCE,
            BEARING,
            ROD_SPACING,
            BEARING_SPREAD,
            DRIVE,
            PIN,
            PLATE_THICKNESS,
            CLEARANCES,
            LENGTH,
            HEIGHT,
            SCREW,
            FITS);
}
