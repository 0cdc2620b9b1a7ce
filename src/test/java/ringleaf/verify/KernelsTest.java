// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.curve.Distances;
import ringleaf.curve.Intersections;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;
import ringleaf.tooth.Forms;
import ringleaf.tooth.GearOutline;

/**
 * The judge's own lines and arcs against those that outlines are made with: written apart, so that a mistake in one
 * shows in the other.
 */
class KernelsTest {
    private static final long SEED = 20261201;
    private static final int CASES = 20_000;
    /** Both are exact to rounding on figures some 30 mm across. */
    private static final double ROUNDING = 1e-9;
    /** Pieces that all but touch are said to cross by one and not by the other. */
    private static final double GRAZING = 1e-6;

    @Test
    void distancesAndCrossingsOfRandomPairsAgree() {
        Random random = new Random(SEED);
        int crossing = 0;
        for (int i = 0; i < CASES; i++) {
            Segment a = RandomOutlines.segment(random);
            Segment b = RandomOutlines.segment(random);
            String what = "seed " + SEED + ", case " + i + ": " + a + " and " + b;
            Nearest nearest = new Nearest(Double.POSITIVE_INFINITY);
            nearest.between(Piece.of(a), Piece.of(b));
            assertThat(nearest.distance)
                    .as(what)
                    .isCloseTo(Distances.between(a, b).distance(), within(ROUNDING));
            double[] out = new double[4];
            int n = Crossing.points(Piece.of(a), Piece.of(b), out);
            List<Point> made = Intersections.of(a, b, ROUNDING);
            if (n == made.size()) {
                for (int k = 0; k < n; k++) {
                    Point own = new Point(out[2 * k], out[2 * k + 1]);
                    assertThat(made).as(what).anyMatch(p -> p.distance(own) < GRAZING);
                }
                crossing += n;
            } else {
                // They may differ only where an end lies on the other piece.
                double ends = Math.min(
                        Math.min(Distances.distance(b, a.start()), Distances.distance(b, a.end())),
                        Math.min(Distances.distance(a, b.start()), Distances.distance(a, b.end())));
                assertThat(ends).as(what).isLessThan(GRAZING);
            }
        }
        assertThat(crossing).isGreaterThan(CASES / 10);
    }

    @Test
    void distancesOfRandomOutlinesAgree() {
        Random random = new Random(SEED + 1);
        for (int i = 0; i < 400; i++) {
            Region a = RandomOutlines.star(random);
            Region b = RandomOutlines.star(random);
            Nearest nearest = new Nearest(Double.POSITIVE_INFINITY);
            nearest.between(Shape.of(a), Shape.of(b));
            assertThat(nearest.distance)
                    .as("seed %d, case %d", SEED + 1, i)
                    .isCloseTo(Distances.between(a.outer(), b.outer()).distance(), within(ROUNDING));
        }
    }

    /** Outlines of many teeth are looked at by runs of pieces: distance and place are those of each with each. */
    @Test
    void distancesOfManyTeethAreThoseOfTheirPieces() {
        Random random = new Random(SEED + 2);
        Shape large = Shape.of(
                Region.of(GearOutline.of(Forms.of(1, 90), Tolerance.CURVE).external()));
        Shape small = Shape.of(
                Region.of(GearOutline.of(Forms.of(1, 30), Tolerance.CURVE).external()));
        for (int i = 0; i < 40; i++) {
            double limit = i % 4 == 0 ? 0.5 : Double.POSITIVE_INFINITY;
            Shape other = small.placed(new Placement(
                    random.nextDouble() * 6, Point.polar(58.5 + 4 * random.nextDouble(), 6 * random.nextDouble())));
            Nearest plain = new Nearest(limit);
            for (Piece a : large.pieces) {
                for (Piece b : other.pieces) {
                    plain.between(a, b);
                }
            }
            Nearest byRuns = new Nearest(limit);
            byRuns.between(large, other);
            assertThat(new double[] {byRuns.distance, byRuns.ax, byRuns.ay, byRuns.bx, byRuns.by})
                    .as("seed %d, case %d", SEED + 2, i)
                    .isEqualTo(new double[] {plain.distance, plain.ax, plain.ay, plain.bx, plain.by});
        }
    }
}
