// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;

class BeltPathTest {
    private static Wheel inside(double x, double y, double radius, int teeth) {
        return new Wheel("w", new Point(x, y), radius, true, teeth);
    }

    @Test
    void openBeltsHaveTheExactLengthWrapAndTeethInMesh() {
        for (String[] row : Reference.rows("belt-open-length.csv")) {
            double pitch = Reference.number(row, 0);
            int z1 = Integer.parseInt(row[1]);
            int z2 = Integer.parseInt(row[2]);
            double r1 = z1 * pitch / (2 * Math.PI);
            double r2 = z2 * pitch / (2 * Math.PI);
            double c = Reference.number(row, 3);
            BeltPath path = BeltPath.of(List.of(inside(0, 0, r1, z1), inside(0, c, r2, z2)));
            double length = Reference.number(row, 4);
            assertThat(path.length()).isCloseTo(length, within(1e-9 * length));
            assertThat(BeltPath.openLength(r1, r2, c)).isCloseTo(length, within(1e-9 * length));
            assertThat(Math.toDegrees(path.wrap(0))).isCloseTo(Reference.number(row, 5), within(1e-8));
            assertThat(path.teethInMesh(0)).isCloseTo(Reference.number(row, 6), within(1e-8));
            // the short formula is another number, and always the smaller one
            assertThat(path.length()).isGreaterThanOrEqualTo(Reference.number(row, 7) - 1e-9);
        }
    }

    @Test
    void wholeBeltsGiveTheirCentreDistance() {
        for (String[] row : Reference.rows("belt-centre-distance.csv")) {
            double pitch = Reference.number(row, 0);
            double r1 = Reference.number(row, 1) * pitch / (2 * Math.PI);
            double r2 = Reference.number(row, 2) * pitch / (2 * Math.PI);
            double found = CentreDistance.ofOpenBelt(r1, r2, Reference.number(row, 3) * pitch);
            int decimals = row[4].length() - row[4].indexOf('.') - 1;
            // half a unit of the last digit that is given
            assertThat(found).isCloseTo(Reference.number(row, 4), within(0.5000001 * Math.pow(10, -decimals)));
        }
    }

    @Test
    void aBeltTooShortToGoRoundHasNoCentreDistance() {
        assertThat(CentreDistance.ofOpenBelt(10, 30, 150)).isNaN();
        assertThat(CentreDistance.ofOpenBelt(10, 30, 200)).isPositive();
    }

    /** Equal wheels in convex order: their polygon's perimeter and one turn. */
    @Test
    void equalWheelsAddOneTurnToThePolygon() {
        List<Wheel> wheels =
                List.of(inside(0, 0, 7, 20), inside(60, -5, 7, 20), inside(70, 40, 7, 20), inside(20, 55, 7, 20));
        BeltPath path = BeltPath.of(wheels);
        double perimeter = 0;
        double wraps = 0;
        for (int i = 0; i < 4; i++) {
            perimeter += wheels.get(i).centre().distance(wheels.get((i + 1) % 4).centre());
            wraps += path.wrap(i);
        }
        assertThat(path.length()).isCloseTo(perimeter + 2 * Math.PI * 7, within(1e-10));
        assertThat(wraps).isCloseTo(2 * Math.PI, within(1e-12));
    }

    /** A roller on the back: by symmetry each half can be written down from right triangles. */
    @Test
    void aRollerOnTheBackBendsTheBeltIn() {
        double r = 8;
        double idler = 6;
        Wheel a = inside(0, 0, r, 20);
        Wheel b = inside(100, 0, r, 20);
        Wheel back = new Wheel("idler", new Point(50, 10), idler, false, 0);
        // counter-clockwise: from b over the top back to a
        BeltPath path = BeltPath.of(List.of(a, b, back));
        double d = Math.hypot(50, 10);
        double span = Math.sqrt(d * d - (r + idler) * (r + idler));
        // turn of the span against the axis: from the line of centres and the crossed tangent
        double turn = Math.abs(Math.atan2(10, 50) - Math.asin((r + idler) / d));
        double expected = 100 + 2 * span + 2 * r * (Math.PI + turn) + idler * 2 * turn;
        assertThat(path.length()).isCloseTo(expected, within(1e-9));
        assertThat(path.wrap(2)).isCloseTo(2 * turn, within(1e-12));
    }

    @Test
    void aRollerThatTheBeltPassesByIsNoPath() {
        Wheel a = inside(0, 0, 8, 20);
        Wheel b = inside(100, 0, 8, 20);
        assertThat(BeltPath.of(List.of(a, b, new Wheel("idler", new Point(50, 30), 6, false, 0))))
                .isNull();
        assertThat(BeltPath.of(List.of(a, inside(10, 0, 30, 80)))).isNull();
    }

    /** Walking along the path in small steps measures the same length, and every spot is where the step before led. */
    @Test
    void spotsRunAlongThePathAtTheirOwnPace() {
        BeltPath path = BeltPath.of(List.of(
                inside(0, 0, 8, 20), inside(100, 0, 16, 40), new Wheel("idler", new Point(50, 17), 6, false, 0)));
        int steps = 20000;
        double walked = 0;
        for (int i = 0; i < steps; i++) {
            BeltPath.Spot one = path.at(path.length() * i / steps);
            BeltPath.Spot next = path.at(path.length() * (i + 1) / steps);
            double step = one.point().distance(next.point());
            walked += step;
            assertThat(step).isCloseTo(path.length() / steps, within(1e-6));
            assertThat(next.point().minus(one.point()).dot(one.along())).isPositive();
        }
        assertThat(walked).isCloseTo(path.length(), within(1e-3));
    }

    @Test
    void turningAndShiftingTheWheelsChangesNothing() {
        long seed = 4;
        Random random = new Random(seed);
        for (int i = 0; i < 50; i++) {
            List<Wheel> wheels = List.of(
                    inside(0, 0, 5 + 5 * random.nextDouble(), 20),
                    inside(80, -10, 5 + 15 * random.nextDouble(), 40),
                    inside(60, 60, 5 + 5 * random.nextDouble(), 20));
            Placement place = new Placement(6 * random.nextDouble(), new Point(random.nextDouble(), 100));
            List<Wheel> moved = new ArrayList<>();
            for (Wheel wheel : wheels) {
                moved.add(wheel.at(place.apply(wheel.centre())));
            }
            BeltPath one = BeltPath.of(wheels);
            BeltPath other = BeltPath.of(moved);
            assertThat(other.length()).as("seed " + seed + ", case " + i).isCloseTo(one.length(), within(1e-9));
            assertThat(other.wrap(1)).isCloseTo(one.wrap(1), within(1e-11));
            assertThat(other.beside(1).area()).isCloseTo(one.beside(1).area(), within(1e-6));
            // a line beside a closed convex line is longer by a turn (the sum of all turns is one)
            assertThat(one.beside(1).length()).isCloseTo(one.length() + 2 * Math.PI, within(1e-9));
        }
    }
}
