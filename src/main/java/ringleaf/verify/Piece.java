// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * A line or an arc as plain numbers, with its box, made for comparing many of them quickly. Whether a point of an
 * arc's circle lies on the arc is told by the side of the chord, so no angle is computed.
 */
final class Piece {
    final double x0;
    final double y0;
    final double x1;
    final double y1;
    /** Centre and radius; the radius of a line is 0. */
    final double cx;

    final double cy;
    final double r;
    /** 1 for a counter-clockwise arc, -1 for a clockwise one, 0 for a line. */
    final int turn;
    /** Whether this is a full circle. */
    final boolean whole;

    final double minX;
    final double minY;
    final double maxX;
    final double maxY;

    private Piece(double[] ends, double cx, double cy, double r, int turn, boolean whole) {
        this.x0 = ends[0];
        this.y0 = ends[1];
        this.x1 = ends[2];
        this.y1 = ends[3];
        this.cx = cx;
        this.cy = cy;
        this.r = r;
        this.turn = turn;
        this.whole = whole;
        boolean arc = turn != 0;
        this.minX = arc && carries(cx - r, cy) ? cx - r : Math.min(x0, x1);
        this.maxX = arc && carries(cx + r, cy) ? cx + r : Math.max(x0, x1);
        this.minY = arc && carries(cx, cy - r) ? cy - r : Math.min(y0, y1);
        this.maxY = arc && carries(cx, cy + r) ? cy + r : Math.max(y0, y1);
    }

    static Piece of(Segment s) {
        double[] ends = {s.start().x(), s.start().y(), s.end().x(), s.end().y()};
        if (s instanceof Arc a) {
            int turn = a.sweep() > 0 ? 1 : -1;
            return new Piece(ends, a.centre().x(), a.centre().y(), a.radius(), turn, a.isCircle());
        }
        return new Piece(ends, 0, 0, 0, 0, false);
    }

    /** This piece turned by the angle of the given cosine and sine, then shifted. */
    Piece moved(double cos, double sin, double dx, double dy) {
        double[] ends = {
            cos * x0 - sin * y0 + dx, sin * x0 + cos * y0 + dy, cos * x1 - sin * y1 + dx, sin * x1 + cos * y1 + dy
        };
        return new Piece(ends, cos * cx - sin * cy + dx, sin * cx + cos * cy + dy, r, turn, whole);
    }

    /** The mirror image about the x axis, run through the other way: so the material stays where it was. */
    Piece mirrored() {
        return new Piece(new double[] {x1, -y1, x0, -y0}, cx, -cy, r, turn, whole);
    }

    /** This piece moved to its left by {@code by} mm all along; null when an arc shrinks to nothing. */
    Piece movedLeft(double by) {
        Point from = leftNormal(x0, y0);
        Point to = leftNormal(x1, y1);
        double radius = isLine() ? 0 : r - turn * by;
        if (radius < 0 || !isLine() && radius == 0) {
            return null;
        }
        double[] ends = {x0 + by * from.x(), y0 + by * from.y(), x1 + by * to.x(), y1 + by * to.y()};
        return new Piece(ends, cx, cy, radius, turn, whole);
    }

    boolean isLine() {
        return turn == 0;
    }

    /** Twice the area of the triangle of the chord and a point; positive when the point is left of the chord. */
    double side(double x, double y) {
        return (x1 - x0) * (y - y0) - (x - x0) * (y1 - y0);
    }

    /** Whether a point of the circle lies on the arc, ends included. */
    boolean carries(double x, double y) {
        return whole || turn * side(x, y) <= 0;
    }

    /** The distance of the two boxes; 0 when they meet. */
    static double gap(Piece a, Piece b) {
        double dx = Math.max(0, Math.max(a.minX - b.maxX, b.minX - a.maxX));
        double dy = Math.max(0, Math.max(a.minY - b.maxY, b.minY - a.maxY));
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** The point of this piece that is nearest to the given one. */
    Point nearestTo(double x, double y) {
        if (isLine()) {
            double dx = x1 - x0;
            double dy = y1 - y0;
            double square = dx * dx + dy * dy;
            double t = square == 0 ? 0 : ((x - x0) * dx + (y - y0) * dy) / square;
            if (t <= 0) {
                return new Point(x0, y0);
            }
            return t >= 1 ? new Point(x1, y1) : new Point(x0 + t * dx, y0 + t * dy);
        }
        double ex = x - cx;
        double ey = y - cy;
        double e = Math.sqrt(ex * ex + ey * ey);
        if (e > 0) {
            double px = cx + r * ex / e;
            double py = cy + r * ey / e;
            if (carries(px, py)) {
                return new Point(px, py);
            }
        }
        return Math.hypot(x - x0, y - y0) <= Math.hypot(x - x1, y - y1) ? new Point(x0, y0) : new Point(x1, y1);
    }

    /** The point of this piece that is farthest from the given one. */
    Point farthestFrom(double x, double y) {
        if (!isLine()) {
            double ex = cx - x;
            double ey = cy - y;
            double e = Math.sqrt(ex * ex + ey * ey);
            if (e > 0 && carries(cx + r * ex / e, cy + r * ey / e)) {
                return new Point(cx + r * ex / e, cy + r * ey / e);
            }
        }
        return Math.hypot(x - x0, y - y0) >= Math.hypot(x - x1, y - y1) ? new Point(x0, y0) : new Point(x1, y1);
    }

    /** The angle an arc turns through, in (0, 2 pi]; rounding must not make a short arc a nearly full circle. */
    double sweep() {
        if (whole) {
            return Angles.TURN;
        }
        double turned = Math.atan2(y1 - cy, x1 - cx) - Math.atan2(y0 - cy, x0 - cx);
        double sweep = Angles.positive(turn * turned);
        boolean underHalf = turn * side(cx, cy) > 0;
        boolean other = underHalf ? sweep > 1.5 * Math.PI : sweep < 0.5 * Math.PI;
        return other ? Angles.TURN - sweep : sweep;
    }

    /** A point of the piece about half-way along it. */
    Point middle() {
        double mx = (x0 + x1) / 2;
        double my = (y0 + y1) / 2;
        if (isLine()) {
            return new Point(mx, my);
        }
        if (whole) {
            return new Point(2 * cx - x0, 2 * cy - y0);
        }
        double ex = turn * (y1 - y0);
        double ey = -turn * (x1 - x0);
        double e = Math.sqrt(ex * ex + ey * ey);
        return new Point(cx + r * ex / e, cy + r * ey / e);
    }

    /** Unit normal to the left of the piece's run, at one of its points. */
    Point leftNormal(double x, double y) {
        if (isLine()) {
            return new Point(y0 - y1, x1 - x0).unit();
        }
        return new Point(turn * (cx - x) / r, turn * (cy - y) / r);
    }

    /** Where this piece can be farthest from the origin: ends, farthest point, crossings of lines in these directions. */
    List<Point> extremes(double... directions) {
        List<Point> all = new ArrayList<>(List.of(new Point(x0, y0), new Point(x1, y1), farthestFrom(0, 0)));
        for (double direction : directions) {
            double cos = Math.cos(direction);
            double sin = Math.sin(direction);
            for (double along : moved(cos, -sin, 0, 0).crossings()) {
                all.add(new Point(along * cos, along * sin));
            }
        }
        return all;
    }

    /** Where it crosses the x axis. */
    private List<Double> crossings() {
        List<Double> found = new ArrayList<>();
        if (isLine() && y0 * y1 < 0) {
            found.add(x0 - y0 * (x1 - x0) / (y1 - y0));
        } else if (!isLine() && Math.abs(cy) < r) {
            double half = Math.sqrt(r * r - cy * cy);
            for (double x : new double[] {cx - half, cx + half}) {
                if (carries(x, 0)) {
                    found.add(x);
                }
            }
        }
        return found;
    }
}
