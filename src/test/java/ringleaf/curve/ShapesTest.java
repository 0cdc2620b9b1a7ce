// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

class ShapesTest {
    private static final Tolerance FINE = new Tolerance(1e-5);

    @Test
    void obroundHasItsClosedFormArea() {
        Contour slot = Shapes.obround(new Point(1, 2), new Point(4, 6), 1.5);
        assertThat(slot.area()).isCloseTo(5 * 3 + Math.PI * 2.25, within(1e-12));
        assertThat(slot.length()).isCloseTo(10 + 3 * Math.PI, within(1e-12));
        assertThat(slot.segments()).hasSize(4);
        assertThat(Shapes.obround(new Point(1, 2), new Point(1, 2), 1.5).isCircle())
                .isTrue();
        checkTangent(slot);
    }

    @Test
    void hullOfTwoDiscsHasItsClosedFormArea() {
        // belt over pulleys: two tangents of length sqrt(c² - (R - r)²)
        double c = 10;
        double big = 4;
        double small = 1;
        double tangent = Math.sqrt(c * c - 9);
        double half = Math.acos(3 / c);
        double area = tangent * (big + small) + big * big * (Math.PI - half) + small * small * half;
        Contour hull = Shapes.hull(new Point(-3, 1), big, new Point(7, 1), small);
        assertThat(hull.area()).isCloseTo(area, within(1e-11));
        checkTangent(hull);
        assertThat(Shapes.hull(Point.ORIGIN, 5, new Point(1, 1), 2)).isEqualTo(Contour.circle(Point.ORIGIN, 5));
        assertThat(Shapes.hull(new Point(1, 1), 2, Point.ORIGIN, 5)).isEqualTo(Contour.circle(Point.ORIGIN, 5));
    }

    @Test
    void hullOfManyDiscsAgreesWithTheHullOfTheirFlattening() {
        for (long seed = 1; seed <= 50; seed++) {
            Random random = new Random(seed);
            List<Circle> discs = new ArrayList<>();
            boolean grid = seed % 3 == 0;
            int n = 2 + random.nextInt(7);
            for (int i = 0; i < n; i++) {
                double x = grid ? random.nextInt(4) : 10 * random.nextDouble();
                double y = grid ? random.nextInt(4) : 10 * random.nextDouble();
                discs.add(new Circle(new Point(x, y), grid ? 1 + random.nextInt(2) : 0.1 + 4 * random.nextDouble()));
            }
            Contour hull = Shapes.hull(discs);
            Geometry judge = new GeometryFactory().createGeometryCollection();
            for (Circle disc : discs) {
                judge = judge.union(JtsShapes.polygon(Region.disc(disc.centre(), disc.radius()), FINE));
            }
            assertThat(hull.area())
                    .as("seed " + seed)
                    .isCloseTo(judge.convexHull().getArea(), within(2e-3));
            checkTangent(hull);
        }
    }

    @Test
    void arcSlotAndRingPieceHaveTheirClosedFormAreas() {
        Point centre = new Point(5, -3);
        Contour slot = ArcSlot.of(centre, 20, 1.5, 1, 2.4);
        assertThat(slot.area()).isCloseTo(1.4 * 20 * 3 + Math.PI * 2.25, within(1e-11));
        checkTangent(slot);
        Contour piece = Shapes.annulusSector(centre, 10, 12, 6, 6 - 2 * Math.PI + 0.5);
        assertThat(piece.area()).isCloseTo(0.5 / 2 * 44, within(1e-11));
        assertThat(Shapes.discSector(centre, 3, 0.2, 1.2).area()).isCloseTo(4.5, within(1e-12));
        assertThatThrownBy(() -> Shapes.annulusSector(centre, 10, 9, 0, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ArcSlot.of(centre, 1, 1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void roundedRectangleKeepsItsBoxAndLosesItsUsedUpSides() {
        Box box = new Box(1, 2, 11, 6);
        for (double radius : new double[] {0, 0.5, 1.9, 2}) {
            Contour shape = Shapes.roundedRectangle(box, radius);
            assertThat(shape.area()).isCloseTo(40 - (4 - Math.PI) * radius * radius, within(1e-12));
            assertThat(shape.box()).isEqualTo(box);
            assertThat(shape.segments()).hasSize(radius == 0 ? 4 : radius == 2 ? 6 : 8);
        }
        assertThat(Shapes.roundedRectangle(new Box(0, 0, 4, 4), 2)).isEqualTo(Contour.circle(new Point(2, 2), 2));
        assertThatThrownBy(() -> Shapes.roundedRectangle(box, 2.1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void flatteningTakesTheStatedNumberOfChordsAndKeepsItsTolerance() {
        // r = 30: 39, 122, 385 chords a circle at 0.1, 0.01, 0.001 mm: ceil(2 pi / (2 acos(1 - tol / r)))
        int[] expected = {39, 122, 385};
        double[] tolerances = {0.1, 0.01, 0.001};
        for (int i = 0; i < 3; i++) {
            Tolerance tolerance = new Tolerance(tolerances[i]);
            List<Point> points = Flattening.points(Contour.circle(new Point(3, 4), 30), tolerance);
            assertThat(points).hasSize(expected[i]);
            double sagitta = 30 * (1 - Math.cos(Math.PI / expected[i]));
            assertThat(sagitta).isLessThanOrEqualTo(tolerances[i]);
        }
        Polygon ring = JtsShapes.polygon(Region.ring(Point.ORIGIN, 5, 8), FINE);
        assertThat(ring.isValid()).isTrue();
        assertThat(ring.getArea()).isCloseTo(Math.PI * 39, within(1e-3));
        assertThat(Flattening.points(Contour.circle(Point.ORIGIN, 1), new Tolerance(5)))
                .hasSize(3);
    }

    private static void checkTangent(Contour contour) {
        Segment before = contour.segments().get(contour.segments().size() - 1);
        for (Segment segment : contour.segments()) {
            assertThat(segment instanceof Arc || segment instanceof Line).isTrue();
            assertThat(before.tangentAt(1).distance(segment.tangentAt(0))).isLessThan(1e-7);
            before = segment;
        }
    }
}
