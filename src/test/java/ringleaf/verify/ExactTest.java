// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/** The exact measures on lines and arcs against JTS on fine chords. */
class ExactTest {
    private static final long SEED = 20260722;
    private static final double FINE = 1e-5;

    private static LineString chords(Segment s) {
        int n = 1;
        if (s instanceof Arc arc) {
            n = (int) Math.ceil(Math.abs(arc.sweep()) / (2 * Math.acos(1 - FINE / arc.radius())));
        }
        Coordinate[] points = new Coordinate[n + 1];
        for (int i = 0; i <= n; i++) {
            Point p = s.pointAt((double) i / n);
            points[i] = new Coordinate(p.x(), p.y());
        }
        return Chords.FACTORY.createLineString(points);
    }

    @Test
    void distancesOfPiecesAgreeWithChords() {
        Random random = new Random(SEED);
        for (int i = 0; i < 150; i++) {
            Segment a = RandomOutlines.segment(random);
            Segment b = RandomOutlines.segment(random);
            Nearest nearest = new Nearest(Double.POSITIVE_INFINITY);
            nearest.between(Piece.of(a), Piece.of(b));
            assertThat(nearest.distance)
                    .as("seed %d, case %d: %s and %s", SEED, i, a, b)
                    .isCloseTo(chords(a).distance(chords(b)), within(2 * FINE));
        }
    }

    @Test
    void farthestAndNearestPointsLieOnThePieceAndAreExtreme() {
        Random random = new Random(SEED + 1);
        for (int i = 0; i < 300; i++) {
            Segment s = RandomOutlines.segment(random);
            Point from = new Point(random.nextDouble() * 30 - 15, random.nextDouble() * 30 - 15);
            double far = Piece.of(s).farthestFrom(from.x(), from.y()).distance(from);
            double near = Piece.of(s).nearestTo(from.x(), from.y()).distance(from);
            double mostSeen = 0;
            double leastSeen = 1e9;
            for (int k = 0; k <= 2000; k++) {
                double d = s.pointAt(k / 2000.0).distance(from);
                mostSeen = Math.max(mostSeen, d);
                leastSeen = Math.min(leastSeen, d);
            }
            double step = s.length() / 2000;
            assertThat(far).as("seed %d, case %d", SEED + 1, i).isBetween(mostSeen - 1e-9, mostSeen + step);
            assertThat(near).as("seed %d, case %d", SEED + 1, i).isBetween(leastSeen - step, leastSeen + 1e-9);
        }
    }

    @Test
    void insideAndOutsideAgreeWithPolygons() {
        Random random = new Random(SEED + 2);
        for (int i = 0; i < 100; i++) {
            Shape shape = Shape.of(RandomOutlines.star(random));
            Geometry polygon = Chords.lean(shape, FINE);
            for (int k = 0; k < 60; k++) {
                double x = random.nextDouble() * 40 - 20;
                double y = random.nextDouble() * 40 - 20;
                if (shape.distanceFromOutline(x, y) < 2 * FINE) {
                    continue;
                }
                boolean inside = polygon.contains(Chords.FACTORY.createPoint(new Coordinate(x, y)));
                assertThat(shape.contains(x, y))
                        .as("seed %d, case %d, %f %f", SEED + 2, i, x, y)
                        .isEqualTo(inside);
            }
        }
    }

    @Test
    void pointsOnChordsOfHalfDiscsAreInside() {
        Point o = Point.ORIGIN;
        Point east = new Point(5, 0);
        Point west = new Point(-5, 0);
        for (double angle : new double[] {0, 0.3, Math.PI / 2, 2, Math.PI}) {
            Contour halves = Contour.of(Arc.around(o, east, west, true), Arc.around(o, west, east, true));
            Shape disc = Shape.of(Region.of(halves)).placed(Placement.turn(angle));
            Point p = new Point(1, 0).turned(angle);
            assertThat(disc.contains(p.x(), p.y())).isTrue();
            assertThat(disc.contains(0, 0)).isTrue();
            assertThat(disc.contains(4 * p.y() + 6, 6)).isFalse();
        }
    }

    @Test
    void sharedAreasAgreeWithOverlay() {
        Random random = new Random(SEED + 3);
        for (int i = 0; i < 120; i++) {
            Shape a = Shape.of(RandomOutlines.star(random));
            Shape b = Shape.of(RandomOutlines.star(random));
            Geometry shared =
                    OverlayNGRobust.overlay(Chords.lean(a, FINE), Chords.lean(b, FINE), OverlayNG.INTERSECTION);
            assertThat(SharedArea.of(a, b, 1e-6))
                    .as("seed %d, case %d", SEED + 3, i)
                    .isCloseTo(shared.getArea(), within(100 * FINE));
        }
    }

    @Test
    void sharedAreaCountsEdgesThatRunTogetherOnce() {
        Shape whole = Shape.of(Region.disc(Point.ORIGIN, 5));
        Shape same = Shape.of(Region.disc(Point.ORIGIN, 5)).placed(Placement.turn(1));
        Shape around = Shape.of(Region.ring(Point.ORIGIN, 5, 8));
        assertThat(SharedArea.of(whole, same, 1e-6)).isCloseTo(Math.PI * 25, within(1e-4));
        assertThat(SharedArea.of(whole, around, 1e-6)).isCloseTo(0, within(1e-4));
        assertThat(SharedArea.of(around, whole, 1e-6)).isCloseTo(0, within(1e-4));
    }

    @Test
    void chordsHoldTheShapeOrLieInItWithinTheTolerance() {
        Random random = new Random(SEED + 4);
        double tolerance = 0.01;
        for (int i = 0; i < 60; i++) {
            Region region = RandomOutlines.star(random);
            Shape shape = Shape.of(region);
            double slack = tolerance * region.perimeter();
            assertThat(Chords.full(shape, tolerance).getArea() - region.area()).isBetween(-1e-9, slack);
            assertThat(region.area() - Chords.lean(shape, tolerance).getArea()).isBetween(-1e-9, slack);
            for (Coordinate c : Chords.full(shape, tolerance).getCoordinates()) {
                assertThat(shape.distanceFromOutline(c.x, c.y)).isLessThan(tolerance + 1e-9);
            }
            assertThat(Chords.full(shape, tolerance).isValid()).isTrue();
        }
    }

    @Test
    void insetsAgreeWithBuffers() {
        Random random = new Random(SEED + 5);
        for (int i = 0; i < 40; i++) {
            Shape shape = Shape.of(RandomOutlines.star(random));
            Inset inset = Inset.of(shape, 0.5);
            Geometry buffered = Chords.lean(shape, FINE).buffer(-0.5, 64);
            for (int k = 0; k < 40; k++) {
                double x = random.nextDouble() * 30 - 15;
                double y = random.nextDouble() * 30 - 15;
                if (Math.abs(shape.distanceFromOutline(x, y) - 0.5) < 0.01) {
                    continue;
                }
                boolean inside = buffered.contains(Chords.FACTORY.createPoint(new Coordinate(x, y)));
                assertThat(inset.contains(x, y))
                        .as("seed %d, case %d", SEED + 5, i)
                        .isEqualTo(inside);
            }
            for (Coordinate c : buffered.getCoordinates()) {
                double nearest = 1e9;
                for (Piece p : inset.curves) {
                    nearest = Math.min(nearest, p.nearestTo(c.x, c.y).distance(new Point(c.x, c.y)));
                }
                assertThat(nearest)
                        .as("seed %d, case %d: edge of the buffer", SEED + 5, i)
                        .isLessThan(0.01);
            }
        }
    }
}
