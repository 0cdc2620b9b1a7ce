// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.ArcFit;
import ringleaf.curve.Distances;
import ringleaf.curve.SmoothCurve;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** Curves of drawings as arcs that touch one another, no further from the curve than {@link #WITHIN}. */
final class Curves {
    /** How far arcs may lie from the curve that was drawn, mm: as far as ends that are joined. */
    static final double WITHIN = 0.005;

    private static final int LOOKS = 128;

    private Curves() {}

    /**
     * A Bézier curve of any degree; a line where its control points lie on one, and nothing where they are one point.
     *
     * @param within greatest deviation, in units of the points
     * @return empty where the curve turns back on itself
     */
    static Optional<List<Segment>> bezier(List<Point> controls, double within) {
        Point first = controls.get(0);
        Point last = controls.get(controls.size() - 1);
        Point far = first;
        for (Point control : controls) {
            far = control.distance(first) > far.distance(first) ? control : far;
        }
        if (far.distance(first) <= within / 100) {
            return Optional.of(List.of());
        }
        Point along = far.minus(first).unit();
        boolean straight = true;
        boolean between = true;
        for (Point control : controls) {
            Point from = control.minus(first);
            straight &= Math.abs(along.cross(from)) <= within / 100;
            between &= from.dot(along) >= -within / 100
                    && from.dot(along) <= last.minus(first).dot(along) + within / 100;
        }
        if (straight) {
            return between ? Optional.of(List.of(new Line(first, last))) : Optional.empty();
        }
        return fitted(new Bezier(controls), within);
    }

    /**
     * A piece of an ellipse: centre + across cos t + up sin t.
     *
     * @param from parameter at its start, rad
     * @param sweep of the parameter, rad, in either sense
     */
    static Optional<List<Segment>> ellipse(
            Point centre, Point across, Point up, double from, double sweep, double within) {
        return fitted(new Ellipse(centre, across, up, from, sweep), within);
    }

    /** A whole ellipse, in two halves that close on the same point values. */
    static Optional<List<Segment>> wholeEllipse(Point centre, Point across, Point up, double within) {
        Optional<List<Segment>> one = ellipse(centre, across, up, 0, Math.PI, within);
        Optional<List<Segment>> two = ellipse(centre, across, up, Math.PI, Math.PI, within);
        if (one.isEmpty() || two.isEmpty()) {
            return Optional.empty();
        }
        List<Segment> all = new ArrayList<>(one.get());
        for (Segment piece : two.get()) {
            all.add(piece.withEnds(all.get(all.size() - 1).end(), piece.end()));
        }
        Segment last = all.remove(all.size() - 1);
        all.add(last.withEnds(last.start(), all.get(0).start()));
        return Optional.of(all);
    }

    /** Arcs along a smooth curve; empty where it stops or turns back. */
    static Optional<List<Segment>> fitted(SmoothCurve curve, double within) {
        try {
            List<Segment> arcs = ArcFit.fit(curve, new Tolerance(within)).segments();
            return follows(arcs, curve, within) ? Optional.of(arcs) : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Looked at by distances alone: a fit of tangent arcs can leave out a spike, and an outline must not lose one. */
    private static boolean follows(List<Segment> arcs, SmoothCurve curve, double within) {
        int places = Math.max(LOOKS, 8 * arcs.size());
        for (int i = 0; i <= places; i++) {
            Point p = curve.at(curve.from() + (curve.to() - curve.from()) * i / places);
            double least = Double.POSITIVE_INFINITY;
            for (Segment arc : arcs) {
                least = Math.min(least, Distances.distance(arc, p));
            }
            if (!(least <= within)) {
                return false;
            }
        }
        return true;
    }

    private record Ellipse(Point centre, Point across, Point up, double start, double sweep) implements SmoothCurve {
        @Override
        public double from() {
            return 0;
        }

        @Override
        public double to() {
            return 1;
        }

        @Override
        public Point at(double t) {
            double angle = start + sweep * t;
            return centre.plus(across.times(Math.cos(angle))).plus(up.times(Math.sin(angle)));
        }

        @Override
        public Point tangent(double t) {
            double angle = start + sweep * t;
            return up.times(Math.cos(angle))
                    .minus(across.times(Math.sin(angle)))
                    .times(Math.signum(sweep));
        }
    }

    /** By repeated halving of the control polygon (de Casteljau; from memory). */
    private record Bezier(List<Point> controls) implements SmoothCurve {
        @Override
        public double from() {
            return 0;
        }

        @Override
        public double to() {
            return 1;
        }

        @Override
        public Point at(double t) {
            return t == 0 ? controls.get(0) : t == 1 ? controls.get(controls.size() - 1) : reduced(t, 1)[0];
        }

        /** At an end where control points are one the direction is that to the next one. */
        @Override
        public Point tangent(double t) {
            Point[] two = reduced(t, 2);
            Point along = two[1].minus(two[0]);
            if (along.norm() > 1e-9 * controls.get(0).distance(controls.get(controls.size() - 1))) {
                return along;
            }
            int n = controls.size();
            for (int i = 1; i < n; i++) {
                Point step = t < 0.5
                        ? controls.get(i).minus(controls.get(0))
                        : controls.get(n - 1).minus(controls.get(n - 1 - i));
                if (step.norm() > 0) {
                    return step;
                }
            }
            return along;
        }

        private Point[] reduced(double t, int left) {
            Point[] points = controls.toArray(new Point[0]);
            for (int n = points.length - 1; n >= left; n--) {
                for (int i = 0; i < n; i++) {
                    points[i] = points[i].towards(points[i + 1], t);
                }
            }
            return points;
        }
    }
}
