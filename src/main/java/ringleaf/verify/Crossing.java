// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

/** Where two pieces cross, in closed form. Pieces on one carrier are not said to cross. */
final class Crossing {
    private Crossing() {}

    /**
     * Writes the crossing points of two pieces as x, y, x, y into {@code out} (room for 4 numbers) and returns how
     * many points there are. Touching at an end may be missed by rounding.
     */
    static int points(Piece a, Piece b, double[] out) {
        if (a.isLine()) {
            return b.isLine() ? lines(a, b, out) : lineAndArc(a, b, out);
        }
        return b.isLine() ? lineAndArc(b, a, out) : arcs(a, b, out);
    }

    private static int lines(Piece a, Piece b, double[] out) {
        double ax = a.x1 - a.x0;
        double ay = a.y1 - a.y0;
        double bx = b.x1 - b.x0;
        double by = b.y1 - b.y0;
        double cross = ax * by - ay * bx;
        if (cross == 0) {
            return 0;
        }
        double ex = b.x0 - a.x0;
        double ey = b.y0 - a.y0;
        double t = (ex * by - ey * bx) / cross;
        double u = (ex * ay - ey * ax) / cross;
        if (t < 0 || t > 1 || u < 0 || u > 1) {
            return 0;
        }
        out[0] = a.x0 + t * ax;
        out[1] = a.y0 + t * ay;
        return 1;
    }

    private static int lineAndArc(Piece line, Piece arc, double[] out) {
        double dx = line.x1 - line.x0;
        double dy = line.y1 - line.y0;
        double fx = line.x0 - arc.cx;
        double fy = line.y0 - arc.cy;
        double a = dx * dx + dy * dy;
        double half = fx * dx + fy * dy;
        double discriminant = half * half - a * (fx * fx + fy * fy - arc.r * arc.r);
        if (discriminant < 0 || a == 0) {
            return 0;
        }
        double root = Math.sqrt(discriminant);
        int n = 0;
        for (int sign = -1; sign <= 1; sign += 2) {
            double t = (sign * root - half) / a;
            double x = line.x0 + t * dx;
            double y = line.y0 + t * dy;
            if (t >= 0 && t <= 1 && arc.carries(x, y)) {
                out[2 * n] = x;
                out[2 * n + 1] = y;
                n++;
            }
        }
        return n;
    }

    private static int arcs(Piece a, Piece b, double[] out) {
        double dx = b.cx - a.cx;
        double dy = b.cy - a.cy;
        double d = Math.sqrt(dx * dx + dy * dy);
        if (d == 0 || d > a.r + b.r || d < Math.abs(a.r - b.r)) {
            return 0;
        }
        double along = (d * d + (a.r - b.r) * (a.r + b.r)) / (2 * d);
        double across = Math.sqrt(Math.max(0, (a.r - along) * (a.r + along)));
        int n = 0;
        for (int sign = -1; sign <= 1; sign += 2) {
            double x = a.cx + (along * dx - sign * across * dy) / d;
            double y = a.cy + (along * dy + sign * across * dx) / d;
            if (a.carries(x, y) && b.carries(x, y)) {
                out[2 * n] = x;
                out[2 * n + 1] = y;
                n++;
            }
        }
        return n;
    }
}
