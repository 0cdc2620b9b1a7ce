// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/**
 * A timing belt: its section, what is stocked of it, and what is tabulated of its pulleys; mm, rad.
 *
 * @param name in the catalogue, or {@code own} when written out in a spec
 * @param standard that covers it, in words
 * @param round whether the tooth is round at its tip; else it is a trapezoid
 * @param makersGroove whether the pulley's groove is a maker's own form that no open source gives
 * @param pitch from tooth to tooth along the pitch line
 * @param pitchLine from the toothed side between the teeth to the pitch line
 * @param toothWidth where the flanks meet the toothed side
 * @param toothHeight from the toothed side to the tip
 * @param beltHeight from the tip to the back
 * @param flank angle of one flank to the tooth's axis
 * @param tipRadius of the tip's corners; of no use for a round tooth
 * @param rootRadius of the rounding at the tooth's root
 * @param leastTeeth of a pulley
 * @param widths that are stocked
 * @param lengths that are stocked, in teeth; empty when no series is known
 * @param flangeHeight by which a flange should stand over the outside at least, when it is known
 * @param pullPerWidth working pull for a millimetre of width, N/mm, when it is known
 * @param trapezoid groove of straight-sided belts, when it is tabulated
 * @param outside table of outside diameters
 * @param entry values with their sources
 */
public record Belt(
        String name,
        String standard,
        boolean round,
        boolean makersGroove,
        double pitch,
        double pitchLine,
        double toothWidth,
        double toothHeight,
        double beltHeight,
        double flank,
        double tipRadius,
        double rootRadius,
        int leastTeeth,
        List<Double> widths,
        List<Integer> lengths,
        OptionalDouble flangeHeight,
        OptionalDouble pullPerWidth,
        Optional<BeltGroove> trapezoid,
        PulleyTable outside,
        Entry entry) {

    static final Field<String> STANDARD =
            Field.text("standard", 60).help("standard that covers the belt").byDefaultWords("none");
    static final Field<String> FORM = Field.choice("form")
            .help("shape of the tooth")
            .option("trapezoid", "straight flanks and a flat tip")
            .option("round", "straight flanks and a tip that is one arc")
            .byDefault("trapezoid");
    static final Field<String> GROOVE = Field.choice("groove")
            .help("whose form the pulley's groove is")
            .option("open", "an open standard gives it")
            .option("maker", "a maker's own; then it is generated from the tooth")
            .byDefault("maker");
    static final Field<Double> PITCH =
            size("pitch", "from tooth to tooth along the pitch line").required();
    static final Field<Double> PITCH_LINE = size(
                    "pitch-line", "from the toothed side between the teeth to the pitch line")
            .required();
    static final Field<Double> TOOTH_WIDTH =
            size("tooth-width", "tooth where its flanks meet the toothed side").required();
    static final Field<Double> TOOTH_HEIGHT =
            size("tooth-height", "tooth from the toothed side to its tip").required();
    static final Field<Double> BELT_HEIGHT =
            size("belt-height", "belt from the teeth's tips to its back").required();
    static final Field<Double> FLANK_ANGLE = Field.angle("flank-angle")
            .help("angle between both flanks of a tooth")
            .atLeast(0, "a tooth that widens to its tip does not leave its groove")
            .atMost(90, "flatter flanks let the belt climb out")
            .byDefault("40");
    static final Field<Double> TIP_RADIUS =
            zero("tip-radius", "rounding of the tooth's tip").byDefault("0");
    static final Field<Double> ROOT_RADIUS =
            size("root-radius", "rounding at the tooth's root").required();
    static final Field<Integer> LEAST_TEETH = Field.count("least-teeth")
            .help("least teeth of a pulley")
            .atLeast(6, "belts break sooner on smaller pulleys")
            .atMost(100, "no belt is as stiff as that")
            .byDefault("10");
    static final Field<List<Double>> WIDTHS =
            size("widths", "widths that are stocked").list(40).byDefaultWords("none");
    static final Field<List<Integer>> LENGTHS = Field.count("lengths")
            .help("lengths that are stocked, in teeth")
            .atLeast(8, "shorter belts do not go round two pulleys")
            .atMost(1000, "longer belts are cut from the roll")
            .list(400)
            .byDefaultWords("none; every count of teeth is then tried");
    static final Field<Double> FLANGE_HEIGHT =
            size("flange-height", "least height of a flange over the outside").byDefaultWords("as high as a tooth");
    static final Field<Double> PULL_PER_WIDTH = Field.number("pull-per-width")
            .help("working pull for a millimetre of width, N/mm")
            .atLeast(0.1, "a thread holds more")
            .atMost(1000, "no small belt holds more")
            .byDefaultWords("not known, and not judged");

    /** The fields of an entry. */
    public static final FieldSet FIELDS = FieldSet.of(
                    STANDARD,
                    FORM,
                    GROOVE,
                    PITCH,
                    PITCH_LINE,
                    TOOTH_WIDTH,
                    TOOTH_HEIGHT,
                    BELT_HEIGHT,
                    FLANK_ANGLE,
                    TIP_RADIUS,
                    ROOT_RADIUS,
                    LEAST_TEETH,
                    WIDTHS,
                    LENGTHS,
                    FLANGE_HEIGHT,
                    PULL_PER_WIDTH)
            .and(BeltGroove.FIELDS)
            .and(PulleyTable.FIELDS);

    static Field<Double> size(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(0.05, "nothing on a belt is smaller")
                .atMost(200, "no belt here is larger");
    }

    static Field<Double> zero(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(0, "a radius is not negative")
                .atMost(20, "larger than any tooth");
    }

    /** A belt of an entry; null when its sizes contradict one another, which is then among the problems. */
    static Belt of(Entry entry, Place place, Problems problems) {
        Values v = entry.values();
        Belt belt = new Belt(
                entry.name(),
                v.get(STANDARD).orElse("none"),
                v.require(FORM).equals("round"),
                v.require(GROOVE).equals("maker"),
                v.require(PITCH),
                v.require(PITCH_LINE),
                v.require(TOOTH_WIDTH),
                v.require(TOOTH_HEIGHT),
                v.require(BELT_HEIGHT),
                v.require(FLANK_ANGLE) / 2,
                v.require(TIP_RADIUS),
                v.require(ROOT_RADIUS),
                v.require(LEAST_TEETH),
                v.get(WIDTHS).orElse(List.of()),
                v.get(LENGTHS).orElse(List.of()),
                open(v, FLANGE_HEIGHT),
                open(v, PULL_PER_WIDTH),
                BeltGroove.of(v),
                PulleyTable.of(v, place, problems),
                entry);
        return belt.isSound(place, problems) ? belt : null;
    }

    private static OptionalDouble open(Values values, Field<Double> field) {
        Optional<Double> value = values.given(field);
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    private boolean isSound(Place place, Problems problems) {
        int before = problems.count();
        double tip = toothWidth - 2 * toothHeight * Math.tan(flank);
        if (tip <= 0) {
            problems.at(
                    place,
                    "the flanks of the belt's tooth meet before its tip",
                    "a smaller flank-angle or tooth-height");
        }
        double foot = toothWidth + 2 * rootRadius * Math.tan((Math.PI / 2 - flank) / 2);
        if (foot >= pitch) {
            problems.at(place, "the belt's teeth meet at their roots", "a smaller tooth-width or root-radius");
        }
        if (beltHeight <= toothHeight + pitchLine) {
            problems.at(place, "the pitch line lies outside the belt's back", "a larger belt-height");
        }
        return problems.count() == before;
    }

    /** From the pitch line to the belt's back. */
    public double back() {
        return beltHeight - toothHeight - pitchLine;
    }

    /** Diameter of the pitch circle of a pulley. */
    public double pitchDiameter(int teeth) {
        return teeth * pitch / Math.PI;
    }
}
