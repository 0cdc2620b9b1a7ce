// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import ringleaf.geom.Point;

/**
 * The corner of an internal space's root: an arc that touches the root circle and the flank.
 *
 * <p>A ring is cut by many tools and, here, mostly printed or cut as an outline, so its root is no envelope but the
 * plain arc. Curves at a distance from an involute are involutes of the same base circle, turned by distance/rb; so
 * the arc's centre lies where such an involute crosses the circle of the radius rf - rho, and the touching point one
 * rho farther along the base circle's tangent. Derived; exact.
 *
 * @param baseRadius rb, mm
 * @param baseAngle polar angle at which the flank leaves the base circle (its lower flank, run outwards), rad
 * @param roll roll angle of the flank where it meets the arc
 * @param centre of the arc, in the frame of the space
 * @param rounding radius of the arc, mm
 */
record InternalRoot(double baseRadius, double baseAngle, double roll, Point centre, double rounding) {
    static InternalRoot of(InternalForm form) {
        return of(form.filling(), form.rootRounding());
    }

    private static InternalRoot of(ToothForm filling, double rounding) {
        double base = filling.baseRadius();
        double baseAngle = -filling.baseHalfAngle();
        double centreRadius = filling.tipRadius() - rounding;
        double roll = InvoluteCurve.rollAt(base, centreRadius);
        double angle = baseAngle + rounding / base + roll - Math.atan(roll);
        return new InternalRoot(base, baseAngle, roll + rounding / base, Point.polar(centreRadius, angle), rounding);
    }

    /** The radius of the arc that fills the whole root, when it is below {@code wished}, else {@code wished}. */
    static double fullRound(ToothForm filling, double wished) {
        if (of(filling, wished).centre.y() <= 0) {
            return wished;
        }
        double least = 1e-6 * filling.module();
        if (of(filling, least).centre.y() >= 0) {
            throw new IllegalArgumentException("the spaces of " + filling.teeth()
                    + " internal teeth end in a point inside the root circle " + filling.tipRadius() + " mm");
        }
        return new BrentSolver(1e-15, 1e-14 * filling.module())
                .solve(200, r -> of(filling, r).centre.y(), least, wished);
    }

    /** Radius of the point where the flank meets the arc. */
    double endRadius() {
        return baseRadius * Math.hypot(1, roll);
    }

    /** The flank from a radius out to the arc. */
    InvoluteCurve flank(double fromRadius) {
        return new InvoluteCurve(baseRadius, baseAngle, InvoluteCurve.rollAt(baseRadius, fromRadius), roll);
    }
}
