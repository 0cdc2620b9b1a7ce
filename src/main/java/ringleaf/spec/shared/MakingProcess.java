// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.text.Problems;

/**
 * A way to make parts, with what it can and cannot do; lengths in mm.
 *
 * @param name in the catalogue
 * @param makesLayers whether it builds parts in layers; else it cuts sheet, and so no blind bores and no steps
 * @param kerf width that is burnt or cut away
 * @param leastWeb the narrowest web, whatever the thickness
 * @param webPerThickness the narrowest web as a multiple of the thickness
 * @param leastHole the smallest hole, whatever the thickness
 * @param holePerThickness the smallest hole as a multiple of the thickness
 * @param edgeDistance least distance from a hole's centre to an edge, as a multiple of the hole's diameter
 * @param runningClearance added to the diameter of a bore in which a pin turns
 * @param pressAllowance taken from the diameter of a bore in which a pin is held
 * @param slotClearance added to the width of a slot in which a pin slides
 * @param repeatability how far a size may come out beside what was drawn, either way
 * @param thicknessFrom thinnest that it makes
 * @param thicknessTo thickest that it makes
 * @param cautions what to look out for
 * @param entry values with their sources
 */
public record MakingProcess(
        String name,
        boolean makesLayers,
        double kerf,
        double leastWeb,
        double webPerThickness,
        double leastHole,
        double holePerThickness,
        double edgeDistance,
        double runningClearance,
        double pressAllowance,
        double slotClearance,
        double repeatability,
        double thicknessFrom,
        double thicknessTo,
        List<String> cautions,
        Entry entry) {

    private static final String NO_LESS = "less than nothing cannot be taken away";
    private static final String COARSE = "a process this coarse makes no mechanism";

    /** Finer than any machine meant here makes, mm. */
    private static final double LEAST_LEFT = 0.005;

    static final Field<String> SUMMARY = Field.text("summary", 200).help("what it is, in a line");
    static final Field<String> MAKES = Field.choice("makes")
            .help("what it works on")
            .option("sheet", "cuts outlines through sheet; no blind bores, no steps")
            .option("layers", "builds up layers; steps and blind bores are free")
            .required();
    static final Field<Double> KERF =
            length("kerf", "width that is burnt or cut away", 2).required();
    static final Field<Double> LEAST_WEB = length("least-web", "narrowest web", 20)
            .atLeast(LEAST_LEFT, "a web of nothing holds nothing")
            .required();
    static final Field<Double> WEB_PER_THICKNESS = Field.number("web-per-thickness")
            .help("narrowest web as a multiple of the thickness")
            .atLeast(0, NO_LESS)
            .atMost(10, COARSE)
            .byDefault("0");
    static final Field<Double> LEAST_HOLE = length("least-hole", "smallest hole", 20)
            .atLeast(LEAST_LEFT, "a hole of nothing is none")
            .required();
    static final Field<Double> HOLE_PER_THICKNESS = Field.number("hole-per-thickness")
            .help("smallest hole as a multiple of the thickness")
            .atLeast(0, NO_LESS)
            .atMost(10, COARSE)
            .byDefault("0");
    static final Field<Double> EDGE_DISTANCE = Field.number("edge-distance")
            .help("least distance from a hole's centre to an edge, as a multiple of the hole's diameter")
            .atLeast(0.5, "below half the diameter the hole cuts the edge")
            .atMost(10, COARSE)
            .required();
    static final Field<Double> RUNNING_CLEARANCE = length(
                    "running-clearance", "added to the diameter of a bore in which a pin turns", 5)
            .required();
    static final Field<Double> PRESS_ALLOWANCE = length(
                    "press-allowance", "taken from the diameter of a bore in which a pin is held", 2)
            .required();
    static final Field<Double> SLOT_CLEARANCE = length(
                    "slot-clearance", "added to the width of a slot in which a pin slides", 5)
            .required();
    static final Field<Double> REPEATABILITY = length(
                    "repeatability", "how far a size may come out beside what was drawn", 2)
            .required();
    static final Field<Double> THICKNESS_FROM =
            Field.length("thickness-from").help("thinnest that it makes").required();
    static final Field<Double> THICKNESS_TO =
            Field.length("thickness-to").help("thickest that it makes").required();
    static final Field<Double> CUTTING_SPEED = Field.number("cutting-speed")
            .help("speed along the outline, mm a second, as far as one figure serves")
            .atLeast(0.01, "slower than any machine that finishes")
            .atMost(10_000, "faster than any machine turns a corner")
            .byDefaultWords("not known, and no cutting time is told");
    static final Field<List<String>> CAUTIONS =
            Field.text("cautions", 300).help("what to look out for").list(20).byDefaultWords("none");

    /** The fields of an entry. */
    public static final FieldSet FIELDS = FieldSet.of(
            SUMMARY,
            MAKES,
            KERF,
            LEAST_WEB,
            WEB_PER_THICKNESS,
            LEAST_HOLE,
            HOLE_PER_THICKNESS,
            EDGE_DISTANCE,
            RUNNING_CLEARANCE,
            PRESS_ALLOWANCE,
            SLOT_CLEARANCE,
            REPEATABILITY,
            THICKNESS_FROM,
            THICKNESS_TO,
            CUTTING_SPEED,
            CAUTIONS);

    private static Field<Double> length(String name, String help, double most) {
        return Field.length(name).help(help).atLeast(0, NO_LESS).atMost(most, COARSE);
    }

    /** The process; null, after it was reported, when its thicknesses contradict each other. */
    static MakingProcess of(Entry entry, Problems problems) {
        if (entry.values().require(THICKNESS_FROM) > entry.values().require(THICKNESS_TO)) {
            problems.at(entry.values().where(THICKNESS_FROM), "the thinnest is above thickness-to, the thickest");
            return null;
        }
        return new MakingProcess(
                entry.name(),
                entry.values().require(MAKES).equals("layers"),
                entry.values().require(KERF),
                entry.values().require(LEAST_WEB),
                entry.values().require(WEB_PER_THICKNESS),
                entry.values().require(LEAST_HOLE),
                entry.values().require(HOLE_PER_THICKNESS),
                entry.values().require(EDGE_DISTANCE),
                entry.values().require(RUNNING_CLEARANCE),
                entry.values().require(PRESS_ALLOWANCE),
                entry.values().require(SLOT_CLEARANCE),
                entry.values().require(REPEATABILITY),
                entry.values().require(THICKNESS_FROM),
                entry.values().require(THICKNESS_TO),
                entry.values().get(CAUTIONS).orElse(List.of()),
                entry);
    }

    /** The narrowest web in a sheet or part of this thickness, mm. */
    public double web(double thickness) {
        return Math.max(leastWeb, webPerThickness * thickness);
    }

    /** The smallest hole in a sheet or part of this thickness, mm. */
    public double hole(double thickness) {
        return Math.max(leastHole, holePerThickness * thickness);
    }

    /**
     * What a fit adds to the diameter of a hole or the width of a slot, mm; nothing for a thread's clearance, which
     * comes with the screw. A glued pin gets half of what a turning one gets (common practice, no source).
     */
    public double allowance(FitName fit) {
        return switch (fit) {
            case RUNNING -> runningClearance;
            case SLIDING -> slotClearance;
            case PRESS -> -pressAllowance;
            case GLUE -> runningClearance / 2;
            case THREAD_CLEARANCE -> 0;
        };
    }

    /** Speed along an outline, mm/s; empty for what does not go along outlines one after another. */
    public OptionalDouble cuttingSpeed() {
        Optional<Double> speed = entry.values().given(CUTTING_SPEED);
        return speed.isPresent() ? OptionalDouble.of(speed.get()) : OptionalDouble.empty();
    }

    /** How far the kerf may lie from the true one (95 %), mm, where it was measured on the user's machine; else 0. */
    public double kerfWithin() {
        return entry.within(KERF);
    }

    /** Whether it makes this thickness, mm. */
    public boolean makesThickness(double thickness) {
        return thickness >= thicknessFrom - 1e-9 && thickness <= thicknessTo + 1e-9;
    }
}
