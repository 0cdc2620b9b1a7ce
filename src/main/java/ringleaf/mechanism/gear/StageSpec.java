package ringleaf.mechanism.gear;

import java.util.List;

/**
 * One stage, solved.
 *
 * @param ask what was known of it
 * @param mesh its two gears in mesh
 * @param others other teeth that would do, the next best first
 * @param at direction from the driver's axis to the driven gear's, rad
 * @param driver body of the driving gear
 * @param driven body of the driven gear
 */
record StageSpec(
        PairAsk ask, Mesh mesh, List<PairCandidate> others, double at, WheelSpec driver, WheelSpec driven) {
    StageSpec withDriver(WheelSpec other) {
        return new StageSpec(ask, mesh, others, at, other, driven);
    }

    StageSpec withDriven(WheelSpec other) {
        return new StageSpec(ask, mesh, others, at, driver, other);
    }
}
