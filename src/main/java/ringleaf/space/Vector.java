// SPDX-License-Identifier: Apache-2.0
package ringleaf.space;

/**
 * A point or a direction in space, mm.
 *
 * @param x to the right
 * @param y up
 * @param z towards the onlooker
 */
public record Vector(double x, double y, double z) {
    public static final Vector ZERO = new Vector(0, 0, 0);
    public static final Vector X = new Vector(1, 0, 0);
    public static final Vector Y = new Vector(0, 1, 0);
    public static final Vector Z = new Vector(0, 0, 1);

    public Vector plus(Vector v) {
        return new Vector(x + v.x, y + v.y, z + v.z);
    }

    public Vector minus(Vector v) {
        return new Vector(x - v.x, y - v.y, z - v.z);
    }

    public Vector times(double factor) {
        return new Vector(factor * x, factor * y, factor * z);
    }

    public double dot(Vector v) {
        return x * v.x + y * v.y + z * v.z;
    }

    /** Perpendicular to both, right-handed. */
    public Vector cross(Vector v) {
        return new Vector(y * v.z - z * v.y, z * v.x - x * v.z, x * v.y - y * v.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }
}
