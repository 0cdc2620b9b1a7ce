// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/** Least squares and Student's quantiles against published values and by other means. */
class LinearFitTest {
    private static List<double[]> table(String name) throws IOException {
        List<double[]> rows = new ArrayList<>();
        List<String> lines = Files.readAllLines(Path.of("src/test/resources/reference/" + name));
        for (String line : lines.subList(2, lines.size())) {
            String[] cells = line.split(",");
            rows.add(new double[] {Double.parseDouble(cells[0]), Double.parseDouble(cells[1])});
        }
        return rows;
    }

    @Test
    void studentsQuantilesAreThoseOfTheHandbook() throws IOException {
        for (double[] row : table("student-t.csv")) {
            assertThat(Estimate.student(row[0])).as("dof " + row[0]).isCloseTo(row[1], within(5.1e-4));
        }
        assertThat(Estimate.student(Double.MAX_VALUE)).isCloseTo(1.959964, within(3e-6));
    }

    /** Certified: intercept -0.262323073774029 (0.232818234301152), slope 1.00211681802045 (0.000429796848199937). */
    @Test
    void aCertifiedDatasetComesOut() throws IOException {
        List<double[]> data = table("nist-norris.csv");
        double[][] rows = new double[data.size()][];
        double[] y = new double[data.size()];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = new double[] {1, data.get(i)[0]};
            y[i] = data.get(i)[1];
        }
        LinearFit fit = LinearFit.of(rows, y);
        assertThat(fit.parameter(0)).isCloseTo(-0.262323073774029, within(1e-11));
        assertThat(fit.parameter(1)).isCloseTo(1.00211681802045, within(1e-13));
        assertThat(Math.sqrt(fit.variance())).isCloseTo(0.884796396144373, within(1e-11));
        assertThat(Math.sqrt(fit.variance() * fit.spread(new double[] {1, 0})))
                .isCloseTo(0.232818234301152, within(1e-11));
        assertThat(Math.sqrt(fit.variance() * fit.spread(new double[] {0, 1})))
                .isCloseTo(0.000429796848199937, within(1e-14));
    }

    /**
     * The worked example of the Guide (JCGM 100:2008, H.3): corrections of a thermometer, y = a + b (t - 20); from
     * memory, and the data give the printed results.
     */
    @Test
    void theWorkedExampleOfTheGuideComesOut() {
        double[] t = {21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511};
        double[] b = {-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160};
        double[][] rows = new double[t.length][];
        for (int i = 0; i < t.length; i++) {
            rows[i] = new double[] {1, t[i] - 20};
        }
        LinearFit fit = LinearFit.of(rows, b);
        assertThat(fit.parameter(0)).isCloseTo(-0.1712, within(6e-5));
        assertThat(Math.sqrt(fit.variance() * fit.spread(new double[] {1, 0}))).isCloseTo(0.0029, within(6e-5));
        assertThat(fit.parameter(1)).isCloseTo(0.00218, within(6e-6));
        assertThat(Math.sqrt(fit.variance() * fit.spread(new double[] {0, 1}))).isCloseTo(0.00067, within(6e-6));
        assertThat(Math.sqrt(fit.variance())).isCloseTo(0.0035, within(6e-5));
        assertThat(fit.parameter(0) + 10 * fit.parameter(1)).isCloseTo(-0.1494, within(6e-5));
        assertThat(Math.sqrt(fit.variance() * fit.spread(new double[] {1, 10}))).isCloseTo(0.0041, within(6e-5));
    }

    @Test
    void randomFitsAgreeWithTheLibrarys() {
        for (long seed = 1; seed <= 50; seed++) {
            Random random = new Random(seed);
            int n = 8 + random.nextInt(20);
            double[][] rows = new double[n][3];
            double[] y = new double[n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < 3; j++) {
                    rows[i][j] = random.nextGaussian();
                }
                y[i] = random.nextGaussian();
            }
            LinearFit fit = LinearFit.of(rows, y);
            OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
            library.setNoIntercept(true);
            library.newSampleData(y, rows);
            double[] beta = library.estimateRegressionParameters();
            double[] errors = library.estimateRegressionParametersStandardErrors();
            for (int j = 0; j < 3; j++) {
                double[] w = new double[3];
                w[j] = 1;
                assertThat(fit.parameter(j)).as("seed " + seed).isCloseTo(beta[j], within(1e-9));
                assertThat(Math.sqrt(fit.variance() * fit.spread(w)))
                        .as("seed " + seed)
                        .isCloseTo(errors[j], within(1e-9));
                assertThat(fit.moved(w, y)).as("seed " + seed).isCloseTo(beta[j], within(1e-9));
            }
            studentizedIsTheDistanceToTheFitWithoutIt(rows, y, fit, seed);
        }
    }

    /** By its definition: the observation less what a fit without it predicts, over the deviation of that difference. */
    private static void studentizedIsTheDistanceToTheFitWithoutIt(
            double[][] rows, double[] y, LinearFit fit, long seed) {
        List<double[]> others = new ArrayList<>();
        double[] theirs = new double[y.length - 1];
        for (int i = 1; i < y.length; i++) {
            others.add(rows[i]);
            theirs[i - 1] = y[i];
        }
        LinearFit without = LinearFit.of(others.toArray(new double[0][]), theirs);
        double predicted = 0;
        for (int j = 0; j < 3; j++) {
            predicted += rows[0][j] * without.parameter(j);
        }
        double deviation = Math.sqrt(without.variance() * (1 + without.spread(rows[0])));
        assertThat(fit.studentized(0)).as("seed " + seed).isCloseTo((y[0] - predicted) / deviation, within(1e-8));
    }
}
