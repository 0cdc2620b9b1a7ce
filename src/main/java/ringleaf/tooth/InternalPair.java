// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * A pinion inside a ring of internal teeth.
 *
 * <p>Lengths in mm, angles in rad. Relations: handbook knowledge (ISO 21771 family; the three interference conditions
 * as in the common metric gear handbooks), from memory; what is derived says so.
 *
 * @param pinion the external gear
 * @param ring the internal gear, with more teeth
 * @param centreDistance of the two axes, mm; above the difference of the base radii
 */
public record InternalPair(ToothForm pinion, InternalForm ring, double centreDistance) {
    public InternalPair {
        if (pinion.module() != ring.module() || !pinion.rack().equals(ring.rack())) {
            throw new IllegalArgumentException("the gears of a pair share module and rack");
        }
        requireMoreTeeth(pinion, ring);
        if (!(centreDistance > ring.baseRadius() - pinion.baseRadius()) || Double.isInfinite(centreDistance)) {
            throw new IllegalArgumentException(
                    "at the centre distance " + centreDistance + " mm the base circles leave no line of action");
        }
    }

    /**
     * The pair at the distance where full teeth mesh without backlash:
     * inv aw = inv a + 2 tan a (x2 - x1)/(z2 - z1).
     */
    public static InternalPair of(ToothForm pinion, InternalForm ring) {
        requireMoreTeeth(pinion, ring);
        double angle = pinion.rack().pressureAngle();
        int difference = ring.teeth() - pinion.teeth();
        double gain = 2 * Math.tan(angle) * (ring.shift() - pinion.shift()) / difference;
        double working = Involute.arcInv(Involute.inv(angle) + gain);
        double distance = (ring.baseRadius() - pinion.baseRadius()) / Math.cos(working);
        return new InternalPair(pinion, ring, distance);
    }

    private static void requireMoreTeeth(ToothForm pinion, InternalForm ring) {
        if (ring.teeth() <= pinion.teeth()) {
            throw new IllegalArgumentException("the ring has more teeth than its pinion");
        }
    }

    public InternalPair withCentreDistance(double distance) {
        return new InternalPair(pinion, ring, distance);
    }

    /** cos aw = (rb2 - rb1)/a. */
    public double workingAngle() {
        return Math.acos((ring.baseRadius() - pinion.baseRadius()) / centreDistance);
    }

    public double pinionWorkingRadius() {
        return centreDistance * pinion.teeth() / (ring.teeth() - pinion.teeth());
    }

    public double ringWorkingRadius() {
        return centreDistance * ring.teeth() / (ring.teeth() - pinion.teeth());
    }

    /** Contact ratio: (sqrt(ra1² - rb1²) - sqrt(ra2² - rb2²) + a sin aw)/pb; holds without interference. */
    public double contactRatio() {
        double path = length(pinion.baseRadius(), pinion.tipRadius())
                - length(ring.baseRadius(), ring.tipRadius())
                + centreDistance * Math.sin(workingAngle());
        return path / pinion.basePitch();
    }

    private static double length(double base, double radius) {
        return base * InvoluteCurve.rollAt(base, radius);
    }

    /** From the pinion's tip circle to the ring's root circle, mm. */
    public double pinionTipClearance() {
        return ring.rootRadius() - centreDistance - pinion.tipRadius();
    }

    /** From the ring's tips to the pinion's root circle, mm. */
    public double ringTipClearance() {
        return ring.tipRadius() - centreDistance - pinion.rootRadius();
    }

    /**
     * Backlash along the rolling circles, mm: the ring's space less the pinion's tooth there. Exact. A larger centre
     * distance makes it smaller.
     */
    public double backlash() {
        double inner = pinionWorkingRadius();
        double outer = ringWorkingRadius();
        return 2 * outer * ring.spaceHalfAngleAt(outer) - 2 * inner * pinion.halfAngleAt(inner);
    }

    /** Backlash along the line of action, mm: jt cos aw. */
    public double normalBacklash() {
        return backlash() * Math.cos(workingAngle());
    }

    /** The pair thinned at the same distance for a backlash along the line of action; see {@link GearPair}. */
    public InternalPair withNormalBacklash(double normal, double pinionShare) {
        if (!(pinionShare >= 0 && pinionShare <= 1)) {
            throw new IllegalArgumentException("the pinion's share lies within 0 to 1, not " + pinionShare);
        }
        double total = (normal - normalBacklash()) / Math.cos(pinion.rack().pressureAngle());
        return new InternalPair(
                pinion.withThinning(pinion.thinning() + total * pinionShare),
                ring.withThinning(ring.thinning() + total * (1 - pinionShare)),
                centreDistance);
    }

    /**
     * Margin of the involute condition, z1/z2 - (1 - tan a(ra2)/tan aw): at least 0 when the ring's tips meet the
     * pinion outside its base tangent point.
     */
    public double involuteMargin() {
        double ratio = (double) pinion.teeth() / ring.teeth();
        return ratio - 1 + InvoluteCurve.rollAt(ring.baseRadius(), ring.tipRadius()) / Math.tan(workingAngle());
    }

    /**
     * Least radius of the ring's tips at which they meet the pinion where its involute has begun, mm. A ring of full
     * height reaches deeper than the rack that cut the pinion and as a rule has to be shortened to this. Derived from
     * the tangent lengths along the line of action.
     */
    public double ringTipLimit() {
        double start = length(pinion.baseRadius(), pinion.formRadius());
        return Math.hypot(ring.baseRadius(), start + centreDistance * Math.sin(workingAngle()));
    }

    /** Greatest radius of the pinion's tips at which they meet the ring where its involute has not yet ended, mm. */
    public double pinionTipLimit() {
        double end = length(ring.baseRadius(), ring.formRadius());
        return Math.hypot(pinion.baseRadius(), Math.max(0, end - centreDistance * Math.sin(workingAngle())));
    }

    /** Whether each tip meets the other's flank where that is involute, so that no root is touched. */
    public boolean isClean() {
        double rounding = 1e-9 * pinion.module();
        return ring.tipRadius() >= ringTipLimit() - rounding && pinion.tipRadius() <= pinionTipLimit() + rounding;
    }

    /** The pair with its tips lowered, where needed, until it {@link #isClean()}. */
    public InternalPair withCleanTips() {
        ToothForm lower = pinion.withTipRadius(Math.min(pinion.tipRadius(), pinionTipLimit()));
        InternalForm shorter = ring.withTipRadius(Math.max(ring.tipRadius(), ringTipLimit()));
        return new InternalPair(lower, shorter, centreDistance);
    }

    /**
     * Margin of the trochoid condition, rad: t1 z1/z2 + inv aw - inv a(ra2) - t2, at least 0 when the pinion's tips
     * clear the ring's tips on their way out of mesh. Infinite when the tip circles lie apart. Where the ring's tip
     * circle lies wholly in the pinion's, the tips never part: the directions in which the circles cross are then taken
     * at the far side, as they are where the circles just touch there, and the margin is below 0 (derived).
     */
    public double trochoidMargin() {
        double a = centreDistance;
        double tip = pinion.tipRadius();
        double inner = ring.tipRadius();
        if (a + tip <= inner) {
            return Double.POSITIVE_INFINITY;
        }
        boolean everywhere = a + inner <= tip;
        double first = everywhere ? -1 : (inner * inner - tip * tip - a * a) / (2 * a * tip);
        double second = everywhere ? -1 : (a * a + inner * inner - tip * tip) / (2 * a * inner);
        double working = Involute.inv(workingAngle());
        double pinionAngle = Math.acos(first) + Involute.inv(pinion.pressureAngleAt(tip)) - working;
        double ringTip = Involute.inv(ring.filling().pressureAngleAt(inner));
        return pinionAngle * pinion.teeth() / ring.teeth() + working - ringTip - Math.acos(second);
    }

    /**
     * Margin of the trimming condition, rad: at least 0 when the pinion can be put in from the side, along the line
     * of centres. t1 + inv a(ra1) - inv aw - (z2/z1)(t2 + inv a(ra2) - inv aw) with t1, t2 from the two tip circles,
     * where the tips come nearest to each other: ra1 sin t1 = ra2 sin t2, both turning alike. Where the ring's opening
     * is narrower than the pinion they come ever nearer up to its widest place, which is t2 = pi/2 (derived).
     */
    public double trimmingMargin() {
        double ratio = (double) pinion.teeth() / ring.teeth();
        double pinionTip = pinion.pressureAngleAt(pinion.tipRadius());
        double ringTip = ring.filling().pressureAngleAt(ring.tipRadius());
        double cosines = Math.cos(pinionTip) / Math.cos(ringTip);
        boolean narrow = ring.tipRadius() <= pinion.tipRadius();
        double first = narrow
                ? ring.tipRadius() / pinion.tipRadius()
                : Math.sqrt(Math.max(0, (1 - cosines * cosines) / (1 - ratio * ratio)));
        double second = narrow ? 1 : Math.sqrt(Math.max(0, (1 / (cosines * cosines) - 1) / (1 / (ratio * ratio) - 1)));
        double working = Involute.inv(workingAngle());
        double pinionAngle = Math.asin(Math.min(1, first)) + Involute.inv(pinionTip) - working;
        double ringAngle = Math.asin(Math.min(1, second)) + Involute.inv(ringTip) - working;
        return pinionAngle - ringAngle / ratio;
    }
}
