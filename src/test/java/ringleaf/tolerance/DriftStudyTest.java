// SPDX-License-Identifier: Apache-2.0
package ringleaf.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.mechanism.AsBuilt.Deviation;
import ringleaf.mechanism.AsBuilt.Limit;

/** Drifts of checks whose place of failure is known in closed form. */
class DriftStudyTest {
    private static final List<Limit> TWO = List.of(new Limit("a", "mm", "a"), new Limit("b", "mm", "b"));

    private static Deviation size(String name, int copies, double most) {
        return new Deviation(name, name, "mm", 1, copies, 0.2, "test", most);
    }

    @Test
    void bothWaysAndTheCheckThatGivesWay() {
        // a: 0.3 - x², b: x + 0.4, beside a size that nothing minds
        MadeUp thing = new MadeUp(List.of(size("x", 1, 5), size("free", 1, 5)), TWO, off ->
                new double[] {0.3 - off[0][0] * off[0][0], off[0][0] + 0.4});
        List<Drift> drifts = new DriftStudy(thing).all(2, Ticker.NONE);
        double precision = 0.2 * DriftStudy.PRECISION;
        assertThat(drifts.get(0).up()).isCloseTo(Math.sqrt(0.3), within(precision));
        assertThat(drifts.get(0).upBreaks()).isEqualTo("a");
        assertThat(drifts.get(0).down()).isCloseTo(0.4, within(precision));
        assertThat(drifts.get(0).downBreaks()).isEqualTo("b");
        assertThat(drifts.get(0).reserve()).isCloseTo(2, within(0.01));
        assertThat(drifts.get(1).up()).isInfinite();
        assertThat(drifts.get(1).upBreaks()).isEmpty();
    }

    /** One copy alone may drift as far as all of them share when they drift alike. */
    @Test
    void oneCopyOrAll() {
        MadeUp thing = new MadeUp(List.of(size("slot", 4, 5)), List.of(TWO.get(0)), off ->
                new double[] {0.6 - off[0][0] - off[0][1] - off[0][2] - off[0][3]});
        List<Drift> drifts = new DriftStudy(thing).all(1, Ticker.NONE);
        assertThat(drifts).hasSize(2);
        assertThat(drifts.get(0).together()).isFalse();
        assertThat(drifts.get(0).up()).isCloseTo(0.6, within(1e-3));
        assertThat(drifts.get(1).together()).isTrue();
        assertThat(drifts.get(1).up()).isCloseTo(0.15, within(1e-3));
    }

    @Test
    void nothingIsLookedAtBeyondWhatASizeCanBe() {
        MadeUp thing =
                new MadeUp(List.of(size("x", 1, 0.5)), List.of(TWO.get(0)), off -> new double[] {0.6 - off[0][0]});
        assertThat(new DriftStudy(thing).all(1, Ticker.NONE).get(0).up()).isInfinite();
    }

    @Test
    void whatDoesNotHoldAsDrawnIsNamed() {
        assertThat(new DriftStudy(MadeUp.oneLimit(-0.1)).brokenAsDrawn()).containsExactly("fits");
        assertThat(new DriftStudy(MadeUp.oneLimit(0.1)).brokenAsDrawn()).isEmpty();
    }

    @Test
    void aFaultOnAnotherThreadIsNotSwallowed() {
        MadeUp thing = new MadeUp(List.of(size("x", 1, 5)), List.of(TWO.get(0)), off -> {
            throw new IllegalStateException("broken bench");
        });
        assertThatThrownBy(() -> new YieldStudy(thing).of(20, 1, 3, Ticker.NONE))
                .hasMessage("broken bench");
    }

    @Test
    void tablesTellBothWaysAndQuoteWords() {
        MadeUp thing = new MadeUp(
                List.of(new Deviation("x", "one, and another", "mm", 1, 3, 0.2, "test", 5)), List.of(TWO.get(0)), off ->
                        new double[] {0.3 - off[0][0]});
        List<Drift> drifts = new DriftStudy(thing).all(1, Ticker.NONE);
        assertThat(ToleranceText.driftCsv(drifts))
                .contains("x,\"one, and another\",3,one,mm,1,0.2,test,,,0.29")
                .contains(",3,all,");
        assertThat(ToleranceText.drifts(drifts, ringleaf.part.ShownUnit.MM))
                .anyMatch(line -> line.startsWith("x, one or all of 3") && line.contains("any") && line.endsWith("a"));
        Yield yield = new YieldStudy(thing).of(200, 1, 1, Ticker.NONE);
        assertThat(ToleranceText.yieldCsv(yield, thing))
                .startsWith("check,builds,broken")
                .contains("\na,200,");
        assertThat(ToleranceText.yield(yield).get(0)).startsWith("of 200 random builds (seed 1) ");
    }
}
