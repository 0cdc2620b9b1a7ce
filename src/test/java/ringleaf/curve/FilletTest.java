// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

class FilletTest {
    private static final Contour RECTANGLE = Contour.rectangle(new Box(0, 0, 10, 6));

    @Test
    void rectangleBecomesTheRoundedRectangleInBothDirections() {
        for (Contour contour : List.of(RECTANGLE, RECTANGLE.reversed())) {
            Fillet.Rounded rounded = Fillet.of(contour, 1, p -> true);
            assertThat(rounded.left()).isEmpty();
            assertThat(Math.abs(rounded.contour().area())).isCloseTo(60 - (4 - Math.PI), within(1e-12));
            assertThat(rounded.contour().segments()).hasSize(8);
            checkTangent(rounded.contour());
        }
    }

    @Test
    void sidesThatAreUsedUpFallAway() {
        Contour obround = Fillet.rounded(RECTANGLE, 3, p -> true);
        assertThat(obround.segments()).hasSize(6);
        assertThat(obround.area()).isCloseTo(60 - (4 - Math.PI) * 9, within(1e-12));
        checkTangent(obround);
        Contour square = Contour.rectangle(new Box(-2, -2, 2, 2));
        Contour round = Fillet.rounded(square, 2, p -> true);
        assertThat(round.area()).isCloseTo(4 * Math.PI, within(1e-12));
    }

    @Test
    void cornersThatDoNotFitAreLeftAndTold() {
        Fillet.Rounded rounded = Fillet.of(RECTANGLE, 4, p -> true);
        assertThat(rounded.left()).hasSize(4);
        assertThat(rounded.contour()).isEqualTo(RECTANGLE);
        Fillet.Rounded one = Fillet.of(RECTANGLE, 4, p -> p.equals(new Point(10, 6)));
        assertThat(one.left()).isEmpty();
        assertThat(one.contour().segments()).hasSize(5);
        assertThat(Fillet.of(RECTANGLE, 7, p -> p.x() == 0 && p.y() == 0).left())
                .containsExactly(new Point(0, 0));
    }

    @Test
    void lineAndArcCornersConvexAndConcave() {
        // half disc: two convex corners between line and arc
        Point a = new Point(-5, 0);
        Point b = new Point(5, 0);
        Contour half = Contour.of(new Line(a, b), Arc.around(Point.ORIGIN, b, a, true));
        Contour rounded = Fillet.rounded(half, 1, p -> true);
        assertThat(rounded.segments()).hasSize(4);
        checkTangent(rounded);
        // centre at height 1 on the circle of radius 4 about the origin, from the tangent conditions by hand
        Arc corner = (Arc) rounded.segments().get(2);
        assertThat(corner.centre().x()).isCloseTo(Math.sqrt(15), within(1e-12));
        assertThat(corner.centre().y()).isCloseTo(1, within(1e-12));
        // disc with an ear: two concave corners between arc and line
        Contour keyhole = Overlay.union(
                        List.of(Region.disc(Point.ORIGIN, 5), Region.of(Contour.rectangle(new Box(0, -1, 9, 1)))))
                .get(0)
                .outer();
        Contour smooth = Fillet.rounded(keyhole, 0.8, p -> p.x() < 6);
        assertThat(smooth.area()).isGreaterThan(keyhole.area());
        checkTangentBut(smooth, 2);
    }

    @Test
    void arcAndArcCorners() {
        Region both = Overlay.union(List.of(Region.disc(new Point(-3, 0), 4), Region.disc(new Point(3, 0), 4)))
                .get(0);
        Contour waist = Fillet.rounded(both.outer(), 1, p -> true);
        assertThat(waist.segments()).hasSize(4);
        checkTangent(waist);
        assertThat(waist.area()).isGreaterThan(both.outer().area());
        Region lens = Overlay.intersection(
                        List.of(Region.disc(new Point(-3, 0), 4)), List.of(Region.disc(new Point(3, 0), 4)))
                .get(0);
        Contour blunt = Fillet.rounded(lens.outer(), 0.5, p -> true);
        assertThat(blunt.segments()).hasSize(4);
        checkTangent(blunt);
        // the lens's widest disc has the radius 1: nothing larger fits
        assertThat(Fillet.of(lens.outer(), 1.2, p -> true).left()).hasSize(2);
    }

    @Test
    void roundedCornersOfRandomOutlinesAreSmoothAndTheOthersAreTold() {
        for (long seed = 1; seed <= 30; seed++) {
            RandomShapes shapes = new RandomShapes(seed, seed % 2 == 0);
            for (Region region : Overlay.union(shapes.some(1, 4))) {
                for (Contour contour : region.contours()) {
                    for (double radius : new double[] {0.02, 0.3}) {
                        Fillet.Rounded rounded = Fillet.of(contour, radius, p -> true);
                        checkTangentBut(rounded.contour(), rounded.left().size());
                        double most = contour.segments().size() * Math.PI * radius * contour.length();
                        assertThat(Math.abs(rounded.contour().area() - contour.area()))
                                .as("seed " + seed)
                                .isLessThanOrEqualTo(most);
                        // told in the other direction it is the same outline
                        Contour back = Fillet.rounded(contour.reversed(), radius, p -> true);
                        assertThat(back.area()).isCloseTo(-rounded.contour().area(), within(1e-9));
                    }
                }
            }
        }
    }

    private static void checkTangent(Contour contour) {
        checkTangentBut(contour, 0);
    }

    private static void checkTangentBut(Contour contour, int corners) {
        int sharp = 0;
        Segment before = contour.segments().get(contour.segments().size() - 1);
        for (Segment segment : contour.segments()) {
            sharp += before.tangentAt(1).distance(segment.tangentAt(0)) > 1e-6 ? 1 : 0;
            before = segment;
        }
        assertThat(sharp).isEqualTo(corners);
    }
}
