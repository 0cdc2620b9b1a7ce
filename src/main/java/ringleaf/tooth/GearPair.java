// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * Two external gears of one module and rack at a centre distance.
 *
 * <p>Lengths in mm, angles in rad. The pinion is the gear that is named first; it need not be the smaller. Relations:
 * ISO 21771 family, from memory; what is derived says so.
 *
 * @param pinion the first gear
 * @param gear the second gear
 * @param centreDistance of the two axes, mm; above the sum of the base radii
 */
public record GearPair(ToothForm pinion, ToothForm gear, double centreDistance) {
    public GearPair {
        if (pinion.module() != gear.module() || !pinion.rack().equals(gear.rack())) {
            throw new IllegalArgumentException("the gears of a pair share module and rack");
        }
        if (!(centreDistance > pinion.baseRadius() + gear.baseRadius()) || Double.isInfinite(centreDistance)) {
            throw new IllegalArgumentException("at the centre distance " + centreDistance
                    + " mm the base circles leave no line of action between them");
        }
    }

    /** The pair at the distance where teeth of full thickness would mesh without backlash. */
    public static GearPair of(ToothForm pinion, ToothForm gear) {
        double sum = pinion.shift() + gear.shift();
        double angle = workingAngle(pinion.rack(), pinion.teeth() + gear.teeth(), sum);
        return new GearPair(pinion, gear, distance(pinion, gear, angle));
    }

    /**
     * Working pressure angle of teeth of full thickness that mesh without backlash:
     * inv aw = inv a + 2 tan a (x1 + x2)/(z1 + z2).
     */
    public static double workingAngle(BasicRack rack, int teethSum, double shiftSum) {
        double angle = rack.pressureAngle();
        return Involute.arcInv(Involute.inv(angle) + 2 * Math.tan(angle) * shiftSum / teethSum);
    }

    /** Sum of the profile shifts with which teeth of full thickness mesh without backlash at a given distance. */
    public static double shiftSum(double module, BasicRack rack, int teethSum, double centreDistance) {
        double angle = rack.pressureAngle();
        double cosine = module * teethSum / 2 * Math.cos(angle) / centreDistance;
        double gain = Involute.inv(Math.acos(cosine)) - Involute.inv(angle);
        return gain * teethSum / (2 * Math.tan(angle));
    }

    private static double distance(ToothForm pinion, ToothForm gear, double workingAngle) {
        return (pinion.baseRadius() + gear.baseRadius()) / Math.cos(workingAngle);
    }

    public GearPair withCentreDistance(double distance) {
        return new GearPair(pinion, gear, distance);
    }

    /** Pressure angle on the rolling circles: cos aw = (rb1 + rb2)/a. */
    public double workingAngle() {
        return Math.acos((pinion.baseRadius() + gear.baseRadius()) / centreDistance);
    }

    /** Radius of the pinion's rolling circle: a z1/(z1 + z2). */
    public double pinionWorkingRadius() {
        return centreDistance * pinion.teeth() / (pinion.teeth() + gear.teeth());
    }

    public double gearWorkingRadius() {
        return centreDistance * gear.teeth() / (pinion.teeth() + gear.teeth());
    }

    /** Where on the line of action the teeth touch. */
    public ContactPath contact() {
        return ContactPath.of(this);
    }

    /** From the pinion's tip circle to the gear's root circle, mm; negative when they cut. */
    public double pinionTipClearance() {
        return centreDistance - pinion.tipRadius() - gear.rootRadius();
    }

    /** From the gear's tip circle to the pinion's root circle, mm; negative when they cut. */
    public double gearTipClearance() {
        return centreDistance - gear.tipRadius() - pinion.rootRadius();
    }

    /** The pair with tips shortened, where needed, so that both keep the clearance (mm) from the mate's root circle. */
    public GearPair withTipClearance(double clearance) {
        double pinionTip = Math.min(pinion.tipRadius(), centreDistance - gear.rootRadius() - clearance);
        double gearTip = Math.min(gear.tipRadius(), centreDistance - pinion.rootRadius() - clearance);
        return new GearPair(pinion.withTipRadius(pinionTip), gear.withTipRadius(gearTip), centreDistance);
    }

    /**
     * Backlash along the rolling circles, mm; negative when the teeth overlap. Exact: the rolling pitch less both
     * thicknesses there, from the forms' thinning and from the distance alike.
     */
    public double backlash() {
        double pinionRadius = pinionWorkingRadius();
        double gearRadius = gearWorkingRadius();
        return pinionRadius * pinion.pitchAngle()
                - 2 * pinionRadius * pinion.halfAngleAt(pinionRadius)
                - 2 * gearRadius * gear.halfAngleAt(gearRadius);
    }

    /** Backlash along the line of action, the least gap between the idle flanks, mm: jt cos aw. */
    public double normalBacklash() {
        return backlash() * Math.cos(workingAngle());
    }

    /** Angle by which the pinion can turn while the gear stands, rad. */
    public double pinionPlay() {
        return backlash() / pinionWorkingRadius();
    }

    /** Angle by which the gear can turn while the pinion stands, rad. */
    public double gearPlay() {
        return backlash() / gearWorkingRadius();
    }

    /**
     * The pair, at the same distance, thinned so that its backlash along the line of action is {@code normal} mm.
     *
     * <p>Derivation: a thinning t on the reference circle takes t cos a/cos aw from the rolling circle's thickness and
     * so adds t cos a along the line of action. Root and tip circles stay.
     *
     * @param pinionShare share of the change that the pinion takes, 0 to 1
     */
    public GearPair withNormalBacklash(double normal, double pinionShare) {
        if (!(pinionShare >= 0 && pinionShare <= 1)) {
            throw new IllegalArgumentException("the pinion's share lies within 0 to 1, not " + pinionShare);
        }
        double total = (normal - normalBacklash()) / Math.cos(pinion.rack().pressureAngle());
        return new GearPair(
                pinion.withThinning(pinion.thinning() + total * pinionShare),
                gear.withThinning(gear.thinning() + total * (1 - pinionShare)),
                centreDistance);
    }

    /**
     * Turn of the pinion's outline (tooth 0 on its +x) that leaves equal backlash on both flanks, rad, within half a
     * pitch of {@code direction + pi}.
     *
     * <p>Derivation: with a space of the gear on the line of centres the pinion's tooth 0 points at the gear, by
     * symmetry; from there both roll in the ratio of their teeth.
     *
     * @param spaceCentre direction of the middle of any of the gear's tooth spaces from the gear's axis
     * @param direction from the gear's axis to the pinion's
     */
    public double pinionPhase(double spaceCentre, double direction) {
        double pitch = gear.pitchAngle();
        double past = spaceCentre - direction;
        past -= pitch * Math.rint(past / pitch);
        return direction + Math.PI - past * gear.teeth() / pinion.teeth();
    }
}
