// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import ringleaf.geom.Placement;
import ringleaf.part.Motion;

/**
 * Wheels and belt over states evenly spaced in the belt's travel. Bodies: 0 stands still, then a body for each wheel,
 * one for the belt's band and one for each of its teeth.
 *
 * @param run of the belt
 * @param wheels number of wheels of the path that are bodies, the first ones
 * @param travel of the belt from the first state to the last, mm
 * @param states at least 2
 * @param isEndless whether nothing ends the turning
 */
record BeltMotion(BeltRun run, int wheels, double travel, int states, boolean isEndless) implements Motion {
    /** Body of the belt's band, which stays where it is. */
    int band() {
        return 1 + wheels;
    }

    int firstTooth() {
        return 2 + wheels;
    }

    /** Run of the belt at a state, mm. */
    double run(int state) {
        return travel * state / (states - 1);
    }

    /** Turn of a wheel at a state, rad, counter-clockwise positive. */
    double turn(int wheel, int state) {
        Wheel w = run.path().wheels().get(wheel);
        return w.sense() * run(state) / w.radius();
    }

    @Override
    public Placement pose(int body, int state) {
        if (body == 0 || body == band()) {
            return Placement.IDENTITY;
        }
        if (body <= wheels) {
            return Placement.turnAbout(run.path().wheels().get(body - 1).centre(), turn(body - 1, state));
        }
        return run.moved(body - firstTooth(), run(state));
    }
}
