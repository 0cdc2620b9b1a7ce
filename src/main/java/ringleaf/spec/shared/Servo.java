// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Problems;

/**
 * A servo: how far and how hard it turns, and the room it takes; mm, rad, N mm. Its axis is the output's, its upper
 * side the one with the horn; heights are counted from the upper face of its ears.
 *
 * @param name in the catalogue, or {@code own} when written out in a spec
 * @param travel from stop to stop
 * @param torque at stall
 * @param bodyLength along the ears
 * @param bodyWidth across
 * @param caseHeight the body's top above the ears' upper face
 * @param bodyBelow the body's bottom below the ears' upper face
 * @param earLength over both ears
 * @param earThickness of the ears
 * @param holesAlong spacing of the holes along the body
 * @param holesAcross spacing across it; 0 when each ear has one hole
 * @param holeDiameter of the holes in the ears
 * @param axisOffset from the body's nearer end to the axis
 * @param hornHeight the horn's upper face above the ears' upper face
 * @param hornDiameter of a round horn
 * @param hornScrewCircle diameter of the circle of the horn's screws
 * @param hornScrewHole hole for such a screw
 * @param splineDiameter over the spline's teeth
 * @param pulseFrom pulse width at one end of the travel, microseconds: where the servo stands when the drive is open
 * @param pulseTo pulse width at the other end, microseconds; below {@code pulseFrom} for a servo that turns the other way
 * @param cautions what to look out for
 * @param entry values with their sources; those that were left out in a spec come from the micro class
 */
public record Servo(
        String name,
        double travel,
        double torque,
        double bodyLength,
        double bodyWidth,
        double caseHeight,
        double bodyBelow,
        double earLength,
        double earThickness,
        double holesAlong,
        double holesAcross,
        double holeDiameter,
        double axisOffset,
        double hornHeight,
        double hornDiameter,
        double hornScrewCircle,
        double hornScrewHole,
        double splineDiameter,
        double pulseFrom,
        double pulseTo,
        List<String> cautions,
        Entry entry) {
    /** The class whose values stand in for what a servo written out in a spec leaves open. */
    public static final String STAND_IN = "micro-180";

    static final Field<Double> TRAVEL = Field.angle("travel")
            .help("travel from stop to stop")
            .atLeast(10, "a servo that hardly turns drives nothing")
            .atMost(3600, "ten turns is a winch");
    static final Field<Double> TORQUE = Field.torque("torque")
            .help("torque at stall")
            .atLeast(1, "less does not turn its own gears")
            .atMost(100_000, "more breaks any part made here")
            .example("1.8kgcm");
    static final Field<Double> BODY_LENGTH = size(2, "body-length", "length of the body along the ears");
    static final Field<Double> BODY_WIDTH = size(2, "body-width", "width of the body");
    static final Field<Double> CASE_HEIGHT = size(0, "case-height", "top of the body above the ears' upper face");
    static final Field<Double> BODY_BELOW = size(1, "body-below", "bottom of the body below the ears' upper face");
    static final Field<Double> EAR_LENGTH = size(3, "ear-length", "length over both ears");
    static final Field<Double> EAR_THICKNESS = size(0.2, "ear-thickness", "thickness of the ears");
    static final Field<Double> HOLES_ALONG = size(3, "holes-along", "spacing of the holes along the body");
    static final Field<Double> HOLES_ACROSS =
            size(0, "holes-across", "spacing of the holes across the body, 0 for one hole in each ear");
    static final Field<Double> HOLE_DIAMETER = size(0.5, "hole-diameter", "holes in the ears");
    static final Field<Double> AXIS_OFFSET = size(0.5, "axis-offset", "axis from the nearer end of the body");
    static final Field<Double> HORN_HEIGHT =
            size(0, "horn-height", "upper face of the horn above the ears' upper face");
    static final Field<Double> HORN_DIAMETER = size(2, "horn-diameter", "diameter of a round horn");
    static final Field<Double> HORN_SCREW_CIRCLE = size(1, "horn-screw-circle", "circle of the horn's screws");
    static final Field<Double> HORN_SCREW_HOLE = size(0.3, "horn-screw-hole", "hole for a screw in the horn");
    static final Field<Double> SPLINE_DIAMETER = size(1, "spline-diameter", "diameter over the spline's teeth");
    static final Field<Double> PULSE_FROM =
            pulse("pulse-from", "pulse width at the end of the travel where the drive starts, microseconds");
    static final Field<Double> PULSE_TO = pulse(
            "pulse-to", "pulse width at the other end, microseconds; below pulse-from turns the servo the other way");
    static final Field<List<String>> CAUTIONS =
            Field.text("cautions", 300).help("what to look out for").list(20).byDefaultWords("none");

    /** The fields of an entry; in a spec all may be left out. */
    public static final FieldSet FIELDS = FieldSet.of(
            TRAVEL,
            TORQUE,
            BODY_LENGTH,
            BODY_WIDTH,
            CASE_HEIGHT,
            BODY_BELOW,
            EAR_LENGTH,
            EAR_THICKNESS,
            HOLES_ALONG,
            HOLES_ACROSS,
            HOLE_DIAMETER,
            AXIS_OFFSET,
            HORN_HEIGHT,
            HORN_DIAMETER,
            HORN_SCREW_CIRCLE,
            HORN_SCREW_HOLE,
            SPLINE_DIAMETER,
            PULSE_FROM,
            PULSE_TO,
            CAUTIONS);

    /** What to buy, for people; with what was not said of it and is taken from the class that stands in. */
    public String words() {
        List<String> open = new ArrayList<>();
        for (Field<?> field : FIELDS.fields()) {
            if (field != CAUTIONS && !entry.values().isGiven(field)) {
                open.add(field.name());
            }
        }
        String travels = name + ", travel " + Decimal.of(Math.toDegrees(travel), 3) + "°";
        return open.isEmpty()
                ? travels
                : travels + "; not measured, but as the class " + STAND_IN + ": " + String.join(", ", open);
    }

    private static Field<Double> size(double least, String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(least, least == 0 ? "a size is not negative" : "no servo has less")
                .atMost(500, "a servo this large is not for a model")
                .byDefaultWords("as the class " + STAND_IN);
    }

    private static Field<Double> pulse(String name, String help) {
        return Field.number(name)
                .help(help)
                .atLeast(100, "no servo listens to shorter pulses")
                .atMost(10_000, "pulses come every 20 000 microseconds or oftener")
                .byDefaultWords("as the class " + STAND_IN);
    }

    /**
     * A servo whose every value is in the entry, or in the one that stands in for it; null, after it was reported, when
     * its sizes contradict one another.
     */
    static Servo of(Entry entry, Servo standIn, Problems problems) {
        Servo servo = made(entry, standIn);
        return new ServoSizes(servo, problems).areSound() ? servo : null;
    }

    private static Servo made(Entry entry, Servo standIn) {
        Values values = entry.values();
        return new Servo(
                entry.name(),
                or(values, TRAVEL, standIn),
                or(values, TORQUE, standIn),
                or(values, BODY_LENGTH, standIn),
                or(values, BODY_WIDTH, standIn),
                or(values, CASE_HEIGHT, standIn),
                or(values, BODY_BELOW, standIn),
                or(values, EAR_LENGTH, standIn),
                or(values, EAR_THICKNESS, standIn),
                or(values, HOLES_ALONG, standIn),
                or(values, HOLES_ACROSS, standIn),
                or(values, HOLE_DIAMETER, standIn),
                or(values, AXIS_OFFSET, standIn),
                or(values, HORN_HEIGHT, standIn),
                or(values, HORN_DIAMETER, standIn),
                or(values, HORN_SCREW_CIRCLE, standIn),
                or(values, HORN_SCREW_HOLE, standIn),
                or(values, SPLINE_DIAMETER, standIn),
                or(values, PULSE_FROM, standIn),
                or(values, PULSE_TO, standIn),
                values.get(CAUTIONS).orElse(standIn == null ? List.of() : standIn.cautions),
                entry);
    }

    private static double or(Values values, Field<Double> field, Servo standIn) {
        Optional<Double> value = values.given(field);
        if (value.isPresent()) {
            return value.get();
        }
        if (standIn == null) {
            throw new IllegalStateException(field.name() + " is missing from " + STAND_IN);
        }
        return standIn.entry.values().require(field);
    }
}
