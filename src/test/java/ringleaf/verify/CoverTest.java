package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** Coverage against the closed forms and the leaking cases computed for this project from two independent models. */
class CoverTest {
    private static final BandLeaves WORKED = new BandLeaves(14, 37.4, 10.5, 145, 32, 4);
    private static final int STATES = 181;

    private static Verdict cover(BandLeaves leaves, double lap) {
        return Mechanisms.judge(
                leaves.assembly(STATES, List.of(), new Requirement.Covered("light-tight", "lap", lap)));
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
        assertThat(v.findings().get(1).where()).startsWith("closed, blade ");
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
        assertThat(cover(wide, 0.46).failed()).isTrue();
    }
}
