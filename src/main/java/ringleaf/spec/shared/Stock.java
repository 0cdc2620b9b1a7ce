// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Quantity;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Problems;

/**
 * What parts are made of.
 *
 * @param name in the catalogue
 * @param material in words
 * @param thickness of the sheet, mm; empty where any thickness can be had
 * @param flatness what flatness and burr add to each sheet in a stack, mm
 * @param density g/cm3
 * @param stiffness modulus of elasticity, MPa
 * @param yieldStrain strain at which it stays bent or breaks, as a fraction
 * @param friction coefficient against itself, dry; any such figure is uncertain by half of itself
 * @param slopeLimit how far a leaf of it may be bent out of its plane, rad
 * @param processes names of those that can make parts of it, the usual one first
 * @param kerf width the usual process takes away in this stock, mm; empty where the process's own figure holds
 * @param cautions what to look out for
 * @param entry values with their sources
 */
public record Stock(
        String name,
        String material,
        OptionalDouble thickness,
        double flatness,
        double density,
        double stiffness,
        double yieldStrain,
        double friction,
        double slopeLimit,
        List<String> processes,
        OptionalDouble kerf,
        List<String> cautions,
        Entry entry) {
    /** Sheet up to this thickness bends like shim, mm (common practice, no source). */
    public static final double SHIM_LIMIT = 0.3;
    /** How far a leaf thicker than shim may be bent out of its plane, rad (common practice, no source). */
    public static final double THICK_SLOPE = 3 * Math.PI / 180;

    /** Stress over stiffness and strain may differ by this share where both are given: rounded figures do. */
    private static final double SAME_STRAIN = 0.02;

    private static final double LEAST_STRAIN = 1e-4;
    private static final double MOST_STRAIN = 0.5;

    static final Field<String> MATERIAL =
            Field.text("material", 120).help("what it is").required();
    static final Field<Double> THICKNESS =
            Field.length("thickness").help("thickness of the sheet").byDefaultWords("any thickness");
    static final Field<Double> FLATNESS = Field.length("flatness")
            .help("what flatness and burr add to each sheet in a stack")
            .atLeast(0, "a stack is no thinner than its sheets")
            .atMost(2, "sheet this wavy makes no blade")
            .required();
    static final Field<Double> DENSITY = Field.quantity("density", Quantity.DENSITY)
            .help("mass by volume")
            .atLeast(0.05, "lighter than balsa and foam")
            .atMost(23, "no element is denser")
            .required();
    static final Field<Double> STIFFNESS = Field.quantity("stiffness", Quantity.STRESS)
            .help("modulus of elasticity")
            .atLeast(10, "softer than rubber makes no blade")
            .atMost(1_300_000, "no material is stiffer")
            .required();
    static final Field<Double> YIELD_STRESS = Field.quantity("yield-stress", Quantity.STRESS)
            .help("stress at which it stays bent or breaks")
            .atLeast(0.1, "nothing that is cut is weaker")
            .atMost(10_000, "no sheet is stronger")
            .byDefaultWords("stiffness times yield-strain");
    static final Field<Double> YIELD_STRAIN = Field.percent("yield-strain")
            .help("strain at which it stays bent or breaks")
            .atLeast(0.01, "nothing that is cut is more brittle")
            .atMost(50, "a blade that stretches this far is no blade")
            .byDefaultWords("yield-stress over stiffness");
    static final Field<Double> FRICTION = Field.number("friction")
            .help("coefficient of friction against itself, dry")
            .atLeast(0.01, "nothing dry is slipperier")
            .atMost(2, "nothing hard grips more")
            .required();
    static final Field<Double> SLOPE_LIMIT = Field.angle("slope-limit")
            .help("how far a blade may be bent out of its plane")
            .atLeast(0, "a blade may always lie flat")
            .atMost(45, "steeper blades stand rather than lie")
            .byDefaultWords("6 degrees for sheet up to 0.3 mm, else 3 degrees");
    static final Field<List<String>> MADE_BY = Field.name("made-by", "processes.yaml")
            .help("processes that make parts of it, the usual one first")
            .list(20)
            .required();
    static final Field<Double> KERF = Field.length("kerf")
            .help("width the usual process takes away in this stock")
            .atLeast(0, "less than nothing cannot be taken away")
            .atMost(2, "a process this coarse makes no mechanism")
            .byDefaultWords("the process's own figure");
    static final Field<List<String>> CAUTIONS =
            Field.text("cautions", 300).help("what to look out for").list(20).byDefaultWords("none");

    /** The fields of an entry. */
    public static final FieldSet FIELDS = FieldSet.of(
            MATERIAL,
            THICKNESS,
            FLATNESS,
            DENSITY,
            STIFFNESS,
            YIELD_STRESS,
            YIELD_STRAIN,
            FRICTION,
            SLOPE_LIMIT,
            MADE_BY,
            KERF,
            CAUTIONS);

    /** The stock; null, after it was reported, when nothing says how far it can be strained. */
    static Stock of(Entry entry, Problems problems) {
        Values values = entry.values();
        if (!values.isGiven(YIELD_STRAIN) && !values.isGiven(YIELD_STRESS)) {
            problems.at(values.where(YIELD_STRAIN), "is missing, and so is yield-stress", "give one of the two");
            return null;
        }
        double stiffness = values.require(STIFFNESS);
        double fromStress = values.get(YIELD_STRESS).orElse(0.0) / stiffness;
        double yieldStrain = values.get(YIELD_STRAIN).orElse(fromStress);
        if (entry.isOwn(YIELD_STRESS) && !entry.isOwn(YIELD_STRAIN)) {
            yieldStrain = fromStress;
        } else if (entry.isOwn(YIELD_STRESS) && Math.abs(fromStress - yieldStrain) > SAME_STRAIN * yieldStrain) {
            problems.at(
                    values.where(YIELD_STRESS),
                    "contradicts yield-strain: over the stiffness it is a strain of " + Decimal.of(100 * fromStress, 3)
                            + " %, not of " + Decimal.of(100 * yieldStrain, 3) + " %",
                    "give one of the two");
            return null;
        }
        if (yieldStrain < LEAST_STRAIN || yieldStrain > MOST_STRAIN) {
            problems.at(
                    values.where(values.isGiven(YIELD_STRESS) ? YIELD_STRESS : YIELD_STRAIN),
                    "over the stiffness of " + Decimal.of(stiffness, 3) + " MPa is a strain of "
                            + Decimal.of(100 * yieldStrain, 3) + " %, and "
                            + (yieldStrain < LEAST_STRAIN
                                    ? "nothing that is cut is so brittle"
                                    : "a blade that stretches so far is no blade"),
                    "one of the two has another unit; 0.01 % to 50 % are read");
            return null;
        }
        Optional<Double> thickness = values.get(THICKNESS);
        if (thickness.isPresent() && values.require(FLATNESS) >= thickness.get()) {
            problems.at(
                    values.where(FLATNESS),
                    Decimal.of(values.require(FLATNESS), 3) + " mm is as much as the sheet of "
                            + Decimal.of(thickness.get(), 3) + " mm itself: no stack of it could be counted",
                    "flatness and burr together, for each sheet of a pressed stack");
            return null;
        }
        boolean thick = thickness.isPresent() && thickness.get() > SHIM_LIMIT;
        return new Stock(
                entry.name(),
                values.require(MATERIAL),
                optional(thickness),
                values.require(FLATNESS),
                values.require(DENSITY),
                stiffness,
                yieldStrain,
                values.require(FRICTION),
                values.get(SLOPE_LIMIT).orElse(thick ? THICK_SLOPE : 2 * THICK_SLOPE),
                values.require(MADE_BY),
                optional(values.get(KERF)),
                values.get(CAUTIONS).orElse(List.of()),
                entry);
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    /**
     * The width that a process takes away in it, mm: what a user's own file says of the stock or else of the process goes
     * over what is usual in the stock, and that over what is usual of the process.
     */
    public double kerf(MakingProcess process) {
        boolean usual = processes.get(0).equals(process.name());
        boolean told = entry.isOwn(KERF) || !process.entry().isOwn(MakingProcess.KERF);
        return usual && kerf.isPresent() && told ? kerf.getAsDouble() : process.kerf();
    }

    /** Whether a process can make parts of it. */
    public boolean isMadeBy(String process) {
        return processes.contains(process);
    }

    /** How far the kerf may lie from the true one (95 %), mm, where it was measured on the user's machine; else 0. */
    public double kerfWithin() {
        return entry.within(KERF);
    }

    /** This stock in a thickness, mm; a sheet thicker than shim may bend less, unless a user's own file says how much. */
    public Stock ofThickness(double wanted) {
        boolean less = wanted > SHIM_LIMIT && !entry.isOwn(SLOPE_LIMIT);
        double slope = less ? Math.min(slopeLimit, THICK_SLOPE) : slopeLimit;
        return new Stock(
                name,
                material,
                OptionalDouble.of(wanted),
                flatness,
                density,
                stiffness,
                yieldStrain,
                friction,
                slope,
                processes,
                kerf,
                cautions,
                entry);
    }
}
