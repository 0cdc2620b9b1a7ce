// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

class IntersectionsTest {
    private static final double TOUCH = 1e-11;
    private static final Arc CIRCLE = Arc.circle(Point.ORIGIN, 5);
    private static final Arc RIGHT_HALF = Arc.of(Point.ORIGIN, 5, -Math.PI / 2, Math.PI);

    private static Line line(double x0, double y0, double x1, double y1) {
        return new Line(new Point(x0, y0), new Point(x1, y1));
    }

    private static void meet(Segment a, Segment b, double... expected) {
        for (double turn : new double[] {0, 0.7, 2.9}) {
            Placement placement = new Placement(turn, new Point(3 * turn, -turn));
            for (int way = 0; way < 4; way++) {
                Segment p = (way & 1) == 0 ? a : a.reversed();
                Segment q = (way & 2) == 0 ? b : b.reversed();
                List<Point> found = Intersections.of(p.placed(placement), q.placed(placement), TOUCH);
                assertThat(found).as(a + " and " + b).hasSize(expected.length / 2);
                for (int i = 0; i < expected.length; i += 2) {
                    Point wanted = placement.apply(new Point(expected[i], expected[i + 1]));
                    assertThat(found).anyMatch(f -> f.distance(wanted) < 1e-9);
                }
            }
        }
    }

    @Test
    void linesCrossTouchMissAndRunAlong() {
        meet(line(0, 0, 4, 4), line(0, 4, 4, 0), 2, 2);
        meet(line(0, 0, 4, 0), line(2, 0, 2, 3), 2, 0);
        meet(line(0, 0, 4, 0), line(4, 0, 4, 3), 4, 0);
        meet(line(0, 0, 4, 0), line(5, -1, 5, 3));
        meet(line(0, 0, 4, 0), line(0, 1, 4, 1));
        meet(line(0, 0, 4, 0), line(3, 0, 6, 0), 3, 0, 4, 0);
        meet(line(0, 0, 4, 0), line(1, 0, 2, 0), 1, 0, 2, 0);
        meet(line(0, 0, 4, 0), line(5, 0, 6, 0));
    }

    @Test
    void lineAndArcCrossTouchAndMiss() {
        meet(line(-6, 3, 6, 3), CIRCLE, -4, 3, 4, 3);
        meet(line(-6, 3, 6, 3), RIGHT_HALF, 4, 3);
        meet(line(0, 3, 3, 3), CIRCLE);
        meet(line(-6, 5, 6, 5), CIRCLE, 0, 5);
        meet(line(5, -1, 5, 1), RIGHT_HALF, 5, 0);
        meet(line(-5, -1, -5, 1), RIGHT_HALF);
        meet(line(-6, 5.001, 6, 5.001), CIRCLE);
        meet(line(0, 5, -3, 5), RIGHT_HALF, 0, 5);
    }

    @Test
    void arcsCrossTouchAndMiss() {
        meet(CIRCLE, Arc.circle(new Point(6, 0), 5), 3, 4, 3, -4);
        meet(RIGHT_HALF, Arc.of(new Point(6, 0), 5, 0, Math.PI), 3, 4);
        meet(CIRCLE, Arc.circle(new Point(8, 0), 3), 5, 0);
        meet(CIRCLE, Arc.circle(new Point(2, 0), 3), 5, 0);
        meet(CIRCLE, Arc.circle(new Point(1, 0), 3));
        meet(CIRCLE, Arc.circle(new Point(9, 0), 3));
    }

    @Test
    void arcsOfOneCircleShareTheEndsOfTheirStretch() {
        Arc upper = Arc.of(Point.ORIGIN, 5, 0, Math.PI);
        meet(RIGHT_HALF, upper, 5, 0, 0, 5);
        Arc left = Arc.of(Point.ORIGIN, 5, Math.PI / 2, Math.PI);
        meet(RIGHT_HALF, left, 0, 5, 0, -5);
        meet(RIGHT_HALF, Arc.of(Point.ORIGIN, 5, 2, 1));
        assertThat(Intersections.sameCarrier(RIGHT_HALF, left, TOUCH)).isTrue();
        assertThat(Intersections.sameCarrier(RIGHT_HALF, Arc.circle(Point.ORIGIN, 5.1), TOUCH))
                .isFalse();
        assertThat(Intersections.sameCarrier(line(0, 0, 1, 1), line(5, 5, 3, 3), TOUCH))
                .isTrue();
    }

    @Test
    void whatIsFoundLiesOnBothAndSignsOfCrossingAgree() {
        Random random = new Random(7);
        for (int i = 0; i < 3000; i++) {
            Segment a = any(random);
            Segment b = any(random);
            for (Point p : Intersections.of(a, b, TOUCH)) {
                assertThat(Distances.distance(a, p)).as("case " + i).isLessThan(1e-9);
                assertThat(Distances.distance(b, p)).as("case " + i).isLessThan(1e-9);
            }
            boolean met = !Intersections.of(a, b, TOUCH).isEmpty();
            assertThat(Distances.between(a, b).distance() < 1e-10)
                    .as("case " + i)
                    .isEqualTo(met);
        }
    }

    static Segment any(Random random) {
        Point p = new Point(10 * random.nextDouble(), 10 * random.nextDouble());
        if (random.nextBoolean()) {
            return new Line(p, new Point(10 * random.nextDouble(), 10 * random.nextDouble()));
        }
        double sweep = (random.nextBoolean() ? 1 : -1) * (0.1 + 6 * random.nextDouble());
        return Arc.of(p, 0.2 + 5 * random.nextDouble(), 6 * random.nextDouble(), sweep);
    }
}
