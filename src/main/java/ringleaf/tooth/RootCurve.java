// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import ringleaf.curve.Roots;
import ringleaf.curve.SmoothCurve;
import ringleaf.geom.Point;

/**
 * The root of a tooth as the rounded tip of the generating rack leaves it: the exact envelope of the rolling rounding.
 *
 * <p>In the frame of the tooth space (axis in the origin, middle of the space on +x) the rounding's centre lies at
 * (r + u, v) when the rack stands in the middle; when the gear has turned by f, the rack has moved by r f. A point of
 * the rounding touches the gear when its normal passes the pitch point (r, 0). With n the angle of that normal from
 * the depth direction (0 at the tool's tip land, pi/2 - a where the rounding meets the straight flank) this gives
 * r f = -u tan n - v and the point (r + u - rho cos n, rho sin n - u tan n), turned back by f. Derived from the
 * rolling condition; by the envelope property the tangent is the tool's, (sin n, cos n), turned back by f.
 *
 * @param referenceRadius r, mm
 * @param depth u, how far the rounding's centre lies outside the rolling circle, mm (as a rule negative)
 * @param offset v, how far it lies from the middle of the tool's tooth, mm, at least 0
 * @param rounding rho, mm
 * @param from normal angle n at the start, 0 for the root circle
 * @param to normal angle at the end, at most pi/2 - a
 */
record RootCurve(double referenceRadius, double depth, double offset, double rounding, double from, double to)
        implements SmoothCurve {
    /** The whole root curve that the tool's rounding leaves. */
    static RootCurve of(ToothForm form) {
        BasicRack rack = form.rack();
        double module = form.module();
        double angle = rack.pressureAngle();
        double rounding = rack.rounding() * module;
        double depthBelowDatum = rack.dedendum() * module - rounding;
        double offset = module * Math.PI / 4
                + form.thinning() / 2
                - depthBelowDatum * Math.tan(angle)
                - rounding / Math.cos(angle);
        if (offset < -1e-12 * module) {
            throw new IllegalArgumentException("teeth thickened by " + -form.thinning()
                    + " mm leave no room for the root radius " + rounding + " mm");
        }
        double depth = form.shift() * module - depthBelowDatum;
        return new RootCurve(form.referenceRadius(), depth, Math.max(0, offset), rounding, 0, Math.PI / 2 - angle);
    }

    /** The same curve ended at another normal angle. */
    RootCurve endingAt(double normal) {
        return new RootCurve(referenceRadius, depth, offset, rounding, from, normal);
    }

    /** Radius of the root circle, mm. */
    double rootRadius() {
        return referenceRadius + depth - rounding;
    }

    /** Half the angle of the root circle's arc between the two root curves of a space, rad. */
    double rootHalfAngle() {
        return offset / referenceRadius;
    }

    private double turn(double normal) {
        return (-depth * Math.tan(normal) - offset) / referenceRadius;
    }

    @Override
    public Point at(double normal) {
        double along = referenceRadius + depth - rounding * Math.cos(normal);
        double across = rounding * Math.sin(normal) - depth * Math.tan(normal);
        return new Point(along, across).turned(-turn(normal));
    }

    @Override
    public Point tangent(double normal) {
        return new Point(Math.sin(normal), Math.cos(normal)).turned(-turn(normal));
    }

    /** Distance of a point from this curve, mm, by Newton from the nearest of {@code starts} evenly spaced points. */
    double distanceFrom(Point point, int starts) {
        double best = from;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= starts; i++) {
            double normal = from + (to - from) * i / starts;
            double distance = at(normal).distance(point);
            if (distance < least) {
                least = distance;
                best = normal;
            }
        }
        double step = (to - from) / starts;
        double low = Math.max(from, best - step);
        double high = Math.min(to, best + step);
        // The foot is where the tangent stands square to the way to the point.
        double foot = Roots.last(normal -> point.minus(at(normal)).dot(tangent(normal)) > 0, low, high);
        return Math.min(least, at(foot).distance(point));
    }
}
