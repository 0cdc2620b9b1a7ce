// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

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

/** Every field of a leaf aperture, declared once: reading, ranges, schema, help and the page of defaults follow. */
public final class ApertureFields {
    private ApertureFields() {}

    static final Field<Double> FULL_OPENING = Field.length("full-opening")
            .help("diameter that must be clear when open")
            .atLeast(3, "pins and slots do not shrink with the opening")
            .atMost(2000, "blades of thin sheet sag beyond that")
            .example("64", "2.5in")
            .required();
    static final Field<Double> LEAST_OPENING = Field.length("least-opening")
            .help("diameter left when closed")
            .atLeast(0, "an opening cannot be less than shut")
            .atMost(2000, "it must stay below the full opening")
            .example("20", "3/4in")
            .required();
    static final Field<Integer> BLADES = Field.count("blades")
            .help("number of blades")
            .atLeast(3, "two blades cannot close a round opening")
            .atMost(64, "more blades than that lie too deep at their roots")
            .example("14")
            .required();
    static final Field<Double> BLADE_THICKNESS = Field.length("blade-thickness")
            .help("thickness of one blade")
            .atLeast(0.02, "thinner foil neither holds a pin nor keeps its shape")
            .atMost(3, "thicker blades cannot lie over one another")
            .example("0.15", "6thou")
            .required();

    static final Field<Bound> OUTER_DIAMETER = Field.length("outer-diameter")
            .bound()
            .help("diameter of the round housing, without the drive's lobe")
            .atLeast(5, "nothing that holds an aperture is smaller")
            .atMost(3000, "no stock is larger")
            .byDefaultWords("the smallest for which every check holds")
            .example("{at-most: 110}", "108");
    static final Field<Bound> DEPTH = Field.length("depth")
            .bound()
            .help("front to back of the plates; screw heads, pinion and servo apart")
            .atLeast(0.5, "plates, blades and ring lie on one another")
            .atMost(500, "nothing in an aperture is that deep")
            .byDefaultWords("what the stack comes to")
            .example("{at-most: 16}");
    static final Field<Double> LAP = Field.length("lap")
            .help("least overlap of the blades at every state")
            .atLeast(0, "without overlap light gets through")
            .atMost(4, "overlaps beyond 4 mm are not told apart")
            .byDefault("0.6");
    static final Field<String> DRIVE_PIN = Field.choice("drive-pin")
            .help("where the drive pin sits on the blade")
            .option("far-end", "at the blade's end away from its pivot; wide blades, little play")
            .option(
                    "lever",
                    "on a lever at the pivot, out of reach of the other blades; small travel, and play counts more")
            .byDefaultWords("whichever passes every check in the smaller housing");
    static final Field<String> PIN_STYLE = Field.choice("pin-style")
            .help("how the blade's pins are made")
            .option("one-glued", "the blade is printed with its pivot pin; the drive pin is set in")
            .option("two-holes", "both pins are wire, dowel or rivet set into holes")
            .option("base-posts", "the base carries posts, only the drive pin is set in")
            .byDefaultWords("one-glued for printed blades, two-holes for sheet");
    static final Field<Double> PIN_DIAMETER = Field.length("pin-diameter")
            .help("diameter of pivot and drive pins")
            .atLeast(0.3, "thinner wire bends in the slot")
            .atMost(10, "a pin that thick needs no leaf aperture")
            .byDefaultWords("1.5 mm, and 1 mm below a full opening of 40 mm");
    static final Field<String> SLOT = Field.choice("slot")
            .help("shape of the ring's slots")
            .option("radial", "straight; works with every layout")
            .option("linear-opening", "curved so that the opening follows the ring angle evenly, where that can be")
            .byDefault("radial");
    static final Field<String> HAND = Field.choice("hand")
            .help("sense of closing, seen from the ring")
            .option("left", "blades close counter-clockwise")
            .option("right", "the mirror image")
            .byDefault("left");

    static final Field<Double> BLADE_WIDTH = Field.length("blade-width")
            .help("width of the blade's band")
            .atLeast(0.5, "a narrower band holds no pin")
            .atMost(500, "wider than any opening needs")
            .byDefaultWords("solved");
    static final Field<Double> BLADE_SPAN = Field.angle("blade-span")
            .help("angle about the axis from pivot to far end")
            .atLeast(90, "a shorter blade does not bound the opening")
            .atMost(175, "the far end would meet the pivot opposite")
            .byDefaultWords("solved");
    static final Field<Double> LEVER = Field.length("lever")
            .help("length of the lever from pivot to drive pin; no other blade may pass over the pin")
            .atLeast(0.5, "the pins would run into one another")
            .atMost(200, "longer than any blade")
            .byDefaultWords("solved, long enough to stand clear of the other blades");
    static final Field<Double> LEVER_ANGLE = Field.angle("lever-angle")
            .help("angle of the lever to the outward radial in the open pose; inward its pin meets blades or opening")
            .atLeast(-180, "half a turn either way is every direction")
            .atMost(180, "half a turn either way is every direction")
            .byDefaultWords("outward, centred on the travel");

    static final Field<Double> PLATE_THICKNESS = Field.length("plate-thickness")
            .help("thickness of base and retainer")
            .atLeast(0.2, "thinner plates do not stay flat")
            .atMost(30, "thicker than any stock in the catalogue")
            .byDefaultWords("that of the stock, 2.4 mm where it is printed");
    static final Field<Double> RING_THICKNESS = Field.length("ring-thickness")
            .help("thickness of the drive ring")
            .atLeast(0.2, "thinner rings do not stay flat")
            .atMost(30, "thicker than any stock in the catalogue")
            .byDefaultWords("that of the stock; printed 2 mm, or more where the drive pins need it");
    static final Field<Double> LEDGE = Field.length("ledge")
            .help("width of the seat on which the ring rides")
            .atLeast(0.3, "a narrower seat lets the ring tip off")
            .atMost(20, "wider seats only cost diameter")
            .byDefault("1.2");
    static final Field<String> SCREW = Field.name("screw", "screws")
            .help("screws that hold the housing together")
            .byDefault("M2");

    static final Field<String> OUTLINE = Field.text("outline", 300)
            .help("drawing of closed outlines, DXF or SVG, its path from the spec")
            .example("bezel.dxf")
            .required();
    static final Field<String> OUTLINE_UNITS = Field.choice("units")
            .help("unit of the drawing, where it does not say so itself")
            .option("mm", "millimetres")
            .option("cm", "centimetres")
            .option("in", "inches")
            .option("thou", "thousandths of an inch")
            .byDefaultWords("what the drawing declares; it must be given where it declares none");
    static final Field<List<String>> OUTLINE_LAYERS = Field.text("layers", 100)
            .help("layers of a DXF, or ids of groups of an SVG, that are looked at")
            .list(50)
            .byDefaultWords("all of them");
    static final Field<Double> OUTLINE_X = place("x");
    static final Field<Double> OUTLINE_Y = place("y");
    static final Field<Double> OUTLINE_TURN =
            Field.angle("turn").help("turn of the drawing about the axis").byDefault("0");
    static final FieldSet OUTLINE_SET =
            FieldSet.of(OUTLINE, OUTLINE_UNITS, OUTLINE_LAYERS, OUTLINE_X, OUTLINE_Y, OUTLINE_TURN);
    static final Field<Values> HOUSING = Field.group("housing", OUTLINE_SET)
            .help(
                    "your own bezel in place of the round housing: outline, screw holes and other openings of the plates");
    static final Field<List<Values>> KEEP_OUT = Field.group("keep-out", OUTLINE_SET)
            .help("drawings of what nothing of the mechanism may enter, at any height and state")
            .list(10)
            .byDefaultWords("none");

    static final Field<Double> OPENING_ROOM =
            clearance("opening", "blades and plates from the clear opening", UsualRooms.OPENING);
    static final Field<Double> BLADE_ROOM = clearance("blade", "blades from the cavity's wall", UsualRooms.BLADE);
    static final Field<Double> SLOT_END =
            clearance("slot-end", "drive pin from either end of its slot", UsualRooms.SLOT_END);
    static final Field<Double> RING_RADIAL =
            clearance("ring-radial", "ring's rim from its wall", UsualRooms.RING_RADIAL);
    static final Field<Double> RING_AXIAL = clearance("ring-axial", "ring from the retainer", UsualRooms.RING_AXIAL);
    static final Field<Double> BLADE_PLAY =
            clearance("blade-play", "height beyond the blades' own layers", UsualRooms.BLADE_PLAY);
    static final Field<Double> PINION_ROOM = clearance("pinion", "pinion's tips from their pocket", UsualRooms.PINION);
    static final Field<Double> PINION_AXIAL =
            clearance("pinion-axial", "pinion from the retainer", UsualRooms.PINION_AXIAL);
    static final Field<Double> PIVOT_END =
            clearance("pivot-end", "pivot pins' ends from what lies beyond them", UsualRooms.PIN_END);
    static final Field<Double> DRIVE_END =
            clearance("drive-end", "drive pins' ends from the retainer", UsualRooms.PIN_END);
    static final Field<Double> STOP = clearance(
            "stop", "way of the ring's rim past either end of its travel before it is stopped", UsualRooms.STOP);
    static final Field<Double> BORE = clearance("bore", "added to the diameter of a pivot bore", 0);
    static final Field<Double> SLOT_ROOM = clearance("slot", "added to the width of a slot", 0);
    static final FieldSet CLEARANCE_SET = FieldSet.of(
            OPENING_ROOM,
            BLADE_ROOM,
            SLOT_END,
            RING_RADIAL,
            RING_AXIAL,
            BLADE_PLAY,
            PINION_ROOM,
            PINION_AXIAL,
            PIVOT_END,
            DRIVE_END,
            STOP,
            BORE,
            SLOT_ROOM);
    static final Field<Values> CLEARANCES =
            Field.group("clearances", CLEARANCE_SET).help("room left on purpose, each by name");

    static final Field<String> PIVOT_BORE = FitName.field(
                    "pivot-bore", "pivot pins in what they turn in", FitName.RUNNING, FitName.SLIDING)
            .byDefault("running");
    static final Field<String> SLOT_FIT = FitName.field(
                    "slot", "drive pins in the ring's slots", FitName.RUNNING, FitName.SLIDING)
            .byDefault("sliding");
    static final Field<String> PIN_HOLE = FitName.field(
                    "pin-hole", "pins in the holes they are set into", FitName.PRESS, FitName.GLUE)
            .byDefaultWords("holes drawn as wide as the pin; what comes of them is told beside their size");
    static final FieldSet FIT_SET = FieldSet.of(PIVOT_BORE, SLOT_FIT, PIN_HOLE, Screw.THREAD_CLEARANCE);
    static final Field<Values> FITS =
            Field.group(Request.FITS, FIT_SET).help("fits by name; each takes what the process allows for it");

    static final Field<String> BY = Field.choice("by")
            .help("what turns the ring")
            .option("pinion", "a pinion on a servo, meshing with teeth in the rim")
            .option("step-up", "a small pinion that a compound pair turns further than the servo turns")
            .option("hand", "an arm that reaches out of the housing")
            .byDefaultWords("pinion where there is a drive, hand where there is none");
    static final Field<Double> AT = Field.angle("at")
            .help("direction from the axis in which pinion or arm lies")
            .byDefault("270");
    static final Field<Double> MODULE = Field.millimetres("module")
            .help("module of the teeth, always in mm")
            .atLeast(0.2, "finer teeth are not cut from sheet")
            .atMost(10, "coarser teeth are no part of an aperture")
            .byDefaultWords(
                    "0.8 mm, and 0.5 mm below a full opening of 50 mm; coarser where room at the tips would take too much"
                            + " of such teeth");
    static final Field<Double> PRESSURE_ANGLE = Field.angle("pressure-angle")
            .help("pressure angle of the teeth")
            .atLeast(14.5, "smaller angles are undercut at once")
            .atMost(30, "larger angles leave pointed tips")
            .byDefault("20");
    static final Field<Integer> PINION_TEETH = Field.count("pinion-teeth")
            .help("teeth of the pinion")
            .atLeast(6, "fewer involute teeth leave nothing to stand on")
            .atMost(300, "larger than the ring it drives")
            .byDefaultWords("the least that the servo's travel allows; 24 with a step-up");
    static final Field<Integer> SPARE_TEETH = Field.count("spare-teeth")
            .help("tooth spaces beyond the travel, at each end of the sector")
            .atLeast(0, "there are no fewer than none")
            .atMost(40, "more than a sector can have")
            .byDefault("1");
    static final Field<Double> BACKLASH = Field.length("backlash")
            .help("play of the teeth along the pitch circle")
            .atLeast(0, "teeth that overlap do not turn")
            .atMost(5, "more than a tooth is thick")
            .byDefaultWords("what the ring's radial play can take up, and 0.05 mm; or more where the processes'"
                    + " repeatability asks for it");
    static final Field<Double> TIP_CLEARANCE = Field.length("tip-clearance")
            .help("room from the tips of pinion and sector to the roots; tips are lowered for it")
            .atLeast(0, "tips that touch roots grind")
            .atMost(5, "more than a tooth is high")
            .byDefaultWords("a quarter of the module, or what the ring's radial play and the processes ask for");
    static final Field<Named> SERVO = Field.named("servo", "servos", Servo.FIELDS)
            .help("servo that turns the pinion")
            .byDefaultWords("micro-180");
    static final Field<Double> ARM_WIDTH = Field.length("arm-width")
            .help("width of the arm")
            .atLeast(1, "a narrower arm breaks")
            .atMost(100, "wider than a hand")
            .byDefaultWords("a twelfth of the full opening, 4 to 12 mm");
    static final Field<Double> ARM_REACH = Field.length("arm-reach")
            .help("how far the arm stands out of the housing")
            .atLeast(1, "nothing to hold")
            .atMost(500, "longer than any lever needs")
            .byDefaultWords("two and a half times its width");
    static final Field<Double> SCALE_FACTOR = Field.number("scale-factor")
            .help("engrave a scale of openings this factor apart")
            .atLeast(1.05, "the marks would run into one another")
            .atMost(10, "no second mark would fit")
            .byDefaultWords("no scale")
            .example("1.41421356");
    static final FieldSet DRIVE_SET = FieldSet.of(
            BY,
            AT,
            MODULE,
            PRESSURE_ANGLE,
            PINION_TEETH,
            SPARE_TEETH,
            BACKLASH,
            TIP_CLEARANCE,
            SERVO,
            ARM_WIDTH,
            ARM_REACH,
            SCALE_FACTOR);
    static final Field<Values> DRIVE = Field.group("drive", DRIVE_SET).help("what turns the ring");

    static final Field<Integer> JIG_BLADES = Field.count("blades")
            .help("blades that a jig holds at once while a pin is glued in")
            .atLeast(1, "an empty jig holds nothing")
            .atMost(16, "glue sets in the first pocket before the last is filled")
            .byDefaultWords("4, or as many as there are");
    static final Field<Boolean> JIG_STACKING = Field.flag("stacking")
            .help("whether there is a stand that holds all blades while the ring goes on")
            .byDefault("true");
    static final FieldSet JIG_SET = FieldSet.of(JIG_BLADES, JIG_STACKING);
    static final Field<Values> JIGS = Field.group("jigs", JIG_SET)
            .help("jigs that hold blades and pins square while glue sets; {} for all as usual, none where left out");

    /** All of them, in the order in which they are shown. */
    public static final FieldSet ALL = FieldSet.of(
            FULL_OPENING,
            LEAST_OPENING,
            BLADES,
            BLADE_THICKNESS,
            OUTER_DIAMETER,
            DEPTH,
            LAP,
            DRIVE_PIN,
            PIN_STYLE,
            PIN_DIAMETER,
            SLOT,
            HAND,
            BLADE_WIDTH,
            BLADE_SPAN,
            LEVER,
            LEVER_ANGLE,
            PLATE_THICKNESS,
            RING_THICKNESS,
            LEDGE,
            SCREW,
            HOUSING,
            KEEP_OUT,
            CLEARANCES,
            FITS,
            DRIVE,
            JIGS);

    private static Field<Double> place(String name) {
        return Field.length(name)
                .help("place of the aperture's axis in the drawing, as the drawing counts: in an SVG y runs down")
                .atLeast(-5000, "further off than any bezel")
                .atMost(5000, "further off than any bezel")
                .byDefault("0");
    }

    private static Field<Double> clearance(String name, String help, double usual) {
        return Field.length(name)
                .help(help)
                .atLeast(0, "parts that overlap cannot move")
                .atMost(20, "more room than the parts themselves")
                .byDefaultWords((usual == 0 ? "what the process adds for the fit" : usual + " mm")
                        + ", or more where the processes' repeatability asks for it");
    }
}
