// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import ringleaf.curve.Roots;

/**
 * A profile shift for each gear of a pair, chosen so that small pinions are not undercut, tips keep a width, and both
 * gears slide alike.
 *
 * @param pinion profile shift of the first gear, modules
 * @param gear profile shift of the second, modules
 */
public record ShiftChoice(double pinion, double gear) {
    /** Least tip thickness in modules: common practice, no source; 0.4 for case-hardened teeth. */
    public static final double LEAST_TIP = 0.2;

    /**
     * Least shift of a single gear that keeps it free of undercut, 0 for enough teeth. Below 10 teeth of form A the tip
     * then is thinner than {@link #LEAST_TIP} and has to be lowered: {@link ToothForm#withLeastTipThickness}.
     */
    public static double forPinion(BasicRack rack, int teeth) {
        return Math.max(0, rack.leastShift(teeth));
    }

    /**
     * Shifts of a given sum at which the specific sliding is the same where contact begins and where it ends, each
     * gear kept free of undercut and with tips of at least {@code leastTip} modules. Where these limits clash, freedom
     * from undercut of the first gear goes first, then of the second, then the tips.
     *
     * <p>Specific sliding at a point with the radii of curvature p1, p2 of the two flanks is 1 - z1 p2/(z2 p1) on the
     * first gear; derived from the flanks' rolling speeds. That equal sliding makes equal wear is common practice, no
     * source.
     *
     * @param shiftSum x1 + x2; 0 keeps the centre distance at m (z1 + z2)/2
     */
    public static ShiftChoice of(BasicRack rack, int pinionTeeth, int gearTeeth, double shiftSum, double leastTip) {
        double least = rack.leastShift(pinionTeeth);
        double most = shiftSum - rack.leastShift(gearTeeth);
        double low = shiftSum - shiftUpTo(rack, gearTeeth, shiftSum - least, leastTip);
        double high = shiftUpTo(rack, pinionTeeth, most, leastTip);
        if (high <= low) {
            double shift = Math.max(least, Math.min(most, (low + high) / 2));
            return new ShiftChoice(shift, shiftSum - shift);
        }
        if (excess(rack, pinionTeeth, gearTeeth, high, shiftSum - high) <= 0) {
            return new ShiftChoice(high, shiftSum - high);
        }
        if (excess(rack, pinionTeeth, gearTeeth, low, shiftSum - low) >= 0) {
            return new ShiftChoice(low, shiftSum - low);
        }
        // More shift of the first gear always moves the sliding from it to its mate, so there is one balance.
        double x =
                Roots.between(shift -> excess(rack, pinionTeeth, gearTeeth, shift, shiftSum - shift), low, high, 1e-14);
        return new ShiftChoice(x, shiftSum - x);
    }

    /** The shift {@code most}, or less where the tips would be too thin; mostly they are not, which is soon seen. */
    private static double shiftUpTo(BasicRack rack, int teeth, double most, double leastTip) {
        boolean thick = most > -1
                && most < teeth
                && ToothForm.of(1, teeth, most, 0, rack).tipThickness() >= leastTip;
        return thick ? most : Math.min(most, ToothForm.shiftForTip(rack, teeth, leastTip));
    }

    /** Sliding of the second gear at the end of contact less that of the first at its beginning, in magnitude. */
    private static double excess(BasicRack rack, int pinionTeeth, int gearTeeth, double pinion, double gear) {
        GearPair pair = GearPair.of(
                        ToothForm.of(1, pinionTeeth, pinion, 0, rack), ToothForm.of(1, gearTeeth, gear, 0, rack))
                .withTipClearance(rack.clearance());
        double first = pinionSliding(pair);
        double second = gearSliding(pair);
        if (first == second) {
            return 0;
        }
        return second - first;
    }

    /**
     * Magnitude of the specific sliding on the first gear where contact begins (its root, the mate's tip); infinite
     * when the mate's tip reaches the base tangent point.
     */
    public static double pinionSliding(GearPair pair) {
        ContactPath path = pair.contact();
        double tangent = Math.tan(pair.workingAngle());
        double own = pair.pinion().baseRadius() * tangent - path.before();
        double mate = pair.gear().baseRadius() * tangent + path.before();
        return sliding(own, mate, (double) pair.pinion().teeth() / pair.gear().teeth());
    }

    /** The same on the second gear where contact ends. */
    public static double gearSliding(GearPair pair) {
        ContactPath path = pair.contact();
        double tangent = Math.tan(pair.workingAngle());
        double own = pair.gear().baseRadius() * tangent - path.after();
        double mate = pair.pinion().baseRadius() * tangent + path.after();
        return sliding(own, mate, (double) pair.gear().teeth() / pair.pinion().teeth());
    }

    private static double sliding(double own, double mate, double ratio) {
        return own <= 0 ? Double.POSITIVE_INFINITY : Math.abs(1 - ratio * mate / own);
    }
}
