// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

/**
 * A reflection in the line through the origin in direction {@code axisAngle} (rad), then a shift.
 *
 * @param axisAngle direction of the mirror line
 * @param shift added after the reflection, mm
 */
public record Mirror(double axisAngle, Point shift) {
    /** y becomes -y: the mechanism seen from the other side, first pivot still on +x. */
    public static final Mirror FLIP_Y = new Mirror(0, Point.ORIGIN);

    public Point apply(Point p) {
        if (axisAngle == 0) {
            return new Point(p.x(), -p.y()).plus(shift);
        }
        double c = Math.cos(2 * axisAngle);
        double s = Math.sin(2 * axisAngle);
        return new Point(c * p.x() + s * p.y(), s * p.x() - c * p.y()).plus(shift);
    }
}
