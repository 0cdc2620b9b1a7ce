// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The numbers of one external spur gear's teeth, as cut by the basic rack.
 *
 * <p>Thinning is taken by a tool tooth that is thicker by as much, so that the root circle stays where the profile
 * shift puts it. Relations: ISO 21771 family, from memory, unless a method says otherwise.
 *
 * @param module mm, above 0
 * @param teeth number of teeth, at least {@link #FEWEST_TEETH}
 * @param shift profile shift x in modules, positive away from the axis
 * @param thinning by how much a tooth is thinner on the reference circle than without backlash, along the arc, mm
 * @param rack the basic rack
 * @param tipRadius of the tip circle, mm
 */
public record ToothForm(double module, int teeth, double shift, double thinning, BasicRack rack, double tipRadius) {
    /** Fewer teeth leave no tooth between two undercut roots. */
    public static final int FEWEST_TEETH = 4;

    /** Share of its foot that a tooth keeps where roots are cut deeper. */
    private static final double LEAST_FOOT = 0.8;

    public ToothForm {
        if (!(module > 0) || Double.isInfinite(module)) {
            throw new IllegalArgumentException("a module is above 0 mm, not " + module);
        }
        if (teeth < FEWEST_TEETH) {
            throw new IllegalArgumentException("a gear has at least " + FEWEST_TEETH + " teeth, not " + teeth);
        }
        if (!(Math.abs(shift) <= teeth) || !(Math.abs(thinning) <= module)) {
            throw new IllegalArgumentException(
                    "profile shift " + shift + " or thinning " + thinning + " is out of reach of the module");
        }
        double root = module * (teeth / 2.0 - rack.depth() + shift);
        if (!(tipRadius > root) || !(root > 0)) {
            throw new IllegalArgumentException(
                    "tip radius " + tipRadius + " does not lie outside the root radius " + root);
        }
    }

    /** Teeth at full height: tip radius m (z/2 + ha* + x). */
    public static ToothForm of(double module, int teeth, double shift, double thinning, BasicRack rack) {
        return new ToothForm(module, teeth, shift, thinning, rack, module * (teeth / 2.0 + rack.addendum() + shift));
    }

    public ToothForm withThinning(double newThinning) {
        return new ToothForm(module, teeth, shift, newThinning, rack, tipRadius);
    }

    public ToothForm withRack(BasicRack other) {
        return new ToothForm(module, teeth, shift, thinning, other, tipRadius);
    }

    public ToothForm withTipRadius(double newTipRadius) {
        return new ToothForm(module, teeth, shift, thinning, rack, newTipRadius);
    }

    /** Angle from tooth to tooth, rad. */
    public double pitchAngle() {
        return 2 * Math.PI / teeth;
    }

    /** pi m, mm along the reference circle. */
    public double pitch() {
        return Math.PI * module;
    }

    /** Distance of neighbouring flanks along their common normal, mm: pi m cos a. */
    public double basePitch() {
        return pitch() * Math.cos(rack.pressureAngle());
    }

    /** d = m z, mm. */
    public double referenceDiameter() {
        return module * teeth;
    }

    public double referenceRadius() {
        return module * teeth / 2;
    }

    /** db = d cos a, mm. */
    public double baseDiameter() {
        return referenceDiameter() * Math.cos(rack.pressureAngle());
    }

    public double baseRadius() {
        return baseDiameter() / 2;
    }

    public double tipDiameter() {
        return 2 * tipRadius;
    }

    public double rootRadius() {
        return module * (teeth / 2.0 - rack.depth() + shift);
    }

    /** Thickness of a tooth along the reference circle, mm: m (pi/2 + 2 x tan a) - thinning. */
    public double thickness() {
        return module * (Math.PI / 2 + 2 * shift * Math.tan(rack.pressureAngle())) - thinning;
    }

    /**
     * Half the angle that a tooth's two involutes enclose at the radius, rad: s/d + inv a - inv a(r). Negative beyond
     * the point where they meet.
     *
     * @throws IllegalArgumentException inside the base circle, where there is no involute
     */
    public double halfAngleAt(double radius) {
        return baseHalfAngle() - Involute.inv(pressureAngleAt(radius));
    }

    /** Half the angle between the two involutes of a tooth where they start on the base circle, rad. */
    public double baseHalfAngle() {
        return thickness() / referenceDiameter() + Involute.inv(rack.pressureAngle());
    }

    /**
     * Pressure angle of the involute at the radius, rad: cos a(r) = rb/r.
     *
     * @throws IllegalArgumentException inside the base circle, where there is no involute
     */
    public double pressureAngleAt(double radius) {
        double base = baseRadius();
        if (!(radius >= base * (1 - 1e-15))) {
            throw new IllegalArgumentException("no involute at radius " + radius + ", inside the base circle " + base);
        }
        // atan of the roll angle: near the base circle acos(rb/r) would lose half the digits.
        return Math.atan(Math.sqrt(Math.max(0, (radius - base) * (radius + base))) / base);
    }

    /** Arc thickness between a tooth's two involutes at any diameter from the base circle on, mm. */
    public double thicknessAt(double diameter) {
        return diameter * halfAngleAt(diameter / 2);
    }

    /** Arc thickness of the tooth on its tip circle, mm; 0 or less means that the flanks meet before. */
    public double tipThickness() {
        return thicknessAt(tipDiameter());
    }

    /** The radius where a tooth's two flanks meet in a point, mm: inv a(r) = half the angle at the base circle. */
    public double peakRadius() {
        double half = baseHalfAngle();
        if (half <= 0) {
            throw new IllegalArgumentException("the tooth is thinned away on its base circle");
        }
        return baseRadius() / Math.cos(Involute.arcInv(half));
    }

    /** Least thickness of a tooth on its root curve, mm, on 64 points of it. */
    public double footThickness() {
        return ToothFlank.of(this).footThickness();
    }

    /** Least profile shift that keeps these teeth free of undercut. */
    public double leastShift() {
        return rack.leastShift(teeth);
    }

    /** Whether the tool's tip cuts into the involute: its straight flank reaches below the base tangent point. */
    public boolean isUndercut() {
        return straightEnd() < -1e-9 * module;
    }

    /**
     * Distance along the line of action from the base tangent point to where the tool's straight flank ends, mm;
     * negative when the tool reaches beyond the tangent point and undercuts: r sin a - (h - x) m/sin a with the depth
     * h of the straight flank. Derivation: the tool's flank ends (h - x) m below the rolling line, which the line of
     * action meets at the angle a.
     */
    double straightEnd() {
        double sine = Math.sin(rack.pressureAngle());
        return referenceRadius() * sine - (rack.straightDepth() - shift) * module / sine;
    }

    /**
     * Diameter where the involute starts, mm. Without undercut 2 sqrt(rb² + (r sin a - (h - x) m/sin a)²), with it
     * the diameter at which the root curve crosses the involute (solved to 1e-14 of the angle).
     */
    public double formDiameter() {
        return 2 * formRadius();
    }

    public double formRadius() {
        return isUndercut() ? ToothFlank.of(this).joint().norm() : Math.hypot(baseRadius(), straightEnd());
    }

    /**
     * The same teeth with the tip lowered, where needed, until it is at least {@code thickness} mm thick.
     *
     * @throws IllegalArgumentException when the tooth is thinner than that on its base circle
     */
    public ToothForm withLeastTipThickness(double thickness) {
        if (tipThickness() >= thickness) {
            return this;
        }
        if (!(thicknessAt(baseDiameter()) > thickness)) {
            throw new IllegalArgumentException("these teeth are nowhere " + thickness + " mm thick");
        }
        double radius = new BrentSolver(1e-15, 1e-14 * module)
                .solve(200, r -> thicknessAt(2 * r) - thickness, baseRadius(), tipRadius);
        return withTipRadius(radius);
    }

    /**
     * The profile shift at which teeth of full height ha* + x are {@code thickness} modules thick at the tip; a larger
     * one makes them thinner. With 0 it is the peaking limit.
     */
    public static double shiftForTip(BasicRack rack, int teeth, double thickness) {
        // Many teeth shifted far inwards are pointed as well: the limit sought lies above the middle of the range.
        double low = rack.dedendum() - rack.addendum() - teeth / 2.0 * (1 - Math.cos(rack.pressureAngle()));
        low = Math.max(low, Math.min(0, leastThick(rack, teeth, thickness)));
        return new BrentSolver(1e-15, 1e-14)
                .solve(300, x -> of(1, teeth, x, 0, rack).tipThickness() - thickness, low, teeth);
    }

    /** A shift, from 0 downwards, at which the tip is still thicker than asked for, or a low one where none is. */
    private static double leastThick(BasicRack rack, int teeth, double thickness) {
        double shift = 0;
        while (shift > -teeth && of(1, teeth, shift, 0, rack).tipThickness() <= thickness) {
            shift -= 0.25;
        }
        return shift;
    }

    /**
     * Whether the same tooth with deeper roots keeps enough of its foot: as much as it is drawn with, or four fifths of
     * that and no neck below the web. The share is a choice.
     *
     * @param drawn the tooth with the roots of its basic rack
     * @param web least width that stands by itself, mm
     */
    public boolean keepsFoot(ToothForm drawn, double web) {
        double foot = footThickness();
        double above = Math.max(thickness(), thicknessAt(formDiameter()));
        boolean neck = foot < web && above > web;
        return foot >= drawn.footThickness() || foot >= LEAST_FOOT * drawn.footThickness() && !neck;
    }
}
