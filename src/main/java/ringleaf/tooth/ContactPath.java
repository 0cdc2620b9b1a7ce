// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * Where two external gears touch: on the line of action, from where the driven gear's tip enters to where the driving
 * one's leaves. The pinion drives; when the gear drives, before and after change places.
 *
 * <p>Lengths in mm along the line of action from the pitch point, angles in rad. Relations: ISO 21771 family, from
 * memory.
 *
 * @param pair the two gears
 * @param before length before the pitch point, reached by the gear's tip
 * @param after length after the pitch point, reached by the pinion's tip
 * @param beforeLimit the most that the pinion's involute allows before the pitch point: to where it starts
 * @param afterLimit the most that the gear's involute allows after the pitch point
 */
public record ContactPath(GearPair pair, double before, double after, double beforeLimit, double afterLimit) {
    static ContactPath of(GearPair pair) {
        double tangent = Math.tan(pair.workingAngle());
        ToothForm pinion = pair.pinion();
        ToothForm gear = pair.gear();
        double pinionReach = tangentLength(pinion, pinion.tipRadius()) - pinion.baseRadius() * tangent;
        double gearReach = tangentLength(gear, gear.tipRadius()) - gear.baseRadius() * tangent;
        double pinionStart = pinion.baseRadius() * tangent - tangentLength(pinion, pinion.formRadius());
        double gearStart = gear.baseRadius() * tangent - tangentLength(gear, gear.formRadius());
        return new ContactPath(pair, gearReach, pinionReach, pinionStart, gearStart);
    }

    private static double tangentLength(ToothForm form, double radius) {
        double base = form.baseRadius();
        return Math.sqrt(Math.max(0, (radius - base) * (radius + base)));
    }

    /** Contact ratio as the tips alone give it; holds only without interference. */
    public double ratio() {
        return (before + after) / pair.pinion().basePitch();
    }

    /** Contact ratio of what both involutes can carry: the path cut off where one of them has not begun. */
    public double usableRatio() {
        return (Math.min(before, beforeLimit) + Math.min(after, afterLimit))
                / pair.pinion().basePitch();
    }

    public double gearAngleBefore() {
        return Math.min(before, beforeLimit) / pair.gear().baseRadius();
    }

    public double gearAngleAfter() {
        return Math.min(after, afterLimit) / pair.gear().baseRadius();
    }

    /**
     * Length, mm, by which the gear's tip reaches past the pinion's base tangent point; above 0 the involute pair
     * interferes: ra2 above sqrt(rb2² + (a sin aw)²).
     */
    public double gearTipPastTangent() {
        return before - pair.pinion().baseRadius() * Math.tan(pair.workingAngle());
    }

    /** The same for the pinion's tip and the gear's base tangent point. */
    public double pinionTipPastTangent() {
        return after - pair.gear().baseRadius() * Math.tan(pair.workingAngle());
    }

    /** Whether a tip meets the mate's flank where that is still involute: no interference with root curve or base. */
    public boolean isClean() {
        double rounding = 1e-9 * pair.pinion().module();
        return before <= beforeLimit + rounding && after <= afterLimit + rounding;
    }

    /** Greatest tip radius of the gear that meets the pinion where its involute has begun, mm. */
    public double gearTipLimit() {
        return tipLimit(pair.gear(), beforeLimit);
    }

    /** Greatest tip radius of the pinion that meets the gear where its involute has begun, mm. */
    public double pinionTipLimit() {
        return tipLimit(pair.pinion(), afterLimit);
    }

    private double tipLimit(ToothForm form, double reach) {
        return Math.hypot(form.baseRadius(), form.baseRadius() * Math.tan(pair.workingAngle()) + reach);
    }
}
