// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.List;
import ringleaf.mechanism.Request;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Named;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;

/** Every field of a belt drive, declared once. */
final class DriveFields {
    private DriveFields() {}

    static final Field<Double> RATIO = Field.ratio("ratio")
            .help("turns of the driver for a turn of the driven pulley")
            .atLeast(0.05, "no pair of pulleys spreads further")
            .atMost(20, "no pair of pulleys spreads further")
            .example("5:2", "2.5")
            .byDefaultWords("what the teeth give");
    static final Field<Values> DRIVER =
            Field.group("driver", PulleyFields.OF_DRIVE).help("the pulley that drives, at the origin");
    static final Field<Values> DRIVEN =
            Field.group("driven", PulleyFields.OF_DRIVE).help("the pulley that is driven");
    static final Field<Bound> CENTRE_DISTANCE = Field.length("centre-distance")
            .bound()
            .help("from driver to driven; the wanted one where it can move, the very one where it is fixed")
            .atLeast(3, "no two pulleys are nearer")
            .atMost(4000, "longer belts swing")
            .example("60", "{at-least: 55, at-most: 70}")
            .byDefaultWords("one and a half times the larger pulley, where the centres can move");
    static final Field<Double> AT = Field.angle("at")
            .help("direction from the driver in which the driven pulley lies")
            .byDefault("90");
    static final Field<String> CENTRES = Field.choice("centres")
            .help("whether the belt is tightened by the centre distance")
            .option("movable", "the driver is shifted in slots")
            .option("fixed", "both stand fast and an idler takes the slack")
            .byDefault("movable");
    static final Field<Integer> BELT_TEETH = Field.count("belt-teeth")
            .help("length of the belt in teeth")
            .atLeast(8, "shorter belts do not go round two pulleys")
            .atMost(1000, "longer belts are cut from the roll")
            .byDefaultWords("the stocked length that comes nearest to the centre distance");

    static final Field<String> SIDE = Field.choice("side")
            .help("side of the belt on which it runs")
            .option("inside", "within the loop, on the teeth")
            .option("outside", "on the belt's back")
            .byDefault("outside");
    static final Field<Integer> IDLER_TEETH = Field.count("teeth")
            .help("teeth, for one within the loop")
            .atLeast(6, "no belt bends round fewer")
            .atMost(400, "larger than any pulley here")
            .byDefaultWords("a smooth roller; within the loop the fewest that take belt and axle");
    static final Field<Double> IDLER_DIAMETER = Field.length("diameter")
            .help("diameter of a smooth roller")
            .atLeast(2, "no roller is smaller")
            .atMost(1000, "larger than any roller here")
            .byDefaultWords("the pitch diameter of the belt's least teeth");
    static final Field<Double> ALONG = Field.number("along")
            .help("where it meets the span from driver to driven, as a share of the span")
            .atLeast(0.1, "it would meet the driver")
            .atMost(0.9, "it would meet the driven pulley")
            .byDefault("0.5");
    static final Field<Double> IDLER_AXLE = Field.length("axle")
            .help("diameter of its axle")
            .atLeast(0.5, "no axle is thinner")
            .atMost(50, "thicker than any axle here")
            .byDefault("3");
    static final FieldSet IDLER_SET = FieldSet.of(SIDE, IDLER_TEETH, IDLER_DIAMETER, ALONG, IDLER_AXLE);
    static final Field<Values> IDLER =
            Field.group("idler", IDLER_SET).help("roller or pulley that takes the slack where the centres are fixed");

    private static Field<Double> coordinate(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(-4000, "further off than any belt")
                .atMost(4000, "further off than any belt")
                .required();
    }

    static final Field<Double> X = coordinate("x", "place to the right of the driver");
    static final Field<Double> Y = coordinate("y", "place above the driver");
    static final Field<String> FURTHER_SIDE = Field.choice("side")
            .help("side of the belt on which it runs")
            .option("inside", "within the loop, on the teeth")
            .option("outside", "on the belt's back")
            .byDefault("inside");
    static final FieldSet FURTHER_SET = FieldSet.of(X, Y, FURTHER_SIDE, IDLER_TEETH, IDLER_DIAMETER, IDLER_AXLE);
    static final Field<List<Values>> FURTHER = Field.group("further", FURTHER_SET)
            .help("more pulleys and rollers, in the order in which the belt meets them after the driven pulley")
            .list(12)
            .byDefaultWords("none");

    static final Field<Double> OBSTACLE_DIAMETER = Field.length("diameter")
            .help("diameter of what stands there")
            .atLeast(0.1, "nothing to be hit")
            .atMost(4000, "larger than any drive")
            .required();
    static final FieldSet OBSTACLE_SET = FieldSet.of(X, Y, OBSTACLE_DIAMETER);
    static final Field<List<Values>> OBSTACLES = Field.group("obstacles", OBSTACLE_SET)
            .help("round things that belt and pulleys must keep clear of")
            .list(40)
            .byDefaultWords("none");

    static final Field<Double> TRAVEL = Field.angle("travel")
            .help("turn of the driven pulley from start to end, counter-clockwise positive")
            .byDefaultWords("what the servo's travel gives, 90 degrees without one");
    static final Field<Named> SERVO = Field.named("servo", "servos", Servo.FIELDS)
            .help("servo that turns the driver")
            .example("micro-180")
            .byDefaultWords("none; the driver sits on a shaft");
    static final Field<Double> LOAD = Field.torque("load")
            .help("torque that the driven pulley has to give")
            .atLeast(0.01, "nothing to turn")
            .atMost(1_000_000, "more breaks any part made here")
            .example("0.5kgcm")
            .byDefaultWords("not known, and not judged");
    static final Field<Double> SAFETY = Field.number("torque-reserve")
            .help("servo's stall torque over what the load asks of it, at least")
            .atLeast(1, "a servo that stalls moves nothing")
            .atMost(20, "a larger servo would be wasted")
            .byDefault("2");

    static final Field<String> PLATES = Field.choice("plates")
            .help("plates that hold the axles")
            .option("none", "only pulleys and belt")
            .option("one", "a base behind the pulleys")
            .option("two", "a base and a front plate on standoffs")
            .byDefault("two");
    static final Field<Double> PLATE_THICKNESS = Field.length("plate-thickness")
            .help("thickness of the plates")
            .atLeast(0.5, "thinner plates bend under the belt's pull")
            .atMost(30, "thicker than any stock in the catalogue")
            .byDefaultWords("that of the stock, 3 mm where they are printed");
    static final Field<String> SCREW =
            Field.name("screw", "screws").help("screws that hold the plates").byDefault("M3");

    static final Field<String> AXLE_BEARING = Field.name("axle-bearing", "bearings")
            .help("ball bearing in each plate in which the driven pulley's axle turns")
            .example("625")
            .byDefaultWords("none; it turns in the plates themselves");
    static final Field<String> AXLE_FIT = FitName.field(
                    "axle", "axles in the plates", FitName.RUNNING, FitName.SLIDING, FitName.PRESS, FitName.GLUE)
            .byDefault("running");
    static final Field<String> SEAT_FIT = FitName.field(
                    "bearing-seat", "bearings in the plates", FitName.PRESS, FitName.GLUE, FitName.SLIDING)
            .byDefault("press");
    static final FieldSet FIT_SET = FieldSet.of(AXLE_FIT, SEAT_FIT, Screw.THREAD_CLEARANCE);
    static final Field<Values> FITS = Field.group(Request.FITS, FIT_SET)
            .help("fits by name; each takes what the process allows for it; those of bores stand beside their axles");

    static final Field<Double> PULLEY_ROOM =
            clearance("pulleys", "between pulleys, flanges included").byDefault("2");
    static final Field<Double> BELT_ROOM =
            clearance("belt", "of the belt to what it does not run on").byDefault("1");
    static final Field<Double> AXIAL_ROOM =
            clearance("axial", "of the pulleys to the plates").byDefaultWords("1 mm, or what the processes ask for");
    static final FieldSet CLEARANCE_SET = FieldSet.of(PULLEY_ROOM, BELT_ROOM, AXIAL_ROOM);
    static final Field<Values> CLEARANCES =
            Field.group("clearances", CLEARANCE_SET).help("room left on purpose, each by name");

    private static Field<Double> clearance(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(0, "parts that overlap cannot move")
                .atMost(50, "more room than the parts themselves");
    }

    static final FieldSet ALL = PulleyFields.BELT_SET.and(
            RATIO,
            DRIVER,
            DRIVEN,
            CENTRE_DISTANCE,
            AT,
            CENTRES,
            BELT_TEETH,
            IDLER,
            FURTHER,
            OBSTACLES,
            TRAVEL,
            SERVO,
            LOAD,
            SAFETY,
            PLATES,
            PLATE_THICKNESS,
            SCREW,
            AXLE_BEARING,
            FITS,
            CLEARANCES);
}
