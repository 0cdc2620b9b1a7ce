// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Requirement;
import ringleaf.report.FindingWords;

/** Openings, keep-outs, rooms, pins, depth and outer circle: known answers, and known-bad cases for each. */
class RoomTest {
    private static final Motion QUARTER = Mechanisms.motion(91, List.of(s -> Placement.turn(Math.toRadians(s))), 37);
    private static final Region ARM = Region.of(Mechanisms.rectangle(0, -1, 20, 1));
    private static final Member MOVING = Mechanisms.member("arm", 1, ARM, 0, 2);

    private static Finding judged(Requirement requirement, Member... members) {
        Assembly a = Mechanisms.assembly(QUARTER, List.of(members), requirement);
        return Mechanisms.judge(a).findings().get(0);
    }

    @Test
    void aRoundAreaIsKeptClearExactly() {
        Region area = Region.disc(new Point(0, 25), 4.5);
        Finding f = judged(new Requirement.KeepsClear("opens-fully", area, List.of()), MOVING);
        assertThat(f.failed()).isFalse();
        assertThat(f.measured()).isCloseTo(0.5, within(1e-12));
        assertThat(FindingWords.where(f)).startsWith("closed, arm, at (");
    }

    @Test
    void reachingIntoAnAreaIsFoundWithItsDepthAndPlace() {
        Region area = Region.disc(new Point(0, 25), 5.25);
        Requirement always = new Requirement.KeepsClear("opens-fully", area, List.of());
        Finding f = judged(always, MOVING);
        assertThat(f.failed()).isTrue();
        assertThat(f.measured()).isCloseTo(-0.25, within(1e-9));
        assertThat(FindingWords.where(f)).isEqualTo("closed, arm, at (0, 20)");
        Requirement open = new Requirement.KeepsClear("opens-fully", area, List.of(0));
        assertThat(judged(open, MOVING).failed()).isFalse();
        Region square = Region.of(Mechanisms.rectangle(-3, 19.75, 3, 25));
        Finding g = judged(new Requirement.KeepsClear("opens-fully", square, List.of()), MOVING);
        assertThat(g.measured()).isCloseTo(-0.25, within(0.01));
    }

    @Test
    void touchingAnAreaIsNotReachingIntoIt() {
        Finding round =
                judged(new Requirement.KeepsClear("opens-fully", Region.disc(new Point(0, 25), 5), List.of()), MOVING);
        assertThat(round.failed()).isFalse();
        Region square = Region.of(Mechanisms.rectangle(-3, 20, 3, 25));
        assertThat(judged(new Requirement.KeepsClear("opens-fully", square, List.of()), MOVING)
                        .failed())
                .isFalse();
    }

    @Test
    void aStateNamedByARequirementIsJudged() {
        Region area = Region.disc(Point.polar(25, Math.toRadians(41)), 5.25);
        Finding f = judged(new Requirement.KeepsClear("opens-fully", area, List.of(41)), MOVING);
        assertThat(f.failed()).isTrue();
        assertThat(FindingWords.where(f)).startsWith("state 41, arm");
    }

    @Test
    void theOpeningIsMeasuredExactly() {
        BandLeaves leaves = new BandLeaves(14, 37.4, 10.5, 145, 32, 4);
        Requirement right = new Requirement.OpensTo("closes-to", Point.ORIGIN, 180, 8, 0.01);
        Requirement wrong = new Requirement.OpensTo("closes-to", Point.ORIGIN, 180, 8.05, 0.01);
        Verdict v = Mechanisms.judge(leaves.assembly(181, List.of(), right, wrong));
        assertThat(v.findings().get(0).failed()).isFalse();
        assertThat(v.findings().get(0).measured()).isCloseTo(8, within(1e-12));
        assertThat(v.findings().get(1).failed()).isTrue();
        assertThat(FindingWords.where(v.findings().get(1))).startsWith("closed, blade ");
        // Worked case: open and half-way.
        assertThat(v.states().get(0).inscribed()).isCloseTo(64.3, within(1e-9));
        assertThat(v.states().get(5).inscribed()).isCloseTo(2 * 17.8090, within(1e-4));
    }

    @Test
    void aRoundRoomHoldsExactly() {
        double far = Math.sqrt(401);
        Region room = Region.disc(Point.ORIGIN, far + 0.3);
        Finding f = judged(new Requirement.StaysInside("stay-in", List.of(0), room, 0.3), MOVING);
        assertThat(f.failed()).isFalse();
        assertThat(f.measured()).isCloseTo(0.3, within(1e-12));
        Finding g = judged(
                new Requirement.StaysInside("stay-in", List.of(0), Region.disc(Point.ORIGIN, far - 0.2), 0.3), MOVING);
        assertThat(g.measured()).isCloseTo(-0.2, within(1e-9));
        assertThat(Spoken.of(g)).contains("0.2 mm outside");
    }

    @Test
    void anyRoomTellsWhoPokesOutAndWhere() {
        Region room = Region.of(Mechanisms.rectangle(-2, -2, 21, 21));
        Finding f = judged(new Requirement.StaysInside("stay-in", List.of(0), room, 0.5), MOVING);
        assertThat(f.failed()).isFalse();
        Region low = Region.of(Mechanisms.rectangle(-2, -2, 21, 19.6));
        Finding g = judged(new Requirement.StaysInside("stay-in", List.of(0), low, 0.5), MOVING);
        assertThat(g.failed()).isTrue();
        assertThat(g.measured()).isCloseTo(-0.4, within(0.01));
        assertThat(FindingWords.where(g)).startsWith("closed, arm, at (").contains(", 20)");
    }

    @Test
    void aRoomsHoleIsNotRoom() {
        Region room = Region.disc(Point.ORIGIN, 30).withHoles(List.of(Contour.circle(new Point(0, 10), 0.4)));
        Finding f = judged(new Requirement.StaysInside("stay-in", List.of(0), room, 0.1), MOVING);
        assertThat(f.failed()).isTrue();
        assertThat(f.measured()).isCloseTo(-0.4, within(0.05));
    }

    /** A slot along +y from y = 10 to y = 15, 3 wide, with round ends. */
    private static Contour slot() {
        Point a = new Point(0, 10);
        Point b = new Point(0, 15);
        return Contour.of(
                new Line(new Point(1.5, 10), new Point(1.5, 15)),
                Arc.around(b, new Point(1.5, 15), new Point(-1.5, 15), true),
                new Line(new Point(-1.5, 15), new Point(-1.5, 10)),
                Arc.around(a, new Point(-1.5, 10), new Point(1.5, 10), true));
    }

    @Test
    void aPinIsFollowedThroughItsSlot() {
        Motion slides = Mechanisms.motion(51, List.of(s -> Placement.shift(0, 0.1 * s)));
        Member pin = Mechanisms.member("pin", 1, Region.disc(new Point(0, 10), 1.4), 0, 2);
        Member plate = Mechanisms.member("plate", 0, Region.of(Mechanisms.rectangle(-9, 0, 9, 25), slot()), 0, 2);
        Requirement fits = pinInSlot(new Point(0, 10), 1.4, 0.1);
        Finding f = Mechanisms.judge(Mechanisms.assembly(slides, List.of(pin, plate), fits))
                .findings()
                .get(0);
        assertThat(f.failed()).isFalse();
        assertThat(f.measured()).isCloseTo(0.1, within(1e-12));
        Motion farther = Mechanisms.motion(51, List.of(s -> Placement.shift(0, 0.12 * s)));
        Finding g = Mechanisms.judge(Mechanisms.assembly(farther, List.of(pin, plate), fits))
                .findings()
                .get(0);
        assertThat(g.failed()).isTrue();
        assertThat(g.measured()).isCloseTo(-0.9, within(1e-9));
        assertThat(FindingWords.where(g)).isEqualTo("closed, pin and plate, at (0, 16)");
        Motion misses = Mechanisms.motion(51, List.of(s -> Placement.shift(0, 0.2 * s)));
        Finding h = Mechanisms.judge(Mechanisms.assembly(misses, List.of(pin, plate), fits))
                .findings()
                .get(0);
        assertThat(h.measured()).isCloseTo(-3.5 - 1.4, within(1e-9));
    }

    @Test
    void aHoleThatMovesIsFollowedToo() {
        // Pin and plate turn together: nothing changes between them.
        Member pin = Mechanisms.member("pin", 1, Region.disc(new Point(0, 12), 1), 0, 2);
        Member plate = Mechanisms.member("plate", 1, Region.of(Mechanisms.rectangle(-9, 0, 9, 25), slot()), 0, 2);
        Finding f = judged(pinInSlot(new Point(0, 12), 1, 0.5), pin, plate);
        assertThat(f.failed()).isFalse();
        assertThat(f.measured()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void depthAndOuterCircle() {
        Member post = Mechanisms.member("post", 0, Region.disc(new Point(24, 0), 1), -1, 3);
        Finding depth = judged(new Requirement.FitsDepth("depth", List.of(0, 1), 4), MOVING, post);
        assertThat(depth.failed()).isFalse();
        assertThat(depth.measured()).isEqualTo(4);
        Finding shallow = judged(new Requirement.FitsDepth("depth", List.of(0, 1), 3.9), MOVING, post);
        assertThat(shallow.failed()).isTrue();
        assertThat(FindingWords.where(shallow)).isEqualTo("post");
        Finding round = judged(new Requirement.FitsRound("round", List.of(0, 1), 50), MOVING, post);
        assertThat(round.failed()).isFalse();
        assertThat(round.measured()).isCloseTo(50, within(1e-12));
        Finding small = judged(new Requirement.FitsRound("round", List.of(0), 40), MOVING, post);
        assertThat(small.failed()).isTrue();
        assertThat(small.measured()).isCloseTo(2 * Math.sqrt(401), within(1e-12));
    }

    @Test
    void leavesOverOnePointAreCounted() {
        BandLeaves leaves = new BandLeaves(14, 37.4, 10.5, 145, 32, 4);
        Requirement fits = new Requirement.LeavesFit("depth", 0.2, 0.3);
        // State 45 of 181 is a quarter of the way, blade angle 11.05 degrees: 8 deep; open 7 deep.
        Verdict v = Judge.judge(
                leaves.assembly(181, List.of(), fits),
                new Options(true, Options.DEFAULT.tolerance(), Options.DEFAULT.progress()));
        assertThat(v.states().get(0).leafLayers()).isEqualTo(7);
        assertThat(v.states().get(45).leafLayers()).isEqualTo(8);
        Finding f = v.findings().get(0);
        assertThat(f.failed()).isFalse();
        assertThat(f.measured()).isEqualTo(2);
        assertThat(f.limit()).isCloseTo(8 * 0.2 + 0.3, within(1e-9));
        assertThat(Spoken.of(f)).contains("Up to 8 blades").contains("all 181 states");
        Finding tight = Mechanisms.judge(leaves.assembly(181, List.of(), new Requirement.LeavesFit("depth", 0.25, 0.3)))
                .findings()
                .get(0);
        assertThat(tight.failed()).isTrue();
    }

    private static Requirement pinInSlot(Point pin, double radius, double clearance) {
        return new Requirement.PinInHole(
                "pin-in-slot", List.of(new Requirement.Fit(0, pin, radius, 1, slot())), clearance);
    }
}
