// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.part.Design;

/**
 * What each kind weighs: small grids, every combination designed by the ordinary way, its figures taken from the design
 * (how far teeth miss a ratio from the numbers of teeth), and held against one another by what undominated means.
 */
class WeighedTest {
    private static final double EQUAL = 1e-6;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{kind: gear, teeth: 24} | teeth=18,20,24 | width=3,5 | gear-tip-diameter width",
                "{kind: gear, teeth: 60, internal: true} | teeth=50,60 | module=0.8,1 | gear-tip-diameter width",
                "{kind: gear-pair, ratio: 5:3} | overall-length=30,40 | ratio-within=0%,3% | overall-length ratio-error depth",
                "{kind: gear-pair, module: 1, driver: {teeth: 12}} | driver.teeth=12,15 | driven.teeth=20,25 | overall-length depth",
                "{kind: gear-train, ratio: 12} | ratio-within=0%,3% | module=0.8,1 | overall-length depth ratio-error parts",
                "{kind: pulley, belt: T2.5, teeth: 20} | teeth=18,20 | belt-width=6,10 "
                        + "| outside-diameter flange-diameter face-width",
                "{kind: belt-drive, belt: T2.5, ratio: 5:2, centre-distance: 70} | driver.teeth=16,20 "
                        + "| centre-distance=50,70 | centre-distance depth ratio-error parts"
            })
    void theUndominatedAreThoseOfBruteForce(String spec, String one, String other, String weighed) {
        String text = "mechanisms:\n  it: " + spec + "\n";
        Exploration.Result result = Explored.run(text, null, 1, 2, "it." + one, "it." + other);
        assertThat(result.columns().weighed().stream()
                        .map(i -> result.columns().all().get(i).shown()))
                .containsExactly(weighed.split(" "));
        List<double[]> figures = new ArrayList<>();
        for (Row row : result.rows()) {
            Design design = Explored.design(text, set(result, row, 0), set(result, row, 1));
            assertThat(row.works()).isEqualTo(!Explored.fails(design.findings()));
            double[] own = figures(design, weighed.split(" "), spec);
            for (int k = 0; k < own.length; k++) {
                double told = row.figures()[result.columns().weighed().get(k)];
                assertThat(told).isCloseTo(own[k], within(1e-9));
            }
            figures.add(row.works() ? own : null);
        }
        int undominated = 0;
        for (int i = 0; i < figures.size(); i++) {
            boolean best = figures.get(i) != null;
            for (double[] than : figures) {
                best = best && (than == null || !dominates(than, figures.get(i)));
            }
            assertThat(result.rows().get(i).undominated())
                    .as(set(result, result.rows().get(i), 0))
                    .isEqualTo(best);
            undominated += best ? 1 : 0;
        }
        assertThat(undominated).isPositive();
    }

    private static String set(Exploration.Result result, Row row, int axis) {
        return result.grid().axes().get(axis).path().shown() + "="
                + result.grid().text(row.index(), axis);
    }

    private static double[] figures(Design design, String[] names, String spec) {
        double[] figures = new double[names.length];
        for (int k = 0; k < names.length; k++) {
            figures[k] = names[k].equals("parts")
                    ? design.parts().stream().mapToInt(p -> p.quantity()).sum()
                    : names[k].equals("ratio-error") ? error(design, spec) : Explored.dimension(design, names[k]);
        }
        return figures;
    }

    private static double error(Design design, String spec) {
        boolean train = spec.contains("gear-train");
        double ratio = 1;
        for (int stage = 1; stage <= (train ? 2 : 1); stage++) {
            String p = train ? "stage-" + stage + "-" : "";
            ratio *= Explored.dimension(design, p + "driven-teeth") / Explored.dimension(design, p + "driver-teeth");
        }
        double asked = train ? 12 : spec.contains("5:2") ? 2.5 : 5 / 3.0;
        return 100 * Math.abs(ratio - asked) / asked;
    }

    private static boolean dominates(double[] one, double[] than) {
        boolean better = false;
        for (int k = 0; k < one.length; k++) {
            if (one[k] > than[k] + EQUAL) {
                return false;
            }
            better |= one[k] < than[k] - EQUAL;
        }
        return better;
    }
}
