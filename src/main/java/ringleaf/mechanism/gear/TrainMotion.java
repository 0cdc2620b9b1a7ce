// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Motion;

/** Every shaft turning in its ratio, over states evenly spaced in the driver's angle. Body n is the n-th shaft. */
final class TrainMotion implements Motion {
    private final TrainDesign design;
    private final int states;

    TrainMotion(TrainDesign design, int states) {
        this.design = design;
        this.states = states;
    }

    @Override
    public int states() {
        return states;
    }

    /** Angle of the first driver at a state, rad. */
    double driver(int state) {
        return design.spec().travel() * state / (states - 1);
    }

    @Override
    public Placement pose(int body, int state) {
        if (body == 0) {
            return Placement.IDENTITY;
        }
        if (body == 1) {
            return Placement.turnAbout(Point.ORIGIN, driver(state));
        }
        Stage stage = design.stages().get(body - 2);
        return Placement.turnAbout(stage.drivenAxis(), driver(state) * stage.drivenTurn());
    }

    @Override
    public boolean isEndless() {
        return design.spec().turnsOn();
    }

    /** The state at which the first mesh is nearest to a share of a pitch past its start; the earliest of equals. */
    int phase(double share) {
        double pitch = design.stages().get(0).mesh().driver().pitchAngle();
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < states; i++) {
            double off = driver(i) / pitch - share;
            off = Math.abs(off - Math.rint(off));
            if (off < least - 1e-9) {
                least = off;
                best = i;
            }
        }
        return best;
    }
}
