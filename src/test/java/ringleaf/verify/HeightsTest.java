// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Requirement;

/** What lies on what, room along the axis, pins' hold, stops, widths: known answers and known-bad cases for each. */
class HeightsTest {
    private static final Region PLATE = Region.of(Mechanisms.rectangle(-10, -10, 10, 10));
    private static final Member BASE = Mechanisms.member("base", 0, PLATE, 0, 3);

    private static Motion turns(double degrees) {
        return Mechanisms.motion(11, List.of(s -> Placement.turn(Math.toRadians(degrees * s / 10))));
    }

    private static Finding judged(Requirement requirement, Member... members) {
        return Mechanisms.judge(Mechanisms.assembly(turns(30), List.of(members), requirement))
                .findings()
                .get(0);
    }

    private static Finding rests(double from, Region outline, double area) {
        Member upper = Mechanisms.member("upper", 0, outline, from, from + 2);
        return judged(new Requirement.Rests("stack-closed", List.of(new Requirement.Resting(1, 0, area))), BASE, upper);
    }

    @Test
    void whatLiesOnSomethingTouchesItOverItsArea() {
        Region half = Region.of(Mechanisms.rectangle(0, -10, 20, 10));
        assertThat(rests(3, half, 199.9).failed()).isFalse();
        Finding little = rests(3, half, 200.1);
        assertThat(little.failed()).isTrue();
        assertThat(little.measured()).isCloseTo(200, within(1e-9));
        Finding hangs = rests(3.1, half, 1);
        assertThat(hangs.failed()).isTrue();
        assertThat(hangs.measured()).isCloseTo(0.1, within(1e-12));
        assertThat(rests(2.9, half, 1).measured()).isCloseTo(-0.1, within(1e-12));
        assertThat(rests(3, Region.of(Mechanisms.rectangle(10, -10, 20, 10)), 1).failed())
                .isTrue();
    }

    private static Finding above(double from, double least, double area, Region outline) {
        Member upper = Mechanisms.member("lid", 1, outline, from, from + 2);
        return judged(
                new Requirement.StaysAbove("axial-clearance", List.of(new Requirement.Above(1, 0, least, area))),
                BASE,
                upper);
    }

    @Test
    void roomAlongTheAxisIsMeasuredWhereTwoLieOverOneAnother() {
        assertThat(above(3.15, 0.15, 1, PLATE).failed()).isFalse();
        assertThat(above(3.1, 0.15, 1, PLATE).measured()).isCloseTo(0.1, within(1e-12));
        assertThat(above(3.1, 0.15, 1, PLATE).failed()).isTrue();
        assertThat(above(3, 0, 1, PLATE).failed()).as("touches").isTrue();
        assertThat(Spoken.of(above(2.5, 0.15, 1, PLATE))).contains("0.5 mm deep");
        Region beside = Region.of(Mechanisms.rectangle(30, 30, 40, 40));
        assertThat(above(2.5, 0.15, 0, beside).failed()).isFalse();
        assertThat(above(3.15, 0.15, 1, beside).failed()).as("holds nothing").isTrue();
    }

    @Test
    void aStopEndsTheTravelOnBothSides() {
        // An arm of half width 1 between two posts: at radius 20 the faces of the arm are asin(1/20) off its middle.
        Region arm = Region.of(Mechanisms.rectangle(0, -1, 20, 1));
        double over = Math.toRadians(2);
        Member moving = Mechanisms.member("arm", 1, arm, 0, 2);
        double first = -Math.atan2(1, 20) - over;
        double last = Math.toRadians(30) + Math.atan2(1, 20) + over;
        double corner = Math.hypot(20, 1);
        Member low = post(first, corner);
        Member both = Mechanisms.member(
                "posts", 0, low.part().layers().get(0).regions().get(0), 0, 2);
        Member posts = new Member(
                "posts",
                both.part()
                        .withLayers(List.of(
                                low.part().layers().get(0),
                                post(last, corner).part().layers().get(0))),
                0,
                Placement.IDENTITY);
        Requirement stops = new Requirement.Stops("stops", 0, 1, Point.ORIGIN, true, over);
        Finding right = judged(stops, moving, posts);
        assertThat(right.failed()).as(right.toString()).isFalse();
        assertThat(right.measured()).isCloseTo(2, within(0.1));
        Finding early = judged(new Requirement.Stops("stops", 0, 1, Point.ORIGIN, true, over / 2), moving, posts);
        assertThat(early.failed()).isTrue();
        Finding none =
                judged(stops, moving, Mechanisms.member("posts", 0, PLATE.placed(Placement.shift(100, 0)), 0, 2));
        assertThat(none.failed()).isTrue();
        assertThat(Spoken.of(none)).contains("runs on");
    }

    /** A small disc whose edge touches a ray from the origin at a radius, outside the arm's way. */
    private static Member post(double direction, double radius) {
        double r = 0.1;
        double side = direction < 0 ? -1 : 1;
        Point middle = Point.polar(Math.hypot(radius, r), direction + side * Math.atan2(r, radius));
        return Mechanisms.member("post", 0, Region.disc(middle, r), 0, 2);
    }

    @Test
    void theWidthAlongADirectionAndTheRoundBesideALobe() {
        Region egg = Region.of(ringleaf.curve.Shapes.hull(Point.ORIGIN, 10, Point.polar(12, 1), 5));
        Member plate = Mechanisms.member("plate", 0, egg, 0, 2);
        Finding width = judged(new Requirement.FitsWidth("envelope-width", List.of(0), Point.polar(1, 1), 27), plate);
        assertThat(width.failed()).isFalse();
        assertThat(width.measured()).isCloseTo(27, within(1e-9));
        assertThat(judged(new Requirement.FitsWidth("envelope-width", List.of(0), Point.polar(1, 1), 26.9), plate)
                        .failed())
                .isTrue();
        Requirement.Lobe lobe = new Requirement.Lobe(1, Math.PI / 2);
        Finding round = judged(new Requirement.FitsRound("outer-diameter", List.of(0), 20, Optional.of(lobe)), plate);
        assertThat(round.measured()).isCloseTo(20, within(1e-9));
        assertThat(round.failed()).isFalse();
        Member bulged = Mechanisms.member(
                "plate",
                0,
                Region.of(ringleaf.curve.Shapes.hull(Point.ORIGIN, 10, Point.polar(2, 1 + Math.PI), 9)),
                0,
                2);
        assertThat(judged(new Requirement.FitsRound("outer-diameter", List.of(0), 20, Optional.of(lobe)), bulged)
                        .measured())
                .isCloseTo(22, within(1e-9));
    }

    @Test
    void aHoleMustBeThereAndNoWiderThanCountedOn() {
        Point at = new Point(3, 0);
        Contour hole = Contour.circle(at, 1);
        Member plate = Mechanisms.member("plate", 0, PLATE.withHoles(List.of(hole)), 0, 2);
        Member pin = Mechanisms.member("pin", 0, Region.disc(at, 0.9), 0, 2);
        List<Requirement.Fit> fits = List.of(new Requirement.Fit(1, at, 0.9, 0, hole));
        assertThat(judged(new Requirement.PinInHole("pins", fits, 0.1, true), plate, pin)
                        .failed())
                .isFalse();
        Finding loose = judged(new Requirement.PinInHole("pins", fits, 0.05, true), plate, pin);
        assertThat(loose.failed()).isTrue();
        assertThat(loose.relation()).isEqualTo(Finding.Relation.AT_MOST);
        assertThat(judged(new Requirement.PinInHole("pins", fits, 0.05), plate, pin)
                        .failed())
                .isFalse();
        assertThat(judged(new Requirement.PinInHole("pins", fits, 0), BASE, pin).failed())
                .as("no hole")
                .isTrue();
    }
}
