// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;

class OffsetTest {
    private static final Tolerance JUDGE = new Tolerance(2e-5);

    @Test
    void squareGrowsRoundCornersAndShrinksSharp() {
        Region square = Region.of(Contour.rectangle(new Box(0, 0, 10, 10)));
        List<Region> grown = Offset.of(square, 2);
        assertThat(grown).hasSize(1);
        assertThat(grown.get(0).outer().segments()).hasSize(8);
        assertThat(grown.get(0).area()).isCloseTo(100 + 80 + 4 * Math.PI, within(1e-10));
        List<Region> shrunk = Offset.of(square, -2);
        assertThat(shrunk).hasSize(1);
        assertThat(shrunk.get(0).outer().segments()).hasSize(4);
        assertThat(shrunk.get(0).area()).isCloseTo(36, within(1e-10));
        assertThat(Offset.of(square, -5)).isEmpty();
        assertThat(Offset.of(square, -6)).isEmpty();
    }

    @Test
    void circlesStayCirclesAndHolesVanish() {
        Region ring = Region.ring(new Point(3, 4), 5, 8);
        Region grown = Offset.of(ring, 1).get(0);
        assertThat(grown.outer().isCircle()).isTrue();
        assertThat(((Arc) grown.outer().segments().get(0)).radius()).isCloseTo(9, within(1e-12));
        assertThat(grown.holes()).hasSize(1);
        assertThat(((Arc) grown.holes().get(0).segments().get(0)).radius()).isCloseTo(4, within(1e-12));
        assertThat(Offset.of(ring, 5.5).get(0).holes()).isEmpty();
        assertThat(Offset.of(ring, 5).get(0).holes()).isEmpty();
        assertThat(Offset.of(ring, -1.4).get(0).area()).isCloseTo(Math.PI * (6.6 * 6.6 - 6.4 * 6.4), within(1e-10));
        assertThat(Offset.of(ring, -1.5)).isEmpty();
        assertThat(Offset.of(ring, -1.6)).isEmpty();
    }

    @Test
    void dumbbellSplitsAtItsNeck() {
        Region dumbbell = Overlay.union(List.of(
                        Region.disc(new Point(-10, 0), 4),
                        Region.disc(new Point(10, 0), 4),
                        Region.of(Contour.rectangle(new Box(-10, -1, 10, 1)))))
                .get(0);
        List<Region> halves = Offset.of(dumbbell, -1.5);
        assertThat(halves).hasSize(2);
        check("dumbbell", dumbbell, -1.5);
        check("dumbbell", dumbbell, -0.99);
    }

    @Test
    void slotOfTwiceTheDistanceClosesWhole() {
        Region plate = Region.of(
                Contour.rectangle(new Box(-10, -10, 10, 10)), Shapes.obround(new Point(-3, 0), new Point(3, 0), 2));
        assertThat(Offset.of(plate, 2).get(0).holes()).isEmpty();
        assertThat(Offset.of(plate, 1.9).get(0).holes()).hasSize(1);
    }

    @Test
    void filletOfTheOffsetsRadiusVanishes() {
        Region rounded = Region.of(Shapes.roundedRectangle(new Box(0, 0, 10, 6), 1));
        Region shrunk = Offset.of(rounded, -1).get(0);
        assertThat(shrunk.outer().segments()).hasSize(4);
        assertThat(shrunk.area()).isCloseTo(32, within(1e-10));
    }

    /** Against the same place with its contours told apart by hand. */
    @Test
    void holesThatRunIntoOneAnotherOrOutOfThePartAreWhatTheyLeave() {
        Contour plate = Contour.rectangle(new Box(-10, -10, 10, 10));
        List<Contour> holes = List.of(
                Contour.circle(new Point(-1, 0), 3),
                Contour.circle(new Point(2, 0), 2),
                Contour.circle(new Point(10, 3), 1.5),
                Contour.circle(new Point(0, -9), 1));
        Region crossed = new Region(plate, holes);
        List<Region> apart = Overlay.difference(
                List.of(Region.of(plate)), holes.stream().map(Region::of).toList());
        assertThat(apart).hasSize(1);
        for (double distance : new double[] {0.1, 0.5, 1.2, -0.1, -0.6}) {
            assertThat(OverlayJudge.area(Offset.of(crossed, distance)))
                    .as("by " + distance)
                    .isCloseTo(OverlayJudge.area(Offset.of(apart.get(0), distance)), within(1e-9));
        }
        // cut in two by a slot right through it
        Region halves = new Region(plate, List.of(Contour.rectangle(new Box(-1, -20, 1, 20))));
        assertThat(Offset.of(halves, 0.5)).hasSize(2);
        assertThat(Offset.of(halves, 1.5)).hasSize(1);
    }

    @Test
    void randomShapesAgreeWithTheJudge() {
        for (long seed = 1; seed <= 16; seed++) {
            RandomShapes shapes = new RandomShapes(seed, seed % 2 == 0);
            for (Region region : Overlay.union(shapes.some(1, 3))) {
                for (double distance : new double[] {0.3, -0.25, 1.1, -0.5}) {
                    check("seed " + seed + " by " + distance, region, distance);
                }
            }
        }
    }

    private static void check(String as, Region region, double distance) {
        List<Region> made = Offset.of(region, distance);
        // the judge bridges near-straight corners with a chord, so its error grows with the radius it makes of an arc
        BufferParameters rules = new BufferParameters(200);
        rules.setSimplifyFactor(1e-5);
        Geometry judged = BufferOp.bufferOp(JtsShapes.polygon(region, JUDGE), distance, rules);
        double slack = 10 * JUDGE.length() * (region.perimeter() + 10);
        assertThat(OverlayJudge.area(made)).as(as).isCloseTo(judged.getArea(), within(slack));
        Geometry flat = OverlayJudge.flat(made);
        double off = OverlayJudge.judged(flat, judged, OverlayNG.SYMDIFFERENCE).getArea();
        assertThat(off).as(as).isLessThan(2 * slack + OverlayJudge.FINE.length() * OverlayJudge.length(made));
    }
}
