// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * Dimensions over and between pins by the handbook's formulas (ISO 21771 family, from memory), held against published
 * values: what outlines are then measured against. All lengths in mm; thinning is part of the tooth's thickness.
 */
final class PinMeasure {
    private PinMeasure() {}

    /**
     * Pressure angle at the centre of a pin of the given diameter that touches both flanks of a space, rad:
     * inv p = dp/db - (space half angle on the base circle). Outside its range (a pin so small that it sinks below the
     * base circle) it throws.
     */
    static double pinAngle(ToothForm form, double pinDiameter) {
        double half = Math.PI / form.teeth() - form.baseHalfAngle();
        double value = pinDiameter / form.baseDiameter() - half;
        if (!(value >= 0)) {
            throw new IllegalArgumentException("a pin of " + pinDiameter + " mm falls through to the root");
        }
        return Involute.arcInv(value);
    }

    /** Radius of the centre of that pin. */
    static double pinRadius(ToothForm form, double pinDiameter) {
        return form.baseRadius() / Math.cos(pinAngle(form, pinDiameter));
    }

    /**
     * Dimension over two pins in opposite spaces: db/cos p + dp, the first term times cos(90°/z) for an odd number of
     * teeth.
     */
    static double overPins(ToothForm form, double pinDiameter) {
        return acrossPins(form.teeth(), 2 * pinRadius(form, pinDiameter)) + pinDiameter;
    }

    /**
     * Dimension between two pins in opposite spaces of an internal gear: inv p = (tooth-space half angle on the base
     * circle) - dp/db, db/cos p - dp.
     *
     * @param form of the external gear that fills the spaces: an internal space is as wide as its tooth, with the same
     *     sign of shift; thinning of the ring's own teeth is a negative thinning here
     */
    static double betweenPins(ToothForm form, double pinDiameter) {
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
    static double bestPinDiameter(ToothForm form) {
        double touched = form.referenceRadius() + form.shift() * form.module();
        double roll = InvoluteCurve.rollAt(form.baseRadius(), touched);
        double half = Math.PI / form.teeth() - form.baseHalfAngle();
        // The flank's normal leaves the base circle in the direction half + roll from the middle of the space, touches
        // the flank at the length rb roll and meets the middle at rb tan(half + roll): there is the pin's centre.
        return form.baseDiameter() * (Math.tan(half + roll) - roll);
    }
}
