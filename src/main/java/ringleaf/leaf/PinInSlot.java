// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import ringleaf.geom.Angles;
import ringleaf.geom.Point;

/**
 * The angle of a blade whose pivot, lever or slot is not where it was drawn. A straight slot that runs beside the axis
 * at the distance s in the direction A holds the pin P + L e^{i(b + g)} when
 * {@code L sin(b + g - A) = s - Im(P e^{-iA})}, which gives b in closed form. A curved slot is taken to first order in
 * the errors; what is left out is about the error squared by the lever's length (derived for this project).
 */
public final class PinInSlot {
    private final SlotLaw law;
    private final double lever;
    private final double open;
    private final double pivot;
    private final double slotOpen;
    private final boolean outward;

    public PinInSlot(SlotLaw law) {
        this.law = law;
        Band band = law.band();
        lever = law.pin().length(band);
        open = law.pin().angle(band);
        pivot = band.pivotRadius();
        Point pin = band.pin(law.pin(), 0);
        slotOpen = Math.atan2(pin.y(), pin.x());
        outward = Math.cos(open - slotOpen) > 0;
    }

    /**
     * The blade's angle b, rad; not a number where the pin cannot reach the slot.
     *
     * @param ring angle of the ring, rad, 0 when open
     * @param dx pivot off along the radius, mm
     * @param dy pivot off across it, counter-clockwise, mm
     * @param longer how much further than drawn the pin stands from its pivot, mm
     * @param across how far the pin stands off counter-clockwise, square to its lever, mm
     * @param beside slot off counter-clockwise, square to its length, mm
     */
    public double bladeAngle(double ring, double dx, double dy, double longer, double across, double beside) {
        if (law instanceof SlotLaw.Radial) {
            double direction = ring + slotOpen;
            double length = Math.hypot(lever + longer, across);
            double angle = open + Math.atan2(across, lever + longer);
            double toPivot = (dy * Math.cos(direction)) - (pivot + dx) * Math.sin(direction);
            double sine = (beside - toPivot) / length;
            if (!(Math.abs(sine) <= 1)) {
                return Double.NaN;
            }
            double turn = outward ? Math.asin(sine) : Math.PI - Math.asin(sine);
            return Angles.signed(turn + direction - angle);
        }
        double b = angleAsDrawn(ring);
        Point tangent = law.slotTangent(b).turned(law.ringAngle(b));
        Point pin = law.band().pin(law.pin(), b);
        Point normal = tangent.dot(pin) < 0 ? tangent.times(-1).left() : tangent.left();
        Point arm = Point.polar(1, open + b);
        Point off = new Point(dx, dy).plus(arm.times(longer)).plus(arm.left().times(across));
        return b + (beside - normal.dot(off)) / (lever * normal.dot(arm.left()));
    }

    /** The blade's angle as drawn, carried on evenly past the ends of the travel, rad. */
    private double angleAsDrawn(double ring) {
        SlotLaw.LinearOpening linear = (SlotLaw.LinearOpening) law;
        double share = ring / linear.travel();
        if (share < 0) {
            return ring / law.ringRate(0);
        }
        double closed = linear.closed();
        return share > 1 ? closed + (ring - linear.travel()) / law.ringRate(closed) : law.bladeAngle(ring, closed);
    }
}
