// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.SmoothCurve;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * A spline by its knots, control points and weights, evaluated by de Boor's relation (from memory; held against Bézier
 * curves and circles, which it contains).
 *
 * @param knots not falling, as many as control points and degree and one
 * @param weights as many as control points, above 0
 */
record Spline(int degree, double[] knots, List<Point> controls, double[] weights) {
    /** Whether the figures make up a spline. */
    boolean isWhole() {
        int n = controls.size();
        if (degree < 1 || degree > 25 || n <= degree || knots.length != n + degree + 1 || weights.length != n) {
            return false;
        }
        for (int i = 1; i < knots.length; i++) {
            if (!(knots[i] >= knots[i - 1])) {
                return false;
            }
        }
        for (double weight : weights) {
            if (!(weight > 0)) {
                return false;
            }
        }
        return knots[n] > knots[degree];
    }

    /** Arcs along it; between knots that stand together so often that it may have a corner there, each stretch alone. */
    Optional<List<Segment>> arcs(double within) {
        List<Segment> all = new ArrayList<>();
        double from = knots[degree];
        int i = degree + 1;
        while (i <= controls.size()) {
            int same = 1;
            while (i + same <= controls.size() && knots[i + same] == knots[i]) {
                same++;
            }
            if ((same >= degree || i + same > controls.size()) && knots[i] > from) {
                Stretch run = new Stretch(from, knots[i]);
                Optional<List<Segment>> stretch = degree == 1
                        ? Optional.of(List.of(new Line(run.at(from), run.at(knots[i]))))
                        : Curves.fitted(run, within);
                if (stretch.isEmpty()) {
                    return Optional.empty();
                }
                for (Segment piece : stretch.get()) {
                    boolean joins = !all.isEmpty();
                    all.add(joins ? piece.withEnds(all.get(all.size() - 1).end(), piece.end()) : piece);
                }
                from = knots[i];
            }
            i += same;
        }
        return Optional.of(all);
    }

    /** Between two values of the parameter. */
    private final class Stretch implements SmoothCurve {
        private final double from;
        private final double to;

        Stretch(double from, double to) {
            this.from = from;
            this.to = to;
        }

        @Override
        public double from() {
            return from;
        }

        @Override
        public double to() {
            return to;
        }

        @Override
        public Point at(double t) {
            double[][] w = reduced(t, 0);
            return new Point(w[0][0] / w[0][2], w[0][1] / w[0][2]);
        }

        /** The last step of the relation is a line in space with weights: its direction is that of the derivative. */
        @Override
        public Point tangent(double t) {
            double[][] w = reduced(t, 1);
            Point a = new Point(w[0][0] / w[0][2], w[0][1] / w[0][2]);
            Point b = new Point(w[1][0] / w[1][2], w[1][1] / w[1][2]);
            return b.minus(a);
        }

        private double[][] reduced(double t, int left) {
            int span = degree;
            // The last span that begins before the stretch's end holds it as well.
            while (span + 1 < controls.size() && knots[span + 1] <= t && knots[span + 1] < to) {
                span++;
            }
            double[][] w = new double[degree + 1][];
            for (int j = 0; j <= degree; j++) {
                int at = span - degree + j;
                double weight = weights[at];
                w[j] = new double[] {
                    controls.get(at).x() * weight, controls.get(at).y() * weight, weight
                };
            }
            for (int r = 1; r <= degree - left; r++) {
                for (int j = degree; j >= r; j--) {
                    double low = knots[span - degree + j];
                    double high = knots[span + 1 + j - r];
                    double share = high > low ? (t - low) / (high - low) : 0;
                    for (int k = 0; k < 3; k++) {
                        w[j][k] = (1 - share) * w[j - 1][k] + share * w[j][k];
                    }
                }
            }
            return left == 0 ? new double[][] {w[degree]} : new double[][] {w[degree - 1], w[degree]};
        }
    }
}
