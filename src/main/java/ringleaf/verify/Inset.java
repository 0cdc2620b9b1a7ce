// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * A shape shrunk all round, without trimming its outline: a point is in it when it is in the shape and no nearer to
 * the outline than asked. Its edge is part of the raw curves: each piece moved inwards, and an arc about each concave
 * corner. Exact on lines and arcs.
 */
final class Inset {
    final Shape shape;
    final Piece[] curves;
    private final double by;

    private Inset(Shape shape, Piece[] curves, double by) {
        this.shape = shape;
        this.curves = curves;
        this.by = by;
    }

    /** The shape as it is for {@code by} 0. */
    static Inset of(Shape shape, double by) {
        return new Inset(shape, by > 0 ? curves(shape, by) : shape.pieces, by);
    }

    Inset placed(Placement placement) {
        Shape moved = shape.placed(placement);
        if (by == 0) {
            return new Inset(moved, moved.pieces, 0);
        }
        double cos = Math.cos(placement.angle());
        double sin = Math.sin(placement.angle());
        Piece[] movedCurves = new Piece[curves.length];
        for (int i = 0; i < curves.length; i++) {
            movedCurves[i] = curves[i].moved(
                    cos, sin, placement.shift().x(), placement.shift().y());
        }
        return new Inset(moved, movedCurves, by);
    }

    boolean contains(double x, double y) {
        return shape.contains(x, y) && (by == 0 || !shape.isNearer(x, y, by));
    }

    /** Whether a point of a raw curve belongs to the edge of what is left. */
    boolean isEdge(double x, double y, double hair) {
        return by == 0 || shape.contains(x, y) && !shape.isNearer(x, y, by - hair);
    }

    private static Piece[] curves(Shape shape, double by) {
        List<Piece> curves = new ArrayList<>();
        for (int c = 0; c < shape.contours(); c++) {
            int from = shape.starts[c];
            int to = shape.starts[c + 1];
            for (int i = from; i < to; i++) {
                Piece p = shape.pieces[i];
                Piece moved = p.movedLeft(by);
                if (moved != null) {
                    curves.add(moved);
                }
                Piece next = shape.pieces[i + 1 < to ? i + 1 : from];
                Piece corner = p.whole ? null : corner(p, next, by);
                if (corner != null) {
                    curves.add(corner);
                }
            }
        }
        return curves.toArray(new Piece[0]);
    }

    private static Piece corner(Piece p, Piece next, double by) {
        Point at = new Point(p.x1, p.y1);
        Point before = p.leftNormal(p.x1, p.y1);
        Point after = next.leftNormal(p.x1, p.y1);
        // Turned less than a nanoradian, the two moved pieces meet within rounding.
        if (before.cross(after) > -1e-9) {
            return null;
        }
        Segment arc = Arc.around(at, at.plus(before.times(by)), at.plus(after.times(by)), false);
        return Piece.of(arc);
    }
}
