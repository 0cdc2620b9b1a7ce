// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import ringleaf.spec.shared.Servo;

/**
 * What a servo on the first axle of gears or pulleys turns: the last axle, at a fixed ratio.
 *
 * @param driverTravel turn of the first axle over the whole travel, rad, counter-clockwise positive
 * @param ratio turns of the first axle to one of the last
 * @param lostMotion turn of the servo that a change of sense takes, rad
 * @param lostIn where it is lost, in words
 */
public record RatioLaw(double driverTravel, double ratio, Servo servo, double lostMotion, String lostIn)
        implements ServoLaw {
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
        return Math.min(Math.abs(driverTravel), servo.travel());
    }

    @Override
    public double overTravel() {
        return 0;
    }

    /** Turn of the last axle, unsigned, degrees. */
    @Override
    public double output(double servoTurn, Build build) {
        return Math.toDegrees(servoTurn + build.zero()) / ratio;
    }

    @Override
    public boolean hasPin() {
        return false;
    }

    @Override
    public String sense() {
        return driverTravel > 0 ? "counter-clockwise" : "clockwise";
    }
}
