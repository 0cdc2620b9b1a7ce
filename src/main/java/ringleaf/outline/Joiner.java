// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Distances;
import ringleaf.curve.Intersections;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.part.Words;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/**
 * Joins drawn pieces into closed contours: ends nearer than {@link #NEAR} are one, and exactly two ends meet at each. A
 * piece whose end is moved onto another's keeps its sweep, so nothing strays by more than that. Open ends, pieces drawn
 * twice and contours that cross are reported.
 */
final class Joiner {
    /** Ends nearer than this are one, mm: drawing programs round to 0.001 mm at worst (common practice, no source). */
    static final double NEAR = 0.005;
    /** Pieces that come nearer than this touch, mm. */
    private static final double TOUCH = 1e-6;

    private final List<Piece> pieces;
    private final Problems problems;

    /** A contour and where it was drawn. */
    record Joined(Contour contour, Place place) {}

    Joiner(List<Piece> pieces, Problems problems) {
        this.pieces = pieces;
        this.problems = problems;
    }

    /** The contours; fewer or none after reporting. */
    List<Joined> join() {
        int before = problems.count();
        List<Joined> joined = new ArrayList<>();
        List<Piece> open = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.closed()) {
                joined.add(new Joined(new Contour(piece.segments()), piece.place()));
            } else {
                open.add(piece);
            }
        }
        doubled();
        if (problems.count() == before) {
            strung(open, joined, before);
        }
        if (problems.count() == before) {
            for (int i = 0; i < joined.size(); i++) {
                crossing(joined, i);
            }
        }
        return joined;
    }

    private void doubled() {
        for (int i = 0; i < pieces.size(); i++) {
            for (int j = 0; j < i; j++) {
                Piece a = pieces.get(i);
                Piece b = pieces.get(j);
                if (a.segments().size() == b.segments().size() && isSame(a, b)) {
                    problems.at(
                            a.place(),
                            "is drawn twice (first in line " + b.place().line() + ")",
                            "remove one");
                }
            }
        }
    }

    private static boolean isSame(Piece a, Piece b) {
        return covers(a.segments(), b.segments()) && covers(b.segments(), a.segments());
    }

    private static boolean covers(List<Segment> a, List<Segment> b) {
        for (Segment segment : a) {
            boolean found = false;
            for (Segment other : b) {
                found |= Distances.distance(other, segment.pointAt(0.5)) < NEAR
                        && Distances.distance(other, segment.start()) < NEAR
                        && Distances.distance(other, segment.end()) < NEAR;
            }
            if (!found) {
                return false;
            }
        }
        return true;
    }

    private void strung(List<Piece> open, List<Joined> joined, int before) {
        boolean[] used = new boolean[open.size()];
        for (int i = 0; i < open.size() && problems.count() == before; i++) {
            if (used[i]) {
                continue;
            }
            used[i] = true;
            List<Segment> chain = new ArrayList<>(open.get(i).segments());
            Point first = chain.get(0).start();
            while (end(chain).distance(first) > NEAR
                    || chain.size() == 1 && chain.get(0).length() < NEAR) {
                int next = next(open, used, end(chain), first, open.get(i).place());
                if (next < 0) {
                    return;
                }
                used[next] = true;
                append(chain, open.get(next).segments());
            }
            closed(chain);
            joined.add(new Joined(new Contour(chain), open.get(i).place()));
        }
    }

    private static Point end(List<Segment> chain) {
        return chain.get(chain.size() - 1).end();
    }

    /** The one open piece that goes on here; reports none and several. */
    private int next(List<Piece> open, boolean[] used, Point at, Point first, Place place) {
        int found = -1;
        double nearest = first.distance(at);
        for (int i = 0; i < open.size(); i++) {
            if (used[i]) {
                continue;
            }
            double start = open.get(i).segments().get(0).start().distance(at);
            double stop = end(open.get(i).segments()).distance(at);
            double near = Math.min(start, stop);
            if (near <= NEAR && found >= 0) {
                problems.at(open.get(i).place(), "three ends meet at " + words(at), "two ends meet in an outline");
                return -1;
            }
            found = near <= NEAR ? i : found;
            nearest = Math.min(nearest, near);
        }
        if (found < 0) {
            problems.at(
                    place,
                    "is open at " + words(at),
                    "the nearest other end is " + Words.number(nearest, 4) + " mm away, and ends within "
                            + Words.number(NEAR, 4) + " mm are joined");
        }
        return found;
    }

    /** Adds a chain that begins or ends where this one ends, on the same point value. */
    private static void append(List<Segment> chain, List<Segment> more) {
        Point at = end(chain);
        List<Segment> on = more;
        if (more.get(0).start().distance(at) > end(more).distance(at)) {
            on = new ArrayList<>();
            for (int i = more.size() - 1; i >= 0; i--) {
                on.add(more.get(i).reversed());
            }
        }
        for (Segment segment : on) {
            chain.add(moved(segment, end(chain), segment.end()));
        }
    }

    private static void closed(List<Segment> chain) {
        Segment last = chain.remove(chain.size() - 1);
        Point first = chain.isEmpty() ? last.start() : chain.get(0).start();
        chain.add(moved(last, last.start(), first));
    }

    /** The piece between other ends, its sweep kept. */
    private static Segment moved(Segment segment, Point start, Point end) {
        if (segment.start().equals(start) && segment.end().equals(end)) {
            return segment;
        }
        if (segment instanceof Arc arc) {
            boolean rounding =
                    segment.start().distance(start) < 1e-9 && segment.end().distance(end) < 1e-9;
            return rounding || start.equals(end) ? arc.withEnds(start, end) : Arc.ofBulge(start, end, arc.bulge());
        }
        return new Line(start, end);
    }

    private void crossing(List<Joined> joined, int i) {
        List<Segment> own = joined.get(i).contour.segments();
        for (int a = 0; a < own.size(); a++) {
            for (int b = a + 1; b < own.size(); b++) {
                boolean adjacent = b == a + 1 || a == 0 && b == own.size() - 1;
                Point at = adjacent ? beyondCorner(own.get(a), own.get(b)) : meeting(own.get(a), own.get(b));
                if (at != null) {
                    problems.at(
                            joined.get(i).place,
                            "crosses or touches itself at " + words(at),
                            "draw one" + " plain outline");
                    return;
                }
            }
        }
        for (int j = 0; j < i; j++) {
            Contour other = joined.get(j).contour;
            if (!other.box().grown(TOUCH).meets(joined.get(i).contour.box())) {
                continue;
            }
            for (Segment a : own) {
                for (Segment b : other.segments()) {
                    Point at = meeting(a, b);
                    if (at != null) {
                        problems.at(
                                joined.get(i).place,
                                "crosses or touches the outline of line "
                                        + joined.get(j).place.line() + " at " + words(at),
                                "outlines stay apart");
                        return;
                    }
                }
            }
        }
    }

    private static Point meeting(Segment a, Segment b) {
        if (!a.box().grown(TOUCH).meets(b.box())) {
            return null;
        }
        ringleaf.curve.Gap gap = Distances.between(a, b);
        return gap.distance() <= TOUCH ? gap.onFirst() : null;
    }

    /** Where two neighbours meet besides their corner; their whole run when one folds back on the other. */
    private static Point beyondCorner(Segment a, Segment b) {
        List<Point> crossings = new ArrayList<>(2);
        Box both = a.box().union(b.box());
        Intersections.crossings(a, b, ringleaf.geom.Tolerance.rounding(both), crossings);
        for (Point p : crossings) {
            boolean corner = p.distance(a.start()) < NEAR || p.distance(a.end()) < NEAR;
            if (!corner) {
                return p;
            }
        }
        boolean after = a.end().equals(b.start());
        Segment first = after ? a : b;
        Segment second = after ? b : a;
        boolean back = first.tangentAt(1).dot(second.tangentAt(0)) < -1 + 1e-12
                && Math.abs(first.curvature() + second.curvature()) < 1e-9;
        return back && !(first.equals(second)) ? first.end() : null;
    }

    static String words(Point p) {
        return Words.number(p.x(), 3) + ", " + Words.number(p.y(), 3);
    }
}
