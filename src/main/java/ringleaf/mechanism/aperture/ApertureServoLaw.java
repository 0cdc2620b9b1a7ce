// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import ringleaf.curve.Roots;
import ringleaf.leaf.PinInSlot;
import ringleaf.mechanism.ServoLaw;
import ringleaf.part.Words;
import ringleaf.spec.shared.Servo;

/** The inscribed opening as a function of the servo's turn, by the closed forms. */
final class ApertureServoLaw implements ServoLaw {
    /** States at which the lost motion is looked at. */
    private static final int STATES = 36;

    private final ApertureDesign design;
    private final PinionPlan plan;
    private final PinInSlot follower;
    private final double ratio;
    private final double sense;

    ApertureServoLaw(ApertureDesign design, PinionPlan plan) {
        this.design = design;
        this.plan = plan;
        this.follower = new PinInSlot(design.law());
        this.ratio = plan.servoRatio();
        this.sense = Math.signum(design.travel());
    }

    @Override
    public Servo servo() {
        return plan.servo();
    }

    @Override
    public String output() {
        return "opening";
    }

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public double travel() {
        return plan.servoTravel();
    }

    @Override
    public double overTravel() {
        return design.rim().overTravel() * ratio;
    }

    /** Diameter of the inscribed opening, mm. */
    @Override
    public double output(double servo, Build build) {
        return 2 * design.band().innerRadius() - 2 * Math.abs(design.band().shift(blade(servo, build)));
    }

    private double blade(double servo, Build build) {
        double ring = sense * (servo + build.zero()) / ratio;
        return follower.bladeAngle(ring, 0, 0, build.pinOffset(), 0, 0);
    }

    /** Where the blades have swung out fully: a pin that stands off turns them a little there. */
    @Override
    public double start(Build build) {
        if (build.pinOffset() == 0) {
            return -build.zero();
        }
        double reach = travel() / 4;
        return Roots.last(servo -> blade(servo, build) > 0, -build.zero() + reach, -build.zero() - reach);
    }

    @Override
    public boolean hasPin() {
        return true;
    }

    /**
     * Play of the teeth on the rolling circle, and the play of pins in slots and bores across the slot at the pin's
     * distance from the axis; all taken up one after the other.
     */
    @Override
    public double lostMotion() {
        double teeth = plan.pair().backlash() / plan.pair().gearWorkingRadius();
        double pins = 0;
        double across =
                design.spec().clearances().slot() + design.spec().clearances().bore();
        for (int i = 0; i <= STATES; i++) {
            double b = design.closed() * i / STATES;
            pins = Math.max(pins, across / design.band().pinRadius(design.pin(), b));
        }
        double step = plan.stepUp().map(s -> s.pair().pinionPlay()).orElse(0.0);
        return (teeth + pins) * ratio + step;
    }

    @Override
    public String lostIn() {
        return "teeth " + Words.mm(plan.pair().backlash()) + ", drive pins in their slots "
                + Words.mm(design.spec().clearances().slot()) + ", pivot pins in their bores "
                + Words.mm(design.spec().clearances().bore())
                + (plan.stepUp().isPresent() ? ", teeth of the step-up" : "");
    }

    @Override
    public String sense() {
        boolean ring = design.travel() > 0 != design.spec().mirrored();
        boolean servo = plan.stepUp().isPresent() == ring;
        return servo ? "counter-clockwise" : "clockwise";
    }
}
