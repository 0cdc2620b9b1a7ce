// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * The convex hull of discs, found by walking round it: from the direction in which the present disc reaches furthest,
 * the next disc is the one whose outer tangent comes first as the direction turns counter-clockwise.
 *
 * <p>A disc (c, r) reaches h(a) = c . e(a) + r in the direction a. Two discs reach equally far where
 * (c2 - c1) . e(a) = r1 - r2, so the second takes over at a = arg(c2 - c1) - acos((r1 - r2) / |c2 - c1|).
 */
final class DiscHull {
    /** Directions nearer than this are one, rad: rounding of an angle and of its arc cosine. */
    private static final double SAME = 1e-12;

    private DiscHull() {}

    static Contour of(List<Circle> given) {
        List<Circle> discs = needed(given);
        if (discs.size() == 1) {
            return Contour.circle(discs.get(0).centre(), discs.get(0).radius());
        }
        List<Integer> order = new ArrayList<>();
        List<Double> from = new ArrayList<>();
        int at = rightmost(discs);
        double angle = 0;
        // each pair of discs changes places at most twice a turn, so the walk ends within this many steps
        for (int step = 0; step <= discs.size() * discs.size(); step++) {
            order.add(at);
            from.add(angle);
            int next = next(discs, at, angle);
            double wait = wait(discs, at, next, angle);
            if (angle + wait >= Angles.TURN - SAME) {
                break;
            }
            angle += wait;
            at = next;
        }
        return closed(arcs(discs, order, from));
    }

    private static int next(List<Circle> discs, int at, double angle) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < discs.size(); j++) {
            if (j == at) {
                continue;
            }
            double wait = wait(discs, at, j, angle);
            boolean sooner = wait < least - SAME;
            // of discs on one common tangent the furthest along it takes over
            if (sooner || wait < least + SAME && furtherAlong(discs.get(j), discs.get(best), angle + wait)) {
                best = j;
                least = wait;
            }
        }
        return best;
    }

    private static boolean furtherAlong(Circle one, Circle other, double angle) {
        return one.centre().minus(other.centre()).dot(Point.polar(1, angle).left()) > 0;
    }

    /** How far the direction turns from {@code angle} until disc {@code to} takes over; just missed counts as now. */
    private static double wait(List<Circle> discs, int at, int to, double angle) {
        double wait = Angles.positive(takeover(discs.get(at), discs.get(to)) - angle + SAME) - SAME;
        return Math.max(0, wait);
    }

    private static List<Arc> arcs(List<Circle> discs, List<Integer> order, List<Double> from) {
        List<Arc> arcs = new ArrayList<>();
        int n = order.size();
        boolean wraps = n > 1 && order.get(0).equals(order.get(n - 1));
        for (int i = wraps ? 1 : 0; i < n; i++) {
            double end = i < n - 1 ? from.get(i + 1) : wraps ? Angles.TURN + from.get(1) : Angles.TURN;
            double sweep = end - from.get(i);
            if (sweep > SAME) {
                Circle disc = discs.get(order.get(i));
                arcs.add(Arc.of(disc.centre(), disc.radius(), from.get(i), sweep));
            }
        }
        return arcs;
    }

    /** Joins arcs that follow each other by lines; ends that are one point to rounding are made one value. */
    static Contour closed(List<Arc> arcs) {
        List<Segment> pieces = new ArrayList<>();
        int n = arcs.size();
        Point[] starts = new Point[n];
        for (int i = 0; i < n; i++) {
            Point before = arcs.get((i + n - 1) % n).end();
            Point own = arcs.get(i).start();
            double rounding =
                    1e-14 * (Math.abs(own.x()) + Math.abs(own.y()) + arcs.get(i).radius());
            starts[i] = before.distance(own) <= rounding ? before : own;
        }
        for (int i = 0; i < n; i++) {
            Arc arc = arcs.get(i);
            Point next = starts[(i + 1) % n];
            pieces.add(arc.withEnds(starts[i], arc.end()));
            if (!next.equals(arc.end())) {
                pieces.add(new Line(arc.end(), next));
            }
        }
        return new Contour(pieces);
    }

    private static double takeover(Circle from, Circle to) {
        Point way = to.centre().minus(from.centre());
        double cos = (from.radius() - to.radius()) / way.norm();
        return way.angle() - Math.acos(Math.max(-1, Math.min(1, cos)));
    }

    /** The discs that no other disc holds, doubles once. */
    private static List<Circle> needed(List<Circle> given) {
        if (given.isEmpty()) {
            throw new IllegalArgumentException("a hull needs a disc");
        }
        List<Circle> needed = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            boolean held = false;
            for (int j = 0; j < given.size() && !held; j++) {
                boolean both = given.get(i).holds(given.get(j)) && j > i;
                held = j != i && given.get(j).holds(given.get(i)) && !both;
            }
            if (!held) {
                needed.add(given.get(i));
            }
        }
        return needed;
    }

    private static int rightmost(List<Circle> discs) {
        int best = 0;
        for (int i = 1; i < discs.size(); i++) {
            double reach = discs.get(i).centre().x() + discs.get(i).radius();
            double bestReach = discs.get(best).centre().x() + discs.get(best).radius();
            boolean tie = reach == bestReach
                    && discs.get(i).centre().y() > discs.get(best).centre().y();
            if (reach > bestReach || tie) {
                best = i;
            }
        }
        return best;
    }
}
