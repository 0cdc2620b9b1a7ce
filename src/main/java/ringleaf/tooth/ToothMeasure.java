// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * What a person measures on cut teeth: span over several teeth, dimension over pins, thickness along the chord.
 *
 * <p>All lengths in mm. Relations: handbook knowledge (ISO 21771 family), from memory, unless a method says
 * otherwise; thinning is part of the tooth's thickness and enters everywhere.
 */
public final class ToothMeasure {
    private ToothMeasure() {}

    /**
     * Teeth to span so that the caliper touches near the middle of the flanks: z a_v/pi + 1/2 to the nearest whole
     * number, with the pressure angle a_v on the circle of the diameter d + 2 x m.
     */
    public static int spanTeeth(ToothForm form) {
        double touched = form.referenceRadius() + form.shift() * form.module();
        double angle = form.pressureAngleAt(Math.max(touched, form.baseRadius()));
        // Two tangent lengths make up the span, which is one tooth on the base circle and k - 1 base pitches.
        double arc = 2 * form.baseRadius() * Math.tan(angle);
        double first = 2 * form.baseRadius() * form.baseHalfAngle();
        long count = Math.round((arc - first) / form.basePitch() + 1);
        return (int) Math.max(1, Math.min(count, form.teeth() - 1));
    }

    /** The same as a real number by the short rule z a/pi + 1/2, which holds for the profile shift 0 only. */
    public static double spanTeethUnshifted(ToothForm form) {
        return form.teeth() * form.rack().pressureAngle() / Math.PI + 0.5;
    }

    /**
     * Span over {@code count} teeth (base tangent length): m cos a (pi (k - 1/2) + z inv a) + 2 x m sin a, less
     * thinning cos a.
     */
    public static double span(ToothForm form, int count) {
        double angle = form.rack().pressureAngle();
        double units = Math.PI * (count - 0.5) + form.teeth() * Involute.inv(angle);
        return form.module() * (Math.cos(angle) * units + 2 * form.shift() * Math.sin(angle))
                - form.thinning() * Math.cos(angle);
    }

    /** Radius at which a caliper over {@code count} teeth touches the flanks: half the span from the base tangent. */
    public static double spanRadius(ToothForm form, int count) {
        return Math.hypot(form.baseRadius(), span(form, count) / 2);
    }

    /**
     * Pressure angle at the centre of a pin of the given diameter that touches both flanks of a space, rad:
     * inv p = dp/db - (space half angle on the base circle). Outside its range (a pin so small that it sinks below the
     * base circle) it throws.
     */
    public static double pinAngle(ToothForm form, double pinDiameter) {
        double half = Math.PI / form.teeth() - form.baseHalfAngle();
        double value = pinDiameter / form.baseDiameter() - half;
        if (!(value >= 0)) {
            throw new IllegalArgumentException("a pin of " + pinDiameter + " mm falls through to the root");
        }
        return Involute.arcInv(value);
    }

    /** Radius of the centre of that pin. */
    public static double pinRadius(ToothForm form, double pinDiameter) {
        return form.baseRadius() / Math.cos(pinAngle(form, pinDiameter));
    }

    /**
     * Dimension over two pins in opposite spaces: db/cos p + dp, the first term times cos(90°/z) for an odd number of
     * teeth.
     */
    public static double overPins(ToothForm form, double pinDiameter) {
        return acrossPins(form.teeth(), 2 * pinRadius(form, pinDiameter)) + pinDiameter;
    }

    /**
     * Dimension between two pins in opposite spaces of an internal gear: inv p = (tooth-space half angle on the base
     * circle) - dp/db, db/cos p - dp.
     *
     * @param form of the external gear that fills the spaces: an internal space is as wide as its tooth, with the same
     *     sign of shift; thinning of the ring's own teeth is a negative thinning here
     */
    public static double betweenPins(ToothForm form, double pinDiameter) {
        double value = form.baseHalfAngle() - pinDiameter / form.baseDiameter();
        if (!(value >= 0)) {
            throw new IllegalArgumentException("a pin of " + pinDiameter + " mm does not enter the space");
        }
        double angle = Involute.arcInv(value);
        return acrossPins(form.teeth(), form.baseDiameter() / Math.cos(angle)) - pinDiameter;
    }

    private static double acrossPins(int teeth, double diameter) {
        return teeth % 2 == 0 ? diameter : diameter * Math.cos(Math.PI / 2 / teeth);
    }

    /** Diameter of the pin that touches the flanks on the circle d + 2 x m, where a measurement is surest; derived. */
    public static double bestPinDiameter(ToothForm form) {
        double touched = form.referenceRadius() + form.shift() * form.module();
        double roll = InvoluteCurve.rollAt(form.baseRadius(), touched);
        double half = Math.PI / form.teeth() - form.baseHalfAngle();
        // The flank's normal leaves the base circle in the direction half + roll from the middle of the space, touches
        // the flank at the length rb roll and meets the middle at rb tan(half + roll): there is the pin's centre.
        return form.baseDiameter() * (Math.tan(half + roll) - roll);
    }

    /** Half the angle that the tooth's thickness takes on the reference circle, rad. */
    public static double halfAngle(ToothForm form) {
        return form.thickness() / form.referenceDiameter();
    }

    /** Thickness of the tooth along the chord of its reference circle: d sin(s/d). */
    public static double chordalThickness(ToothForm form) {
        return form.referenceDiameter() * Math.sin(halfAngle(form));
    }

    /** Height from that chord to the tip: ra - r cos(s/d). */
    public static double chordalHeight(ToothForm form) {
        return form.tipRadius() - form.referenceRadius() * Math.cos(halfAngle(form));
    }
}
