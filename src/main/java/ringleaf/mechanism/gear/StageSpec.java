// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.List;
import ringleaf.geom.Point;
import ringleaf.tooth.TeethRatio;

/**
 * One stage, solved.
 *
 * @param ask what was known of it
 * @param mesh its two gears in mesh
 * @param others candidates that come next, which nobody has tried
 * @param at direction from the driver's axis to the driven gear's, rad
 * @param driver body of the driving gear
 * @param driven body of the driven gear
 */
record StageSpec(PairAsk ask, Mesh mesh, List<PairCandidate> others, double at, WheelSpec driver, WheelSpec driven) {
    TeethRatio teeth() {
        return new TeethRatio(mesh.driver().teeth(), mesh.drivenTeeth());
    }

    /** Where the driven gear's axis stands, the driver's standing at a point. */
    Point drivenAxis(Point driverAxis) {
        double direction = mesh instanceof Mesh.Inner ? at + Math.PI : at;
        return driverAxis.plus(Point.polar(mesh.centreDistance(), direction));
    }

    /** Farthest reach of the driver from its axis, mm. */
    double driverReach() {
        return driver.ringRadius().orElse(mesh.driverRim().tipRadius());
    }

    /** Farthest reach of the driven gear from its axis, mm. */
    double drivenReach() {
        return driven.ringRadius().orElse(mesh.drivenRim().tipRadius());
    }

    StageSpec withOthers(List<PairCandidate> candidates) {
        return new StageSpec(ask, mesh, candidates, at, driver, driven);
    }

    StageSpec withDriver(WheelSpec other) {
        return new StageSpec(ask, mesh, others, at, other, driven);
    }

    StageSpec withDriven(WheelSpec other) {
        return new StageSpec(ask, mesh, others, at, driver, other);
    }
}
