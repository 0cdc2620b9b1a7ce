// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import ringleaf.curve.SmoothCurve;
import ringleaf.geom.Point;

/**
 * A piece of an involute about the origin, run outwards and turning counter-clockwise, by its roll angle t = tan of
 * the pressure angle.
 *
 * <p>P(t) = rb e^{i(b + t)} (1 - i t), which lies at the radius rb sqrt(1 + t²) and the polar angle b + inv; the
 * tangent is e^{i(b + t)}. Source: the definition, unwinding a thread from the base circle.
 *
 * @param baseRadius rb, mm
 * @param baseAngle b, polar angle at which the involute leaves the base circle, rad
 * @param from roll angle at the start, at least 0
 * @param to roll angle at the end, above {@code from}
 */
record InvoluteCurve(double baseRadius, double baseAngle, double from, double to) implements SmoothCurve {
    /** The roll angle at a radius of at least the base radius: the tangent length over rb. */
    static double rollAt(double baseRadius, double radius) {
        return Math.sqrt(Math.max(0, (radius - baseRadius) * (radius + baseRadius))) / baseRadius;
    }

    @Override
    public Point at(double roll) {
        double c = Math.cos(baseAngle + roll);
        double s = Math.sin(baseAngle + roll);
        return new Point(baseRadius * (c + roll * s), baseRadius * (s - roll * c));
    }

    @Override
    public Point tangent(double roll) {
        return Point.polar(1, baseAngle + roll);
    }

    /**
     * Signed distance of a point from the whole involute, mm, positive on the clockwise side; exact for points near
     * the piece: normals of an involute touch its base circle, so along the tangent through the point both lie at
     * their tangent lengths. Inside the base circle, where no normal leads, the distance from the involute's origin.
     */
    double distanceFrom(Point point) {
        double radius = point.norm();
        if (radius < baseRadius) {
            return point.distance(at(0));
        }
        double length = rollAt(baseRadius, radius);
        double roll = point.angle() - baseAngle + Math.atan(length);
        return baseRadius * (length - roll);
    }
}
