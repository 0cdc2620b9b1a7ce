// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Region;

class OverlayRandomTest {
    @Test
    void freeShapesAgreeWithTheJudge() {
        for (long seed = 1; seed <= 12; seed++) {
            RandomShapes shapes = new RandomShapes(seed, false);
            List<Region> a = shapes.some(1, 4);
            List<Region> b = shapes.some(1, 4);
            OverlayJudge.checkAll("free, seed " + seed, a, b);
        }
    }

    @Test
    void shapesOnAGridAgreeWithTheJudge() {
        for (long seed = 1; seed <= 24; seed++) {
            RandomShapes shapes = new RandomShapes(seed, true);
            List<Region> a = shapes.some(1, 4);
            List<Region> b = shapes.some(1, 4);
            OverlayJudge.checkAll("grid, seed " + seed, a, b);
        }
    }
}
