// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Finding;
import ringleaf.part.LeafFamily;
import ringleaf.part.Member;
import ringleaf.part.Requirement;
import ringleaf.report.FindingWords;

/** Coverage against the closed forms and the leaking cases computed for this project from two independent models. */
class CoverTest {
    private static final BandLeaves WORKED = new BandLeaves(14, 37.4, 10.5, 145, 32, 4);
    private static final int STATES = 181;

    private static Verdict cover(BandLeaves leaves, double lap) {
        return Mechanisms.judge(leaves.assembly(STATES, List.of(), new Requirement.Covered("light-tight", "lap", lap)));
    }

    private static StateReport last(Verdict v) {
        return v.states().get(v.states().size() - 1);
    }

    @Test
    void aTightDesignDoesNotLeakByItsChords() {
        Verdict v = cover(WORKED, 0.055);
        assertThat(v.findings()).extracting(Finding::failed).containsExactly(false, false);
    }

    @Test
    void aLapThatIsNotThereIsMissed() {
        Verdict v = cover(WORKED, 0.07);
        assertThat(v.findings().get(0).failed()).isFalse();
        assertThat(v.findings().get(1).failed()).isTrue();
        assertThat(FindingWords.where(v.findings().get(1))).startsWith("closed, blade ");
        // The lap computed for this design is 0.06 mm (0.061 by two models).
        assertThat(v.findings().get(1).measured()).isCloseTo(0.061, within(0.0005));
        assertThat(v.findings().get(1).unit()).isEqualTo("mm");
    }

    @Test
    void slitsTooSmallForSamplingAreFound() {
        assertThat(last(cover(new BandLeaves(18, 53.95, 7.9, 158, 50, 24), 0)).leakArea())
                .isCloseTo(0.0340, within(0.0005));
        assertThat(last(cover(new BandLeaves(18, 53.9, 7.8, 158, 50, 24), 0)).leakArea())
                .isCloseTo(0.4061, within(0.001));
    }

    @Test
    void theSameDesignWiderIsTightWithItsLap() {
        BandLeaves wide = new BandLeaves(18, 54.2, 8.4, 158, 50, 24);
        assertThat(cover(wide, 0.44).failed()).isFalse();
        Finding lap = cover(wide, 0.6).findings().get(1);
        assertThat(lap.failed()).isTrue();
        assertThat(lap.measured()).isCloseTo(0.45, within(0.005));
    }

    @Test
    void polygonsAgreeWithTheWalkInEveryState() {
        BandLeaves leaky = new BandLeaves(18, 53.9, 7.8, 158, 50, 24);
        for (BandLeaves leaves : List.of(WORKED, leaky)) {
            Verdict quick = cover(leaves, 0.05);
            // Thorough judging overlays polygons in every state.
            Verdict all = Judge.judge(
                    leaves.assembly(31, List.of(), new Requirement.Covered("light-tight", "lap", 0.05)),
                    new Options(true, Options.DEFAULT.tolerance(), Options.DEFAULT.progress()));
            assertThat(all.findings())
                    .extracting(Finding::status)
                    .isEqualTo(quick.findings().stream().map(Finding::status).toList());
            assertThat(last(all).leakArea()).isEqualTo(last(quick).leakArea());
        }
    }

    @Test
    void aHoleWithoutItsPinLetsLightThrough() {
        // Open, the leaves reach over 150 degrees each: at 75 degrees only the first one lies over the hole.
        Point at = Point.polar(22, Math.toRadians(75));
        BandLeaves few = new BandLeaves(3, 40, 40, 150, 20, 19);
        Region holed = few.leaf().withHoles(List.of(Contour.circle(at, 0.5)));
        Region pin = Region.disc(at, 0.5);
        Member filling = Mechanisms.member("pin", 1, pin, 1, 3.15);
        Requirement covered = new Requirement.Covered("light-tight", "lap", 0);
        Assembly plain = few.assembly(11, List.of(filling), covered);
        List<Member> members = new ArrayList<>(plain.members());
        Member first = members.get(0);
        members.set(0, new Member(first.name(), Mechanisms.part("holed", holed, 3, 3.15), first.body(), first.home()));
        Region room = Region.disc(Point.ORIGIN, 24);
        LeafFamily wide = new LeafFamily(
                "blade",
                plain.leaves().orElseThrow().members(),
                3,
                5,
                room,
                plain.leaves().orElseThrow().opening());
        assertThat(Mechanisms.judge(with(plain, members, wide)).states().get(0).leakArea())
                .isEqualTo(0);
        members.remove(3);
        double area =
                Mechanisms.judge(with(plain, members, wide)).states().get(0).leakArea();
        assertThat(area).isCloseTo(Math.PI * 0.25, within(1e-3));
    }

    private static Assembly with(Assembly a, List<Member> members, LeafFamily family) {
        return new Assembly(a.name(), members, a.motion(), Optional.of(family), a.requirements(), List.of(), List.of());
    }
}
