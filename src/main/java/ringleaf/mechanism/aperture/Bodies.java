// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.leaf.Sweep;
import ringleaf.part.Motion;

/** The motion of ring, pinion and blades over states evenly spaced in ring angle. Unmirrored. */
final class Bodies implements Motion {
    static final int FIXED = 0;
    static final int RING = 1;
    static final int PINION = 2;
    static final int SERVO_GEAR = 3;
    static final int FIRST_BLADE = 4;

    private final ApertureDesign design;
    private final Sweep sweep;
    private final List<Integer> notable;

    Bodies(ApertureDesign design, Sweep sweep) {
        this.design = design;
        this.sweep = sweep;
        this.notable = notable(sweep);
    }

    static int blade(int index) {
        return FIRST_BLADE + index;
    }

    @Override
    public int states() {
        return sweep.states();
    }

    @Override
    public Placement pose(int body, int state) {
        if (body == FIXED) {
            return Placement.IDENTITY;
        }
        double ring = sweep.ringAngle[state];
        if (body == RING) {
            return Placement.turn(ring);
        }
        if (body < FIRST_BLADE) {
            return driven(body, ring);
        }
        double direction = (body - FIRST_BLADE) * design.spec().pitch();
        Point pivot = Point.polar(design.band().pivotRadius(), direction);
        return Placement.turnAbout(pivot, sweep.bladeAngle[state]);
    }

    /** Pinion and servo gear; a ring turned by hand has neither, and nothing rides on their bodies then. */
    private Placement driven(int body, double ring) {
        if (!(design.drive() instanceof PinionPlan plan)) {
            return Placement.IDENTITY;
        }
        return body == PINION
                ? Placement.turnAbout(plan.centre(), -ring * plan.ratio())
                : Placement.turnAbout(plan.servoCentre(), ring * plan.servoRatio());
    }

    @Override
    public String label(int state) {
        if (state == 0) {
            return "open";
        }
        return state == states() - 1 ? "closed" : "state " + state;
    }

    @Override
    public List<Integer> notable() {
        return notable;
    }

    /** Blade angle at a state, rad. */
    double bladeAngle(int state) {
        return sweep.bladeAngle[state];
    }

    /** Where lap, reach, pressure and pin radius are extreme, and where the blades lie deepest. */
    private static List<Integer> notable(Sweep sweep) {
        int[] best = {
            Sweep.leastOf(sweep.lap),
            Sweep.greatestOf(sweep.reach),
            Sweep.greatestOf(sweep.pressure),
            Sweep.leastOf(sweep.pinRadius),
            Sweep.greatestOf(sweep.pinRadius),
            sweep.layersAt
        };
        Arrays.sort(best);
        List<Integer> notable = new ArrayList<>();
        for (int state : best) {
            if (!notable.contains(state)) {
                notable.add(state);
            }
        }
        return notable;
    }
}
