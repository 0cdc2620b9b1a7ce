// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

/**
 * A point or a vector of the plane, in mm.
 *
 * @param x to the right
 * @param y up
 */
public record Point(double x, double y) {
    public static final Point ORIGIN = new Point(0, 0);

    /** The point at {@code radius} (mm) and {@code angle} (rad, counter-clockwise from +x) about the origin. */
    public static Point polar(double radius, double angle) {
        return new Point(radius * Math.cos(angle), radius * Math.sin(angle));
    }

    /** Equal coordinates, where 0 and -0 are equal. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Point p && x == p.x && y == p.y;
    }

    @Override
    public int hashCode() {
        // adding 0 makes -0 a 0
        return 31 * Double.hashCode(x + 0.0) + Double.hashCode(y + 0.0);
    }

    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y);
    }

    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    public Point times(double factor) {
        return new Point(x * factor, y * factor);
    }

    public double dot(Point other) {
        return x * other.x + y * other.y;
    }

    /** The z of the cross product: positive when {@code other} lies counter-clockwise of this vector. */
    public double cross(Point other) {
        return x * other.y - y * other.x;
    }

    public double norm() {
        return Math.sqrt(x * x + y * y);
    }

    /** The direction of this vector in (-pi, pi]; 0 for the null vector. */
    public double angle() {
        return Math.atan2(y, x);
    }

    public double distance(Point other) {
        double dx = x - other.x;
        double dy = y - other.y;
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** This vector turned about the origin by {@code angle} rad. */
    public Point turned(double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new Point(c * x - s * y, s * x + c * y);
    }

    /** This vector turned a quarter counter-clockwise, exactly. */
    public Point left() {
        return new Point(-y, x);
    }

    /** The vector of length 1 in this direction; not a number for the null vector. */
    public Point unit() {
        return times(1 / norm());
    }

    /** The point at the share {@code u} of the way to {@code other}. */
    public Point towards(Point other, double u) {
        return new Point(x + u * (other.x - x), y + u * (other.y - y));
    }
}
