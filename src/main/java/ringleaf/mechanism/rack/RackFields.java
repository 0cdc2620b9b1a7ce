// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import ringleaf.mechanism.Request;
import ringleaf.mechanism.body.BodyFields;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Named;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;
import ringleaf.tooth.ToothForm;

/** Every field of a rack and its pinion, declared once: reading, ranges, schema, help and tables follow. */
final class RackFields {
    private RackFields() {}

    static final Field<Double> STROKE = Field.length("stroke")
            .help("way of the rack from one end of its travel to the other")
            .atLeast(0.5, "less is no travel")
            .atMost(2000, "no sheet here is longer")
            .example("40", "1 1/2in")
            .byDefaultWords("what rack-length leaves, or what the servo's travel comes to");
    static final Field<Double> LENGTH = Field.length("rack-length")
            .help("overall length of the bar with the teeth, without its eye")
            .atLeast(5, "teeth and guide pins need more")
            .atMost(3000, "no sheet here is longer")
            .byDefaultWords("what stroke, mesh and guide pins need");
    static final Field<Double> MODULE = Field.module("module")
            .help("size of the teeth: module, always in mm, or diametral pitch")
            .atLeast(0.3, "finer teeth are not cut from sheet")
            .atMost(10, "coarser teeth are no part of a model")
            .example("0.8", "24dp")
            .byDefaultWords("the finest usual one with which every check holds, 1 mm first");
    static final Field<Double> PRESSURE_ANGLE = Field.angle("pressure-angle")
            .help("pressure angle of the teeth")
            .atLeast(14.5, "smaller angles are undercut at once")
            .atMost(30, "larger angles leave pointed tips")
            .byDefault("20");
    static final Field<Double> BACKLASH = Field.length("backlash")
            .help("play of the teeth along the rack")
            .atLeast(0, "teeth that overlap do not move")
            .atMost(5, "more than a tooth is thick")
            .byDefaultWords("what the guide's play takes up and what the processes ask for");
    static final Field<Double> WIDTH = Field.length("width")
            .help("width of the teeth along the pinion's axis, and so the thickness of the rack")
            .atLeast(0.4, "thinner teeth do not stay in line")
            .atMost(60, "thicker than any stock or print here")
            .byDefaultWords("that of the stock, 4 mm where it is printed");
    static final Field<Integer> SPARE_TEETH = Field.count("spare-teeth")
            .help("teeth of the rack beyond the mesh at either end of its travel")
            .atLeast(0, "none is none")
            .atMost(50, "more only lengthen the rack")
            .byDefault("1");
    static final Field<Boolean> MARKS = Field.flag("marks")
            .help("marks by which tooth and space are put together")
            .byDefault("true");

    static final Field<Integer> TEETH = Field.count("teeth")
            .help("number of teeth of the pinion")
            .atLeast(ToothForm.FEWEST_TEETH, "fewer leave no tooth between two undercut roots")
            .atMost(400, "a pinion that large is a wheel")
            .byDefaultWords("the fewest that reach the stroke and hold the bore");
    static final Field<Double> PROFILE_SHIFT = Field.number("profile-shift")
            .help("profile shift in modules, positive away from the axis")
            .atLeast(-1, "roots of teeth moved further in are cut away")
            .atMost(1.5, "teeth moved further out come to a point")
            .byDefaultWords("the least without undercut");
    static final FieldSet PINION_SET =
            FieldSet.of(TEETH, PROFILE_SHIFT, BodyFields.BORE, BodyFields.HUB_SCREWS, BodyFields.LIGHTENING);
    static final Field<Values> PINION = Field.group("pinion", PINION_SET).help("the gear that moves the rack");

    static final Field<Named> SERVO = Field.named("servo", "servos", Servo.FIELDS)
            .help("servo that turns the pinion")
            .byDefaultWords("none");
    static final Field<Double> TORQUE = Field.torque("torque")
            .help("torque at the pinion")
            .atLeast(0.1, "less turns nothing")
            .atMost(1_000_000, "more breaks any part made here")
            .byDefaultWords("half the servo's at stall");
    static final FieldSet DRIVE_SET = FieldSet.of(SERVO, TORQUE);
    static final Field<Values> DRIVE = Field.group("drive", DRIVE_SET)
            .help("what turns the pinion; without it the pinion sits on an axle through both plates");
    static final Field<Double> FORCE = Field.number("force")
            .help("push or pull in N that the rack has to give")
            .atLeast(0.01, "less moves nothing")
            .atMost(100_000, "more breaks any part made here")
            .byDefaultWords("not asked");

    static final Field<Double> PIN_DIAMETER = Field.length("pin-diameter")
            .help("diameter of the two guide pins")
            .atLeast(0.8, "thinner pins bend")
            .atMost(20, "thicker than any rack here")
            .byDefaultWords("a sold dowel with which every check holds, 3 mm first");
    static final FieldSet GUIDE_SET = FieldSet.of(PIN_DIAMETER);
    static final Field<Values> GUIDE =
            Field.group("guide", GUIDE_SET).help("two pins in the rack that slide in slots of both plates");
    static final Field<Double> EYE = Field.length("eye")
            .help("diameter of a hole at the rack's end, for a rod or a wire; it stays outside the plates")
            .atLeast(0.3, "no wire is thinner")
            .atMost(50, "larger than any rod here")
            .byDefaultWords("none");

    static final Field<Double> STOP = Field.length("stop")
            .help("way of a pin beyond either end of the travel to the end of its slot")
            .atLeast(0, "the slot ends where the travel does")
            .atMost(50, "longer than any reserve")
            .byDefaultWords("0.5 mm, or what the processes ask for");
    static final Field<Double> AXIAL = Field.length("axial")
            .help("play of the rack between both plates")
            .atLeast(0, "the plates touch the rack")
            .atMost(5, "more lets it tip")
            .byDefaultWords("0.15 mm, or what the processes ask for");
    static final Field<Double> SLOT = Field.length("slot")
            .help("by how much a slot is wider than its pin")
            .atLeast(0, "a slot as wide as its pin jams")
            .atMost(5, "more lets the rack sway")
            .byDefaultWords("what the process of the plates allows for a slot, or what all sizes ask for");
    static final FieldSet CLEARANCE_SET = FieldSet.of(STOP, AXIAL, SLOT);
    static final Field<Values> CLEARANCES =
            Field.group("clearances", CLEARANCE_SET).help("room and play by name");

    static final Field<Double> PLATE_THICKNESS = Field.length("plate-thickness")
            .help("thickness of both plates")
            .atLeast(0.5, "thinner plates hold no pin straight")
            .atMost(50, "thicker than any plate here")
            .byDefaultWords("that of the stock, 3 mm where it is printed");
    static final Field<Bound> DEPTH = Field.length("depth")
            .bound()
            .help("front to back of the plates; screw heads and servo apart")
            .atLeast(1, "two plates and a rack need more")
            .atMost(500, "deeper than any device here")
            .example("{at-most: 12}")
            .byDefaultWords("what plates and rack come to");
    static final Field<Bound> OVERALL_LENGTH = Field.length("overall-length")
            .bound()
            .help("room along the travel: plates and whatever of the rack stands out of them in any state")
            .atLeast(5, "nothing here is shorter")
            .atMost(5000, "no room here is longer")
            .example("{at-most: 120}")
            .byDefaultWords("what the stroke comes to");
    static final Field<String> SCREW =
            Field.name("screw", "screws").help("screws through both plates").byDefault("M3");
    static final Field<String> PIN_FIT = FitName.field(
                    "guide-pin", "how the guide pins sit in the rack", FitName.PRESS, FitName.GLUE)
            .byDefault("press");
    static final Field<Values> FITS = Field.group(Request.FITS, FieldSet.of(PIN_FIT, Screw.THREAD_CLEARANCE))
            .help("fits by name; that of the pinion's bore stands beside its axle");

    static final FieldSet ALL = FieldSet.of(
            STROKE,
            LENGTH,
            MODULE,
            PRESSURE_ANGLE,
            BACKLASH,
            WIDTH,
            SPARE_TEETH,
            MARKS,
            PINION,
            DRIVE,
            FORCE,
            GUIDE,
            EYE,
            CLEARANCES,
            PLATE_THICKNESS,
            DEPTH,
            OVERALL_LENGTH,
            SCREW,
            FITS);
}
