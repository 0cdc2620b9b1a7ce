// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.Arrays;
import ringleaf.geom.Angles;

/**
 * Goes along one piece and stops wherever others cross it, so that each stretch between two stops lies wholly inside
 * or wholly outside of whatever the others bound.
 */
final class Walk {
    private final Piece piece;
    private final double hair;
    private final double from;
    private final double sweep;
    private final double length;
    private final double[] crossings = new double[4];
    private double[] stops = new double[16];
    private int n;

    /** Middle of the stretch last looked at, and the unit normal to its left. */
    double x;

    double y;
    double leftX;
    double leftY;

    /** Stretches shorter than {@code hair} mm are passed over. */
    Walk(Piece piece, double hair) {
        this.piece = piece;
        this.hair = hair;
        boolean line = piece.isLine();
        from = line ? 0 : Math.atan2(piece.y0 - piece.cy, piece.x0 - piece.cx);
        sweep = line ? 0 : piece.sweep();
        length = line ? Math.hypot(piece.x1 - piece.x0, piece.y1 - piece.y0) : sweep * piece.r;
        stops[0] = 0;
        stops[1] = 1;
        n = 2;
    }

    /** Adds the stops that the outline of a shape makes. */
    void stopAt(Shape shape) {
        if (shape.gapTo(piece) > hair) {
            return;
        }
        if (shape.pieces.length < Shape.MANY) {
            stopAt(shape, 0, shape.pieces.length);
        } else {
            shape.runs().beside(piece, hair, (first, last) -> stopAt(shape, first, last));
        }
    }

    private void stopAt(Shape shape, int first, int last) {
        for (int i = first; i < last; i++) {
            stopAt(shape.pieces[i]);
        }
    }

    /** Adds the stops that another piece makes, and its start where that lies on this one. */
    void stopAt(Piece q) {
        if (q == piece || Piece.gap(piece, q) > hair) {
            return;
        }
        int found = Crossing.points(piece, q, crossings);
        for (int i = 0; i < found; i++) {
            add(crossings[2 * i], crossings[2 * i + 1]);
        }
        startsOn(q.x0, q.y0);
        startsOn(q.x1, q.y1);
    }

    private void startsOn(double px, double py) {
        double off;
        if (piece.isLine()) {
            off = Math.abs(piece.side(px, py)) / length;
        } else {
            off = Math.abs(Math.hypot(px - piece.cx, py - piece.cy) - piece.r);
        }
        if (off < hair) {
            add(px, py);
        }
    }

    private void add(double px, double py) {
        double u;
        if (piece.isLine()) {
            double dx = piece.x1 - piece.x0;
            double dy = piece.y1 - piece.y0;
            u = ((px - piece.x0) * dx + (py - piece.y0) * dy) / (length * length);
        } else {
            u = Angles.positive(piece.turn * (Math.atan2(py - piece.cy, px - piece.cx) - from)) / sweep;
        }
        if (u > 0 && u < 1) {
            stops = n == stops.length ? Arrays.copyOf(stops, 2 * n) : stops;
            stops[n++] = u;
        }
    }

    /** Puts the stops in order; returns how many stretches there are. */
    int stretches() {
        Arrays.sort(stops, 0, n);
        return n - 1;
    }

    /** Goes to the middle of a stretch; false when it is too short to look at. */
    boolean look(int stretch) {
        double u = (stops[stretch] + stops[stretch + 1]) / 2;
        if ((stops[stretch + 1] - stops[stretch]) * length < hair) {
            return false;
        }
        if (piece.isLine()) {
            x = piece.x0 + u * (piece.x1 - piece.x0);
            y = piece.y0 + u * (piece.y1 - piece.y0);
            leftX = (piece.y0 - piece.y1) / length;
            leftY = (piece.x1 - piece.x0) / length;
        } else {
            double angle = from + piece.turn * u * sweep;
            double cos = Math.cos(angle);
            double sin = Math.sin(angle);
            x = piece.cx + piece.r * cos;
            y = piece.cy + piece.r * sin;
            leftX = -piece.turn * cos;
            leftY = -piece.turn * sin;
        }
        return true;
    }

    /** The stretch's share of the area integral, 1/2 of x dy - y dx, mm². */
    double areaTerm(int stretch) {
        double u0 = stops[stretch];
        double u1 = stops[stretch + 1];
        if (piece.isLine()) {
            return (u1 - u0) * (piece.x0 * piece.y1 - piece.y0 * piece.x1) / 2;
        }
        double a0 = from + piece.turn * u0 * sweep;
        double a1 = from + piece.turn * u1 * sweep;
        double dx = piece.r * (Math.cos(a1) - Math.cos(a0));
        double dy = piece.r * (Math.sin(a1) - Math.sin(a0));
        return (piece.r * piece.r * (a1 - a0) + piece.cx * dy - piece.cy * dx) / 2;
    }
}
