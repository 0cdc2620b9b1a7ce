// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.plate;

import java.util.List;
import ringleaf.mechanism.Request;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Named;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Board;
import ringleaf.spec.shared.Contact;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;

/** Every field of a plate with seats, declared once: reading, ranges, schema, help and tables follow. */
final class PlateFields {
    private PlateFields() {}

    private static Field<Double> place(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(-1000, "no plate here is larger")
                .atMost(1000, "no plate here is larger")
                .byDefault("0");
    }

    private static Field<Double> diameter(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(0.3, "nothing thinner goes through a plate")
                .atMost(500, "no plate here holds a larger one");
    }

    static final Field<Double> X = place("x", "to the right");
    static final Field<Double> Y = place("y", "up");
    static final FieldSet AT_SET = FieldSet.of(X, Y);
    static final Field<Values> AT = Field.group("at", AT_SET).help("place of its middle; a servo's is its output");
    static final Field<Double> RADIUS = Field.length("radius")
            .help("from the plate's origin")
            .required()
            .atLeast(0, "the origin itself")
            .atMost(1000, "no plate here is larger");
    static final Field<Double> ANGLE =
            Field.angle("angle").help("from x, counter-clockwise").byDefault("0");
    static final FieldSet POLAR_SET = FieldSet.of(RADIUS, ANGLE);
    static final Field<Values> POLAR =
            Field.group("polar", POLAR_SET).help("place on a circle, in place of at; repeated, they spread round it");
    static final Field<Double> TURN =
            Field.angle("turn").help("turn about its place").byDefault("0");
    static final Field<Integer> REPEAT = Field.count("repeat")
            .help("how many of it: round the circle where it has a polar place, else by step")
            .atLeast(1, "none is none")
            .atMost(48, "more than a plate holds")
            .byDefault("1");
    static final Field<Values> STEP =
            Field.group("step", AT_SET).help("from one to the next where they stand in a row");
    static final Field<Boolean> MIRROR = Field.flag("mirror")
            .help("whether another stands mirrored about the plate's upright middle line")
            .byDefault("false");
    static final Field<String> SIDE = Field.choice("side")
            .help("where it stands")
            .option("back", "behind its plate")
            .option("front", "before its plate")
            .byDefault("back");
    static final Field<String> PLATE = Field.choice("plate")
            .help("which of two plates has it")
            .option("front", "the front one")
            .option("rear", "the rear one")
            .option("both", "both, one behind the other")
            .byDefaultWords("front; spacers, shafts and axles both where there are two");
    static final Field<Double> HEIGHT = Field.length("height")
            .help("of the standoffs under a board, or of a standoff")
            .atLeast(1, "parts below the board need more")
            .atMost(200, "longer than any that is sold")
            .byDefaultWords("the shortest that is sold and clears what stands out of the board");

    static final Field<Named> SERVO =
            Field.named("servo", "servos", Servo.FIELDS).help("seat of a servo by its ears");
    static final Field<String> BEARING = Field.name("bearing", "bearings").help("seat of a ball bearing");
    static final Field<String> BEARING_FIT = FitName.field(
                    "fit",
                    "how the bearing, shaft or axle sits",
                    FitName.PRESS,
                    FitName.GLUE,
                    FitName.SLIDING,
                    FitName.RUNNING)
            .byDefaultWords("press for a bearing, sliding for a shaft, running for an axle");
    static final Field<Double> AXLE = diameter("axle", "bore in which an axle of this diameter turns");
    static final Field<Double> SHAFT = diameter("shaft", "bore for a shaft of this diameter that stands still");
    static final Field<Named> BOARD =
            Field.named("board", "boards", Board.FIELDS).help("holes and standoffs of a board or a round panel");
    static final Field<Named> CONTACT =
            Field.named("contact", "contacts", Contact.FIELDS).help("seat of a rotating contact by its flange");
    static final Field<String> STANDOFF =
            Field.name("standoff", "screws").help("standoff that is screwed on, by its screw");
    static final Field<String> SPACER =
            Field.name("spacer", "screws").help("spacer that holds both plates apart, by its screw");
    static final Field<String> SCREW = Field.name("screw", "screws").help("hole that a screw passes");
    static final Field<Double> WIRES = diameter("wires", "hole for wires of this diameter");
    private static final Field<Double> WIDE =
            diameter("width", "along x before it is turned").required();
    private static final Field<Double> HIGH =
            diameter("height", "along y before it is turned").required();
    private static final Field<Double> CORNER = Field.length("corner")
            .help("radius of its corners")
            .atLeast(0, "sharp corners")
            .atMost(200, "no window here is larger")
            .byDefault("1mm");
    static final Field<Double> WINDOW_WIDTH = WIDE;
    static final Field<Double> WINDOW_HEIGHT = HIGH;
    static final Field<Double> WINDOW_CORNER = CORNER;
    static final Field<Values> WINDOW =
            Field.group("window", FieldSet.of(WIDE, HIGH, CORNER)).help("rectangular opening");
    static final Field<Double> SLOT_LENGTH = diameter("length", "along x before it is turned, over its round ends")
            .required();
    static final Field<Values> SLOT =
            Field.group("slot", FieldSet.of(SLOT_LENGTH, WIDE)).help("straight slot with round ends");

    static final FieldSet SEAT_SET = FieldSet.of(
            SERVO,
            BEARING,
            AXLE,
            SHAFT,
            BOARD,
            CONTACT,
            STANDOFF,
            SPACER,
            SCREW,
            WIRES,
            WINDOW,
            SLOT,
            AT,
            POLAR,
            TURN,
            REPEAT,
            STEP,
            MIRROR,
            SIDE,
            PLATE,
            HEIGHT,
            BEARING_FIT);
    static final Field<List<Values>> SEATS = Field.group("seats", SEAT_SET)
            .help(
                    "what the plate holds: each one of servo, bearing, axle, shaft, board, contact, standoff, spacer, screw,"
                            + " wires, window or slot, and its place")
            .list(60)
            .required();

    static final Field<String> OUTLINE = Field.choice("outline")
            .help("edge of the plate")
            .option("hull", "the least material round all seats, rounded")
            .option("round", "a disc about the origin")
            .option("box", "an upright rectangle")
            .byDefault("hull");
    static final Field<Double> MARGIN = Field.length("margin")
            .help("material round the seats beyond what the process asks for")
            .atLeast(0, "what the process asks for is kept anyway")
            .atMost(200, "a larger plate is another one")
            .byDefault("1mm");
    static final Field<Integer> PLATES = Field.count("plates")
            .help("one plate, or two that spacers hold apart")
            .atLeast(1, "none holds nothing")
            .atMost(2, "more are several mechanisms")
            .byDefault("1");
    static final Field<Double> GAP = Field.length("gap")
            .help("between both plates")
            .atLeast(1, "nothing stands between them")
            .atMost(300, "longer than any spacer")
            .byDefaultWords("what stands between them, with spacers that are sold");
    static final Field<Double> PLATE_THICKNESS = Field.length("plate-thickness")
            .help("thickness of the plates")
            .atLeast(0.3, "thinner sheet holds nothing")
            .atMost(30, "thicker than any plate here")
            .byDefaultWords("that of the stock, 3 mm where it is printed");
    static final Field<Double> BESIDE = Field.length("beside")
            .help("room between things that stand beside each other")
            .atLeast(0, "they touch")
            .atMost(50, "more only takes room")
            .byDefaultWords("0.5 mm, or what the processes ask for");
    static final FieldSet CLEARANCES_SET = FieldSet.of(BESIDE);
    static final Field<Values> CLEARANCES =
            Field.group("clearances", CLEARANCES_SET).help("room by name");
    static final Field<Bound> WIDTH = Field.length("overall-width")
            .bound()
            .help("of the plate")
            .atLeast(2, "nothing here is narrower")
            .atMost(2000, "no plate here is wider")
            .example("{at-most: 100}")
            .byDefaultWords("what the seats need");
    static final Field<Bound> OVERALL_HEIGHT = Field.length("overall-height")
            .bound()
            .help("of the plate")
            .atLeast(2, "nothing here is lower")
            .atMost(2000, "no plate here is higher")
            .example("{at-most: 80}")
            .byDefaultWords("what the seats need");
    static final Field<Values> FITS = Field.group(Request.FITS, FieldSet.of(Screw.THREAD_CLEARANCE))
            .help("fits by name; those of bearings and shafts stand beside them");

    static final FieldSet ALL =
            FieldSet.of(SEATS, OUTLINE, MARGIN, PLATES, GAP, PLATE_THICKNESS, CLEARANCES, WIDTH, OVERALL_HEIGHT, FITS);
}
