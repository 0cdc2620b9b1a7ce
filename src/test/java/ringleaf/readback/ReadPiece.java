// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

/**
 * A piece as a reader rebuilds it from the file: from (x0, y0) to (x1, y1), y up, and for an arc its centre, radius
 * and sweep (0 for a line).
 */
record ReadPiece(double x0, double y0, double x1, double y1, double cx, double cy, double radius, double sweep) {
    static ReadPiece line(double x0, double y0, double x1, double y1) {
        return new ReadPiece(x0, y0, x1, y1, 0, 0, 0, 0);
    }

    static ReadPiece circle(double cx, double cy, double radius) {
        return new ReadPiece(cx + radius, cy, cx + radius, cy, cx, cy, radius, 2 * Math.PI);
    }

    /** By the formulas of check values 6.1: r = c (1 + b²) / (4 |b|), centre = mid + (1 - b²) / (4 b) (-dy, dx). */
    static ReadPiece bulge(double x0, double y0, double x1, double y1, double b) {
        double dx = x1 - x0;
        double dy = y1 - y0;
        double k = (1 - b * b) / (4 * b);
        double radius = Math.hypot(dx, dy) * (1 + b * b) / (4 * Math.abs(b));
        return new ReadPiece(x0, y0, x1, y1, (x0 + x1) / 2 - k * dy, (y0 + y1) / 2 + k * dx, radius, 4 * Math.atan(b));
    }

    boolean isArc() {
        return sweep != 0;
    }

    double length() {
        return isArc() ? radius * Math.abs(sweep) : Math.hypot(x1 - x0, y1 - y0);
    }

    double areaTerm() {
        if (!isArc()) {
            return (x0 * y1 - x1 * y0) / 2;
        }
        return (radius * radius * sweep + cx * (y1 - y0) - cy * (x1 - x0)) / 2;
    }

    /** A point of the piece at a share of its length. */
    double[] at(double u) {
        if (!isArc()) {
            return new double[] {x0 + u * (x1 - x0), y0 + u * (y1 - y0)};
        }
        double angle = Math.atan2(y0 - cy, x0 - cx) + u * sweep;
        return new double[] {cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)};
    }

    /** Distance from a point to the piece. */
    double distance(double x, double y) {
        double ends = Math.min(Math.hypot(x - x0, y - y0), Math.hypot(x - x1, y - y1));
        if (isArc()) {
            double turn = Math.atan2(y - cy, x - cx) - Math.atan2(y0 - cy, x0 - cx);
            turn = Math.IEEEremainder(turn, 2 * Math.PI);
            if (sweep > 0 && turn < 0) {
                turn += 2 * Math.PI;
            } else if (sweep < 0 && turn > 0) {
                turn -= 2 * Math.PI;
            }
            boolean beside = Math.abs(turn) <= Math.abs(sweep);
            return beside ? Math.min(ends, Math.abs(Math.hypot(x - cx, y - cy) - radius)) : ends;
        }
        double lengthSquared = Math.pow(x1 - x0, 2) + Math.pow(y1 - y0, 2);
        double u = ((x - x0) * (x1 - x0) + (y - y0) * (y1 - y0)) / lengthSquared;
        if (u <= 0 || u >= 1) {
            return ends;
        }
        return Math.hypot(x0 + u * (x1 - x0) - x, y0 + u * (y1 - y0) - y);
    }
}
