// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import ringleaf.mechanism.ServoLaw;
import ringleaf.part.Words;
import ringleaf.spec.shared.Servo;

/**
 * What the servo of a rack moves: the rack, evenly, by the pinion's reference radius for a turn of one radian.
 *
 * @param layout of rack and pinion
 * @param servo on the pinion
 */
record RackLaw(RackLayout layout, Servo servo) implements ServoLaw {
    @Override
    public String output() {
        return "position";
    }

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public double travel() {
        return Math.min(layout.travel(), servo.travel());
    }

    @Override
    public double overTravel() {
        return layout.spec().rooms().stop().mm() / layout.pinion().referenceRadius();
    }

    @Override
    public double output(double servoTurn, Build build) {
        return layout.pinion().referenceRadius() * (servoTurn + build.zero());
    }

    @Override
    public boolean hasPin() {
        return false;
    }

    /** The play of the teeth, as a turn of the servo. */
    @Override
    public double lostMotion() {
        return layout.backlash() / layout.pinion().referenceRadius();
    }

    @Override
    public String lostIn() {
        return "teeth " + Words.mm(layout.backlash());
    }

    @Override
    public String sense() {
        return "counter-clockwise";
    }
}
