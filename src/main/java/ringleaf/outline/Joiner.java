// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import ringleaf.curve.ByPlace;
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
    /** Centres and radii of arcs of one circle differ by no more, mm. */
    private static final double ROUND = 1e-3;
    /** Pieces that come nearer than this touch, mm. */
    private static final double TOUCH = 1e-6;

    private final List<Piece> pieces;
    private final DrawingFrame frame;
    private final Problems problems;

    /** Ends of open pieces, by their index. */
    private final ByPlace<Integer> ends = new ByPlace<>();

    /** A contour and where it was drawn. */
    record Joined(Contour contour, Place place) {}

    Joiner(List<Piece> pieces, DrawingFrame frame, Problems problems) {
        this.pieces = pieces;
        this.frame = frame;
        this.problems = problems;
    }

    /** The contours; fewer or none after reporting. */
    List<Joined> join() {
        int before = problems.count();
        List<Joined> joined = new ArrayList<>();
        List<Piece> open = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.closed()) {
                joined.add(new Joined(new Contour(round(piece.segments())), piece.place()));
            } else {
                open.add(piece);
            }
        }
        doubled();
        if (problems.count() == before) {
            strung(open, joined, before);
        }
        if (problems.count() == before) {
            crossing(joined);
        }
        return joined;
    }

    /** A circle drawn as several arcs, as polylines of two bulges are, is one circle; else the pieces as they are. */
    private static List<Segment> round(List<Segment> chain) {
        double sweep = 0;
        for (Segment piece : chain) {
            if (!(piece instanceof Arc arc) || !(chain.get(0) instanceof Arc head)) {
                return chain;
            }
            if (arc.centre().distance(head.centre()) > ROUND || Math.abs(arc.radius() - head.radius()) > ROUND) {
                return chain;
            }
            sweep += arc.sweep();
        }
        Arc head = (Arc) chain.get(0);
        // Ends were moved by no more than they were joined by.
        boolean full = Math.abs(Math.abs(sweep) - 2 * Math.PI) < 4 * NEAR / head.radius();
        return full && !head.isCircle()
                ? Contour.circle(head.centre(), head.radius()).segments()
                : chain;
    }

    private void doubled() {
        ByPlace<Integer> starts = new ByPlace<>();
        for (int i = 0; i < pieces.size(); i++) {
            starts.put(box(pieces.get(i)), i);
        }
        for (int i = 0; i < pieces.size(); i++) {
            Piece a = pieces.get(i);
            Point on = a.segments().get(0).pointAt(0.5);
            for (int near : starts.near(new Box(on.x(), on.y(), on.x(), on.y()).grown(NEAR))) {
                Piece b = pieces.get(near);
                if (near < i && a.segments().size() == b.segments().size() && isSame(a, b)) {
                    problems.at(
                            a.place(),
                            "is drawn twice (first in line " + b.place().line() + ")",
                            "remove one");
                }
            }
        }
    }

    private static Box box(Piece piece) {
        Box box = piece.segments().get(0).box();
        for (Segment segment : piece.segments()) {
            box = box.union(segment.box());
        }
        return box;
    }

    private static boolean isSame(Piece a, Piece b) {
        return covers(a.segments(), b.segments()) && covers(b.segments(), a.segments());
    }

    private static boolean covers(List<Segment> a, List<Segment> b) {
        ByPlace<Segment> tree = new ByPlace<>();
        for (Segment other : b) {
            tree.put(other.box().grown(NEAR), other);
        }
        for (Segment segment : a) {
            boolean found = false;
            Point middle = segment.pointAt(0.5);
            for (Segment other : tree.at(middle)) {
                found |= Distances.distance(other, middle) < NEAR
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
        for (int i = 0; i < open.size(); i++) {
            List<Segment> segments = open.get(i).segments();
            for (Point p : List.of(segments.get(0).start(), end(segments))) {
                ends.put(new Box(p.x(), p.y(), p.x(), p.y()).grown(NEAR), i);
            }
        }
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
            joined.add(new Joined(new Contour(round(chain)), open.get(i).place()));
        }
    }

    private static Point end(List<Segment> chain) {
        return chain.get(chain.size() - 1).end();
    }

    /** The one open piece that goes on here; reports none and several. */
    private int next(List<Piece> open, boolean[] used, Point at, Point first, Place place) {
        int found = -1;
        TreeSet<Integer> near = new TreeSet<>(ends.at(at));
        for (int i : near) {
            if (used[i] || distance(open.get(i), at) > NEAR) {
                continue;
            }
            if (found >= 0) {
                problems.at(
                        open.get(i).place(), "three ends meet at " + frame.words(at), "two ends meet in an outline");
                return -1;
            }
            found = i;
        }
        if (found < 0) {
            problems.at(
                    place,
                    "is open at " + frame.words(at),
                    "the nearest other end is " + Words.number(nearest(open, used, at, first), 4)
                            + " mm away, and ends within " + Words.number(NEAR, 4) + " mm are joined");
        }
        return found;
    }

    private static double distance(Piece piece, Point at) {
        List<Segment> segments = piece.segments();
        return Math.min(segments.get(0).start().distance(at), end(segments).distance(at));
    }

    private static double nearest(List<Piece> open, boolean[] used, Point at, Point first) {
        double nearest = first.distance(at);
        for (int i = 0; i < open.size(); i++) {
            nearest = used[i] ? nearest : Math.min(nearest, distance(open.get(i), at));
        }
        return nearest;
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

    /** A piece of a contour, both by their place in their lists. */
    private record Run(int contour, int index, Segment segment) {}

    /** Tells for each contour the first place where it meets itself, or one before it. */
    private void crossing(List<Joined> joined) {
        ByPlace<Run> tree = new ByPlace<>();
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < joined.size(); i++) {
            List<Segment> own = joined.get(i).contour.segments();
            for (int a = 0; a < own.size(); a++) {
                Run run = new Run(i, a, own.get(a));
                runs.add(run);
                tree.put(run.segment.box().grown(TOUCH), run);
            }
        }
        int told = -1;
        for (Run run : runs) {
            if (run.contour > told && crosses(joined, run, tree)) {
                told = run.contour;
            }
        }
    }

    private boolean crosses(List<Joined> joined, Run run, ByPlace<Run> tree) {
        int count = joined.get(run.contour).contour.segments().size();
        Place place = joined.get(run.contour).place;
        for (Run other : tree.near(run.segment.box())) {
            boolean own = other.contour == run.contour;
            if (own ? other.index <= run.index : other.contour > run.contour) {
                continue;
            }
            boolean adjacent = other.index == run.index + 1 || run.index == 0 && other.index == count - 1;
            Point at = own && adjacent ? beyondCorner(run.segment, other.segment) : meeting(run.segment, other.segment);
            if (at != null) {
                int line = joined.get(other.contour).place.line();
                problems.at(
                        place,
                        (own
                                        ? "crosses or touches itself at "
                                        : "crosses or touches the outline of line " + line + " at ")
                                + frame.words(at),
                        own ? "draw one plain outline" : "outlines stay apart");
                return true;
            }
        }
        return false;
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
}
