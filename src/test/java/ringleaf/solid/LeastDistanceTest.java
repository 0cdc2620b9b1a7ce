// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.space.Pose;
import ringleaf.space.Turn;
import ringleaf.space.Vector;

/** The least distance over all settings, held against closed forms and against settings thrown at random. */
class LeastDistanceTest {
    private static final double SLACK = 1e-6;

    private interface Poses {
        Pose at(double[] setting);
    }

    private static DrivenPose driven(Poses poses, double... reaches) {
        return new DrivenPose() {
            @Override
            public Pose secondInFirst(double[] setting) {
                return poses.at(setting);
            }

            @Override
            public double reach(int drive, double[] from, double[] to) {
                return reaches[drive];
            }
        };
    }

    private static Solid solid(Mesh mesh) {
        return new Solid(mesh, 0);
    }

    private static Outcome find(Solid a, Solid b, DrivenPose driven, double[] from, double[] to, double least) {
        Ask ask = new Ask(least, SLACK, 1e-3, 200_000);
        Outcome outcome = new LeastDistance(new Nearness(a, b), driven, from, to, ask, Watch.NONE).find();
        assertThat(outcome.bound()).isLessThanOrEqualTo(outcome.least());
        Near there = new Nearness(a, b).at(driven.secondInFirst(outcome.setting()));
        assertThat(Math.max(0, there.distance() - a.chord() - b.chord()))
                .as("distance at the setting told")
                .isEqualTo(outcome.least(), within(2e-9));
        return outcome;
    }

    /** A bar of half length 30 and half width 2 about z, a wall at x = 32: at its corner it reaches hypot(30, 2). */
    @Test
    void aBarTurnsPastAWall() {
        Solid bar = solid(Bodies.box(30, 2, 3));
        Solid wall = solid(NearnessTest.moved(Bodies.box(1, 40, 40), Bodies.at(33, 0, 0)));
        double gap = 32 - Math.hypot(30, 2);
        DrivenPose turn = driven(s -> Bodies.turned(Vector.Z, s[0], 0, 0, 0), bar.radiusAbout(Vector.ZERO, Vector.Z));
        double[] from = {-2.5};
        double[] to = {0.7};
        Outcome proved = find(wall, bar, turn, from, to, gap - 1e-3);
        assertThat(proved.state()).isEqualTo(Outcome.State.PROVED);
        assertThat(proved.least()).isEqualTo(gap, within(1e-6));
        assertThat(Math.abs(proved.setting()[0])).isEqualTo(Math.atan2(2, 30), within(1e-3));
        assertThat(proved.bound()).isBetween(gap - 1e-3 - SLACK, gap + 2e-9);
        Outcome nearer = find(wall, bar, turn, from, to, gap + 1e-3);
        assertThat(nearer.state()).isEqualTo(Outcome.State.NEARER);
        assertThat(nearer.least()).isEqualTo(gap, within(1e-6));
        assertThat(nearer.bound()).isEqualTo(gap, within(1.1e-3));
        // at every end of its travel, and in the middle of it, it is far from the wall
        Solid closer = solid(NearnessTest.moved(Bodies.box(1, 40, 40), Bodies.at(31.03, 0, 0)));
        Outcome touching = find(closer, bar, turn, from, to, 0.5);
        assertThat(touching.state()).isEqualTo(Outcome.State.TOUCHING);
        assertThat(touching.near().onFirst().x()).isEqualTo(30.03, within(0.04));
    }

    /** A cone that slides past a cylinder along two ways: nearest where the sum of both is least, in closed form. */
    @Test
    void aConePassesACylinder() {
        int sides = 96;
        Solid cone = new Solid(Bodies.cone(10, 24, sides), Bodies.sagitta(10, sides));
        Solid rod = new Solid(Bodies.cylinder(2, 60, sides), Bodies.sagitta(2, sides));
        Turn across = Turn.about(Vector.X, Math.PI / 2);
        DrivenPose slide = driven(s -> new Pose(across, new Vector(s[0], s[1], s[2])), 1, 1, 1);
        Outcome outcome = find(cone, rod, slide, new double[] {13, -3, 12}, new double[] {20, 4, 17}, 4.0);
        double least = (13 * 24 + 12 * 10 - 240) / Math.hypot(10, 24) - 2;
        assertThat(outcome.state()).isEqualTo(Outcome.State.PROVED);
        assertThat(least).isBetween(outcome.bound(), outcome.least() + cone.chord() + rod.chord());
        assertThat(outcome.least()).isLessThan(least + 1e-6);
        assertThat(outcome.setting()[0]).isEqualTo(13);
        assertThat(outcome.setting()[2]).isEqualTo(12);
    }

    /** A bar on a turning, nodding and sliding head meets a small block deep within the box of its three drives only. */
    @Test
    void aBarThatTouchesOnlyAtAnInnerSettingOfThreeDrives() {
        Solid bar = solid(NearnessTest.moved(Bodies.box(1.5, 0.4, 0.4), Bodies.at(28.5, 0, 0)));
        Solid block = solid(Bodies.box(0.3, 0.3, 0.3));
        Poses head = s -> Bodies.at(s[2], 0, 0)
                .then(new Pose(
                        Turn.about(Vector.Y, s[1]).then(Turn.about(Vector.Z, s[0])), new Vector(-27, -11, -7.5)));
        DrivenPose driven = driven(head, 37.1, 37.1, 1);
        double[] from = {-0.9, -0.8, -4};
        double[] to = {1.1, 0.9, 7};
        for (int face = 0; face < 6; face++) {
            Random random = new Random(face);
            for (int i = 0; i < 500; i++) {
                double[] s = thrown(random, from, to);
                s[face / 2] = face % 2 == 0 ? from[face / 2] : to[face / 2];
                assertThat(new Nearness(block, bar).at(head.at(s)).distance()).isGreaterThan(0.2);
            }
        }
        Outcome outcome = find(block, bar, driven, from, to, 0.2);
        assertThat(outcome.state()).isEqualTo(Outcome.State.TOUCHING);
        assertThat(outcome.poses()).isLessThan(20_000);
    }

    /** Contact in a millionth of the box of drives, between settings that are all apart. */
    @Test
    void aPinMeetsAPinInAMillionthOfTheBox() {
        Solid pin = solid(Bodies.box(0.05, 0.05, 0.05));
        DrivenPose slide = driven(s -> Bodies.at(s[0] - 3.37, s[1] + 2.11, s[2] - 4.73), 1, 1, 1);
        Outcome outcome = find(pin, pin, slide, new double[] {-10, -10, -10}, new double[] {10, 10, 10}, 0.01);
        assertThat(outcome.state()).isEqualTo(Outcome.State.TOUCHING);
        assertThat(outcome.setting()[1]).isEqualTo(-2.11, within(0.1));
    }

    /** Two minima: the deeper one is narrow, and going downhill from the middle leads to the other. */
    @Test
    void theNarrowerOfTwoPlacesIsFound() {
        Mesh post = NearnessTest.moved(Bodies.box(0.2, 0.2, 3), Bodies.at(7, 0, 0));
        Solid posts = solid(NearnessTest.joined(post, NearnessTest.moved(Bodies.box(4, 4, 3), Bodies.at(-9, -9, 0))));
        Solid finger = solid(NearnessTest.moved(Bodies.box(3.3, 0.1, 1), Bodies.at(3.4, 0, 0)));
        DrivenPose turn = driven(s -> Bodies.turned(Vector.Z, s[0], 0, 0, 0), 6.8);
        Outcome outcome = find(posts, finger, turn, new double[] {-3}, new double[] {1.2}, 0.5);
        assertThat(outcome.state()).isEqualTo(Outcome.State.NEARER);
        assertThat(outcome.least()).isEqualTo(6.8 - Math.hypot(6.7, 0.1), within(1e-6));
        assertThat(outcome.setting()[0]).isEqualTo(0, within(0.05));
    }

    @Test
    void whatIsInsideTouchesWithoutMeetingTheSurface() {
        Solid shell = solid(Bodies.box(10, 10, 10));
        Solid part = solid(Bodies.box(1, 1, 1));
        DrivenPose slide = driven(s -> Bodies.at(s[0], 0, 0), 1);
        Outcome inside = find(shell, part, slide, new double[] {-3}, new double[] {3}, 1);
        assertThat(inside.state()).isEqualTo(Outcome.State.TOUCHING);
        Solid hollow = solid(Bodies.hollow(Bodies.box(10, 10, 10), Bodies.box(6, 6, 6)));
        Outcome within = find(hollow, part, slide, new double[] {-3}, new double[] {3}, 1);
        assertThat(within.state()).isEqualTo(Outcome.State.PROVED);
        assertThat(within.least()).isEqualTo(2, within(1e-6));
    }

    @Test
    void withoutADriveOnePoseDecides() {
        Solid cube = solid(Bodies.box(1, 1, 1));
        DrivenPose fixed = driven(s -> Bodies.at(5, 0, 0));
        double[] none = {};
        assertThat(find(cube, cube, fixed, none, none, 2.9).state()).isEqualTo(Outcome.State.PROVED);
        Outcome nearer = find(cube, cube, fixed, none, none, 3.1);
        assertThat(nearer.state()).isEqualTo(Outcome.State.NEARER);
        assertThat(nearer.bound()).isEqualTo(3, within(1e-3));
    }

    /** What is only within the slack of being proved is proved, what is short of it by more is not. */
    @Test
    void theSlackIsNoMoreThanItSays() {
        Solid cube = solid(Bodies.box(1, 1, 1));
        DrivenPose slide = driven(s -> Bodies.at(5 + Math.abs(s[0]), 0, 0), 1);
        double[] from = {-1};
        double[] to = {2};
        assertThat(find(cube, cube, slide, from, to, 3 + 0.5 * SLACK).state()).isEqualTo(Outcome.State.PROVED);
        assertThat(find(cube, cube, slide, from, to, 3 + 2 * SLACK).state()).isEqualTo(Outcome.State.NEARER);
        assertThatThrownBy(() -> new Ask(0, SLACK, SLACK, 10)).hasMessageContaining("more than twice");
        assertThatThrownBy(() -> find(cube, cube, slide, to, from, 1)).hasMessageContaining("from 2.0 to -1.0");
    }

    @Test
    void whatIsNotProvedInTheTimeIsOpenAndAStopIsHeard() {
        Solid bar = solid(Bodies.box(30, 2, 3));
        Solid wall = solid(NearnessTest.moved(Bodies.box(1, 40, 40), Bodies.at(33, 0, 0)));
        DrivenPose turn = driven(
                s -> new Pose(Turn.about(Vector.Y, s[1]).then(Turn.about(Vector.Z, s[0])), new Vector(0, s[2], s[3])),
                30.3,
                30.3,
                1,
                1);
        double[] from = {-1, -1, -1, -1};
        double[] to = {1, 1, 1, 1};
        Nearness nearness = new Nearness(wall, bar);
        Outcome open = new LeastDistance(nearness, turn, from, to, new Ask(1.78, SLACK, 1e-3, 500), Watch.NONE).find();
        assertThat(open.state()).isEqualTo(Outcome.State.OPEN);
        assertThat(open.bound()).isLessThan(1.78);
        assertThat(open.least()).isGreaterThan(1.78);
        assertThat(open.poses()).isBetween(500, 510);
        List<Double> shares = new ArrayList<>();
        Watch watch = (share, least, bound) -> {
            shares.add(share);
            assertThat(bound).isLessThanOrEqualTo(least);
            return shares.size() < 4;
        };
        Outcome stopped =
                new LeastDistance(nearness, turn, from, to, new Ask(1.78, SLACK, 1e-3, 1_000_000), watch).find();
        assertThat(stopped.state()).isEqualTo(Outcome.State.OPEN);
        assertThat(shares).hasSize(4).isSorted();
    }

    /** The bound is never above a distance at any of many settings, and what is proved holds at all of them. */
    @Test
    void randomPairsAgainstManySettings() {
        int[] states = new int[4];
        for (int i = 0; i < 200; i++) {
            Random random = new Random(i);
            Solid first = solid(Bodies.lump(random, 6, 6));
            Solid second = solid(Bodies.lump(random, 5, 6));
            Vector axis = new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
            Vector unit = axis.times(1 / axis.length());
            double x = 8 + 12 * random.nextDouble();
            double y = 4 * random.nextDouble();
            Poses poses = s -> new Pose(Turn.about(unit, s[0]), new Vector(x + s[1], y, 0));
            DrivenPose driven = driven(poses, second.radiusAbout(Vector.ZERO, unit), 1);
            double[] from = {-random.nextDouble(), -1};
            double[] to = {random.nextDouble(), 3 * random.nextDouble()};
            double asked = 0.3 + 2 * random.nextDouble();
            Ask ask = new Ask(asked, SLACK, 0.05, 3000);
            Nearness nearness = new Nearness(first, second);
            Outcome outcome = new LeastDistance(nearness, driven, from, to, ask, Watch.NONE).find();
            states[outcome.state().ordinal()]++;
            double sampled = Double.POSITIVE_INFINITY;
            for (int k = 0; k < 300; k++) {
                double[] s = thrown(random, from, to);
                sampled = Math.min(sampled, nearness.at(poses.at(s)).distance());
            }
            assertThat(outcome.bound()).as("pair " + i).isLessThanOrEqualTo(sampled + 2e-9);
            if (outcome.state() == Outcome.State.NEARER) {
                assertThat(outcome.least()).as("pair " + i).isLessThanOrEqualTo(sampled + 0.05);
            }
            if (outcome.state() == Outcome.State.PROVED) {
                assertThat(sampled).as("pair " + i).isGreaterThan(asked - SLACK);
            }
        }
        assertThat(states[Outcome.State.PROVED.ordinal()]).isGreaterThan(50);
        assertThat(states[Outcome.State.NEARER.ordinal()]).isGreaterThan(10);
        assertThat(states[Outcome.State.TOUCHING.ordinal()]).isGreaterThan(20);
        assertThat(states[Outcome.State.OPEN.ordinal()]).isLessThan(5);
    }

    private static double[] thrown(Random random, double[] from, double[] to) {
        double[] s = new double[from.length];
        for (int k = 0; k < s.length; k++) {
            s[k] = from[k] + random.nextDouble() * (to[k] - from[k]);
        }
        return s;
    }
}
