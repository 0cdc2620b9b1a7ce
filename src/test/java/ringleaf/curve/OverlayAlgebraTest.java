// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

/** Areas of union, difference and intersection must add up exactly, also where shapes nearly coincide. */
class OverlayAlgebraTest {
    private static final double OFF = 1e-6;

    @Test
    void freeShapes() {
        for (long seed = 1; seed <= 60; seed++) {
            RandomShapes shapes = new RandomShapes(seed, false);
            check("free, seed " + seed, shapes.some(1, 4), shapes.some(1, 4));
        }
    }

    @Test
    void shapesOnAGrid() {
        for (long seed = 1; seed <= 120; seed++) {
            RandomShapes shapes = new RandomShapes(seed, true);
            check("grid, seed " + seed, shapes.some(1, 4), shapes.some(1, 4));
        }
    }

    @Test
    void shapesThatNearlyCoincide() {
        for (long seed = 1; seed <= 200; seed++) {
            RandomShapes shapes = new RandomShapes(seed, true);
            Random random = new Random(seed);
            double nudge = Math.pow(10, -5 - random.nextInt(11));
            Placement all = new Placement(6 * random.nextDouble(), new Point(80 * random.nextDouble(), -3));
            List<Region> a = nudged(shapes.some(1, 4), random, nudge, all);
            List<Region> b = nudged(shapes.some(1, 4), random, nudge, all);
            check("nudged by " + nudge + ", seed " + seed, a, b);
        }
    }

    private static List<Region> nudged(List<Region> regions, Random random, double nudge, Placement all) {
        List<Region> moved = new ArrayList<>();
        for (Region region : regions) {
            Point shift = new Point(nudge * random.nextGaussian(), nudge * random.nextGaussian());
            moved.add(region.placed(new Placement(nudge * random.nextGaussian(), shift).then(all)));
        }
        return moved;
    }

    private static void check(String as, List<Region> a, List<Region> b) {
        List<Region> all = new ArrayList<>(a);
        all.addAll(b);
        double both = OverlayJudge.area(Overlay.intersection(a, b));
        double onlyA = OverlayJudge.area(Overlay.difference(a, b));
        double onlyB = OverlayJudge.area(Overlay.difference(b, a));
        assertThat(OverlayJudge.area(Overlay.union(all))).as(as).isCloseTo(both + onlyA + onlyB, within(OFF));
        assertThat(OverlayJudge.area(Overlay.union(a))).as(as).isCloseTo(both + onlyA, within(OFF));
        assertThat(OverlayJudge.area(Overlay.union(b))).as(as).isCloseTo(both + onlyB, within(OFF));
    }
}
