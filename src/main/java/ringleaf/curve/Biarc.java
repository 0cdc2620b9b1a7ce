// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * Two pieces, each an arc or a line, that run from one point and direction to another and share their tangent where
 * they join.
 *
 * <p>With unit directions {@code u}, {@code v} at the ends {@code p}, {@code q} and equal tangent lengths {@code d}
 * the join is the middle of {@code p + d u} and {@code q - d v}, where |q - p - d (u + v)| = 2 d; that is a quadratic
 * in {@code d} (derived here: each arc has two equal tangents, and both meet on the join's own tangent).
 *
 * @param first from the start to the join
 * @param second from the join to the end
 */
record Biarc(Segment first, Segment second) {
    /** The biarc from {@code p} to {@code q}; null unless both directions lie within a quarter turn of the chord. */
    static Biarc between(Point p, Point u, Point q, Point v) {
        Point chord = q.minus(p);
        double square = chord.dot(chord);
        double along = chord.dot(u.plus(v));
        // 1 - u.v, written so that it does not cancel for nearly parallel directions
        Point turn = v.minus(u);
        double bend = turn.dot(turn);
        double root = Math.sqrt(along * along + square * bend);
        if (!(u.dot(chord) > 0) || !(v.dot(chord) > 0)) {
            return null;
        }
        // d solves bend d² + 2 along d - square = 0
        double d = square / (along + root);
        Point join = p.plus(u.times(d)).towards(q.minus(v.times(d)), 0.5);
        if (join.equals(p) || join.equals(q)) {
            return null;
        }
        Segment back = tangentPiece(q, v.times(-1), join).reversed();
        return new Biarc(tangentPiece(p, u, join), back);
    }

    /** The arc that leaves {@code start} in the unit direction {@code u} and ends in {@code end}. */
    static Segment tangentPiece(Point start, Point u, Point end) {
        Point chord = end.minus(start);
        double across = u.cross(chord);
        double sweep = 2 * Math.atan2(across, u.dot(chord));
        // the chord of so flat an arc leaves it by |chord| sweep / 8, below the rounding of its ends
        if (Math.abs(sweep) < 1e-13) {
            return new Line(start, end);
        }
        double radius = chord.dot(chord) / (2 * across);
        Point centre = start.plus(u.left().times(radius));
        double outward = sweep > 0 ? -Math.PI / 2 : Math.PI / 2;
        return new Arc(centre, Math.abs(radius), Angles.signed(u.angle() + outward), sweep, start, end);
    }

    /** How far {@code p}, which lies beside this biarc, is from the piece on its side of the join. */
    double deviation(Point p) {
        Point join = first.end();
        boolean before = p.minus(join).dot(first.tangentAt(1)) <= 0;
        return distance(before ? first : second, p);
    }

    private static double distance(Segment piece, Point p) {
        if (piece instanceof Arc arc) {
            return Math.abs(p.distance(arc.centre()) - arc.radius());
        }
        Point direction = piece.end().minus(piece.start());
        return Math.abs(direction.cross(p.minus(piece.start()))) / direction.norm();
    }
}
