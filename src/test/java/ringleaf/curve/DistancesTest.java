// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

class DistancesTest {
    @Test
    void pieceToPieceAgreesWithFineChords() {
        Random random = new Random(11);
        Tolerance fine = new Tolerance(1e-4);
        for (int i = 0; i < 600; i++) {
            Segment a = IntersectionsTest.any(random);
            Segment b = IntersectionsTest.any(random);
            Gap gap = Distances.between(a, b);
            LineString flatA = JtsShapes.lineString(Path.of(a), fine);
            LineString flatB = JtsShapes.lineString(Path.of(b), fine);
            assertThat(gap.distance()).as("case " + i).isCloseTo(flatA.distance(flatB), within(3e-4));
            assertThat(gap.onFirst().distance(gap.onSecond())).isCloseTo(gap.distance(), within(1e-12));
            assertThat(Distances.distance(a, gap.onFirst())).isCloseTo(0, within(1e-9));
            assertThat(Distances.distance(b, gap.onSecond())).isCloseTo(0, within(1e-9));
            assertThat(Distances.between(b, a).distance()).isCloseTo(gap.distance(), within(1e-12));
        }
    }

    @Test
    void closedFormsOfDiscsRingsAndBars() {
        Region disc = Region.disc(Point.ORIGIN, 2);
        assertThat(Distances.between(disc, Region.disc(new Point(6, 8), 3)).distance())
                .isCloseTo(5, within(1e-14));
        assertThat(Distances.between(disc, Region.ring(Point.ORIGIN, 3, 4)).distance())
                .isCloseTo(1, within(1e-14));
        assertThat(Distances.between(disc, Region.disc(new Point(1, 0), 9)).distance())
                .isZero();
        assertThat(Distances.between(Region.disc(new Point(1, 0), 9), disc).distance())
                .isZero();
        assertThat(Distances.between(disc, Region.disc(new Point(3, 0), 2)).distance())
                .isZero();
        Gap gap = Distances.between(disc, Region.of(Contour.rectangle(new Box(3, -9, 4, 9))));
        assertThat(gap.distance()).isCloseTo(1, within(1e-14));
        assertThat(gap.onFirst()).isEqualTo(new Point(2, 0));
        assertThat(gap.onSecond()).isEqualTo(new Point(3, 0));
    }

    @Test
    void pointToPiece() {
        Line line = new Line(new Point(0, 0), new Point(4, 0));
        assertThat(Distances.distance(line, new Point(2, 3))).isEqualTo(3);
        assertThat(Distances.distance(line, new Point(7, 4))).isEqualTo(5);
        Arc arc = Arc.of(Point.ORIGIN, 5, 0, Math.PI / 2);
        assertThat(Distances.distance(arc, new Point(6, 8))).isCloseTo(5, within(1e-14));
        assertThat(Distances.distance(arc, new Point(0.3, 0.4))).isCloseTo(4.5, within(1e-14));
        assertThat(Distances.distance(arc, new Point(5, -2))).isCloseTo(2, within(1e-14));
        assertThat(Distances.distance(arc, Point.ORIGIN)).isCloseTo(5, within(1e-14));
    }

    @Test
    void containmentAgreesWithFineChordsAwayFromTheEdge() {
        Tolerance fine = new Tolerance(1e-4);
        for (long seed = 1; seed <= 30; seed++) {
            Random random = new Random(seed);
            RandomShapes shapes = new RandomShapes(seed, seed % 2 == 0);
            for (Region region : Overlay.union(shapes.some(1, 3))) {
                var flat = new IndexedPointInAreaLocator(JtsShapes.polygon(region, fine));
                for (int i = 0; i < 300; i++) {
                    // half of the points on the grid, where corners lie on each other's rays
                    Point p = i % 2 == 0
                            ? new Point(random.nextInt(25) / 2.0 - 3, random.nextInt(25) / 2.0 - 3)
                            : new Point(20 * random.nextDouble() - 5, 20 * random.nextDouble() - 5);
                    Containment place = Containment.of(region, p, 1e-3);
                    if (place != Containment.ON) {
                        boolean in = flat.locate(new Coordinate(p.x(), p.y())) == Location.INTERIOR;
                        assertThat(place == Containment.INSIDE)
                                .as("seed " + seed + " at " + p)
                                .isEqualTo(in);
                        int winding = Winding.of(region.outer().reversed(), p);
                        assertThat(winding).isEqualTo(-Winding.of(region.outer(), p));
                    }
                }
            }
        }
    }

    @Test
    void pointsOnTheEdgeAreOn() {
        Region ring = Region.ring(Point.ORIGIN, 3, 5);
        assertThat(Containment.of(ring, new Point(3, 4), 1e-9)).isEqualTo(Containment.ON);
        assertThat(Containment.of(ring, new Point(0, -3), 1e-9)).isEqualTo(Containment.ON);
        assertThat(Containment.of(ring, new Point(4, 0), 1e-9)).isEqualTo(Containment.INSIDE);
        assertThat(Containment.of(ring, Point.ORIGIN, 1e-9)).isEqualTo(Containment.OUTSIDE);
        assertThat(Containment.of(ring.holes().get(0), Point.ORIGIN, 1e-9)).isEqualTo(Containment.INSIDE);
    }
}
