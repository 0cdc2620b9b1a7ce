// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.geom.Contour;
import ringleaf.geom.Mirror;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Assembly;

/**
 * What is painted last at a place is the leaf that is nearest to its tip there (the order rule: tips over roots), at
 * every state, whichever way the leaves run.
 */
class LeafOrderTest {
    private static final int STATES = 9;

    @ParameterizedTest
    @ValueSource(ints = {5, 12, 15, 40})
    void theLeafNearestToItsTipIsOnTop(int count) {
        long seed = 4711;
        Random random = new Random(seed);
        Assembly assembly = new MadeUpShutter(count, STATES).build();
        List<Integer> leaves = assembly.leaves().orElseThrow().members();
        Contour drawn = assembly.members()
                .get(leaves.get(0))
                .part()
                .layers()
                .get(0)
                .regions()
                .get(0)
                .outer();
        int looked = 0;
        for (int state = 0; state < STATES; state += 4) {
            for (int hand = 0; hand < 2; hand++) {
                Contour[] placed = new Contour[count];
                double[][][] polygons = new double[count][][];
                for (int i = 0; i < count; i++) {
                    placed[i] =
                            drawn.placed(assembly.members().get(leaves.get(i)).placed(assembly.motion(), state));
                    placed[i] = hand == 0 ? placed[i] : placed[i].mirrored(Mirror.FLIP_Y);
                    polygons[i] = polygon(placed[i]);
                }
                LeafOrder order = LeafOrder.of(placed[0], placed[1], count, 500);
                for (int k = 0; k < 300; k++) {
                    Point p = Point.polar(50 * Math.sqrt(random.nextDouble()), random.nextDouble() * 7);
                    int top = painted(polygons, order, p);
                    if (top < 0) {
                        continue;
                    }
                    Point plain = hand == 0 ? p : Mirror.FLIP_Y.apply(p);
                    int expected = nearestToTip(assembly, leaves, polygons, p, plain, state);
                    assertThat(top)
                            .as("seed " + seed + ", state " + state + ", " + p)
                            .isEqualTo(expected);
                    looked++;
                }
            }
        }
        assertThat(looked).isGreaterThan(300);
    }

    private static int painted(double[][][] polygons, LeafOrder order, Point p) {
        int top = -1;
        for (int i = 0; i < polygons.length; i++) {
            top = holds(polygons[i], p) ? i : top;
        }
        for (int i = 0; i < order.wedges().size(); i++) {
            Region wedge = order.wedges().get(i);
            top = holds(polygons[i], p) && holds(polygon(wedge.outer()), p) ? i : top;
        }
        return top;
    }

    private static int nearestToTip(
            Assembly assembly, List<Integer> leaves, double[][][] polygons, Point p, Point plain, int state) {
        int best = -1;
        double furthest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < leaves.size(); i++) {
            Placement placement = assembly.members().get(leaves.get(i)).placed(assembly.motion(), state);
            // Along the band, from a little before the root.
            double along = ringleaf.geom.Angles.positive(
                    placement.inverse().apply(plain).angle() + 0.5);
            if (holds(polygons[i], p) && along > furthest) {
                furthest = along;
                best = i;
            }
        }
        return best;
    }

    private static double[][] polygon(Contour contour) {
        int each = 60;
        double[][] points = new double[contour.segments().size() * each][];
        int n = 0;
        for (Segment segment : contour.segments()) {
            for (int i = 0; i < each; i++) {
                Point at = segment.pointAt((double) i / each);
                points[n++] = new double[] {at.x(), at.y()};
            }
        }
        return points;
    }

    private static boolean holds(double[][] polygon, Point p) {
        boolean in = false;
        for (int i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
            double[] a = polygon[i];
            double[] b = polygon[j];
            if (a[1] > p.y() != b[1] > p.y() && p.x() < (b[0] - a[0]) * (p.y() - a[1]) / (b[1] - a[1]) + a[0]) {
                in = !in;
            }
        }
        return in;
    }
}
