// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Problems;

/**
 * A metric screw and the holes it asks for, mm.
 *
 * @param name e.g. {@code M3}
 * @param thread nominal diameter
 * @param clearanceFine hole it passes with little play
 * @param clearanceMedium hole it passes
 * @param clearanceCoarse hole it passes easily
 * @param tapDrill hole in which its thread is cut
 * @param headDiameter of its head
 * @param headHeight of its head
 * @param nutAcross across the flats of its nut
 * @param nutHeight of its nut
 * @param sold what can be bought of it
 * @param series of its clearance holes: {@code fine}, {@code medium} or {@code coarse}
 * @param entry values with their sources
 */
public record Screw(
        String name,
        double thread,
        double clearanceFine,
        double clearanceMedium,
        double clearanceCoarse,
        double tapDrill,
        double headDiameter,
        double headHeight,
        double nutAcross,
        double nutHeight,
        Goods sold,
        String series,
        Entry entry) {
    /**
     * What can be bought of a screw; lengths in mm.
     *
     * @param standard by which it is ordered, in words; empty when none is known
     * @param nutStandard the same of its nut
     * @param lengths under the head; empty when none are known
     * @param spacer of the plain round spacers that go over it, when there are any
     * @param usual whether it is a first choice of ISO 261, which every shop has
     */
    public record Goods(
            String standard, String nutStandard, List<Double> lengths, Optional<Spacer> spacer, boolean usual) {}

    /** A plain round spacer, mm. */
    public record Spacer(double bore, double outside, List<Double> lengths) {}

    /** Chooses the series of clearance holes; stands among the fits of every kind that has screws. */
    public static final Field<String> THREAD_CLEARANCE = Field.choice(FitName.THREAD_CLEARANCE.label())
            .help("holes that screws pass, by their series of ISO 273")
            .option("fine", "little play, for plates that line up by their screws")
            .option("medium", "the usual")
            .option("coarse", "easy to put together, for holes that come out small or out of place")
            .byDefault("medium");

    static final Field<Double> THREAD = size("thread", "nominal diameter");
    static final Field<Double> FINE = size("clearance-fine", "hole it passes with little play");
    static final Field<Double> MEDIUM = size("clearance-medium", "hole it passes");
    static final Field<Double> COARSE = size("clearance-coarse", "hole it passes easily");
    static final Field<Double> TAP_DRILL = size("tap-drill", "hole in which its thread is cut");
    static final Field<Double> HEAD_DIAMETER = size("head-diameter", "diameter of the head");
    static final Field<Double> HEAD_HEIGHT = size("head-height", "height of the head");
    static final Field<Double> NUT_ACROSS = size("nut-across", "width of the nut across its flats");
    static final Field<Double> NUT_HEIGHT = size("nut-height", "height of the nut");

    static final Field<String> STANDARD =
            Field.text("standard", 60).help("standard by which it is ordered").byDefaultWords("none");
    static final Field<String> NUT_STANDARD = Field.text("nut-standard", 60)
            .help("standard by which its nut is ordered")
            .byDefaultWords("none");
    static final Field<List<Double>> LENGTHS = sold("lengths", "lengths in which it is sold, under the head")
            .list(60)
            .byDefaultWords("none known; the least length that does is then told");
    static final Field<String> CHOICE = Field.choice("choice")
            .help("which choice of ISO 261 it is")
            .option("first", "every shop has it")
            .option("second", "only taken where it is asked for")
            .byDefault("first");
    static final Field<Double> SPACER_BORE = sold("spacer-bore", "bore of the plain round spacer that goes over it")
            .byDefaultWords("no spacer is sold");
    static final Field<Double> SPACER_OUTSIDE =
            sold("spacer-outside", "outer diameter of that spacer").byDefaultWords("no spacer is sold");
    static final Field<List<Double>> SPACER_LENGTHS =
            sold("spacer-lengths", "lengths of that spacer").list(60).byDefaultWords("no spacer is sold");

    /** The fields of an entry. */
    public static final FieldSet FIELDS = FieldSet.of(
            THREAD,
            FINE,
            MEDIUM,
            COARSE,
            TAP_DRILL,
            HEAD_DIAMETER,
            HEAD_HEIGHT,
            NUT_ACROSS,
            NUT_HEIGHT,
            STANDARD,
            NUT_STANDARD,
            LENGTHS,
            CHOICE,
            SPACER_BORE,
            SPACER_OUTSIDE,
            SPACER_LENGTHS);

    private static Field<Double> size(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(0.1, "no screw is finer")
                .atMost(100, "no model holds a larger screw")
                .required();
    }

    private static Field<Double> sold(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(0.5, "nothing shorter is sold")
                .atMost(500, "no model holds a longer one");
    }

    /** The screw; null, after it was reported, when its values contradict one another. */
    static Screw of(Entry entry, Problems problems) {
        Values values = entry.values();
        if (!new ScrewSizes(entry, problems).areSound()) {
            return null;
        }
        return new Screw(
                entry.name(),
                values.require(THREAD),
                values.require(FINE),
                values.require(MEDIUM),
                values.require(COARSE),
                values.require(TAP_DRILL),
                values.require(HEAD_DIAMETER),
                values.require(HEAD_HEIGHT),
                values.require(NUT_ACROSS),
                values.require(NUT_HEIGHT),
                new Goods(
                        values.get(STANDARD).orElse(""),
                        values.get(NUT_STANDARD).orElse(""),
                        values.get(LENGTHS).orElse(List.of()),
                        spacer(values),
                        values.require(CHOICE).equals("first")),
                THREAD_CLEARANCE.defaultValue(),
                entry);
    }

    private static Optional<Spacer> spacer(Values values) {
        Optional<Double> bore = values.get(SPACER_BORE);
        Optional<Double> outside = values.get(SPACER_OUTSIDE);
        Optional<List<Double>> lengths = values.get(SPACER_LENGTHS);
        return bore.isPresent() && outside.isPresent() && lengths.isPresent()
                ? Optional.of(new Spacer(bore.get(), outside.get(), lengths.get()))
                : Optional.empty();
    }

    /** From thread to thread, mm: by ISO 2306 the drill under a coarse thread is its diameter less its pitch. */
    public double pitch() {
        return thread - tapDrill;
    }

    /** The shortest length in which it is sold that is no shorter than {@code need}, mm. */
    public OptionalDouble length(double need) {
        return Sold.nextUp(sold.lengths(), need);
    }

    /** What to order, e.g. {@code M2 x 12, ISO 4762}. */
    public String order(double length) {
        return name + " x " + Decimal.of(length, 6) + (sold.standard().isEmpty() ? "" : ", " + sold.standard());
    }

    /** Its nut as it is ordered, e.g. {@code M2 nut, ISO 4032}. */
    public String nutOrder() {
        return name + " nut" + (sold.nutStandard().isEmpty() ? "" : ", " + sold.nutStandard());
    }

    /** The same screw with holes of another series. */
    public Screw withSeries(String other) {
        return new Screw(
                name,
                thread,
                clearanceFine,
                clearanceMedium,
                clearanceCoarse,
                tapDrill,
                headDiameter,
                headHeight,
                nutAcross,
                nutHeight,
                sold,
                other,
                entry);
    }

    /** Diameter of the hole that it passes, mm, in its series. */
    public double hole() {
        return series.equals("fine") ? clearanceFine : series.equals("coarse") ? clearanceCoarse : clearanceMedium;
    }

    /** Where the hole's size comes from, for people. */
    public String holeBasis() {
        return "hole of ISO 273 " + series + " for " + name;
    }
}
