// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import ringleaf.geom.Angles;
import ringleaf.geom.Point;

/**
 * The shape of one blade, a band along a circle about the axis with round ends, and the closed forms of the aperture
 * that N such blades make. The first blade has its pivot on +x and runs counter-clockwise from there; the blade angle
 * {@code b} (rad, counter-clockwise, 0 in the open pose) swings it inwards about its pivot. The band's centre circle
 * then has its centre at Rp (1 - e^{ib}), which is d = 2 Rp sin(b/2) from the axis; all forms follow from that.
 *
 * <p>The opening is the figure bounded by the N inner arcs: the common part of N discs. The forms for it hold while
 * the span is at least 90° - b/2; beyond that the inner arcs no longer reach its sides and the fold reports a leak.
 *
 * @param pivotRadius Rp, radius of the pivots and of the band's centre line, mm, above {@code width / 2}
 * @param width w of the band, mm, above 0
 * @param span a, the angle from pivot to far end about the axis in the open pose, rad, in (0, 2 pi)
 * @param blades N, at least 3
 */
public record Band(double pivotRadius, double width, double span, int blades) {
    public Band {
        if (!(width > 0) || !(pivotRadius > width / 2) || !(pivotRadius < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no band of width " + width + " on radius " + pivotRadius);
        }
        if (!(span > 0) || !(span < 2 * Math.PI) || blades < 3) {
            throw new IllegalArgumentException("no aperture of " + blades + " blades that span " + span);
        }
    }

    public double innerRadius() {
        return pivotRadius - width / 2;
    }

    public double outerRadius() {
        return pivotRadius + width / 2;
    }

    /** The angle after which the pattern of blades repeats, 2 pi / N. */
    public double period() {
        return 2 * Math.PI / blades;
    }

    /** How far the centre of the band's circle has left the axis, d = 2 Rp sin(b/2), mm. */
    public double shift(double b) {
        return 2 * pivotRadius * Math.sin(b / 2);
    }

    /** Radius of the largest circle about the axis in the opening, ri - d, mm; below 0 when there is none. */
    public double inscribedRadius(double b) {
        return innerRadius() - shift(b);
    }

    /** Radius at which the inner arcs of neighbours meet, the opening's corners, mm; 0 when nothing is open. */
    public double cornerRadius(double b) {
        double d = shift(b);
        double ri = innerRadius();
        if (d >= ri) {
            return 0;
        }
        double across = d * Math.sin(Math.PI / blades);
        return Math.sqrt(ri * ri - across * across) - d * Math.cos(Math.PI / blades);
    }

    /** Area of the opening, N triangles and N circle segments, mm²; 0 when nothing is open. */
    public double openingArea(double b) {
        double v = cornerRadius(b);
        double ri = innerRadius();
        double chord = 2 * v * Math.sin(Math.PI / blades);
        double segment = ri * ri * Math.asin(Math.min(1, chord / (2 * ri)))
                - chord / 2 * Math.sqrt(Math.max(0, ri * ri - chord * chord / 4));
        return blades * (v * v / 2 * Math.sin(period()) + segment);
    }

    /**
     * The blade angle at which the inscribed radius is {@code radius}, 2 asin((ri - r)/(2 Rp)), rad; not a number
     * when no turn of the blade gives it (ri - r beyond 2 Rp).
     */
    public double bladeAngle(double radius) {
        return 2 * Math.asin((innerRadius() - radius) / (2 * pivotRadius));
    }

    /** Centre of the band's circle, mm. */
    public Point centre(double b) {
        return new Point(pivotRadius * (1 - Math.cos(b)), -pivotRadius * Math.sin(b));
    }

    /** The drive pin, z = Rp + e^{ib} (pin less pivot when open), mm. */
    public Point pin(DrivePin pin, double b) {
        Point arm = Point.polar(pin.length(this), pin.angle(this) + b);
        return new Point(pivotRadius + arm.x(), arm.y());
    }

    /** The drive pin's distance from the axis, mm. */
    public double pinRadius(DrivePin pin, double b) {
        return pin(pin, b).norm();
    }

    /**
     * The blade angle in [0, 2 pi) at which the drive pin is nearest the axis, rad: the lever then points at the
     * axis. For a pin at the far end this is 90° - a/2.
     */
    public double dipAngle(DrivePin pin) {
        return Angles.positive(Math.PI - pin.angle(this));
    }

    /** The drive pin's least distance from the axis while the blade turns from 0 to {@code closed}, mm. */
    public double leastPinRadius(DrivePin pin, double closed) {
        if (dipAngle(pin) <= closed) {
            return Math.abs(pivotRadius - pin.length(this));
        }
        return Math.min(pinRadius(pin, 0), pinRadius(pin, closed));
    }

    /** The drive pin's greatest distance from the axis while the blade turns from 0 to {@code closed}, mm. */
    public double greatestPinRadius(DrivePin pin, double closed) {
        if (Angles.positive(-pin.angle(this)) <= closed) {
            return pivotRadius + pin.length(this);
        }
        return Math.max(pinRadius(pin, 0), pinRadius(pin, closed));
    }

    /**
     * How far the ring has turned when its slots are radial, rad, counter-clockwise positive, 0 at b = 0 and
     * continuous for any b. A lever longer than Rp carries the pin round the axis, a shorter one swings it to and fro;
     * in both cases the direction is taken against the larger of the two vectors, so it never jumps.
     */
    public double ringAngle(DrivePin pin, double b) {
        double length = pin.length(this);
        double open = pin.angle(this);
        if (length > pivotRadius) {
            double share = pivotRadius / length;
            return b + leanOf(share, -open - b) - leanOf(share, -open);
        }
        double share = length / pivotRadius;
        return leanOf(share, open + b) - leanOf(share, open);
    }

    /** The direction of 1 + share e^{i angle}, within a quarter turn of 0 for a share below 1. */
    private static double leanOf(double share, double angle) {
        return Math.atan2(share * Math.sin(angle), 1 + share * Math.cos(angle));
    }

    /** d(ring angle)/d(blade angle) for radial slots, Re((z - P)/z). */
    public double ringRate(DrivePin pin, double b) {
        Point z = pin(pin, b);
        return 1 - pivotRadius * z.x() / z.dot(z);
    }

    /**
     * The pressure angle of a radial slot, rad in [0, pi/2]: between the pin's velocity about its pivot and the
     * normal to the slot, which is the acute angle between the lever and the pin's radius.
     */
    public double slotPressure(DrivePin pin, double b) {
        Point z = pin(pin, b);
        double along = z.dot(z) - pivotRadius * z.x();
        return Math.atan2(pivotRadius * Math.abs(z.y()), Math.abs(along));
    }

    /** The blade's greatest distance from the axis, over end, outer edge and root, mm; without ears. */
    public double reach(double b) {
        return new BladeArcs().pose(this, b, 0).greatest();
    }

    /** The blade's greatest distance from the axis with round ears of radius {@code ear} mm at pivot and pin. */
    public double reach(double b, DrivePin pin, double ear) {
        return Math.max(reach(b), Math.max(pivotRadius, pinRadius(pin, b)) + ear);
    }
}
