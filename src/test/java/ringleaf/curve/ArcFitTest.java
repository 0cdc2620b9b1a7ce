// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

class ArcFitTest {
    private static final Tolerance MICRON = new Tolerance(0.001);

    private record Curve(double from, double to, DoubleFunction<Point> point, DoubleFunction<Point> direction)
            implements SmoothCurve {
        @Override
        public Point at(double t) {
            return point.apply(t);
        }

        @Override
        public Point tangent(double t) {
            return direction.apply(t);
        }
    }

    static SmoothCurve involute(double base, double from, double to) {
        return new Curve(
                from,
                to,
                t -> new Point(base * (Math.cos(t) + t * Math.sin(t)), base * (Math.sin(t) - t * Math.cos(t))),
                t -> Point.polar(1, t));
    }

    @Test
    void involuteWithinAMicronTakesAboutTenArcs() {
        ArcFit.Fitted fitted = ArcFit.fitted(involute(20, 0, 0.8), MICRON);
        assertThat(fitted.path().segments()).hasSizeBetween(8, 12).allMatch(s -> s instanceof Arc);
        checkFit(involute(20, 0, 0.8), fitted, MICRON);
    }

    @Test
    void deviationHoldsAgainstFiftyTimesAsManyPlaces() {
        for (double tolerance : new double[] {1e-5, 5e-4, 1e-2}) {
            checkFit(
                    involute(5, 0, 1.2),
                    ArcFit.fitted(involute(5, 0, 1.2), new Tolerance(tolerance)),
                    new Tolerance(tolerance));
        }
        SmoothCurve wave = new Curve(0, 12, t -> new Point(t, Math.sin(t)), t -> new Point(3, 3 * Math.cos(t)));
        checkFit(wave, ArcFit.fitted(wave, MICRON), MICRON);
        SmoothCurve ellipse = new Curve(
                0,
                6,
                t -> new Point(9 * Math.cos(t), 2 * Math.sin(t)),
                t -> new Point(-9 * Math.sin(t), 2 * Math.cos(t)));
        checkFit(ellipse, ArcFit.fitted(ellipse, MICRON), MICRON);
    }

    @Test
    void circleGivesOneArcAndLineOneLine() {
        SmoothCurve circle = new Curve(1, 3, t -> Point.polar(7, t).plus(new Point(3, -2)), t -> Point.polar(5, t)
                .left());
        Path path = ArcFit.fit(circle, MICRON);
        assertThat(path.segments()).hasSize(1);
        Arc arc = (Arc) path.segments().get(0);
        assertThat(arc.radius()).isCloseTo(7, within(1e-12));
        assertThat(arc.sweep()).isCloseTo(2, within(1e-12));
        SmoothCurve line = new Curve(0, 2, t -> new Point(3 * t, 4 * t), t -> new Point(3, 4));
        assertThat(ArcFit.fit(line, MICRON).segments()).isEqualTo(List.of(new Line(new Point(0, 0), new Point(6, 8))));
    }

    @Test
    void refusesACurveAgainstItsTangentAndAnEmptyRange() {
        SmoothCurve backwards =
                new Curve(0, 1, t -> new Point(Math.cos(t), Math.sin(t)), t -> new Point(Math.sin(t), -Math.cos(t)));
        assertThatThrownBy(() -> ArcFit.fit(backwards, MICRON)).isInstanceOf(IllegalArgumentException.class);
        SmoothCurve lost = new Curve(0, 1, t -> new Point(t, Double.NaN), t -> new Point(1, 0));
        assertThatThrownBy(() -> ArcFit.fit(lost, MICRON)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ArcFit.fit(involute(20, 0, 0), MICRON)).isInstanceOf(IllegalArgumentException.class);
    }

    private static void checkFit(SmoothCurve curve, ArcFit.Fitted fitted, Tolerance tolerance) {
        Path path = fitted.path();
        assertThat(fitted.deviation()).isLessThanOrEqualTo(tolerance.length());
        assertThat(path.start()).isEqualTo(curve.at(curve.from()));
        assertThat(path.end()).isEqualTo(curve.at(curve.to()));
        double worst = 0;
        int places = 50 * 32 * path.segments().size() / 2;
        for (int i = 0; i <= places; i++) {
            Point p = curve.at(curve.from() + (curve.to() - curve.from()) * i / places);
            double near = Double.POSITIVE_INFINITY;
            for (Segment segment : path.segments()) {
                near = Math.min(near, plainDistance(segment, p));
            }
            worst = Math.max(worst, near);
        }
        assertThat(worst).isLessThanOrEqualTo(tolerance.length()).isLessThanOrEqualTo(1.02 * fitted.deviation());
        for (int i = 1; i < path.segments().size(); i++) {
            Point before = path.segments().get(i - 1).tangentAt(1);
            Point after = path.segments().get(i).tangentAt(0);
            assertThat(before.cross(after)).isCloseTo(0, within(1e-9));
            assertThat(before.dot(after)).isPositive();
        }
    }

    /** Distance without the package's own measure: to the carrier where the point lies beside it, else the ends. */
    private static double plainDistance(Segment segment, Point p) {
        double ends = Math.min(p.distance(segment.start()), p.distance(segment.end()));
        if (segment instanceof Arc arc) {
            boolean beside = arc.shareOf(p.minus(arc.centre()).angle()) <= 1;
            return beside ? Math.min(ends, Math.abs(p.distance(arc.centre()) - arc.radius())) : ends;
        }
        Point along = segment.end().minus(segment.start());
        double u = p.minus(segment.start()).dot(along) / along.dot(along);
        return u >= 0 && u <= 1 ? p.distance(segment.pointAt(u)) : ends;
    }
}
