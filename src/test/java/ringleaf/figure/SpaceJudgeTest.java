// SPDX-License-Identifier: Apache-2.0
package ringleaf.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Part;
import ringleaf.part.Setup;
import ringleaf.part.Stand;
import ringleaf.space.Pose;
import ringleaf.space.Turn;
import ringleaf.space.Vector;
import ringleaf.verify.Clearance;
import ringleaf.verify.Options;
import ringleaf.verify.SetupJudge;

/** Mechanisms in planes that are not parallel, against closed forms and sampled settings. */
class SpaceJudgeTest {
    private static final long SEED = 4_711;
    private static final int STATES = 31;
    /** Both chord errors are taken off, though bars have no arcs. */
    private static final double CHORDS = 0.01;

    private record Moving(IntFunction<Placement> pose) implements Motion {
        @Override
        public int states() {
            return STATES;
        }

        @Override
        public Placement pose(int body, int state) {
            return body == 0 ? Placement.IDENTITY : pose.apply(state);
        }

        @Override
        public String label(int state) {
            return "state " + state;
        }
    }

    private static Region rectangle(double x0, double y0, double x1, double y1) {
        return Region.of(
                Contour.polygon(List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1))));
    }

    private static Assembly assembly(String name, Region region, int body, double swing) {
        Part part = new Part(
                name,
                Family.PLATE,
                1,
                new Part.Source("made-up", "made-up"),
                List.of(Layer.of(region, 0, 2)),
                List.of(),
                "");
        Motion motion = new Moving(s -> Placement.turn(swing * s / (STATES - 1)));
        return new Assembly(
                name,
                List.of(new Member(name, part, body, Placement.IDENTITY)),
                motion,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of());
    }

    private static Assembly bar(String name, double length, double swing) {
        return assembly(name, rectangle(0, -1, length, 1), 1, swing);
    }

    private static Clearance judged(Setup setup) {
        return SetupJudge.judge(setup, Options.DEFAULT, new SpaceJudge(setup, Options.DEFAULT))
                .get(0);
    }

    /** A bar that swings through a quarter past an upright wall whose near face is at this height. */
    private static Clearance pastAWall(double face) {
        Pose upright = new Pose(Turn.about(Vector.X, Math.PI / 2), new Vector(0, face + 2, 0));
        return judged(new Setup(
                List.of(bar("arm", 20, Math.PI / 2), assembly("wall", rectangle(-5, -5, 5, 5), 0, 0)),
                List.of(Stand.ground(Pose.NONE), Stand.ground(upright))));
    }

    @Test
    void aBarPassesAWallAsItsCornerDoes() {
        double corner = Math.sqrt(401);
        Clearance c = pastAWall(23);
        assertThat(c.state()).isEqualTo(Clearance.State.PROVED);
        assertThat(c.found()).isCloseTo(23 - corner - CHORDS, within(1e-3));
        assertThat(c.bound()).isBetween(0.85 * (23 - corner), 23 - corner);
        assertThat(c.finding(0.002).failed()).isFalse();
    }

    @Test
    void aBarThatTouchesOnlyUnderWayIsFound() {
        // At its end the bar points straight up and its end is flat: 20. Its corner passes higher before that.
        Clearance c = pastAWall(20.02);
        assertThat(c.state()).isEqualTo(Clearance.State.TOUCHING);
        assertThat(c.finding(0.002).failed()).isTrue();
        assertThat(Spoken.where(c.finding(0.002))).contains("arm state 2");
    }

    @Test
    void barsOnCrossedAxesAreNearestWhereTheirTipsAre() {
        // Each swings from -45 to 45 degrees in its own plane; pointing at each other their ends are 45 - 20 - 20
        // apart.
        Region along = rectangle(0, -1, 20, 1);
        Assembly one = assembly("one", along, 1, 0.5);
        Assembly two = assembly("two", along, 1, -0.5);
        Pose facing =
                new Pose(Turn.about(Vector.X, Math.PI / 2).then(Turn.about(Vector.Z, Math.PI)), new Vector(45, 0, 1));
        Clearance c = judged(new Setup(List.of(one, two), List.of(Stand.ground(Pose.NONE), Stand.ground(facing))));
        assertThat(c.state()).isEqualTo(Clearance.State.PROVED);
        assertThat(c.found()).isCloseTo(5 - CHORDS, within(0.06));
        assertThat(c.bound()).isLessThanOrEqualTo(c.found());
    }

    @Test
    void theBoundIsNeverAboveADistanceOfTwoCornersAtASampledSetting() {
        for (int i = 0; i < 12; i++) {
            Random random = new Random(SEED + i);
            double[] swings = {random.nextDouble() * 4 - 2, random.nextDouble() * 4 - 2};
            Turn turn = Turn.about(
                    new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()),
                    0.5 + random.nextDouble() * 2);
            Pose pose = new Pose(turn, new Vector(20 + random.nextDouble() * 15, random.nextDouble() * 10, 5));
            boolean carried = random.nextInt(3) == 0;
            List<Assembly> both = List.of(bar("one", 12, swings[0]), bar("two", 12, swings[1]));
            Stand stand = carried ? new Stand(0, 1, "one.one", pose) : Stand.ground(pose);
            Clearance c = judged(new Setup(both, List.of(Stand.ground(Pose.NONE), stand)));
            double sampled = sampled(swings, pose, carried);
            assertThat(c.bound()).as("seed %d: %s", SEED + i, c).isLessThanOrEqualTo(sampled);
            assertThat(c.found()).as("seed %d: %s", SEED + i, c).isGreaterThanOrEqualTo(c.bound());
            if (c.state() == Clearance.State.PROVED) {
                assertThat(c.bound()).isGreaterThan(0);
            }
        }
    }

    private static double sampled(double[] swings, Pose pose, boolean carried) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 20; i++) {
            Pose one = Pose.of(Placement.turn(swings[0] * i / 20));
            for (int j = 0; j <= 20; j++) {
                Pose two = Pose.of(Placement.turn(swings[1] * j / 20)).then(pose);
                Pose seen = carried ? two.then(one) : two;
                for (Vector a : corners()) {
                    for (Vector b : corners()) {
                        least = Math.min(
                                least, one.apply(a).minus(seen.apply(b)).length());
                    }
                }
            }
        }
        return least;
    }

    private static List<Vector> corners() {
        List<Vector> corners = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            corners.add(new Vector((i & 1) * 12, (i & 2) - 1, (i & 4) / 2));
        }
        return corners;
    }
}
