// SPDX-License-Identifier: Apache-2.0
package ringleaf.space;

/**
 * A turn about the origin, kept as a unit quaternion w + xi + yj + zk, which is brought back to length 1 after every
 * product: so the images of the axes stay perpendicular and of length 1 to 1e-15, however long the chain.
 *
 * @param w cosine of half the angle
 * @param x of the axis, times the sine of half the angle
 * @param y of the axis, times the sine of half the angle
 * @param z of the axis, times the sine of half the angle
 */
public record Turn(double w, double x, double y, double z) {
    public static final Turn NONE = new Turn(1, 0, 0, 0);

    public Turn {
        double length = Math.sqrt(w * w + x * x + y * y + z * z);
        if (!(length > 0) || Double.isInfinite(length)) {
            throw new IllegalArgumentException("no turn");
        }
        w /= length;
        x /= length;
        y /= length;
        z /= length;
    }

    /**
     * About a direction through the origin.
     *
     * @param direction of any length above 0
     * @param angle rad, counter-clockwise as seen from where the direction points to
     */
    public static Turn about(Vector direction, double angle) {
        Vector part = direction.times(Math.sin(angle / 2) / direction.length());
        return new Turn(Math.cos(angle / 2), part.x(), part.y(), part.z());
    }

    /** First {@code this}, then {@code next}. */
    public Turn then(Turn next) {
        return new Turn(
                next.w * w - next.x * x - next.y * y - next.z * z,
                next.w * x + next.x * w + next.y * z - next.z * y,
                next.w * y - next.x * z + next.y * w + next.z * x,
                next.w * z + next.x * y - next.y * x + next.z * w);
    }

    public Turn inverse() {
        return new Turn(w, -x, -y, -z);
    }

    public Vector apply(Vector v) {
        Vector axis = new Vector(x, y, z);
        Vector twice = axis.cross(v).times(2);
        return v.plus(twice.times(w)).plus(axis.cross(twice));
    }
}
