// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import java.util.List;

/**
 * Blades that the solver has found.
 *
 * @param layout where the drive pin stands
 * @param law band, pin and slots
 * @param closed blade angle at the closed end, rad; the opening there is exactly the least one asked for
 * @param reach the blades' greatest distance from the axis over the travel, ears included, mm
 * @param cavityRadius reach and clearance, mm
 * @param ear radius of the ears that pin holes need beyond the band, mm; 0 for none
 * @param pressureLimit the limit of the pressure angle that was held, rad
 * @param bounds what keeps the cavity from being smaller, the strongest first
 * @param broken limits that do not hold, the worst first; empty for a good plan
 */
public record BladePlan(
        Layout layout,
        SlotLaw law,
        double closed,
        double reach,
        double cavityRadius,
        double ear,
        double pressureLimit,
        List<BladeLimit> bounds,
        List<Shortfall> broken) {

    public BladePlan {
        bounds = List.copyOf(bounds);
        broken = List.copyOf(broken);
    }

    public Band band() {
        return law.band();
    }

    public DrivePin pin() {
        return law.pin();
    }

    public boolean holds() {
        return broken.isEmpty();
    }

    /**
     * Whether nothing but the band itself keeps the cavity from being smaller. A lever then needs no narrower band, and
     * its pin stands outside of it: it cannot make a smaller cavity (reasoned, and held by random cases in the tests).
     */
    public boolean isBoundByTheBand() {
        boolean all = holds() && !bounds.isEmpty();
        for (BladeLimit bound : bounds) {
            all &= bound.isOfTheBand();
        }
        return all;
    }

    /**
     * A limit that does not hold, in the worst state.
     *
     * @param limit which
     * @param measured mm or rad
     * @param asked mm or rad
     * @param bladeAngle the state, rad
     */
    public record Shortfall(BladeLimit limit, double measured, double asked, double bladeAngle) {
        /** How far it is missed as a share of what is asked, or of 1 mm (0.1 rad) where that is less. */
        public double share() {
            double least = limit.unit().equals("deg") ? 0.1 : 1;
            return Math.abs(measured - asked) / Math.max(Math.abs(asked), least);
        }
    }
}
