// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * Turns a smooth curve into arcs that join with a common tangent: the longest biarc that stays within the tolerance,
 * then the next.
 *
 * <p>The pieces start and end on the curve and share its direction there. The deviation is measured at
 * {@value #PLACES} places of each biarc, square to the biarc; between two places a deviation of that shape (two waves
 * a biarc) rises by at most 1 % more (assumed, and held by a test against 50 times as many places), so a biarc is
 * accepted only when its measured deviation is 1 % below the tolerance.
 */
public final class ArcFit {
    private static final int PLACES = 32;
    private static final double RESERVE = 0.99;
    private static final int TRIES = 60;

    private ArcFit() {}

    /**
     * Arcs and the greatest deviation that was measured on them.
     *
     * @param path from the curve's start to its end, tangent-continuous to rounding
     * @param deviation of the true curve from the path, mm, measured
     */
    public record Fitted(Path path, double deviation) {}

    /** Arcs within {@code tolerance} of the curve, joined with a common tangent. */
    public static Path fit(SmoothCurve curve, Tolerance tolerance) {
        return fitted(curve, tolerance).path();
    }

    /**
     * Arcs within {@code tolerance} of the curve, with the deviation measured on them; refused with an
     * {@link IllegalArgumentException} where the curve stops, turns back, runs against its stated tangent, or is not
     * finite. A blunt corner is no error: it becomes an arc that strays no further than the tolerance.
     */
    public static Fitted fitted(SmoothCurve curve, Tolerance tolerance) {
        double end = curve.to();
        double whole = end - curve.from();
        if (!(whole > 0) || Double.isInfinite(whole)) {
            throw new IllegalArgumentException("no curve from " + curve.from() + " to " + end);
        }
        double limit = tolerance.length() * RESERVE;
        List<Segment> pieces = new ArrayList<>();
        double worst = 0;
        Node at = Node.on(curve, curve.from());
        double guess = whole;
        while (at.t < end) {
            Span span = longest(curve, at, end, guess, limit);
            worst = Math.max(worst, span.deviation);
            append(pieces, span.biarc.first());
            append(pieces, span.biarc.second());
            guess = span.to.t - at.t;
            at = span.to;
        }
        return new Fitted(new Path(pieces), worst);
    }

    private record Node(double t, Point point, Point direction) {
        static Node on(SmoothCurve curve, double t) {
            return new Node(t, curve.at(t), curve.tangent(t).unit());
        }
    }

    private record Span(Node to, Biarc biarc, double deviation) {}

    /**
     * The longest span from {@code at} that keeps the limit, to a thousandth of its length. The deviation grows about
     * with the third power of the span, which gives the next try; the bracket makes it safe.
     */
    private static Span longest(SmoothCurve curve, Node at, double end, double guess, double limit) {
        double rest = end - at.t;
        double good = 0;
        double bad = Double.POSITIVE_INFINITY;
        double step = Math.min(rest, guess);
        Span best = null;
        for (int i = 0; i < TRIES; i++) {
            boolean last = step >= rest;
            Node to = Node.on(curve, last ? end : at.t + step);
            Biarc biarc = Biarc.between(at.point, at.direction, to.point, to.direction);
            double deviation = biarc == null ? Double.POSITIVE_INFINITY : deviation(curve, at, to, biarc);
            if (deviation <= limit) {
                best = new Span(to, biarc, deviation);
                good = step;
                if (last || bad - good < 1e-3 * good || deviation > 0.98 * limit) {
                    return best;
                }
            } else {
                bad = step;
                if (best != null && bad - good < 1e-3 * good) {
                    return best;
                }
            }
            step = next(step, good, bad, rest, 0.99 * limit / deviation);
        }
        if (best != null) {
            return best;
        }
        throw new IllegalArgumentException("the curve has no steady tangent near t = " + at.t);
    }

    private static double next(double step, double good, double bad, double rest, double ratio) {
        double wish = step * Math.min(4, Math.max(0.2, Math.cbrt(ratio)));
        if (Double.isInfinite(bad)) {
            return Math.min(rest, Math.max(wish, 1.001 * good));
        }
        double width = bad - good;
        boolean within = wish > good + 0.02 * width && wish < bad - 0.02 * width;
        return within ? wish : good + 0.5 * width;
    }

    private static double deviation(SmoothCurve curve, Node from, Node to, Biarc biarc) {
        double worst = 0;
        for (int i = 0; i < PLACES; i++) {
            double t = from.t + (to.t - from.t) * (i + 0.5) / PLACES;
            worst = Math.max(worst, biarc.deviation(curve.at(t)));
        }
        return Double.isNaN(worst) ? Double.POSITIVE_INFINITY : worst;
    }

    /** Adds a piece, as one with the piece before when both lie on one carrier to rounding. */
    private static void append(List<Segment> pieces, Segment piece) {
        if (!pieces.isEmpty()) {
            Segment joined = joined(pieces.get(pieces.size() - 1), piece);
            if (joined != null) {
                pieces.set(pieces.size() - 1, joined);
                return;
            }
        }
        pieces.add(piece);
    }

    private static Segment joined(Segment before, Segment after) {
        if (before instanceof Line && after instanceof Line) {
            return new Line(before.start(), after.end());
        }
        if (before instanceof Arc a && after instanceof Arc b && a.sweep() * b.sweep() > 0) {
            double apart = a.centre().distance(b.centre()) + Math.abs(a.radius() - b.radius());
            double sweep = a.sweep() + b.sweep();
            if (apart <= 1e-12 * a.radius() && Math.abs(sweep) < 2 * Math.PI) {
                return new Arc(a.centre(), a.radius(), a.startAngle(), sweep, a.start(), b.end());
            }
        }
        return null;
    }
}
