// SPDX-License-Identifier: Apache-2.0
package ringleaf.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;

/** Turns and poses against matrices and the plane's own placements. */
class PoseTest {
    private static final long SEED = 20_260_101;

    private static void near(Vector got, Vector wanted, double error) {
        assertThat(got.minus(wanted).length()).as("%s for %s", got, wanted).isLessThanOrEqualTo(error);
    }

    private static Vector vector(Random random) {
        return new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
    }

    private static Turn turn(Random random) {
        return Turn.about(vector(random), random.nextDouble() * 20 - 10);
    }

    @Test
    void quarterTurnsTakeAxesToAxes() {
        near(Turn.about(Vector.X, Math.PI / 2).apply(Vector.Y), Vector.Z, 1e-15);
        near(Turn.about(Vector.Y, Math.PI / 2).apply(Vector.Z), Vector.X, 1e-15);
        near(Turn.about(new Vector(0, 0, 7), Math.PI / 2).apply(Vector.X), Vector.Y, 1e-15);
    }

    @Test
    void whatComesFirstIsDoneFirst() {
        Turn both = Turn.about(Vector.X, Math.PI / 2).then(Turn.about(Vector.Z, Math.PI / 2));
        near(both.apply(Vector.Y), Vector.Z, 1e-15);
        near(both.apply(Vector.X), Vector.Y, 1e-15);
        Turn other = Turn.about(Vector.Z, Math.PI / 2).then(Turn.about(Vector.X, Math.PI / 2));
        near(other.apply(Vector.X), Vector.Z, 1e-15);
    }

    @Test
    void anyAxisAndAngleAgreeWithTheRotationFormula() {
        // v cos a + (k x v) sin a + k (k . v)(1 - cos a): Rodrigues, 1840, as in any handbook of mechanics.
        Random random = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            Vector k = vector(random);
            k = k.times(1 / k.length());
            double a = random.nextDouble() * 12 - 6;
            Vector v = vector(random);
            Vector wanted = v.times(Math.cos(a))
                    .plus(k.cross(v).times(Math.sin(a)))
                    .plus(k.times(k.dot(v) * (1 - Math.cos(a))));
            near(Turn.about(k, a).apply(v), wanted, 1e-14);
        }
    }

    @Test
    void axesStayPerpendicularAndOfLengthOneThroughAnyChain() {
        Random random = new Random(SEED + 1);
        Turn turn = Turn.NONE;
        for (int i = 0; i < 100_000; i++) {
            turn = turn.then(turn(random));
            if (i % 97 == 0) {
                Vector x = turn.apply(Vector.X);
                Vector y = turn.apply(Vector.Y);
                Vector z = turn.apply(Vector.Z);
                assertThat(x.dot(y)).isCloseTo(0, within(1e-15));
                assertThat(y.dot(z)).isCloseTo(0, within(1e-15));
                assertThat(z.dot(x)).isCloseTo(0, within(1e-15));
                assertThat(x.length()).isCloseTo(1, within(1e-15));
                assertThat(y.length()).isCloseTo(1, within(1e-15));
                assertThat(z.length()).isCloseTo(1, within(1e-15));
                near(x.cross(y), z, 3e-15);
            }
        }
    }

    @Test
    void posesFollowOneAnotherAndGoBack() {
        Random random = new Random(SEED + 2);
        for (int i = 0; i < 2000; i++) {
            Pose a = new Pose(turn(random), vector(random).times(100));
            Pose b = new Pose(turn(random), vector(random).times(100));
            Vector v = vector(random).times(50);
            near(a.then(b).apply(v), b.apply(a.apply(v)), 1e-11);
            near(a.then(a.inverse()).apply(v), v, 1e-11);
            near(a.inverse().apply(a.apply(v)), v, 1e-11);
        }
    }

    @Test
    void placementsOfThePlaneAreTheSameInSpace() {
        Random random = new Random(SEED + 3);
        for (int i = 0; i < 2000; i++) {
            Placement flat = new Placement(
                    random.nextDouble() * 12 - 6, new Point(random.nextGaussian() * 80, random.nextGaussian() * 80));
            Placement next = new Placement(random.nextDouble(), new Point(3, random.nextGaussian()));
            Point p = new Point(random.nextGaussian() * 40, random.nextGaussian() * 40);
            double height = random.nextGaussian();
            Point wanted = next.apply(flat.apply(p));
            Vector got = Pose.of(flat).then(Pose.of(next)).apply(new Vector(p.x(), p.y(), height));
            near(got, new Vector(wanted.x(), wanted.y(), height), 1e-11);
        }
    }

    @Test
    void planesKnowWhatIsParallelAndHowHighAPointStands() {
        Pose tilted = new Pose(Turn.about(Vector.X, Math.PI / 2), new Vector(0, 5, 0));
        // The front of a frame turned up by a quarter looks down, as its z becomes -y.
        assertThat(tilted.plane().height(new Vector(8, 3, -2))).isCloseTo(2, within(1e-12));
        assertThat(tilted.plane().isParallelTo(Pose.NONE.plane())).isFalse();
        Pose back = new Pose(Turn.about(Vector.Y, Math.PI), Vector.ZERO);
        assertThat(back.plane().isParallelTo(Pose.NONE.plane())).isTrue();
        Pose slightly = new Pose(Turn.about(Vector.Y, 1e-6), Vector.ZERO);
        assertThat(slightly.plane().isParallelTo(Pose.NONE.plane())).isFalse();
    }
}
