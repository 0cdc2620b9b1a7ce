// SPDX-License-Identifier: Apache-2.0
package ringleaf.trial;

import ringleaf.mechanism.ServoLaw;
import ringleaf.spec.shared.Servo;

/** The arm sits on the servo's horn and turns with it; {@code swing} in rad. */
record NoddingLaw(Servo servo, double swing) implements ServoLaw {
    @Override
    public String output() {
        return "angle";
    }

    @Override
    public String unit() {
        return "deg";
    }

    @Override
    public double travel() {
        return Math.min(swing, servo.travel());
    }

    @Override
    public double overTravel() {
        return 0.1;
    }

    @Override
    public double output(double turn, Build build) {
        return Math.toDegrees(turn + build.zero());
    }

    @Override
    public boolean hasPin() {
        return false;
    }

    @Override
    public double lostMotion() {
        return 0;
    }

    @Override
    public String lostIn() {
        return "nothing";
    }

    @Override
    public String sense() {
        return "counter-clockwise";
    }
}
