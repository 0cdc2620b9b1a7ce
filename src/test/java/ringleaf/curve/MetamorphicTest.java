// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Mirror;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/** The same shapes told in another way give the same result: start point, direction, place, turn, mirror, scale. */
class MetamorphicTest {
    private record Measure(double area, double length, double width, double height, int regions, int pieces) {
        static Measure of(List<Region> regions) {
            Box box = regions.isEmpty() ? new Box(0, 0, 0, 0) : regions.get(0).box();
            int pieces = 0;
            for (Region region : regions) {
                box = box.union(region.box());
                for (Contour contour : region.contours()) {
                    pieces += contour.segments().size();
                }
            }
            return new Measure(
                    OverlayJudge.area(regions),
                    OverlayJudge.length(regions),
                    box.width(),
                    box.height(),
                    regions.size(),
                    pieces);
        }
    }

    private static List<Measure> results(List<Region> a, List<Region> b, double scale) {
        List<Region> both = new ArrayList<>(a);
        both.addAll(b);
        List<Measure> results = new ArrayList<>();
        List<Region> union = Overlay.union(both);
        results.add(Measure.of(union));
        results.add(Measure.of(Overlay.difference(a, b)));
        results.add(Measure.of(Overlay.intersection(a, b)));
        for (Region region : union) {
            results.add(Measure.of(Offset.of(region, 0.37 * scale)));
            results.add(Measure.of(Offset.of(region, -0.21 * scale)));
        }
        return results;
    }

    private static void compare(String as, List<Measure> made, List<Measure> expected, double scale, boolean box) {
        double off = 1e-7;
        assertThat(made).as(as).hasSameSizeAs(expected);
        for (int i = 0; i < made.size(); i++) {
            Measure m = made.get(i);
            Measure e = expected.get(i);
            assertThat(m.regions).as(as + " result " + i).isEqualTo(e.regions);
            assertThat(m.pieces).as(as + " result " + i).isEqualTo(e.pieces);
            assertThat(m.area / scale / scale).as(as + " result " + i).isCloseTo(e.area, within(off));
            assertThat(m.length / scale).as(as + " result " + i).isCloseTo(e.length, within(off));
            if (box) {
                assertThat(m.width / scale).as(as + " result " + i).isCloseTo(e.width, within(off));
                assertThat(m.height / scale).as(as + " result " + i).isCloseTo(e.height, within(off));
            }
        }
    }

    private static List<Region> each(List<Region> regions, UnaryOperator<Region> change) {
        List<Region> changed = new ArrayList<>();
        for (Region region : regions) {
            changed.add(change.apply(region));
        }
        return changed;
    }

    private static Region contours(Region region, UnaryOperator<Contour> change) {
        List<Contour> holes = new ArrayList<>();
        for (Contour hole : region.holes()) {
            holes.add(change.apply(hole));
        }
        return new Region(change.apply(region.outer()), holes);
    }

    private static Contour startingAt(Contour contour, int vertex) {
        List<Segment> pieces = new ArrayList<>(contour.segments());
        Collections.rotate(pieces, -(vertex % pieces.size()));
        return new Contour(pieces);
    }

    private static Contour scaled(Contour contour, double by) {
        List<Segment> pieces = new ArrayList<>();
        for (Segment segment : contour.segments()) {
            Point start = segment.start().times(by);
            Point end = segment.end().times(by);
            if (segment instanceof Arc arc) {
                Point centre = arc.centre().times(by);
                pieces.add(new Arc(centre, arc.radius() * by, arc.startAngle(), arc.sweep(), start, end));
            } else {
                pieces.add(new Line(start, end));
            }
        }
        return new Contour(pieces);
    }

    @Test
    void everyTellingOfTheSameShapesGivesTheSameResult() {
        for (long seed = 1; seed <= 20; seed++) {
            RandomShapes shapes = new RandomShapes(seed, seed % 2 == 0);
            List<Region> a = shapes.some(1, 3);
            List<Region> b = shapes.some(1, 3);
            List<Measure> expected = results(a, b, 1);
            String as = "seed " + seed + " ";
            for (int vertex = 1; vertex < 4; vertex++) {
                int v = vertex;
                UnaryOperator<Region> change = r -> contours(r, c -> startingAt(c, v));
                compare(as + "start " + v, results(each(a, change), each(b, change), 1), expected, 1, true);
            }
            UnaryOperator<Region> back = r -> contours(r, Contour::reversed);
            compare(as + "reversed", results(each(a, back), each(b, back), 1), expected, 1, true);
            UnaryOperator<Region> shift = r -> r.placed(Placement.shift(17.3, -41.9));
            compare(as + "shifted", results(each(a, shift), each(b, shift), 1), expected, 1, true);
            UnaryOperator<Region> turn = r -> r.placed(Placement.turn(1.234));
            compare(as + "turned", results(each(a, turn), each(b, turn), 1), expected, 1, false);
            UnaryOperator<Region> mirror = r -> r.mirrored(Mirror.FLIP_Y);
            compare(as + "mirrored", results(each(a, mirror), each(b, mirror), 1), expected, 1, true);
            for (double scale : new double[] {1000, 0.001}) {
                UnaryOperator<Region> scaling = r -> contours(r, c -> scaled(c, scale));
                List<Measure> made = results(each(a, scaling), each(b, scaling), scale);
                compare(as + "scaled by " + scale, made, expected, scale, true);
            }
        }
    }
}
