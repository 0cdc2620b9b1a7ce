// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

/** An axis-parallel box in mm; {@code minX <= maxX} and {@code minY <= maxY}. */
public record Box(double minX, double minY, double maxX, double maxY) {
    /** The box of two corners in any order. */
    public static Box of(Point a, Point b) {
        return new Box(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }

    public Box including(Point p) {
        return new Box(Math.min(minX, p.x()), Math.min(minY, p.y()), Math.max(maxX, p.x()), Math.max(maxY, p.y()));
    }

    public Box union(Box other) {
        return new Box(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    /** This box with {@code margin} mm more on each side. */
    public Box grown(double margin) {
        return new Box(minX - margin, minY - margin, maxX + margin, maxY + margin);
    }

    /** Whether the two boxes share a point, edges included. */
    public boolean meets(Box other) {
        return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
    }

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }

    public Point centre() {
        return new Point((minX + maxX) / 2, (minY + maxY) / 2);
    }
}
