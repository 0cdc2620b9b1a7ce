// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import ringleaf.geom.Point;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.ToothForm;

/**
 * A compound pair between servo and sector: the servo's gear drives a smaller wheel behind the base, and the wheel's
 * axle carries the pinion of the ring, so that the pinion turns further than the servo.
 *
 * @param pair the servo's gear first, the wheel on the pinion's axle second
 * @param direction from the axle to the servo, rad
 * @param axle diameter, mm
 * @param axleRoom added to the diameter of the bores in which the axle turns, mm
 */
record StepUp(GearPair pair, double direction, double axle, double axleRoom) {
    ToothForm servoGear() {
        return pair.pinion();
    }

    ToothForm wheel() {
        return pair.gear();
    }

    /** Turns of the axle for one of the servo. */
    double ratio() {
        return (double) servoGear().teeth() / wheel().teeth();
    }

    Point servoCentre(Point axleCentre) {
        return axleCentre.plus(Point.polar(pair.centreDistance(), direction));
    }

    /** Turn of the wheel's outline (a tooth on its +x) that puts a space on the line to the servo's gear, rad. */
    double wheelPhase() {
        return direction + wheel().pitchAngle() / 2;
    }

    /** Turn of the servo gear's outline that puts a tooth into that space, rad. */
    double servoPhase() {
        return pair.pinionPhase(direction, direction);
    }
}
