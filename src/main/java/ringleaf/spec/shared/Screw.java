package ringleaf.spec.shared;

import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;

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
        String series,
        Entry entry) {
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

    /** The fields of an entry. */
    public static final FieldSet FIELDS = FieldSet.of(
            THREAD, FINE, MEDIUM, COARSE, TAP_DRILL, HEAD_DIAMETER, HEAD_HEIGHT, NUT_ACROSS, NUT_HEIGHT);

    private static Field<Double> size(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(0.1, "no screw is finer")
                .atMost(100, "no model holds a larger screw")
                .required();
    }

    static Screw of(Entry entry) {
        Values values = entry.values();
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
                THREAD_CLEARANCE.defaultValue(),
                entry);
    }

    /** The same screw with holes of another series. */
    public Screw withSeries(String other) {
        return new Screw(
                name, thread, clearanceFine, clearanceMedium, clearanceCoarse, tapDrill, headDiameter, headHeight,
                nutAcross, nutHeight, other, entry);
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
