// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Requirement;
import ringleaf.report.FindingWords;

/** An arm that turns a quarter round a centre, with posts and walls about it. */
class ApartTest {
    private static final Motion QUARTER = Mechanisms.motion(91, List.of(s -> Placement.turn(Math.toRadians(s))));
    private static final Region ARM = Region.of(Mechanisms.rectangle(0, -1, 20, 1));

    private static Finding apart(double least, List<Requirement.Pair> pairs, Member... members) {
        Assembly a =
                Mechanisms.assembly(QUARTER, List.of(members), new Requirement.StaysApart("clearance", least, pairs));
        return Mechanisms.judge(a).findings().get(0);
    }

    private static Member arm() {
        return Mechanisms.member("arm", 1, ARM, 0, 2);
    }

    private static Member post(double x, double y, double r, double zFrom, double zTo) {
        return Mechanisms.member("post", 0, Region.disc(new Point(x, y), r), zFrom, zTo);
    }

    @Test
    void theNearestPassIsMeasuredExactly() {
        // The arm's corners pass at sqrt(401); the post's near side is at 24.
        Finding f = apart(0.5, List.of(), arm(), post(0, 25, 1, 0, 2));
        assertThat(f.failed()).isFalse();
        assertThat(f.measured()).isCloseTo(4, within(1e-12));
        assertThat(FindingWords.where(f)).startsWith("closed, arm and post, at (");
    }

    @Test
    void aPassTooNearFails() {
        Finding f = apart(4.1, List.of(), arm(), post(0, 25, 1, 0, 2));
        assertThat(f.failed()).isTrue();
        assertThat(f.limit()).isEqualTo(4.1);
        assertThat(Spoken.of(f)).contains("4 mm").contains("4.1 mm").contains("checked at 11 of 91 states");
    }

    @Test
    void anOverlapIsMeasuredByItsDepthAndPlace() {
        Finding f = apart(0.5, List.of(), arm(), post(0, 20.5, 1, 0, 2));
        assertThat(f.failed()).isTrue();
        // Between the arm's end at 20 and the post's near side at 19.5.
        assertThat(f.measured()).isCloseTo(-0.5, within(0.01));
        assertThat(FindingWords.where(f)).startsWith("closed, arm and post, at (");
        assertThat(Spoken.of(f)).contains("run into each other");
    }

    @Test
    void aPinWhollyInsideMaterialIsFound() {
        Finding f = apart(0.1, List.of(), arm(), post(0, 10, 0.5, 0, 2));
        assertThat(f.measured()).isCloseTo(-1, within(0.02));
        assertThat(FindingWords.where(f)).contains("closed").contains("at (0, 10)");
    }

    @Test
    void heightsThatDoNotOverlapDoNotMeet() {
        assertThat(apart(0.5, List.of(), arm(), post(0, 10, 1, 2, 4)).failed()).isFalse();
        assertThat(apart(0.5, List.of(), arm(), post(0, 10, 1, 1.99, 4)).failed())
                .isTrue();
    }

    @Test
    void aPairsOwnFigureCounts() {
        Member near = post(0, 20.2, 0.1, 0, 2);
        assertThat(apart(0.5, List.of(), arm(), near).failed()).isTrue();
        Finding own = apart(0.5, List.of(new Requirement.Pair(1, 0, 0.05)), arm(), near);
        assertThat(own.failed()).isFalse();
        assertThat(own.measured()).isCloseTo(0.1, within(1e-9));
        assertThat(own.limit()).isEqualTo(0.05);
    }

    @Test
    void contactIsAllowedWhereTheLeastIsNothingButNotOverlap() {
        List<Requirement.Pair> touching = List.of(Requirement.Pair.touching(0, 1));
        Member disc = Mechanisms.member("disc", 1, Region.disc(Point.ORIGIN, 10), 0, 2);
        Member snug = Mechanisms.member("wall", 0, Region.ring(Point.ORIGIN, 10, 12), 0, 2);
        Member tight = Mechanisms.member("wall", 0, Region.ring(Point.ORIGIN, 9.98, 12), 0, 2);
        Finding ok = apart(0.5, touching, disc, snug);
        assertThat(ok.failed()).isFalse();
        assertThat(ok.measured()).isEqualTo(0);
        Finding bad = apart(0.5, touching, disc, tight);
        assertThat(bad.failed()).isTrue();
        assertThat(bad.measured()).isCloseTo(-0.02, within(0.002));
    }

    @Test
    void aDiscInARoundWallIsOutsideItsMaterial() {
        Member disc = Mechanisms.member("disc", 1, Region.disc(Point.ORIGIN, 10), 0, 2);
        Member wall = Mechanisms.member("wall", 0, Region.ring(Point.ORIGIN, 10.25, 12), 0, 2);
        Finding f = apart(0.25, List.of(), disc, wall);
        assertThat(f.failed()).isFalse();
        assertThat(f.measured()).isCloseTo(0.25, within(1e-12));
        Member plate = Mechanisms.member("plate", 0, Region.disc(Point.ORIGIN, 12), 0, 2);
        assertThat(apart(0.25, List.of(), disc, plate).measured()).isCloseTo(-20, within(0.4));
    }

    @Test
    void anOverlapIsNotHiddenByContactOrByAShallowerOne() {
        Member touching = post(20.5, 0, 0.5, 0, 2);
        Member shallow = Mechanisms.member("shallow", 0, Region.disc(new Point(0, 20.8), 1), 0, 2);
        Member deep = Mechanisms.member("deep", 0, Region.disc(new Point(0.3, 20.4), 1), 0, 2);
        List<Requirement.Pair> contact = List.of(
                Requirement.Pair.touching(0, 1), Requirement.Pair.touching(0, 2), Requirement.Pair.touching(0, 3));
        List<Member> one = List.of(arm(), touching, shallow, deep);
        List<Member> other = List.of(arm(), deep, shallow, touching);
        for (List<Member> order : List.of(one, other)) {
            Finding f = apart(0, contact, order.toArray(new Member[0]));
            assertThat(f.measured()).isCloseTo(-0.6, within(0.01));
            assertThat(FindingWords.where(f)).contains("deep");
            assertThat(Spoken.of(f)).contains("1 other pair there too near as well");
        }
    }

    @Test
    void membersOfOneBodyMayMeet() {
        Member other = Mechanisms.member("tip", 1, Region.disc(new Point(20, 0), 2), 0, 2);
        Finding f = apart(0.5, List.of(), arm(), other);
        assertThat(f.failed()).isFalse();
        assertThat(Spoken.of(f)).contains("No two members");
    }

    @Test
    void theOrderOfMembersDoesNotMatter() {
        Random random = new Random(7);
        List<Member> members = new ArrayList<>(List.of(
                arm(), post(0, 25, 1, 0, 2), Mechanisms.member("wall", 0, Region.ring(Point.ORIGIN, 20.5, 22), 0, 1)));
        Finding first = apart(0.5, List.of(), members.toArray(new Member[0]));
        for (int i = 0; i < 6; i++) {
            Collections.shuffle(members, random);
            Finding f = apart(0.5, List.of(), members.toArray(new Member[0]));
            assertThat(f.measured()).isCloseTo(first.measured(), within(1e-12));
            assertThat(f.status()).isEqualTo(first.status());
        }
        assertThat(first.measured()).isCloseTo(20.5 - Math.sqrt(401), within(1e-12));
    }

    @Test
    void leavesMeetWallsAnywhereInTheirRoomAndEachOtherNever() {
        BandLeaves leaves = new BandLeaves(14, 37.4, 10.5, 145, 32, 20);
        Requirement rule = new Requirement.StaysApart("clearance", 0.2, List.of());
        Member wall = Mechanisms.member("wall", 0, Region.ring(Point.ORIGIN, 42.75, 50), 3, 5);
        Member high = Mechanisms.member("high", 0, Region.ring(Point.ORIGIN, 42.75, 50), 4.9, 8);
        Member above = Mechanisms.member("above", 0, Region.ring(Point.ORIGIN, 30, 50), 5, 8);
        assertThat(judge(leaves, rule).failed()).isFalse();
        assertThat(judge(leaves, rule, above).failed()).isFalse();
        Finding f = judge(leaves, rule, wall);
        assertThat(f.failed()).isTrue();
        assertThat(FindingWords.where(f)).contains("blade ").contains("wall");
        Finding g = judge(leaves, rule, high);
        assertThat(g.failed()).isTrue();
        assertThat(g.measured()).isCloseTo(f.measured(), within(1e-9));
    }

    @Test
    void pinsRideWithinTheirLeafUnlessTheyStandBeyondIt() {
        BandLeaves leaves = new BandLeaves(14, 37.4, 10.5, 145, 32, 20);
        Requirement rule = new Requirement.StaysApart("clearance", 0.2, List.of());
        Region pin = Region.disc(new Point(37.4, 0), 0.75);
        Member flush = Mechanisms.member("pin", 1, pin, 1, 3.15);
        Member tall = Mechanisms.member("pin", 1, pin, 1, 3.5);
        assertThat(judge(leaves, rule, flush).failed()).isFalse();
        Finding f = judge(leaves, rule, tall);
        assertThat(f.failed()).isTrue();
        assertThat(FindingWords.where(f)).contains("and pin");
        // A plate without a bore under the leaves is met by the pin, the same plate with one is not.
        Member plate = Mechanisms.member("plate", 0, Region.disc(Point.ORIGIN, 50), 0, 3);
        Member bored = Mechanisms.member(
                "plate",
                0,
                Region.disc(Point.ORIGIN, 50).withHoles(List.of(Contour.circle(new Point(37.4, 0), 1))),
                0,
                3);
        assertThat(judge(leaves, rule, flush, plate).failed()).isTrue();
        Finding ok = judge(leaves, rule, flush, bored);
        assertThat(ok.failed()).isFalse();
        assertThat(ok.measured()).isCloseTo(0.25, within(1e-9));
    }

    @Test
    void aLeafOfTwoLevelsMeetsOthersByEach() {
        // One arm of two levels: only the upper, shorter one shares a height with the post.
        Member stepped = new Member(
                "arm",
                Mechanisms.part(
                        "arm", Layer.of(ARM, 0, 2), Layer.of(Region.of(Mechanisms.rectangle(0, -1, 10, 1)), 2, 4)),
                1,
                Placement.IDENTITY);
        Finding f = apart(0.5, List.of(), stepped, post(0, 15, 1, 3, 5));
        assertThat(f.failed()).isFalse();
        assertThat(f.measured()).isCloseTo(4, within(1e-9));
    }

    private static Finding judge(BandLeaves leaves, Requirement rule, Member... more) {
        return Mechanisms.judge(leaves.assembly(181, List.of(more), rule))
                .findings()
                .get(0);
    }
}
