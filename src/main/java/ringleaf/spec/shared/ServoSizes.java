// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.ArrayList;
import java.util.List;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Problems;

/**
 * Holds the sizes of a servo against each other: what contradicts itself is no servo, and the plate that is cut for it
 * would lose its ear holes into the window for its body.
 */
final class ServoSizes {
    private final Servo servo;
    private final Values values;
    private final Problems problems;
    private final int before;

    ServoSizes(Servo servo, Problems problems) {
        this.servo = servo;
        this.values = servo.entry().values();
        this.problems = problems;
        this.before = problems.count();
    }

    /** Whether they agree; what does not is reported. */
    boolean areSound() {
        ears();
        axis();
        horn();
        if (servo.pulseFrom() == servo.pulseTo()) {
            refuse(
                    List.of(Servo.PULSE_TO, Servo.PULSE_FROM),
                    Decimal.of(servo.pulseTo(), 3) + " is pulse-from as well, so that the servo would never turn",
                    "");
        }
        return problems.count() == before;
    }

    private void ears() {
        double hole = servo.holeDiameter();
        double body = servo.bodyLength();
        double across = servo.holesAcross();
        least(
                servo.earLength(),
                body,
                "is not above body-length, so that no ear stands out",
                List.of(Servo.EAR_LENGTH, Servo.BODY_LENGTH));
        least(
                servo.holesAlong(),
                body + hole,
                "puts the holes of the ears into the body",
                List.of(Servo.HOLES_ALONG, Servo.BODY_LENGTH, Servo.HOLE_DIAMETER));
        most(
                servo.holesAlong(),
                servo.earLength() - hole,
                "puts the holes of the ears over their ends",
                List.of(Servo.HOLES_ALONG, Servo.EAR_LENGTH, Servo.HOLE_DIAMETER));
        most(
                across,
                servo.bodyWidth() - hole,
                across > 0
                        ? "puts the holes over the sides of the ears, which are as wide as the body"
                        : "for one hole in each ear leaves no ear beside it",
                List.of(Servo.HOLES_ACROSS, Servo.BODY_WIDTH, Servo.HOLE_DIAMETER));
        if (across > 0) {
            least(
                    across,
                    hole,
                    "lets the two holes of an ear run into one another (0 is for one hole in each ear)",
                    List.of(Servo.HOLES_ACROSS, Servo.HOLE_DIAMETER));
        }
    }

    private void axis() {
        most(
                servo.axisOffset(),
                servo.bodyLength(),
                "puts the axis beyond the body's other end",
                List.of(Servo.AXIS_OFFSET, Servo.BODY_LENGTH));
    }

    private void horn() {
        least(
                servo.hornDiameter(),
                servo.splineDiameter(),
                "is not above spline-diameter, on which the horn sits",
                List.of(Servo.HORN_DIAMETER, Servo.SPLINE_DIAMETER));
        most(
                servo.hornScrewCircle(),
                servo.hornDiameter() - servo.hornScrewHole(),
                "puts the holes of the horn's screws over its edge",
                List.of(Servo.HORN_SCREW_CIRCLE, Servo.HORN_DIAMETER, Servo.HORN_SCREW_HOLE));
        least(
                servo.hornScrewCircle(),
                servo.splineDiameter() + servo.hornScrewHole(),
                "puts the holes of the horn's screws into the spline",
                List.of(Servo.HORN_SCREW_CIRCLE, Servo.SPLINE_DIAMETER, Servo.HORN_SCREW_HOLE));
    }

    /** Refuses the first of these sizes where it is not above a limit which the others set. */
    private void least(double value, double limit, String why, List<Field<Double>> about) {
        if (!(value > limit)) {
            refuse(about, size(value) + " " + why, "it must be above " + size(limit));
        }
    }

    /** Refuses the first of these sizes where it is not below a limit which the others set. */
    private void most(double value, double limit, String why, List<Field<Double>> about) {
        if (!(value < limit)) {
            String hint = limit > 0 ? "it must be below " + size(limit) : "no value works beside those";
            refuse(about, size(value) + " " + why, hint);
        }
    }

    /**
     * Points at the first of the sizes that the user wrote, and says which were taken from the class that stands in.
     *
     * @param why begins with a verb or with the value of the first size
     */
    private void refuse(List<Field<Double>> about, String why, String hint) {
        Field<Double> first = about.get(0);
        Field<Double> written =
                about.stream().filter(values::isGiven).findFirst().orElse(first);
        List<String> open = new ArrayList<>();
        for (Field<Double> field : about) {
            if (!values.isGiven(field)) {
                open.add(field.name());
            }
        }
        String said = written == first ? why : first.name() + " of " + why;
        String left = String.join(", ", open) + (open.size() == 1 ? " is as that of " : " are as those of ");
        problems.at(
                values.where(written), said + (open.isEmpty() ? "" : "; left open, " + left + Servo.STAND_IN), hint);
    }

    private static String size(double value) {
        return Decimal.of(value, 3) + " mm";
    }
}
