// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.geom.Point;

class FoldedCoverTest {
    private static final Band WORKED = new Band(37.4, 10.5, Math.toRadians(145), 14);

    /** Cases worked for this project: polygons gave 0.0338 and 0.4058, the third has lap to spare. */
    @ParameterizedTest
    @CsvSource({"53.95, 7.9, 0.0340, 0", "53.9, 7.8, 0.4061, 0", "54.2, 8.4, 0, 0.45"})
    void eighteenBlades(double pivotRadius, double width, double leak, double lap) {
        Band band = new Band(pivotRadius, width, Math.toRadians(158), 18);
        FoldedCover cover = new FoldedCover(band, band.bladeAngle(24));
        assertThat(cover.leakArea(50)).isCloseTo(leak, within(1e-4));
        assertThat(cover.lap(50, FoldedCover.LAP_CAP)).isCloseTo(lap, within(1e-3));
        assertThat(cover.isTight(50, 0)).isEqualTo(leak == 0);
    }

    /** The worked case of the reference table: lap 0.061 closed, seven deep open and eight at about 11 degrees. */
    @Test
    void workedCase() {
        double closed = WORKED.bladeAngle(4);
        assertThat(new FoldedCover(WORKED, closed).lap(32, FoldedCover.LAP_CAP)).isCloseTo(0.061, within(5e-4));
        assertThat(new FoldedCover(WORKED, 0).layers(0)).isEqualTo(7);
        assertThat(new FoldedCover(WORKED, Math.toRadians(11.0535)).layers(0)).isEqualTo(8);
        assertThat(new FoldedCover(WORKED, 0).lap(32, FoldedCover.LAP_CAP)).isEqualTo(FoldedCover.LAP_CAP);
        int over = new FoldedCover(WORKED, 0).bladesOver(new Point(WORKED.pivotRadius(), 0));
        assertThat(over).as("five other blades over each pivot").isEqualTo(6);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14})
    void polygonsAgree(long seed) {
        Random random = new Random(seed);
        int blades = seed % 4 == 0 ? 24 + random.nextInt(41) : 3 + random.nextInt(17);
        double tolerance = blades > 20 ? 1e-4 : 2e-5;
        double open = 20 + 20 * random.nextDouble();
        Band band = around(
                open, open * (0.12 + 0.3 * random.nextDouble()), Math.toRadians(75 + 95 * random.nextDouble()), blades);
        double b = band.bladeAngle(open * (1 - 1.05 * random.nextDouble()));
        double clear = open * (0.93 + 0.07 * random.nextDouble());
        String what = "seed " + seed + ": " + band + " at " + b + " clear " + clear;
        FoldedCover cover = new FoldedCover(band, b);
        FlatBlades flat = new FlatBlades(band, b, tolerance);
        double leak = cover.leakArea(clear);
        double edges = 4 * Math.PI * clear + 8 * blades * band.width();
        double polygons = flat.leak(clear, 0, 0);
        assertThat(polygons).as(what).isCloseTo(leak, within(1e-6 + edges * tolerance));
        double lap = cover.lap(clear, FoldedCover.LAP_CAP);
        if (lap > 0.1 && lap < FoldedCover.LAP_CAP) {
            // A gap that the blades close by 0.02 mm more width is wider than the chords' error; one less is none.
            assertThat(flat.leak(clear, lap / 2 - 2 * tolerance, 3 * tolerance))
                    .as(what)
                    .isLessThan(1e-7);
            assertThat(flat.leak(clear, lap / 2 + 0.01, 3 * tolerance)).as(what).isGreaterThan(1e-5);
        }
        assertThat(leak > 1e-9).as(what).isEqualTo(!cover.isTight(clear, 0));
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32})
    void depthAgreesWithCountsAtEveryCorner(long seed) {
        Random random = new Random(seed);
        int blades = 3 + random.nextInt(30);
        double open = 20 + 20 * random.nextDouble();
        Band band = around(
                open, open * (0.12 + 0.3 * random.nextDouble()), Math.toRadians(75 + 95 * random.nextDouble()), blades);
        double b = band.bladeAngle(open * (1 - random.nextDouble()));
        String what = "seed " + seed + ": " + band + " at " + b;
        FoldedCover cover = new FoldedCover(band, b);
        FlatBlades flat = new FlatBlades(band, b, 1e-3);
        assertThat(cover.layers(0)).as(what).isEqualTo(flat.depth());
        for (int i = 0; i < 200; i++) {
            Point point = Point.polar(band.outerRadius() * random.nextDouble(), 7 * random.nextDouble());
            assertThat(cover.bladesOver(point)).as(what).isEqualTo(flat.over(point.x(), point.y()));
        }
    }

    @Test
    void scaleChangesNothingButTheScale() {
        Random random = new Random(77);
        for (int i = 0; i < 60; i++) {
            double open = 30;
            Band band = new Band(
                    open + 4 + 6 * random.nextDouble() / 2,
                    4 + 6 * random.nextDouble(),
                    1.4 + 1.4 * random.nextDouble(),
                    5 + i % 30);
            double b = band.bladeAngle(open * (1 - random.nextDouble()));
            double f = i % 2 == 0 ? 64 : 1 / 32.0;
            Band scaled = new Band(band.pivotRadius() * f, band.width() * f, band.span(), band.blades());
            FoldedCover one = new FoldedCover(band, b);
            FoldedCover other = new FoldedCover(scaled, b);
            assertThat(other.layers(0)).isEqualTo(one.layers(0));
            assertThat(other.leakArea(29 * f) / (f * f)).isCloseTo(one.leakArea(29), within(1e-9));
            double lap = one.lap(29, FoldedCover.LAP_CAP);
            if (lap * Math.max(f, 1) < FoldedCover.LAP_CAP) {
                assertThat(other.lap(29 * f, FoldedCover.LAP_CAP) / f)
                        .as("case " + i)
                        .isCloseTo(lap, within(1e-6));
            }
        }
    }

    /** The band whose inner edge lies at {@code inner} mm in the open pose. */
    private static Band around(double inner, double width, double span, int blades) {
        return new Band(inner + width / 2, width, span, blades);
    }
}
