// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import ringleaf.geom.Placement;
import ringleaf.geom.Point;

/**
 * One stage in its place.
 *
 * @param number from 1
 * @param spec as solved
 * @param driver its driving gear
 * @param driven its driven gear
 * @param driverAxis mm
 * @param drivenAxis mm
 * @param driverPhase turn of the driver's own frame in state 0, rad
 * @param drivenPhase turn of the driven gear's own frame in state 0, rad
 * @param turn of the stage's driver for a turn of the first driver, signed
 * @param zFrom lower face of its gears, mm
 * @param zTo upper face, mm
 */
record Stage(
        int number,
        StageSpec spec,
        Wheel driver,
        Wheel driven,
        Point driverAxis,
        Point drivenAxis,
        double driverPhase,
        double drivenPhase,
        double turn,
        double zFrom,
        double zTo) {
    Mesh mesh() {
        return spec.mesh();
    }

    /** Turn of the driven gear for a turn of the first driver, signed. */
    double drivenTurn() {
        return turn * mesh().turn();
    }

    Placement driverHome() {
        return new Placement(driverPhase, driverAxis);
    }

    Placement drivenHome() {
        return new Placement(drivenPhase, drivenAxis);
    }

    /** The pitch point, where the rolling circles touch. */
    Point pitchPoint() {
        return driverAxis.plus(Point.polar(mesh().driverWorkingRadius(), spec.at()));
    }
}
