// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.Arrays;
import ringleaf.geom.Point;

/**
 * The least distance found so far and between which two points it lies. Distances of lines and arcs are exact to
 * rounding: ends against pieces, feet of perpendiculars, the line of two centres, and crossings.
 */
final class Nearest {
    /** Pairs of pieces from which outlines are looked at by runs of pieces: teeth of two gears, say. */
    private static final long MANY = 1 << 14;

    double distance;
    double ax;
    double ay;
    double bx;
    double by;
    private final double[] crossings = new double[4];

    /** Nothing at or beyond {@code limit} mm is of interest. */
    Nearest(double limit) {
        distance = limit;
    }

    Point middle() {
        return new Point((ax + bx) / 2, (ay + by) / 2);
    }

    private void offer(double px, double py, double qx, double qy) {
        double d = Math.sqrt((px - qx) * (px - qx) + (py - qy) * (py - qy));
        if (d < distance) {
            distance = d;
            ax = px;
            ay = py;
            bx = qx;
            by = qy;
        }
    }

    /** Looks at the distance between two outlines' pieces; what one encloses does not matter here. */
    void between(Shape a, Shape b) {
        if ((long) a.pieces.length * b.pieces.length < MANY) {
            each(a, b);
            return;
        }
        // the least distance first, in whatever order finds it soon, then the first two pieces that have it
        Runs first = a.runs();
        Runs second = b.runs();
        Nearest least = new Nearest(distance);
        first.soonest(second, least);
        if (least.distance < distance) {
            distance = Math.nextUp(least.distance);
            first.inOrder(second, this);
        }
    }

    private void each(Shape a, Shape b) {
        Piece[] near = b.pieces.length > 8 ? near(b.pieces, a) : b.pieces;
        for (Piece p : a.pieces) {
            if (b.gapTo(p) >= distance) {
                continue;
            }
            for (Piece q : near) {
                between(p, q);
            }
        }
    }

    /** Those pieces that could come near enough to anything in the shape's box. */
    private Piece[] near(Piece[] pieces, Shape shape) {
        Piece[] near = new Piece[pieces.length];
        int n = 0;
        for (Piece p : pieces) {
            if (shape.gapTo(p) < distance) {
                near[n++] = p;
            }
        }
        return n == near.length ? near : Arrays.copyOf(near, n);
    }

    /** Looks at the distance between two pieces. */
    void between(Piece a, Piece b) {
        double gx = Math.max(a.minX - b.maxX, b.minX - a.maxX);
        double gy = Math.max(a.minY - b.maxY, b.minY - a.maxY);
        if (gx >= distance || gy >= distance || Piece.gap(a, b) >= distance || offCircle(a, b) || offCircle(b, a)) {
            return;
        }
        ends(a, b);
        ends(b, a);
        if (gx <= 0 && gy <= 0) {
            int n = Crossing.points(a, b, crossings);
            for (int i = 0; i < n; i++) {
                offer(crossings[2 * i], crossings[2 * i + 1], crossings[2 * i], crossings[2 * i + 1]);
            }
        }
        if (!a.isLine() && !b.isLine()) {
            alongCentres(a, b);
        } else if (!a.isLine() || !b.isLine()) {
            foot(a.isLine() ? a : b, a.isLine() ? b : a);
        }
    }

    /** Whether the box of a piece lies so far inside or outside an arc's circle that nothing nearer can be found. */
    private boolean offCircle(Piece arc, Piece other) {
        if (arc.isLine()) {
            return false;
        }
        double left = other.minX - arc.cx;
        double right = other.maxX - arc.cx;
        double low = other.minY - arc.cy;
        double high = other.maxY - arc.cy;
        double outX = Math.max(0, Math.max(left, -right));
        double outY = Math.max(0, Math.max(low, -high));
        double beyond = arc.r + distance;
        if (outX * outX + outY * outY >= beyond * beyond) {
            return true;
        }
        double within = arc.r - distance;
        double farX = Math.max(-left, right);
        double farY = Math.max(-low, high);
        return within > 0 && farX * farX + farY * farY <= within * within;
    }

    /** Looks at the distance of a point from a piece. */
    void point(double x, double y, Piece piece) {
        Point q = piece.nearestTo(x, y);
        offer(x, y, q.x(), q.y());
    }

    private void ends(Piece of, Piece to) {
        point(of.x0, of.y0, to);
        if (!of.whole) {
            point(of.x1, of.y1, to);
        }
    }

    private void alongCentres(Piece a, Piece b) {
        double dx = b.cx - a.cx;
        double dy = b.cy - a.cy;
        double d = Math.sqrt(dx * dx + dy * dy);
        if (d == 0) {
            return;
        }
        for (int i = 0; i < 4; i++) {
            double ra = (i & 1) == 0 ? a.r / d : -a.r / d;
            double rb = (i & 2) == 0 ? b.r / d : -b.r / d;
            double px = a.cx + ra * dx;
            double py = a.cy + ra * dy;
            double qx = b.cx + rb * dx;
            double qy = b.cy + rb * dy;
            if (a.carries(px, py) && b.carries(qx, qy)) {
                offer(px, py, qx, qy);
            }
        }
    }

    private void foot(Piece line, Piece arc) {
        double dx = line.x1 - line.x0;
        double dy = line.y1 - line.y0;
        double square = dx * dx + dy * dy;
        double t = ((arc.cx - line.x0) * dx + (arc.cy - line.y0) * dy) / square;
        if (!(t > 0 && t < 1)) {
            return;
        }
        double px = line.x0 + t * dx;
        double py = line.y0 + t * dy;
        double h = Math.hypot(px - arc.cx, py - arc.cy);
        if (h > 0) {
            double qx = arc.cx + arc.r * (px - arc.cx) / h;
            double qy = arc.cy + arc.r * (py - arc.cy) / h;
            if (arc.carries(qx, qy)) {
                offer(px, py, qx, qy);
            }
        }
    }
}
