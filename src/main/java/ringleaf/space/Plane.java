// SPDX-License-Identifier: Apache-2.0
package ringleaf.space;

/**
 * A plane in space with a front side.
 *
 * @param through one of its points
 * @param normal direction of length 1 in which its front looks
 */
public record Plane(Vector through, Vector normal) {
    /** By how much two directions may differ and still count as one, rad: rounding of some turns after one another. */
    private static final double SAME_DIRECTION = 1e-10;

    /** Whether both run the same way, be it back to front. */
    public boolean isParallelTo(Plane other) {
        return normal.cross(other.normal).length() <= SAME_DIRECTION;
    }

    /** How far a point stands before it, mm; negative behind it. */
    public double height(Vector point) {
        return point.minus(through).dot(normal);
    }
}
