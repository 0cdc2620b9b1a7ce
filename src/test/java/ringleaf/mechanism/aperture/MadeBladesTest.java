// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import ringleaf.leaf.Band;
import ringleaf.leaf.FoldedCover;

/** Blades that differ: against the fold where they do not, against polygons where they do. */
class MadeBladesTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private static MadeBlades alike(Band band, double b) {
        MadeBlades blades = new MadeBlades(band.blades(), band.pivotRadius());
        for (int i = 0; i < band.blades(); i++) {
            double turn = i * band.period();
            blades.place(
                    i,
                    band.pivotRadius() * Math.cos(turn),
                    band.pivotRadius() * Math.sin(turn),
                    b + turn,
                    band.pivotRadius(),
                    band.innerRadius(),
                    band.outerRadius(),
                    band.span());
        }
        return blades;
    }

    private static double[] loss(Band band, double each) {
        double[] loss = new double[band.blades()];
        Arrays.fill(loss, each);
        return loss;
    }

    /** Slits of 0.034 and 0.406 mm² in all, and one case that is tight with a lap of 0.45. */
    @ParameterizedTest
    @CsvSource({"53.95, 7.9, true", "53.9, 7.8, true", "54.2, 8.4, false"})
    void slitsTooSmallToSampleAreSeen(double pivotRadius, double width, boolean leaks) {
        Band band = new Band(pivotRadius, width, Math.toRadians(158), 18);
        MadeBlades blades = alike(band, band.bladeAngle(24));
        assertThat(blades.gapApart(50, loss(band, 0), 0) >= 0).isEqualTo(leaks);
        assertThat(blades.inscribedRadius()).isCloseTo(24, within(1e-9));
        assertThat(blades.reach(0)).isCloseTo(band.reach(band.bladeAngle(24)), within(1e-9));
        assertThat(blades.nearest(0)).isCloseTo(24, within(1e-9));
    }

    /** The fold gives the lap: shrunk by a little less there is no gap, by a little more there is one. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void equalBladesGapWhereTheFoldSaysSo(long seed) {
        Random random = new Random(seed);
        int blades = 3 + random.nextInt(28);
        double open = 20 + 20 * random.nextDouble();
        Band band = around(
                open,
                open * (0.15 + 0.3 * random.nextDouble()),
                Math.toRadians(100 + 70 * random.nextDouble()),
                blades);
        double b = band.bladeAngle(open * (0.1 + 0.6 * random.nextDouble()));
        double clear = open * 0.99;
        FoldedCover cover = new FoldedCover(band, b);
        double lap = cover.lap(clear, FoldedCover.LAP_CAP);
        MadeBlades made = alike(band, b);
        String what = "seed " + seed + ": " + band + " at " + b;
        if (cover.leakArea(clear) > 1e-3) {
            assertThat(made.gapApart(clear, loss(band, 0), 0)).as(what).isNotNegative();
        } else if (lap > 0.01 && lap < FoldedCover.LAP_CAP) {
            assertThat(made.gapApart(clear, loss(band, 0), 0)).as(what).isEqualTo(-1);
            assertThat(made.gapApart(clear, loss(band, lap / 2 - 1e-5), 0))
                    .as(what)
                    .isEqualTo(-1);
            assertThat(made.gapApart(clear, loss(band, lap / 2 + 1e-4), 0))
                    .as(what)
                    .isNotNegative();
        }
    }

    /** Every blade off by itself: where polygons leave an area open there is a gap, and none where they overlap well. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void polygonsAgreeOnBladesThatDiffer(long seed) {
        Random random = new Random(seed);
        int n = 5 + random.nextInt(14);
        Band band = new Band(
                32 + 6 + 6 * random.nextDouble() / 2,
                6 + 6 * random.nextDouble(),
                Math.toRadians(125 + 30 * random.nextDouble()),
                n);
        double b = band.bladeAngle(8 + 16 * random.nextDouble());
        double[][] off = new double[n][6];
        MadeBlades made = new MadeBlades(n, band.pivotRadius());
        List<double[]> placed = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < 6; k++) {
                off[i][k] = 0.4 * random.nextGaussian();
            }
            double turn = i * band.period();
            double x = band.pivotRadius() + off[i][0];
            double[] p = {
                x * Math.cos(turn) - off[i][1] * Math.sin(turn),
                x * Math.sin(turn) + off[i][1] * Math.cos(turn),
                b + turn + off[i][2] / 50,
                band.innerRadius() + off[i][3],
                band.outerRadius() + off[i][4],
                band.span() + off[i][5] / band.pivotRadius()
            };
            placed.add(p);
            made.place(i, p[0], p[1], p[2], band.pivotRadius(), p[3], p[4], p[5]);
        }
        double seen = leak(placed, band.pivotRadius(), 31.5, 0);
        double less = leak(placed, band.pivotRadius(), 31.5, 0.02);
        boolean gap = made.gapApart(31.5, new double[n], 0) >= 0;
        String what = "seed " + seed + ": polygons leave " + seen + ", with 0.02 more " + less;
        if (seen > 0.01) {
            assertThat(gap).as(what).isTrue();
        }
        if (less < 1e-4) {
            assertThat(gap).as(what).isFalse();
        }
    }

    @Test
    void polygonsSeeBothKinds() {
        int open = 0;
        for (long seed = 1; seed <= 10; seed++) {
            Random random = new Random(seed);
            int n = 5 + random.nextInt(14);
            Band band = new Band(
                    32 + 6 + 6 * random.nextDouble() / 2,
                    6 + 6 * random.nextDouble(),
                    Math.toRadians(125 + 30 * random.nextDouble()),
                    n);
            double b = band.bladeAngle(8 + 16 * random.nextDouble());
            open += alike(band, b).gapApart(31.5, new double[n], 0) >= 0 ? 1 : 0;
        }
        assertThat(open)
                .as("seeds of the test above whose blades, all alike, leak")
                .isBetween(1, 9);
    }

    /** A blade that stands back leaves slivers along the opening's edge: no leak when told so, one beyond that. */
    @Test
    void sliversAlongTheOpeningCountOnlyWhereTheyAreTold() {
        int strictly = 0;
        int hardly = 0;
        for (int span = 130; span <= 160; span += 10) {
            Band band = new Band(16.675, 9.05, Math.toRadians(span), 10);
            for (double b = 0.01; b < 0.25; b += 0.02) {
                MadeBlades made = alike(band, b);
                assertThat(made.gapApart(12, loss(band, 0), 0)).isEqualTo(-1);
                made.place(0, 16.675 + 0.3, 0, b, 16.675, band.innerRadius(), band.outerRadius(), band.span());
                strictly += made.gapApart(12, loss(band, 0), 0) >= 0 ? 1 : 0;
                hardly += made.gapApart(12, loss(band, 0), 0.001) >= 0 ? 1 : 0;
                assertThat(made.gapApart(12, loss(band, 0), 0.9))
                        .as(span + " at " + b)
                        .isEqualTo(-1);
            }
        }
        assertThat(strictly).isPositive();
        assertThat(hardly).isPositive();
    }

    /** Area within the clear circle that is neither in a blade, swollen all round, nor in the opening. */
    private static double leak(List<double[]> blades, double hole, double clear, double swell) {
        Geometry must = circle(0, 0, clear);
        Geometry opening = null;
        List<Geometry> covers = new ArrayList<>();
        for (double[] p : blades) {
            double cx = p[0] - hole * Math.cos(p[2]);
            double cy = p[1] - hole * Math.sin(p[2]);
            // Wider than the blades' own inner edge by more than chords bow, or narrower where blades are swollen.
            Geometry disc = circle(cx, cy, p[3] + (swell > 0 ? -swell / 2 : 2e-3));
            opening = opening == null ? disc : OverlayNGRobust.overlay(opening, disc, OverlayNG.INTERSECTION);
            int steps = 300;
            Coordinate[] line = new Coordinate[steps + 1];
            for (int i = 0; i <= steps; i++) {
                double angle = p[2] + p[5] * i / steps;
                line[i] = new Coordinate(
                        cx + (p[3] + p[4]) / 2 * Math.cos(angle), cy + (p[3] + p[4]) / 2 * Math.sin(angle));
            }
            covers.add(FACTORY.createLineString(line).buffer((p[4] - p[3]) / 2 + swell, 24));
        }
        Geometry cover = OverlayNGRobust.union(FACTORY.buildGeometry(covers));
        Geometry rest = OverlayNGRobust.overlay(must, opening, OverlayNG.DIFFERENCE);
        return OverlayNGRobust.overlay(rest, cover, OverlayNG.DIFFERENCE).getArea();
    }

    private static Geometry circle(double x, double y, double radius) {
        return FACTORY.createPoint(new Coordinate(x, y)).buffer(radius, 200);
    }

    /** The band whose inner edge lies at {@code inner} mm in the open pose. */
    private static Band around(double inner, double width, double span, int blades) {
        return new Band(inner + width / 2, width, span, blades);
    }
}
