// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.Spoken;
import ringleaf.geom.Angles;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.part.Placing;
import ringleaf.part.Requirement;
import ringleaf.part.Way;
import ringleaf.report.FindingWords;

/** What is put together comes to its place only where there is room on the way. */
class BuildTest {
    private static final Region PLATE = Region.of(Mechanisms.rectangle(-20, -20, 20, 20));

    private static Assembly built(List<Member> members, BuildStep... steps) {
        return built(Mechanisms.assembly(Mechanisms.motion(2, List.of()), members), steps);
    }

    private static Assembly built(Assembly a, BuildStep... steps) {
        return new Assembly(
                a.name(),
                a.members(),
                a.motion(),
                a.leaves(),
                a.requirements(),
                a.callouts(),
                List.of(steps),
                a.views());
    }

    private static BuildStep step(Placing... placings) {
        return BuildStep.of("words", List.of(placings));
    }

    private static List<Finding> findings(Assembly assembly) {
        List<Finding> all = new ArrayList<>(Mechanisms.judge(assembly).findings());
        all.removeIf(f -> !f.check().equals("build-order"));
        return all;
    }

    private static void assertFree(Assembly assembly) {
        assertThat(findings(assembly))
                .singleElement()
                .satisfies(f -> assertThat(f.status()).as(Spoken.of(f)).isEqualTo(Finding.Status.PASS));
    }

    private static Finding blocked(Assembly assembly) {
        List<Finding> all = findings(assembly);
        assertThat(all).hasSize(1);
        assertThat(all.get(0).status()).isEqualTo(Finding.Status.FAIL);
        return all.get(0);
    }

    private static Member peg(double x, double from, double to) {
        return Mechanisms.member("peg", 0, Region.disc(new Point(x, 0), 1), from, to);
    }

    private static Member plate(String name, double hole, double from, double to) {
        Region region = hole == 0 ? PLATE : PLATE.withHoles(List.of(Contour.circle(new Point(5, 0), hole)));
        return Mechanisms.member(name, 0, region, from, to);
    }

    @Test
    void nothingIsAskedOfSentencesAlone() {
        assertThat(findings(built(List.of(peg(0, 0, 1)), BuildStep.of("Deburr it."))))
                .isEmpty();
    }

    @Test
    void aPlateMustHaveAHoleForWhatItPassesOnItsWay() {
        // The plate comes to rest under a collar of the peg: at its place nothing touches, on the way it does.
        Member collar = Mechanisms.member("collar", 0, Region.disc(new Point(5, 0), 2), 8, 9);
        BuildStep first = step(Placing.of(0, Placing.NOTHING, Way.DOWN), Placing.of(1, 0, Way.DOWN));
        BuildStep second = step(Placing.of(2, 0, Way.DOWN));
        assertFree(built(List.of(plate("base", 0, 0, 3), collar, plate("lid", 2.1, 4, 6)), first, second));
        Finding narrow =
                blocked(built(List.of(plate("base", 0, 0, 3), collar, plate("lid", 1.1, 4, 6)), first, second));
        assertThat(FindingWords.where(narrow)).startsWith("step 2, lid and collar, at (");
        // A ring of 2 less 1.1 is over the plate: that wide is the widest circle in it.
        assertThat(narrow.measured()).isCloseTo(0.9, within(0.02));
        assertThat(Spoken.of(narrow)).contains("the lid cannot come down to its place past the collar");
        assertFree(built(
                List.of(plate("base", 0, 0, 3), collar, plate("lid", 1.1, 4, 6)),
                step(Placing.of(0, Placing.NOTHING, Way.DOWN), Placing.of(2, 0, Way.DOWN)),
                step(Placing.of(1, 0, Way.DOWN))));
    }

    @Test
    void fromBelowOnlyWhatLiesBelowIsInTheWay() {
        List<Member> members = List.of(plate("base", 0, 0, 3), peg(0, 3, 6), plate("foot", 0, -5, -4), peg(9, -3, -1));
        BuildStep base = step(Placing.of(0, Placing.NOTHING, Way.DOWN), Placing.of(1, 0, Way.DOWN));
        assertFree(built(members, base, step(Placing.of(3, 0, Way.UP)), step(Placing.of(2, 0, Way.UP))));
        Finding late = blocked(built(members, base, step(Placing.of(2, 0, Way.UP)), step(Placing.of(3, 0, Way.UP))));
        assertThat(Spoken.of(late)).startsWith("Step 3 has no room: the peg cannot come up");
        assertThat(FindingWords.where(late)).startsWith("step 3, peg and foot");
    }

    @Test
    void whatWasJoinedBeforeComesAlong() {
        List<Member> members = List.of(plate("base", 0, 0, 3), peg(5, -2, 4), plate("lid", 0, 4, 6));
        BuildStep lidded = step(Placing.of(1, 2, Way.UP));
        BuildStep base = step(Placing.of(0, Placing.NOTHING, Way.DOWN));
        // The peg under the lid would have to pass through the base.
        Finding f = blocked(built(members, lidded, base, step(Placing.of(2, 0, Way.DOWN))));
        assertThat(FindingWords.where(f)).startsWith("step 3, peg and base");
        assertFree(built(
                List.of(plate("base", 1, 0, 3), peg(5, -2, 4), plate("lid", 0, 4, 6)),
                lidded,
                base,
                step(Placing.of(2, 0, Way.DOWN))));
        Finding twice =
                blocked(built(members, base, step(Placing.of(2, 0, Way.DOWN)), step(Placing.of(2, 0, Way.DOWN))));
        assertThat(Spoken.of(twice)).contains("is there already");
    }

    @Test
    void aPinMayBiteByItsPress() {
        List<Member> members = List.of(plate("base", 0.96, 0, 3), peg(5, 0, 5));
        BuildStep base = step(Placing.of(0, Placing.NOTHING, Way.DOWN));
        Finding loose = blocked(built(members, base, step(Placing.of(1, 0, Way.DOWN))));
        assertThat(loose.measured()).isCloseTo(0.04, within(0.01));
        assertFree(built(members, base, step(new Placing(List.of(1), 0, Way.DOWN, 0.05))));
    }

    @Test
    void aSlideMeetsWhatStandsBetween() {
        Member block = Mechanisms.member("block", 0, Region.of(Mechanisms.rectangle(4, -1, 6, 1)), 0, 5);
        Member slider = Mechanisms.member("slider", 0, Region.disc(Point.ORIGIN, 1), 3, 4);
        BuildStep base = step(Placing.of(0, Placing.NOTHING, Way.DOWN));
        Finding f =
                blocked(built(List.of(block, slider), base, step(Placing.of(1, 0, new Way.Aside(new Point(10, 0))))));
        assertThat(Spoken.of(f)).contains("cannot slide to its place past the block");
        assertFree(built(List.of(block, slider), base, step(Placing.of(1, 0, new Way.Aside(new Point(0, 10))))));
        Finding onto =
                blocked(built(List.of(block, slider), base, step(Placing.of(1, 0, new Way.Aside(new Point(5, 0))))));
        assertThat(Spoken.of(onto)).contains("cannot come down");
    }

    @Test
    void aBeltGoesOverItsPulleyButUnderNoPlate() {
        Region loop = Region.ring(Point.ORIGIN, 5, 6);
        Member flange = Mechanisms.member("flange", 0, Region.disc(Point.ORIGIN, 8), 4, 5);
        Member pulley = Mechanisms.member("pulley", 0, Region.disc(Point.ORIGIN, 5), 0, 4);
        Member belt = Mechanisms.member("belt", 0, loop, 1, 3);
        Member lid = plate("lid", 0, 6, 8);
        BuildStep first = step(Placing.of(0, Placing.NOTHING, Way.DOWN), Placing.of(1, 0, Way.DOWN));
        BuildStep round = step(Placing.of(2, 0, new Way.Slack(List.of(0, 1))));
        BuildStep over = step(Placing.of(3, 0, Way.DOWN));
        List<Member> members = List.of(pulley, flange, belt, lid);
        assertFree(built(members, first, round, over));
        assertThat(FindingWords.where(blocked(built(members, first, over, round))))
                .startsWith("step 3, belt and lid");
        assertThat(FindingWords.where(blocked(built(members, first, step(Placing.of(2, 0, Way.DOWN))))))
                .startsWith("step 2, belt and flange");
    }

    private static Assembly circle(BandLeaves leaves, int threaded, List<Member> more) {
        List<Member> all =
                new ArrayList<>(List.of(Mechanisms.member("base", 0, Region.ring(Point.ORIGIN, 32, 60), 0, 3)));
        all.addAll(more);
        Assembly a = leaves.assembly(2, all, new Requirement.StaysApart("clearance", 0.1, List.of()));
        List<Placing> laid = new ArrayList<>();
        laid.add(Placing.of(leaves.count(), Placing.NOTHING, Way.DOWN));
        List<Placing> bench = new ArrayList<>();
        for (int i = 0; i < more.size(); i++) {
            bench.add(Placing.of(leaves.count() + 1 + i, i, Way.DOWN));
        }
        for (int i = 0; i < leaves.count(); i++) {
            boolean last = i >= leaves.count() - threaded;
            laid.add(Placing.of(i, leaves.count(), last ? Way.UNDER : Way.DOWN));
        }
        return built(a, BuildStep.of("pins", bench), BuildStep.of("leaves", laid));
    }

    /** How many leaves a leaf reaches over: by the angle of a band with round ends. */
    private static int reachedOver(BandLeaves leaves) {
        double ends = 2 * Math.asin(leaves.width() / 2 / leaves.pivot());
        return (int) Math.ceil((Math.toRadians(leaves.spanDeg()) + ends) / (Angles.TURN / leaves.count())) - 1;
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 8, 14, 16})
    void theLastLeavesOfACircleGoUnderTheFirst(int count) {
        BandLeaves leaves = new BandLeaves(count, 37.4, 10.5, 145, 32, 20);
        int under = reachedOver(leaves);
        Assembly good = circle(leaves, under, List.of());
        assertFree(good);
        assertThat(Spoken.of(findings(good).get(0)))
                .contains(under + (under == 1 ? " blade goes" : " blades go") + " in under others");
        List<Finding> bad = findings(circle(leaves, under - 1, List.of()));
        assertThat(bad).singleElement().satisfies(f -> {
            assertThat(f.failed()).isTrue();
            assertThat(Spoken.of(f)).contains("blade " + (count - under + 1) + " has to go under the blade 1");
        });
        assertThat(findings(circle(leaves, 0, List.of()))).singleElement().satisfies(f -> assertThat(Spoken.of(f))
                .endsWith(
                        under == 1
                                ? "from above."
                                : "; " + (under - 1)
                                        + (under == 2
                                                ? " other in this step likewise."
                                                : " others in this step likewise.")));
    }

    /** Two pins at the root of a leaf cannot both pass the leaves that cross it: one of them goes through these. */
    @Test
    void aPinThatOthersLieOverIsFound() {
        BandLeaves leaves = new BandLeaves(12, 37.4, 10.5, 130, 32, 20);
        List<Member> pins = new ArrayList<>();
        for (int i = 0; i < leaves.count(); i++) {
            Region pin = Region.disc(new Point(37.4, 0), 0.5);
            pins.add(new Member(
                    "pin " + (i + 1),
                    Mechanisms.part("pin", pin, 3, 6),
                    i + 1,
                    Placement.turn(i * Angles.TURN / leaves.count())));
        }
        // Laid counter-clockwise, a leaf's root lies over its neighbours: its pin may stand up there.
        assertFree(drilled(circle(leaves, reachedOver(leaves), pins)));
        List<Member> tips = new ArrayList<>();
        for (int i = 0; i < leaves.count(); i++) {
            Region pin = Region.disc(Point.polar(37.4, Math.toRadians(130)), 0.5);
            tips.add(new Member(
                    "pin " + (i + 1),
                    Mechanisms.part("pin", pin, 3, 6),
                    i + 1,
                    Placement.turn(i * Angles.TURN / leaves.count())));
        }
        assertThat(findings(drilled(circle(leaves, reachedOver(leaves), tips))))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.failed()).isTrue())
                .anySatisfy(f -> assertThat(Spoken.of(f)).contains("cannot come down to its place past the pin"));
    }

    /** The pins sit in holes of their leaves. */
    private static Assembly drilled(Assembly a) {
        List<Member> members = new ArrayList<>();
        Region pin = null;
        for (Member m : a.members()) {
            pin = m.name().equals("pin 1") ? m.part().layers().get(0).regions().get(0) : pin;
        }
        Region leaf = a.members().get(0).part().layers().get(0).regions().get(0);
        Region drilled = leaf.withHoles(List.of(pin.outer()));
        for (Member m : a.members()) {
            boolean blade = m.name().startsWith("blade");
            members.add(
                    blade ? new Member(m.name(), Mechanisms.part("blade", drilled, 3, 3.15), m.body(), m.home()) : m);
        }
        return new Assembly(
                a.name(), members, a.motion(), a.leaves(), a.requirements(), a.callouts(), a.steps(), a.views());
    }

    @Test
    void nothingDependsOnWhereTheAssemblyStands() {
        BandLeaves leaves = new BandLeaves(14, 37.4, 10.5, 145, 32, 20);
        for (int threaded : new int[] {reachedOver(leaves), 3}) {
            Assembly a = circle(leaves, threaded, List.of());
            List<Finding> turned = findings(Mechanisms.turned(a, 1.234));
            List<Finding> straight = findings(a);
            assertThat(turned).hasSameSizeAs(straight);
            for (int i = 0; i < turned.size(); i++) {
                assertThat(Spoken.of(turned.get(i))).isEqualTo(Spoken.of(straight.get(i)));
            }
        }
    }
}
