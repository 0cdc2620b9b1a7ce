// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.List;
import ringleaf.mechanism.body.BodyFields;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Named;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Servo;
import ringleaf.tooth.ToothForm;

/** Every field of the gear kinds, declared once: reading, ranges, schema, help and the page of defaults follow. */
final class GearFields {
    private GearFields() {}

    static final Field<Integer> TEETH = Field.count("teeth")
            .help("number of teeth of the full circle")
            .atLeast(ToothForm.FEWEST_TEETH, "fewer leave no tooth between two undercut roots")
            .atMost(1000, "teeth that many are finer than any sheet or print")
            .example("24")
            .byDefaultWords("solved from ratio, module and centre distance");
    static final Field<Double> MODULE = Field.module("module")
            .help("size of the teeth: module, always in mm, or diametral pitch")
            .atLeast(0.2, "finer teeth are not cut from sheet")
            .atMost(20, "coarser teeth are no part of a model")
            .byDefaultWords("1 mm, or what fits the centre distance or the space")
            .example("0.8", "24dp");
    static final Field<Double> PRESSURE_ANGLE = Field.angle("pressure-angle")
            .help("pressure angle of the teeth")
            .atLeast(14.5, "smaller angles are undercut at once")
            .atMost(30, "larger angles leave pointed tips")
            .byDefaultWords("20");
    static final Field<Double> PROFILE_SHIFT = Field.number("profile-shift")
            .help("profile shift in modules, positive away from the axis")
            .atLeast(SingleReader.LEAST_SHIFT, "roots of teeth moved further in are cut away")
            .atMost(SingleReader.MOST_SHIFT, "teeth moved further out come to a point")
            .byDefaultWords("chosen for no undercut, tips of some width and equal sliding");
    static final Field<Double> TIP_RELIEF = Field.length("tip-relief")
            .help("how far the flank lies back at the tip")
            .atLeast(0, "a flank cannot stand proud of the involute")
            .atMost(1, "more is no relief but another tooth")
            .byDefault("0");
    static final Field<Double> TIP_RELIEF_DEPTH = Field.length("tip-relief-depth")
            .help("how far below the tip circle relief begins")
            .atLeast(0.02, "nothing would be left to relieve")
            .atMost(20, "deeper than any tooth here")
            .byDefaultWords("half a module");
    static final Field<Double> TIP_ROUNDING = Field.length("tip-rounding")
            .help("radius of the tips' edges")
            .atLeast(0, "an edge is sharp or round")
            .atMost(5, "larger than any tip here")
            .byDefault("0");
    static final Field<Double> RING_DIAMETER = Field.length("ring-diameter")
            .help("outer diameter of a ring with internal teeth")
            .atLeast(2, "no ring is smaller")
            .atMost(5000, "no stock is larger")
            .byDefaultWords("root circle and two modules, or the web, more");
    static final Field<Integer> SECTOR_TEETH = Field.count("teeth")
            .help("whole teeth that are cut")
            .atLeast(1, "a sector has a tooth")
            .atMost(999, "a full gear is no sector")
            .byDefaultWords("what the travel needs and one more at each end");
    static final Field<String> SECTOR_SHAPE = Field.choice("shape")
            .help("what carries the teeth")
            .option("disc", "a whole disc with teeth on a part of its rim")
            .option("segment", "a segment with the hub at its point; of a ring, a piece of it")
            .byDefault("disc");
    static final FieldSet SECTOR_SET = FieldSet.of(SECTOR_TEETH, SECTOR_SHAPE);
    static final Field<Values> SECTOR = Field.group("sector", SECTOR_SET).help("teeth on a part of the circle only");

    /** One gear, wherever it stands. */
    static final FieldSet WHEEL = FieldSet.of(
            TEETH,
            MODULE,
            PRESSURE_ANGLE,
            PROFILE_SHIFT,
            TIP_RELIEF,
            TIP_RELIEF_DEPTH,
            TIP_ROUNDING,
            RING_DIAMETER,
            SECTOR,
            BodyFields.BORE,
            BodyFields.HUB_SCREWS,
            BodyFields.LIGHTENING);

    static final Field<Boolean> INTERNAL = Field.flag("internal")
            .help("teeth on the inside of a ring; of a pair, the driven gear's")
            .byDefault("false");
    static final Field<Double> WIDTH = Field.length("width")
            .help("width of the teeth along the axis")
            .atLeast(0.2, "thinner teeth do not stay in line")
            .atMost(100, "wider than any stock or print here")
            .byDefaultWords("that of the stock, 5 mm where it is printed");
    static final Field<Double> BACKLASH = Field.length("backlash")
            .help("play of the teeth along the rolling circles")
            .atLeast(0, "teeth that overlap do not turn")
            .atMost(5, "more than a tooth is thick")
            .byDefaultWords("what the process may misplace edges by, and 0.03 modules");
    static final Field<Double> SINGLE_BACKLASH = Field.length("backlash")
            .help("play to allow for, half of it taken from this gear's teeth")
            .atLeast(0, "teeth that overlap do not turn")
            .atMost(5, "more than a tooth is thick")
            .byDefaultWords("what the process may misplace edges by, and 0.03 modules");
    static final Field<Boolean> MARKS = Field.flag("marks")
            .help("marks by which teeth and spaces are put together")
            .byDefault("true");

    /** A gear alone. */
    static final FieldSet SINGLE = WHEEL.and(INTERNAL, WIDTH, SINGLE_BACKLASH, MARKS, BodyFields.FITS);

    static final Field<Double> RATIO = Field.ratio("ratio")
            .help("turns of the driver to one of the last driven gear")
            .atLeast(0.002, "no train here steps up further")
            .atMost(10_000, "no train here steps down further")
            .byDefaultWords("that of the teeth")
            .example("5:3");
    static final Field<Double> RATIO_WITHIN = Field.percent("ratio-within")
            .help("how far the ratio may miss, so that teeth without a common factor can be taken")
            .atLeast(0, "nothing misses by less")
            .atMost(25, "that would be another ratio")
            .byDefaultWords("0: the ratio itself, or one near it where no teeth make it")
            .example("2%");
    static final Field<Bound> CENTRE_DISTANCE = Field.length("centre-distance")
            .bound()
            .help("distance of the two axes")
            .atLeast(0.5, "gears that small are not cut")
            .atMost(5000, "no stock is larger")
            .byDefaultWords("what the teeth come to")
            .example("40", "{at-most: 40}");
    static final Field<Bound> OVERALL_LENGTH = Field.length("overall-length")
            .bound()
            .help("greatest length over all gears, from tip to tip or to the rim of a ring; a bare value is the most")
            .atLeast(2, "gears that small are not cut")
            .atMost(5000, "no stock is larger")
            .byDefaultWords("no limit")
            .example("40", "{at-most: 40}");
    static final Field<Double> AT = Field.angle("at")
            .help("direction from the driver's axis to where it meshes, and so to a driven gear outside it")
            .byDefault("0");
    static final Field<Double> TRAVEL = Field.angle("travel")
            .help("turn of the driver that is looked at")
            .atLeast(0.5, "less shows nothing")
            .atMost(36_000, "a hundred turns show no more")
            .byDefaultWords("the servo's travel, or what a sector allows, or one pitch");
    static final Field<String> TIPS = Field.choice("tips")
            .help("height of the teeth")
            .option("shortened", "lowered where they would run into the mate's root")
            .option("full", "left at full height")
            .byDefault("shortened");

    static final Field<Named> SERVO = Field.named("servo", "servos", Servo.FIELDS)
            .help("servo that turns the driver")
            .byDefaultWords("none");
    static final Field<Double> TORQUE = Field.torque("torque")
            .help("torque at the driver")
            .atLeast(0.1, "less turns nothing")
            .atMost(1_000_000, "more breaks any part made here")
            .byDefaultWords("the servo's at stall");
    static final Field<Double> SPEED = Field.number("speed")
            .help("speed of the driver in turns a minute")
            .atLeast(0.001, "a driver that stands drives nothing")
            .atMost(100_000, "gears cut here do not stand that")
            .byDefaultWords("not told");
    static final FieldSet DRIVE_SET = FieldSet.of(SERVO, TORQUE, SPEED);
    static final Field<Values> DRIVE = Field.group("drive", DRIVE_SET).help("what turns the driver");

    static final Field<Values> DRIVER = Field.group("driver", WHEEL).help("the gear that drives");
    static final Field<Values> DRIVEN = Field.group("driven", WHEEL).help("the gear that is driven");

    /** Two gears that mesh. */
    static final FieldSet PAIR = FieldSet.of(
            RATIO,
            RATIO_WITHIN,
            CENTRE_DISTANCE,
            OVERALL_LENGTH,
            MODULE,
            PRESSURE_ANGLE,
            INTERNAL,
            BACKLASH,
            TIPS,
            WIDTH,
            AT,
            TRAVEL,
            MARKS,
            DRIVE,
            DRIVER,
            DRIVEN,
            BodyFields.FITS);

    static final Field<Double> STAGE_AT = Field.angle("at")
            .help("direction from the axis of the stage's driver to where it meshes")
            .byDefaultWords("straight on");
    /** Stages of one train. */
    static final int MOST_STAGES = 6;

    static final FieldSet STAGE =
            FieldSet.of(RATIO, CENTRE_DISTANCE, MODULE, PRESSURE_ANGLE, BACKLASH, STAGE_AT, DRIVER, DRIVEN);
    static final Field<List<Values>> STAGES = Field.group("stages", STAGE)
            .list(MOST_STAGES)
            .help("the stages in order; the driven gear of one shares its shaft with the next one's driver")
            .byDefaultWords("as few equal ones as the ratio needs");
    static final Field<Integer> STAGE_COUNT = Field.count("stage-count")
            .help("number of stages where none are written out")
            .atLeast(1, "none turns nothing")
            .atMost(MOST_STAGES, "more only lose what they gain")
            .byDefaultWords("the fewest with a ratio up to 5 each");
    static final Field<Double> GAP = Field.length("gap")
            .help("between the gears of neighbouring stages, along the axis")
            .atLeast(0, "gears that share a height collide")
            .atMost(50, "longer than any axle here")
            .byDefault("0.5");

    /** Stages on shared shafts. */
    static final FieldSet TRAIN = FieldSet.of(
            RATIO,
            RATIO_WITHIN,
            STAGE_COUNT,
            STAGES,
            OVERALL_LENGTH,
            MODULE,
            PRESSURE_ANGLE,
            BACKLASH,
            TIPS,
            WIDTH,
            GAP,
            AT,
            TRAVEL,
            MARKS,
            DRIVE,
            BodyFields.FITS);
}
