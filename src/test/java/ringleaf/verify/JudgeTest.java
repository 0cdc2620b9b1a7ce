// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.part.Requirement;
import ringleaf.report.FindingWords;

/** The judge as a whole: states, order, and that nothing depends on where the assembly stands. */
class JudgeTest {
    private static final BandLeaves LEAVES = new BandLeaves(14, 37.4, 10.5, 145, 32, 4);

    private static Assembly whole(BandLeaves leaves, List<Requirement> requirements) {
        Region pin = Region.disc(new Point(37.4, 0), 0.75);
        Member pivot = Mechanisms.member("pin 1", 1, pin, 1, 3.15);
        Member base = Mechanisms.member(
                "base",
                0,
                Region.ring(Point.ORIGIN, 32, 50).withHoles(List.of(Contour.circle(new Point(37.4, 0), 0.85))),
                0,
                3);
        Member wall = Mechanisms.member("wall", 0, Region.ring(Point.ORIGIN, 47, 50), 3, 5);
        return leaves.assembly(181, List.of(pivot, base, wall), requirements.toArray(new Requirement[0]));
    }

    private static List<Requirement> requirements() {
        return List.of(
                new Requirement.KeepsClear("opens-fully", Region.disc(Point.ORIGIN, 32), List.of(0)),
                new Requirement.OpensTo("closes-to", Point.ORIGIN, 180, 8, 0.02),
                new Requirement.Covered("light-tight", "lap", 0.08),
                new Requirement.StaysInside("wall-clearance", List.of(0, 5), Region.disc(Point.ORIGIN, 47), 0.2),
                new Requirement.PinInHole(
                        "pin-in-slot",
                        List.of(new Requirement.Fit(
                                14, new Point(37.4, 0), 0.75, 15, Contour.circle(new Point(37.4, 0), 0.85))),
                        0.1),
                new Requirement.StaysApart("clearance", 0.2, List.of(new Requirement.Pair(14, 15, 0.1))),
                new Requirement.LeastWeb("minimum-web", "base", 0.8),
                new Requirement.LeavesFit("depth", 0.2, 0.3),
                new Requirement.FitsDepth("depth", List.of(15, 16), 5),
                new Requirement.FitsRound("round", List.of(15, 16), 100));
    }

    private static void assertSame(List<Finding> a, List<Finding> b, double within) {
        assertThat(a).hasSameSizeAs(b);
        for (int i = 0; i < a.size(); i++) {
            assertThat(a.get(i).check()).isEqualTo(b.get(i).check());
            assertThat(a.get(i).status())
                    .as(a.get(i).toString())
                    .isEqualTo(b.get(i).status());
            assertThat(a.get(i).measured())
                    .as(a.get(i).toString())
                    .isCloseTo(b.get(i).measured(), within(within));
        }
    }

    @Test
    void everyRequirementIsAnsweredAndOnlyTheThinLapFails() {
        Verdict v = Mechanisms.judge(whole(LEAVES, requirements()));
        assertThat(v.findings())
                .extracting(Finding::check)
                .containsExactly(
                        "opens-fully",
                        "closes-to",
                        "light-tight",
                        "lap",
                        "wall-clearance",
                        "pin-in-slot",
                        "clearance",
                        "minimum-web",
                        "depth",
                        "depth",
                        "round");
        for (Finding f : v.findings()) {
            assertThat(f.failed()).as(f.toString()).isEqualTo(f.check().equals("lap"));
        }
        assertThat(v.failed()).isTrue();
        assertThat(v.states()).hasSize(11);
        assertThat(v.states().get(0).label()).isEqualTo("open");
        StateReport closed = v.states().get(10);
        assertThat(closed.clearanceAt()).isEqualTo("pin 1 and base");
        assertThat(closed.clearance()).isCloseTo(0.1, within(1e-9));
        assertThat(closed.inscribed()).isCloseTo(8, within(1e-9));
        assertThat(closed.neighbourOverlap()).isCloseTo(358.4, within(0.1));
    }

    @Test
    void nothingDependsOnHowTheAssemblyIsTurned() {
        Assembly a = whole(LEAVES, requirements());
        Verdict upright = Mechanisms.judge(a);
        Random random = new Random(11);
        for (int i = 0; i < 3; i++) {
            double angle = random.nextDouble() * 6;
            Verdict turned = Mechanisms.judge(Mechanisms.turned(a, angle));
            assertSame(turned.findings(), upright.findings(), 1e-4);
            for (int k = 0; k < upright.states().size(); k++) {
                assertThat(turned.states().get(k).neighbourOverlap())
                        .isCloseTo(upright.states().get(k).neighbourOverlap(), within(1e-3));
            }
        }
    }

    @Test
    void nothingDependsOnTheOrderOfRequirements() {
        Verdict first = Mechanisms.judge(whole(LEAVES, requirements()));
        List<Requirement> shuffled = new ArrayList<>(requirements());
        Collections.shuffle(shuffled, new Random(3));
        Verdict v = Mechanisms.judge(whole(LEAVES, shuffled));
        assertThat(v.findings()).containsExactlyInAnyOrderElementsOf(first.findings());
    }

    @Test
    void twoRunsAndTwoLocalesSayTheSame() {
        Verdict first = Mechanisms.judge(whole(LEAVES, requirements()));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Mechanisms.judge(whole(LEAVES, requirements())).findings())
                    .isEqualTo(first.findings());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void notableStatesAndAllStatesAreJudgedWhenAsked() {
        Assembly a = Mechanisms.assembly(
                Mechanisms.motion(91, List.of(s -> Placement.turn(Math.toRadians(s))), 37, 41),
                List.of(Mechanisms.member("arm", 1, Region.of(Mechanisms.rectangle(0, -1, 20, 1)), 0, 2)),
                new Requirement.FitsRound("round", List.of(0), 50));
        assertThat(Mechanisms.judge(a).states())
                .extracting(StateReport::state)
                .containsExactly(0, 9, 18, 27, 36, 37, 41, 45, 54, 63, 72, 81, 90);
        List<Integer> told = new ArrayList<>();
        Options all = new Options(true, Options.DEFAULT.tolerance(), (done, total) -> told.add(done * 1000 + total));
        Verdict v = Judge.judge(a, all);
        assertThat(v.states()).hasSize(91);
        assertThat(told).hasSize(91).startsWith(1091).endsWith(91091);
        assertThat(Spoken.of(v.findings().get(0))).contains("all 91 states");
    }

    @Test
    void leavesThatAreNoTurnedCopiesAreJudgedAllRound() {
        // One blade lags behind by a tenth of a degree: a slit beside it only.
        Assembly even = LEAVES.assembly(181, List.of(), new Requirement.Covered("light-tight", "lap", 0));
        assertThat(Mechanisms.judge(even).failed()).isFalse();
        List<Member> members = new ArrayList<>(even.members());
        Member late = members.get(3);
        Point pivot = Point.polar(37.4, 3 * 2 * Math.PI / 14);
        members.set(
                3,
                new Member(
                        "late",
                        late.part(),
                        late.body(),
                        late.home().then(Placement.turnAbout(pivot, -Math.toRadians(0.1)))));
        Assembly odd = new Assembly(
                even.name(), members, even.motion(), even.leaves(), even.requirements(), List.of(), List.of());
        Finding f = Mechanisms.judge(odd).findings().get(0);
        assertThat(f.failed()).isTrue();
        assertThat(f.measured()).isGreaterThan(0.01);
        assertThat(FindingWords.where(f)).contains("late");
    }

    @Test
    void askingForLeavesWithoutAnyIsRefused() {
        Assembly a = Mechanisms.assembly(
                Mechanisms.motion(3, List.of(s -> Placement.IDENTITY)),
                List.of(Mechanisms.member("plate", 0, Region.disc(Point.ORIGIN, 5), 0, 1)),
                new Requirement.Covered("light-tight", "lap", 0));
        assertThat(a.leaves()).isEqualTo(Optional.empty());
        assertThatThrownBy(() -> Mechanisms.judge(a)).isInstanceOf(IllegalArgumentException.class);
    }
}
