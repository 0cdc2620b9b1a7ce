// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * Corners of a contour made round: an arc of the wanted radius that is tangent to both pieces, which are cut back to
 * where it touches them. Convex and concave corners, between lines and arcs of any kind.
 *
 * <p>The arc's centre is where the two carriers, each moved by the radius to the inside of the turn, meet (closed
 * form). The tangent points are the feet of the centre on the carriers, so tangency is exact to rounding.
 */
public final class Fillet {
    /** Turns smaller than this, rad, are joints that are smooth already. */
    private static final double SMOOTH = 1e-7;

    private Fillet() {}

    /**
     * A contour with rounded corners, and the corners that were asked for but do not fit.
     *
     * @param contour with an arc in place of each corner that fits
     * @param left corners left as they were: the radius is too large for a piece beside them, or two wanted arcs
     *     would overlap on a piece between them (then both are left)
     */
    public record Rounded(Contour contour, List<Point> left) {}

    /** The contour with the corners chosen by {@code which} rounded; corners that do not fit stay sharp. */
    public static Contour rounded(Contour contour, double radius, Predicate<Point> which) {
        return of(contour, radius, which).contour();
    }

    /**
     * The contour with the corners chosen by {@code which} rounded, telling which did not fit. Smooth joints are never
     * asked for.
     *
     * @param radius mm, above 0
     */
    public static Rounded of(Contour contour, double radius, Predicate<Point> which) {
        if (!(radius > 0)) {
            throw new IllegalArgumentException("no corner radius " + radius);
        }
        List<Segment> pieces = contour.segments();
        int n = pieces.size();
        Cut[] cuts = new Cut[n];
        List<Point> left = new ArrayList<>();
        boolean[] wanted = new boolean[n];
        for (int i = 0; i < n; i++) {
            Segment before = pieces.get((i + n - 1) % n);
            Segment after = pieces.get(i);
            wanted[i] = before != after && Math.abs(Corners.turn(before, after)) > SMOOTH && which.test(after.start());
            if (wanted[i]) {
                cuts[i] = cut(before, after, radius);
            }
        }
        dropOverlaps(pieces, cuts);
        for (int i = 0; i < n; i++) {
            if (wanted[i] && cuts[i] == null) {
                left.add(pieces.get(i).start());
            }
        }
        return new Rounded(assembled(pieces, cuts), left);
    }

    /**
     * A chain of pieces with the corner before piece {@code corner} rounded. Pieces too short for the radius are left out
     * where the arc touches those beyond them, so that no crumbs of outline stay beside a rounding; as few as will do.
     *
     * @param radius mm, above 0
     * @param least of a piece that may stay beside the rounding, mm
     * @return the pieces, or null when the radius fits nowhere
     */
    public static List<Segment> bridged(List<Segment> chain, int corner, double radius, double least) {
        for (int left = 0; left < chain.size(); left++) {
            for (int back = 0; back <= left; back++) {
                int before = corner - 1 - back;
                int after = corner + left - back;
                if (before < 0 || after >= chain.size()) {
                    continue;
                }
                Cut cut = cut(chain.get(before), chain.get(after), radius);
                Segment first = chain.get(before);
                Segment last = chain.get(after);
                if (cut != null
                        && cut.onBefore * first.length() >= least
                        && (1 - cut.onAfter) * last.length() >= least) {
                    List<Segment> all = new ArrayList<>(chain.subList(0, before));
                    all.add(first.part(0, cut.onBefore).withEnds(first.start(), cut.arc.start()));
                    all.add(cut.arc);
                    all.add(last.part(cut.onAfter, 1).withEnds(cut.arc.end(), last.end()));
                    all.addAll(chain.subList(after + 1, chain.size()));
                    return all;
                }
            }
        }
        return null;
    }

    /** A rounding: the arc, and the shares of the pieces beside it at which it touches them. */
    private record Cut(Arc arc, double onBefore, double onAfter) {}

    private static Cut cut(Segment before, Segment after, double radius) {
        double turn = Corners.turn(before, after);
        boolean leftwards = turn > 0;
        double shift = leftwards ? radius : -radius;
        Segment a = Carriers.moved(before, shift);
        Segment b = Carriers.moved(after, shift);
        if (a == null || b == null) {
            return null;
        }
        Cut best = null;
        double nearest = Double.POSITIVE_INFINITY;
        for (Point centre : Carriers.meet(a, b)) {
            Cut cut = cutAbout(centre, before, after, radius, leftwards);
            double distance = centre.distance(after.start());
            if (cut != null && distance < nearest) {
                best = cut;
                nearest = distance;
            }
        }
        return best;
    }

    private static Cut cutAbout(Point centre, Segment before, Segment after, double radius, boolean leftwards) {
        Point start = Carriers.foot(before, centre);
        Point end = Carriers.foot(after, centre);
        double onBefore = Stations.share(before, start);
        double onAfter = Stations.share(after, end);
        double slack = 1e-9;
        if (onBefore < -slack || onBefore >= 1 || onAfter <= 0 || onAfter > 1 + slack) {
            return null;
        }
        double startAngle = start.minus(centre).angle();
        double sweep = Angles.positive(end.minus(centre).angle() - startAngle);
        if (!leftwards) {
            sweep -= Angles.TURN;
        }
        // both tangents must run on through the arc; the far side of a circle would turn back
        Arc arc = new Arc(centre, radius, startAngle, sweep, start, end);
        boolean onward = arc.tangentAt(0).dot(before.tangentAt(Math.max(0, onBefore))) > 0
                && arc.tangentAt(1).dot(after.tangentAt(Math.min(1, onAfter))) > 0;
        return onward && Math.abs(sweep) < Math.PI + 1e-9
                ? new Cut(arc, Math.max(0, onBefore), Math.min(1, onAfter))
                : null;
    }

    /** Where the roundings at both ends of a piece overlap, neither is made. */
    private static void dropOverlaps(List<Segment> pieces, Cut[] cuts) {
        int n = cuts.length;
        boolean[] drop = new boolean[n];
        for (int i = 0; i < n; i++) {
            Cut atStart = cuts[i];
            Cut atEnd = cuts[(i + 1) % n];
            if (atStart != null && atEnd != null && atStart.onAfter > atEnd.onBefore + 1e-9) {
                drop[i] = true;
                drop[(i + 1) % n] = true;
            }
        }
        for (int i = 0; i < n; i++) {
            cuts[i] = drop[i] ? null : cuts[i];
        }
    }

    private static Contour assembled(List<Segment> pieces, Cut[] cuts) {
        int n = cuts.length;
        List<Arc> arcs = new ArrayList<>(n);
        for (Cut cut : cuts) {
            arcs.add(cut == null ? null : cut.arc);
        }
        List<Segment> result = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Segment piece = pieces.get(i);
            Cut atStart = cuts[i];
            Cut atEnd = cuts[(i + 1) % n];
            double from = atStart == null ? 0 : atStart.onAfter;
            double to = atEnd == null ? 1 : atEnd.onBefore;
            boolean usedUp = (to - from) * piece.length() <= 1e-9 * piece.length();
            Arc startArc = arcs.get(i);
            Point start = startArc == null ? piece.start() : startArc.end();
            if (startArc != null) {
                result.add(startArc);
            }
            if (usedUp) {
                // the arcs at both ends meet here: one point value for both
                int next = (i + 1) % n;
                Arc endArc = arcs.get(next);
                arcs.set(next, endArc == null ? null : endArc.withEnds(start, endArc.end()));
            } else {
                Point end = arcs.get((i + 1) % n) == null
                        ? piece.end()
                        : arcs.get((i + 1) % n).start();
                result.add(piece.part(from, to).withEnds(start, end));
            }
        }
        return new Contour(closed(result));
    }

    /** The first arc may have been put down before its start was known to be another's end. */
    private static List<Segment> closed(List<Segment> pieces) {
        Segment last = pieces.get(pieces.size() - 1);
        Segment first = pieces.get(0);
        if (!last.end().equals(first.start())) {
            pieces.set(0, first.withEnds(last.end(), first.end()));
        }
        return pieces;
    }
}
