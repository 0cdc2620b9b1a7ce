// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** Free turns against closed forms and against a bisection that knows distances only. */
class FreeTurnTest {
    private static List<Segment> disc(double x, double y, double r) {
        return Contour.circle(new Point(x, y), r).segments();
    }

    @Test
    void aDiscOnAnArmMeetsAnother() {
        // Arm 10, discs of radius 1 and 2: centres 3 apart on the circle, at an angle of 2 asin(3/20).
        FreeTurn turn = FreeTurn.of(disc(10, 0, 1), Point.ORIGIN, disc(0, 10, 2), true, 0, Math.PI);
        assertThat(turn.meets()).isTrue();
        assertThat(turn.angle()).isCloseTo(Math.PI / 2 - 2 * Math.asin(0.15), within(1e-12));
        FreeTurn other = FreeTurn.of(disc(10, 0, 1), Point.ORIGIN, disc(0, 10, 2), false, 0, 2 * Math.PI);
        assertThat(other.angle()).isCloseTo(1.5 * Math.PI - 2 * Math.asin(0.15), within(1e-12));
    }

    @Test
    void aDiscOnAnArmMeetsALine() {
        // The disc's centre reaches height 4 - 1 on an arm of 5.
        List<Segment> wall = List.of(new Line(new Point(-20, 4), new Point(20, 4)));
        FreeTurn turn = FreeTurn.of(disc(5, 0, 1), Point.ORIGIN, wall, true, 0, Math.PI);
        assertThat(turn.angle()).isCloseTo(Math.asin(0.6), within(1e-12));
        assertThat(turn.at().y()).isCloseTo(4, within(1e-12));
    }

    @Test
    void aCornerMeetsAnArcAndAnArcMeetsACorner() {
        List<Segment> bar = Contour.rectangle(new Box(0, -1, 10, 1)).segments();
        FreeTurn byCorner = FreeTurn.of(bar, Point.ORIGIN, disc(0, 10.3, 0.5), true, 0, Math.PI);
        double reach = Math.hypot(10, 1);
        double between = Math.acos((reach * reach + 10.3 * 10.3 - 0.25) / (2 * reach * 10.3));
        assertThat(byCorner.angle()).isCloseTo(Math.PI / 2 - between - Math.atan(0.1), within(1e-12));
        FreeTurn swapped = FreeTurn.of(disc(0, 10.3, 0.5), Point.ORIGIN, bar, false, 0, Math.PI);
        assertThat(swapped.angle()).isCloseTo(byCorner.angle(), within(1e-12));
    }

    @Test
    void aDiscInARingRollsOntoItsBump() {
        // From within: the moving disc of radius 1 meets the inside of a circle of radius 3 about (8, 0).
        List<Segment> ring = Contour.circle(new Point(0, 8), 3).clockwise().segments();
        FreeTurn turn = FreeTurn.of(disc(0, 8, 1), Point.ORIGIN, ring, true, 0, Math.PI);
        assertThat(turn.angle()).isCloseTo(2 * Math.asin(2 / 16.0), within(1e-12));
    }

    @Test
    void nothingInTheWayIsSaidSo() {
        FreeTurn turn = FreeTurn.of(disc(10, 0, 1), Point.ORIGIN, disc(30, 0, 2), true, 0, 1);
        assertThat(turn.meets()).isFalse();
        assertThat(turn.angle()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void randomBlobsMeetWhereTheirDistanceEnds(long seed) {
        Random random = new Random(seed);
        List<Segment> still = blob(random, new Point(6, 0));
        List<Segment> moving = blob(random, new Point(0, 6));
        FreeTurn turn = FreeTurn.of(moving, Point.ORIGIN, still, false, 0, 2 * Math.PI);
        assertThat(turn.meets()).as("seed " + seed).isTrue();
        assertThat(distance(moving, still, -turn.angle())).as("seed " + seed).isLessThan(1e-9);
        for (int i = 0; i < 40; i++) {
            assertThat(distance(moving, still, -turn.angle() * i / 40.0))
                    .as("seed " + seed)
                    .isGreaterThan(1e-6);
        }
    }

    private static double distance(List<Segment> moving, List<Segment> still, double angle) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment a : moving) {
            Segment placed = a.placed(Placement.turn(angle));
            for (Segment b : still) {
                least = Math.min(least, Distances.between(placed, b).distance());
            }
        }
        return least;
    }

    /** A hull of random discs about a point: lines and arcs. */
    private static List<Segment> blob(Random random, Point about) {
        List<Circle> discs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Point centre = about.plus(Point.polar(1.5 * random.nextDouble(), 6.3 * random.nextDouble()));
            discs.add(new Circle(centre, 0.2 + 0.6 * random.nextDouble()));
        }
        Contour hull = Shapes.hull(discs);
        assertThat(hull.segments().stream().anyMatch(s -> s instanceof Arc)).isTrue();
        return hull.segments();
    }
}
