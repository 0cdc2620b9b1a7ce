// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * A grown region is the region and a stroke along its whole edge; a shrunk one is the region without the stroke. Built
 * from ready shapes and {@link Overlay}, that is a second way to the same figure, exact as well.
 */
class OffsetStrokesTest {
    private static final double[] DISTANCES = {0.25, 0.5, 1, 1.7};

    @Test
    void offsetsAgreeWithStrokes() {
        int compared = 0;
        for (long seed = 1; seed <= 90; seed++) {
            for (Region region : Overlay.union(new RandomShapes(seed, seed % 3 != 0).some(1, 3))) {
                Region placed = region.placed(new Placement(seed % 2 * 0.37 * seed, new Point(0.1 * seed, -3)));
                for (double distance : DISTANCES) {
                    List<Region> strokes = strokes(placed, distance);
                    if (strokes != null) {
                        String as = "seed " + seed + " by " + distance;
                        double less = OverlayJudge.area(Overlay.difference(List.of(placed), strokes));
                        strokes.add(placed);
                        double more = OverlayJudge.area(Overlay.union(strokes));
                        double grown = OverlayJudge.area(Offset.of(placed, distance));
                        double shrunk = OverlayJudge.area(Offset.of(placed, -distance));
                        assertThat(grown).as(as).isCloseTo(more, within(1e-7));
                        assertThat(shrunk).as(as).isCloseTo(less, within(1e-7));
                        compared++;
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(200);
    }

    /** The stroke in pieces; null where a piece bends tighter than the stroke or is a circle: no shape covers that. */
    private static List<Region> strokes(Region region, double distance) {
        List<Region> strokes = new ArrayList<>();
        for (Contour contour : region.contours()) {
            for (Segment segment : contour.segments()) {
                strokes.add(Region.disc(segment.start(), distance));
                if (segment instanceof Arc arc) {
                    if (arc.radius() < distance * (1 + 1e-9) || Math.abs(arc.sweep()) > 6.2) {
                        return null;
                    }
                    strokes.add(alongArc(arc.isCounterClockwise() ? arc : arc.reversed(), distance));
                } else {
                    strokes.add(Region.of(Shapes.obround(segment.start(), segment.end(), distance)));
                }
            }
        }
        return strokes;
    }

    private static Region alongArc(Arc arc, double distance) {
        double inner = arc.radius() - distance;
        double from = arc.startAngle();
        return Region.of(Shapes.annulusSector(arc.centre(), inner, arc.radius() + distance, from, from + arc.sweep()));
    }
}
