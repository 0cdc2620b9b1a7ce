// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import ringleaf.Spoken;
import ringleaf.curve.JtsShapes;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.part.Apart;
import ringleaf.part.Assembly;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Setup;
import ringleaf.part.Stand;
import ringleaf.space.Pose;
import ringleaf.space.Turn;
import ringleaf.space.Vector;

/** Mechanisms judged against each other where they stand. */
class SetupTest {
    private static final long SEED = 77_001;
    private static final int STATES = 46;
    private static final SetupJudge.Tilted TILTED = (a, b) -> {
        throw new TiltedPlanes();
    };

    private static final class TiltedPlanes extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private static final Tolerance FINE = new Tolerance(0.001);

    private static Assembly assembly(String name, Motion motion, Member... members) {
        return new Assembly(name, List.of(members), motion, Optional.empty(), List.of(), List.of(), List.of());
    }

    /** A bar on a pivot in the origin that swings from angle 0 to {@code swing}, rad. */
    private static Assembly bar(String name, double length, double swing) {
        Motion motion = Mechanisms.motion(STATES, List.of(s -> Placement.turn(swing * s / (STATES - 1))));
        return assembly(
                name, motion, Mechanisms.member("bar", 1, Region.of(Mechanisms.rectangle(0, -1, length, 1)), 0, 2));
    }

    /** A disc of radius 10 that turns about the origin, which nothing of its outline shows. */
    private static Assembly disc(String name) {
        Motion motion = Mechanisms.motion(STATES, List.of(s -> Placement.turn(0.1 * s)));
        return assembly(name, motion, Mechanisms.member("disc", 1, Region.disc(Point.ORIGIN, 10), 0, 2));
    }

    private static Stand at(double x, double y, double z) {
        return Stand.ground(new Pose(Turn.NONE, new Vector(x, y, z)));
    }

    private static List<Finding> judged(Setup setup) {
        return SetupJudge.judge(setup, Options.DEFAULT, TILTED).stream()
                .map(c -> c.finding(0.002))
                .toList();
    }

    private static Finding judged(Assembly first, Stand a, Assembly second, Stand b) {
        return judged(new Setup(List.of(first, second), List.of(a, b))).get(0);
    }

    @Test
    void twoDiscsAreAsFarApartAsTheirCentresLessTheirRadii() {
        Finding f = judged(disc("one"), at(0, 0, 0), disc("two"), at(18, 12, 0));
        assertThat(f.status()).isEqualTo(Finding.Status.PASS);
        assertThat(f.measured()).isCloseTo(Math.hypot(18, 12) - 20, within(1e-9));
        assertThat(f.subjects()).containsExactly("disc", "one's disc");
    }

    @Test
    void discsAboveOneAnotherAreAsFarApartAsTheirFaces() {
        Finding f = judged(disc("one"), at(0, 0, 0), disc("two"), at(5, 0, 2.4));
        assertThat(f.measured()).isCloseTo(0.4, within(1e-9));
        assertThat(f.failed()).isFalse();
        // Beside and above: the edges' distance, sqrt(3^2 + 4^2).
        Finding g = judged(disc("one"), at(0, 0, 0), disc("two"), at(23, 0, 6));
        assertThat(g.measured()).isCloseTo(5, within(1e-9));
    }

    @Test
    void whatTouchesFailsAndSoDoesTheSamePlace() {
        assertThat(judged(disc("one"), at(0, 0, 0), disc("two"), at(20, 0, 0)).failed())
                .isTrue();
        assertThat(judged(disc("one"), at(0, 0, 0), disc("two"), at(0, 0, 2)).failed())
                .isTrue();
        Finding same = judged(disc("one"), at(0, 0, 0), disc("two"), at(0, 0, 0));
        assertThat(same.failed()).isTrue();
        assertThat(same.measured()).isLessThan(-1.9);
        assertThat(Spoken.of(same)).contains("place: {at: {x: 21mm}} for two would stand clear of one");
        assertThat(judged(disc("one"), at(0, 0, 0), disc("two"), at(21, 0, 0)).failed())
                .isFalse();
    }

    @Test
    void aBarThatTouchesOnlyUnderWayIsFound() {
        // Tips at 20 pass the post's near side at 20.5 - 0.6 only when the bar points its way, between two states.
        double toPost = Math.PI / 4 + 0.3 * Math.PI / 2 / (STATES - 1);
        Assembly post = assembly(
                "post",
                Mechanisms.motion(2, List.of()),
                Mechanisms.member("pin", 0, Region.disc(Point.ORIGIN, 0.6), 0, 2));
        Point at = Point.polar(20.5, toPost);
        Finding f = judged(bar("arm", 20, Math.PI / 2), at(0, 0, 0), post, at(at.x(), at.y(), 0));
        assertThat(f.failed()).isTrue();
        assertThat(Spoken.where(f)).contains("arm state 2");
        Point off = Point.polar(20.7, toPost);
        Finding g = judged(bar("arm", 20, Math.PI / 2), at(0, 0, 0), post, at(off.x(), off.y(), 0));
        assertThat(g.failed()).isFalse();
        // A corner of the bar's end comes nearest, on a circle of radius sqrt(20^2 + 1^2).
        double least = 20.7 - 0.6 - Math.sqrt(401);
        assertThat(g.measured()).isBetween(least - 1e-9, 1.06 * least);
    }

    @Test
    void whatNeverMovesAgainstTheOtherMayTouchAndNotOverlap() {
        Member block = Mechanisms.member("block", 0, Region.of(Mechanisms.rectangle(0, 0, 10, 10)), 0, 3);
        Assembly one = assembly("one", Mechanisms.motion(2, List.of()), block);
        Assembly two = assembly("two", Mechanisms.motion(2, List.of()), block);
        assertThat(judged(one, at(0, 0, 0), two, at(10, 0, 0)).failed()).isFalse();
        assertThat(judged(one, at(0, 0, 0), two, at(0, 0, 3)).failed()).isFalse();
        assertThat(judged(one, at(0, 0, 0), two, at(9.9, 0, 0)).failed()).isTrue();
        assertThat(judged(one, at(0, 0, 0), two, at(0, 0, 2.9)).failed()).isTrue();
    }

    @Test
    void whatRidesOnABodyMovesWithIt() {
        // A bar carried on the end of another: the tip reaches 20 + 20 all round, and the arm below it is its carrier.
        Assembly arm = bar("arm", 20, Math.PI);
        Assembly tip = bar("tip", 20, Math.PI / 2);
        Assembly post = assembly(
                "post",
                Mechanisms.motion(2, List.of()),
                Mechanisms.member("pin", 0, Region.disc(Point.ORIGIN, 1), 2, 6));
        Stand onArm = new Stand(0, 1, "arm.bar", new Pose(Turn.NONE, new Vector(18, 0, 2.5)));
        Point far = Point.polar(39.5, 2);
        List<Finding> all =
                judged(new Setup(List.of(arm, tip, post), List.of(at(0, 0, 0), onArm, at(far.x(), far.y(), 0))));
        assertThat(all.get(0).failed()).as("tip above its own arm").isFalse();
        assertThat(all.get(0).measured()).isCloseTo(0.5, within(1e-9));
        // Arm to post: heights touch (2 against 2) but the post stands 19.5 - 1 beyond the arm's end.
        assertThat(all.get(1).measured()).isCloseTo(18.5, within(0.1));
        assertThat(all.get(2).failed()).as("tip against the post").isFalse();
        // A corner of the tip's end comes as far out as 18 + sqrt(401); the pin's near side is at 38.5.
        assertThat(all.get(2).measured()).isBetween(20.5 - Math.sqrt(401) - 1e-9, 0.5);
        assertThat(Spoken.where(all.get(2))).as("the setting of the carrier").contains("arm state");
    }

    @Test
    void tiltedPlanesAreLeftToTheJudgeOfSolids() {
        Stand tilted = Stand.ground(new Pose(Turn.about(Vector.X, 1), Vector.ZERO));
        assertThatThrownBy(() -> judged(disc("one"), at(0, 0, 0), disc("two"), tilted))
                .isInstanceOf(TiltedPlanes.class);
        // What stands on something that tilts it as it turns is parallel at the start only.
        Stand onTilted = new Stand(1, 1, "two.disc", new Pose(Turn.about(Vector.X, -1), new Vector(40, 0, 0)));
        assertThatThrownBy(() -> judged(new Setup(
                        List.of(disc("one"), disc("two"), disc("three")), List.of(at(-90, 0, 0), tilted, onTilted))))
                .isInstanceOf(TiltedPlanes.class);
    }

    @Test
    void whatIsAskedForIsKeptOrTheNearestIsTold() {
        List<Assembly> two = List.of(disc("one"), disc("two"));
        List<Stand> stands = List.of(at(0, 0, 0), at(21, 0, 0));
        assertThat(judged(new Setup(two, stands, new Apart(1, List.of()), Setup.alone(2)))
                        .get(0)
                        .failed())
                .isFalse();
        Finding near = judged(new Setup(two, stands, new Apart(1.01, List.of()), Setup.alone(2)))
                .get(0);
        assertThat(near.failed()).isTrue();
        assertThat(near.measured()).isCloseTo(1, within(1e-9));
        assertThat(near.limit()).isEqualTo(1.01);
        assertThat(Spoken.of(near)).contains("1.01 mm is asked for");
        Apart own = new Apart(3, List.of(new Apart.Pair("two", "one", 0.5)));
        assertThat(judged(new Setup(two, stands, own, Setup.alone(2))).get(0).failed())
                .isFalse();
    }

    @Test
    void whatFollowsGoesAlongAndNoFurther() {
        // Side by side and turning alike, two bars never meet; each by itself, they do.
        List<Assembly> two = List.of(bar("one", 20, Math.PI / 2), bar("two", 20, Math.PI / 2));
        List<Stand> stands = List.of(at(0, 0, 0), at(0, -18, 0));
        assertThat(judged(new Setup(two, stands)).get(0).failed()).isTrue();
        Setup led = new Setup(two, stands, Apart.SOME, List.of(new Setup.Follow(0, 1), new Setup.Follow(0, 0.5)));
        Finding f = judged(led).get(0);
        assertThat(f.failed()).as(Spoken.of(f)).isFalse();
    }

    @Test
    void bothTurnedAlikeAreJudgedAsIfNeitherWere() {
        Turn turn = Turn.about(new Vector(1, 2, 3), 2);
        Stand a = Stand.ground(new Pose(turn, new Vector(5, 6, 7)));
        Stand b = Stand.ground(new Pose(turn, new Vector(5, 6, 7).plus(turn.apply(new Vector(22, 5, 0.5)))));
        double tilted = judged(bar("one", 15, 3), a, bar("two", 9, 2), b).measured();
        double flat = judged(bar("one", 15, 3), at(0, 0, 0), bar("two", 9, 2), at(22, 5, 0.5))
                .measured();
        assertThat(tilted).isCloseTo(flat, within(1e-6));
    }

    /** Random outlines on pivots, placed at random, back to front at times, against polygons at dense settings. */
    @Test
    void noSampledSettingIsNearerThanTheBoundAndTheNearestIsThere() {
        int proved = 0;
        for (int i = 0; i < 40; i++) {
            long seed = SEED + i;
            Random random = new Random(seed);
            List<Region> outlines = List.of(RandomOutlines.star(random), RandomOutlines.star(random));
            double[] swings = {random.nextDouble() * 4 - 2, random.nextDouble() * 4 - 2};
            boolean flip = random.nextBoolean();
            Turn turn = flip ? Turn.about(Vector.X, Math.PI) : Turn.about(Vector.Z, random.nextDouble() * 6);
            Vector shift = new Vector(20 + random.nextDouble() * 14, random.nextDouble() * 10 - 5, flip ? 2 : 0);
            Finding f = judged(
                    pivoted("one", outlines.get(0), swings[0]),
                    at(0, 0, 0),
                    pivoted("two", outlines.get(1), swings[1]),
                    Stand.ground(new Pose(turn, shift)));
            double sampled = sampled(outlines, swings, new Pose(turn, shift), flip);
            String about = "seed " + seed + ": " + Spoken.of(f) + " sampled " + sampled;
            if (sampled > 0.02) {
                assertThat(f.failed()).as(about).isFalse();
                // The sampling's own step, some hundredths, and its chords.
                assertThat(f.measured()).as(about).isCloseTo(sampled, within(0.05 * sampled + 0.4));
                double bound = Double.parseDouble(Spoken.of(f).replaceAll(".*nearer than ([0-9.]+) mm.*", "$1"));
                assertThat(bound).as(about).isLessThanOrEqualTo(sampled + 0.002);
                proved++;
            } else if (sampled == 0) {
                assertThat(f.failed()).as(about).isTrue();
            }
        }
        assertThat(proved).isBetween(10, 35);
    }

    private static Assembly pivoted(String name, Region outline, double swing) {
        Motion motion = Mechanisms.motion(STATES, List.of(s -> Placement.turn(swing * s / (STATES - 1))));
        return assembly(
                name,
                motion,
                new Member("piece", Mechanisms.part("piece", Layer.of(outline, 0, 2)), 1, Placement.IDENTITY));
    }

    /** Least distance over 60 by 60 settings, on polygons. */
    private static double sampled(List<Region> outlines, double[] swings, Pose pose, boolean flip) {
        List<Geometry> first = new ArrayList<>();
        List<Geometry> second = new ArrayList<>();
        Vector x = pose.turn().apply(Vector.X);
        Placement place = new Placement(
                Math.atan2(x.y(), x.x()),
                new Point(pose.shift().x(), pose.shift().y()));
        for (int i = 0; i < 60; i++) {
            first.add(JtsShapes.polygon(outlines.get(0).placed(Placement.turn(swings[0] * i / 59)), FINE));
            Region moved = outlines.get(1).placed(Placement.turn(swings[1] * i / 59));
            Region seen = flip ? moved.mirrored(ringleaf.geom.Mirror.FLIP_Y) : moved;
            second.add(JtsShapes.polygon(seen.placed(place), FINE));
        }
        double least = Double.POSITIVE_INFINITY;
        for (Geometry a : first) {
            for (Geometry b : second) {
                least = Math.min(least, a.distance(b));
            }
        }
        return least;
    }
}
