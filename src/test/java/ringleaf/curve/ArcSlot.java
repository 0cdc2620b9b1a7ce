// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;

/** Slots along circles, as shapes to try things on. */
public final class ArcSlot {
    private ArcSlot() {}

    /**
     * A slot along a circle with round ends: everything within {@code halfWidth} of the arc about {@code centre} of
     * the given radius, from one angle counter-clockwise to the other (rad). Outer arc, end, inner arc, end. Equal
     * angles give a circle at that place.
     *
     * @param radius of the slot's centre line, mm, above {@code halfWidth}
     * @param toAngle at most a turn above {@code fromAngle}; the round ends must not meet (the caller's duty)
     */
    public static Contour of(Point centre, double radius, double halfWidth, double fromAngle, double toAngle) {
        if (!(halfWidth > 0) || !(radius > halfWidth)) {
            throw new IllegalArgumentException("no slot of half width " + halfWidth + " on radius " + radius);
        }
        double sweep = toAngle - fromAngle;
        Point first = centre.plus(Point.polar(radius, fromAngle));
        if (sweep == 0) {
            return Contour.circle(first, halfWidth);
        }
        Point last = centre.plus(Point.polar(radius, fromAngle + sweep));
        Arc outer = Arc.of(centre, radius + halfWidth, fromAngle, sweep);
        Arc inner = Arc.of(centre, radius - halfWidth, fromAngle + sweep, -sweep);
        return Contour.of(
                outer,
                new Arc(last, halfWidth, fromAngle + sweep, Math.PI, outer.end(), inner.start()),
                inner,
                new Arc(first, halfWidth, fromAngle + Math.PI, Math.PI, inner.end(), outer.start()));
    }
}
