// SPDX-License-Identifier: Apache-2.0
package ringleaf.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.apache.commons.math3.stat.interval.ClopperPearsonInterval;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.mechanism.AsBuilt.Deviation;
import ringleaf.mechanism.AsBuilt.Limit;

/** Shares of builds against the normal distribution of Commons Math, and intervals against its own. */
class YieldStudyTest {
    /** One size, normal spread, one limit: the share is the distribution function at the limit. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 0, 0.05, 0.1, 0.15, 0.2, 0.25})
    void oneLimitIsTheNormalDistribution(double limit) {
        int builds = 40_000;
        Yield yield = new YieldStudy(MadeUp.oneLimit(limit)).of(builds, 7, 2, Ticker.NONE);
        double expected = new NormalDistribution(0, 0.1).cumulativeProbability(limit);
        double sigma = Math.sqrt(expected * (1 - expected) / builds);
        assertThat(yield.share()).as("seed 7").isCloseTo(expected, within(4 * sigma));
        assertThat(yield.failures()).singleElement().satisfies(failure -> {
            assertThat(failure.builds()).isEqualTo(builds - yield.good());
            assertThat(failure.alone()).isEqualTo(failure.builds());
        });
    }

    /** Copies are off by themselves: all of five hold as often as one does to the fifth power. */
    @Test
    void copiesAreIndependent() {
        MadeUp five = new MadeUp(
                List.of(new Deviation("bore", "bore", "mm", 1, 5, 0.2, "test", 5)),
                List.of(new Limit("fits", "mm", "all fit")),
                off -> {
                    double least = Double.MAX_VALUE;
                    for (double copy : off[0]) {
                        least = Math.min(least, 0.1 - copy);
                    }
                    return new double[] {least};
                });
        Yield yield = new YieldStudy(five).of(40_000, 3, 2, Ticker.NONE);
        double expected = Math.pow(new NormalDistribution(0, 0.1).cumulativeProbability(0.1), 5);
        assertThat(yield.share()).isCloseTo(expected, within(0.01));
    }

    /** Of 600 intervals at least 93 % hold the true share; by their making they hold it in 95 % or more. */
    @Test
    void intervalsCoverAsOftenAsTheySay() {
        double expected = new NormalDistribution(0, 0.1).cumulativeProbability(0.1);
        int covered = 0;
        for (int seed = 0; seed < 600; seed++) {
            Yield yield = new YieldStudy(MadeUp.oneLimit(0.1)).of(150, seed, 1, Ticker.NONE);
            covered += yield.low() <= expected && expected <= yield.high() ? 1 : 0;
        }
        assertThat(covered).isBetween(558, 599);
    }

    @ParameterizedTest
    @CsvSource({"1, 2", "37, 100", "873, 1000", "1, 1000", "999, 1000", "12345, 40000"})
    void intervalsAreThoseOfCommonsMath(int good, int all) {
        ConfidenceInterval expected = new ClopperPearsonInterval().createInterval(all, good, 0.95);
        double[] interval = YieldStudy.interval(good, all);
        assertThat(interval[0]).isCloseTo(expected.getLowerBound(), within(1e-7));
        assertThat(interval[1]).isCloseTo(expected.getUpperBound(), within(1e-7));
    }

    /** None and all have closed forms: 1 - 0.025^(1/n). */
    @Test
    void noneAndAll() {
        double edge = 1 - Math.pow(0.025, 1.0 / 80);
        assertThat(YieldStudy.interval(0, 80)[0]).isZero();
        assertThat(YieldStudy.interval(0, 80)[1]).isCloseTo(edge, within(1e-7));
        assertThat(YieldStudy.interval(80, 80)[0]).isCloseTo(1 - edge, within(1e-7));
        assertThat(YieldStudy.interval(80, 80)[1]).isEqualTo(1);
    }

    /** The deviates themselves, by the test of Kolmogorov and Smirnov. */
    @Test
    void deviatesAreNormal() {
        double[] seen = new double[5000];
        MadeUp watched = new MadeUp(
                List.of(new Deviation("pin", "pin", "mm", 1, seen.length, 2, "test", 5)),
                List.of(new Limit("fits", "mm", "it fits")),
                off -> {
                    System.arraycopy(off[0], 0, seen, 0, seen.length);
                    return new double[] {1};
                });
        new YieldStudy(watched).of(1, 11, 1, Ticker.NONE);
        double p = new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new NormalDistribution(0, 1), seen);
        assertThat(p).as("chance of a fit as bad").isGreaterThan(0.01);
        assertThat(YieldStudy.normal(-1L)).isFinite();
        assertThat(YieldStudy.normal(0L)).isFinite();
    }

    @Test
    void theSeedDecidesAndThreadsDoNot() {
        YieldStudy study = new YieldStudy(MadeUp.oneLimit(0.08));
        Yield one = study.of(3000, 5, 1, Ticker.NONE);
        assertThat(study.of(3000, 5, 2, Ticker.NONE)).isEqualTo(one);
        assertThat(study.of(3000, 5, 7, Ticker.NONE)).isEqualTo(one);
        assertThat(study.of(3000, 6, 1, Ticker.NONE).good()).isNotEqualTo(one.good());
    }
}
