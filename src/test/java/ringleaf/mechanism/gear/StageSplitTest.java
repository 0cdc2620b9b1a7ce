// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.tooth.TeethRatio;

/** Teeth of trains against a trial of all teeth there are. */
class StageSplitTest {
    @ParameterizedTest
    @CsvSource({"12,0", "12,0.02", "10,0", "7.5,0", "17,0", "25,0", "1.5,0.01", "0.1,0", "0.3333333333333333,0.03"})
    void noTwoStagesAreShorter(double ratio, double room) {
        List<TeethRatio> best = new StageSplit(ratio, room, 2).trains().get(0);
        boolean hunting = room > 0 && StageSplit.hunts(best);
        boolean clear = StageSplit.clearsAxles(best);
        double least = shortestOfTwo(ratio, room, clear, hunting);
        assertThat(StageSplit.length(best)).isCloseTo(least, within(1e-9));
        // What was given up is nowhere to be had.
        if (!clear) {
            assertThat(shortestOfTwo(ratio, room, true, false)).isInfinite();
        }
        if (room > 0 && !hunting) {
            assertThat(shortestOfTwo(ratio, room, clear, true)).isInfinite();
        }
    }

    private static double shortestOfTwo(double ratio, double room, boolean clear, boolean hunting) {
        int fewest = StageSplit.FEWEST;
        int most = StageSplit.MOST;
        double least = Double.POSITIVE_INFINITY;
        for (int a = fewest; a <= most; a++) {
            for (int b = fewest; b <= most; b++) {
                for (int c = fewest; c <= most; c++) {
                    double exact = ratio * a * c / b;
                    int low = (int) Math.ceil(exact * (1 - room) - 1e-6);
                    int high = (int) Math.floor(exact * (1 + room) + 1e-6);
                    for (int d = Math.max(fewest, low); d <= Math.min(most, high); d++) {
                        double length = a / 2.0 + (a + b + c + d) / 2.0 + d / 2.0;
                        if (length < least && Math.abs((double) b * d / a / c / ratio - 1) <= room + 1e-9) {
                            List<TeethRatio> train = List.of(new TeethRatio(a, b), new TeethRatio(c, d));
                            boolean fits =
                                    (!clear || StageSplit.clearsAxles(train)) && (!hunting || StageSplit.hunts(train));
                            least = fits ? length : least;
                        }
                    }
                }
            }
        }
        return least;
    }

    @ParameterizedTest
    @CsvSource({"40,0", "60,0.01", "24.5,0"})
    void noThreeStagesAreShorter(double ratio, double room) {
        int fewest = 12;
        int most = 52;
        StageSplit split = new StageSplit(ratio, room, 3, fewest, most);
        List<TeethRatio> best = split.trains().get(0);
        boolean hunting = room > 0 && StageSplit.hunts(best);
        assertThat(StageSplit.clearsAxles(best)).isTrue();
        double least = Double.POSITIVE_INFINITY;
        int[] t = new int[6];
        for (t[0] = fewest; t[0] <= 24; t[0]++) {
            for (t[1] = fewest; t[1] <= most; t[1]++) {
                for (t[2] = fewest; t[2] <= 24; t[2]++) {
                    for (t[3] = fewest; t[3] <= most; t[3]++) {
                        for (t[4] = fewest; t[4] <= 24; t[4]++) {
                            double exact = ratio * t[0] * t[2] * t[4] / t[1] / t[3];
                            int low = (int) Math.ceil(exact * (1 - room) - 1e-6);
                            int high = (int) Math.floor(exact * (1 + room) + 1e-6);
                            for (t[5] = Math.max(fewest, low); t[5] <= Math.min(most, high); t[5]++) {
                                least = Math.min(least, length(t, least, ratio, room, hunting));
                            }
                        }
                    }
                }
            }
        }
        assertThat(StageSplit.length(best)).isCloseTo(least, within(1e-9));
    }

    private static double length(int[] t, double least, double ratio, double room, boolean hunting) {
        double length = t[0] / 2.0 + (t[0] + t[1] + t[2] + t[3] + t[4] + t[5]) / 2.0 + t[5] / 2.0;
        double made = (double) t[1] * t[3] * t[5] / t[0] / t[2] / t[4];
        if (length >= least || Math.abs(made / ratio - 1) > room + 1e-9) {
            return Double.POSITIVE_INFINITY;
        }
        List<TeethRatio> train =
                List.of(new TeethRatio(t[0], t[1]), new TeethRatio(t[2], t[3]), new TeethRatio(t[4], t[5]));
        boolean fits = StageSplit.clearsAxles(train) && (!hunting || StageSplit.hunts(train));
        return fits ? length : Double.POSITIVE_INFINITY;
    }

    @Test
    void roomInTheRatioIsUsedForHuntingTeeth() {
        List<TeethRatio> exact = new StageSplit(12, 0, 2).trains().get(0);
        assertThat(total(exact)).isCloseTo(12, within(1e-9));
        List<List<TeethRatio>> roomy = new StageSplit(12, 0.02, 2).trains();
        assertThat(StageSplit.hunts(roomy.get(0))).as(roomy.toString()).isTrue();
        for (List<TeethRatio> train : roomy) {
            assertThat(total(train)).isBetween(12 * 0.98 - 1e-9, 12 * 1.02 + 1e-9);
        }
    }

    @Test
    void ratiosThatNoTeethMakeAreNearlyMade() {
        for (double ratio : new double[] {Math.PI * 3, 10 * Math.E, 1 / (7 * Math.PI), 100 * Math.sqrt(2)}) {
            int count = ratio > 30 ? 3 : 2;
            List<TeethRatio> train = new StageSplit(ratio, 0, count).trains().get(0);
            assertThat(total(train) / ratio).isCloseTo(1, within(1e-3));
        }
    }

    @Test
    void alternativesDiffer() {
        List<List<TeethRatio>> trains = new StageSplit(60, 0, 3).trains();
        assertThat(trains).hasSizeGreaterThan(2).doesNotHaveDuplicates();
        for (List<TeethRatio> train : trains) {
            assertThat(total(train)).isCloseTo(60, within(1e-6));
        }
    }

    private static double total(List<TeethRatio> train) {
        double total = 1;
        for (TeethRatio one : train) {
            total *= one.ratio();
        }
        return total;
    }
}
