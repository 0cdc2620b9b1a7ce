// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.part.Requirement;
import ringleaf.report.FindingWords;

/** Webs between holes, to the edge and at necks; tips and corners are none. */
class WebTest {
    private static Finding web(double least, Region region) {
        Member plate = Mechanisms.member("plate", 0, region, 0, 2);
        return Mechanisms.judge(Mechanisms.assembly(
                        Mechanisms.motion(3, List.of(s -> Placement.IDENTITY)),
                        List.of(plate),
                        new Requirement.LeastWeb("minimum-web", "plate", least)))
                .findings()
                .get(0);
    }

    private static Contour circle(double x, double y, double r) {
        return Contour.circle(new Point(x, y), r);
    }

    @Test
    void theThinnestWebIsMeasuredExactly() {
        Region plate =
                Region.disc(Point.ORIGIN, 20).withHoles(List.of(circle(0, 0, 5), circle(8, 0, 2), circle(17, 0, 2)));
        Finding f = web(0.9, plate);
        assertThat(f.failed()).isFalse();
        assertThat(f.measured()).isCloseTo(1, within(1e-12));
        Finding thin = web(1.2, plate);
        assertThat(thin.failed()).isTrue();
        assertThat(FindingWords.where(thin)).contains("plate").contains("hole");
    }

    @Test
    void aHoleThroughTheEdgeOrAnotherHasNoWeb() {
        assertThat(web(0.5, Region.disc(Point.ORIGIN, 20).withHoles(List.of(circle(19, 0, 2))))
                        .measured())
                .isCloseTo(0, within(1e-9));
        assertThat(web(0.5, Region.disc(Point.ORIGIN, 20).withHoles(List.of(circle(30, 0, 2))))
                        .failed())
                .isTrue();
        assertThat(web(0.5, Region.disc(Point.ORIGIN, 20).withHoles(List.of(circle(3, 0, 4), circle(4, 0, 1))))
                        .failed())
                .isTrue();
    }

    /** Two discs of radius 5, ten apart from rim to rim, on a bar of the given width. */
    private static Region dumbbell(double width) {
        double h = width / 2;
        double reach = Math.sqrt(25 - h * h);
        Point left = new Point(-10, 0);
        Point right = new Point(10, 0);
        Point a = new Point(-10 + reach, -h);
        Point b = new Point(10 - reach, -h);
        Point c = new Point(10 - reach, h);
        Point d = new Point(-10 + reach, h);
        return Region.of(Contour.of(
                new Line(a, b), Arc.around(right, b, c, true), new Line(c, d), Arc.around(left, d, a, true)));
    }

    @Test
    void aNeckIsFoundAndMeasured() {
        Finding f = web(0.8, dumbbell(0.6));
        assertThat(f.failed()).isTrue();
        assertThat(f.measured()).isCloseTo(0.6, within(1e-9));
        assertThat(FindingWords.where(f)).contains("neck");
        assertThat(web(0.8, dumbbell(0.85)).failed()).isFalse();
        assertThat(web(0.8, dumbbell(0.8)).failed()).isFalse();
    }

    @Test
    void aNeckOfAPeninsulaInAHoleIsFound() {
        // A keyhole-like hole around a tongue that hangs on a thin neck.
        List<Segment> ring = new ArrayList<>();
        Point out0 = Point.polar(10, Math.toRadians(2));
        Point out1 = Point.polar(10, Math.toRadians(358));
        Point in0 = Point.polar(6, Math.toRadians(2));
        Point in1 = Point.polar(6, Math.toRadians(358));
        ring.add(Arc.around(Point.ORIGIN, out0, out1, true));
        ring.add(new Line(out1, in1));
        ring.add(Arc.around(Point.ORIGIN, in1, in0, false));
        ring.add(new Line(in0, out0));
        Region plate = Region.of(Mechanisms.rectangle(-15, -15, 15, 15), new Contour(ring));
        double neck = 2 * 6 * Math.sin(Math.toRadians(2));
        Finding f = web(0.8, plate);
        assertThat(f.failed()).isTrue();
        assertThat(f.measured()).isCloseTo(neck, within(1e-3));
        assertThat(FindingWords.where(f)).contains("neck");
        assertThat(web(0.4, plate).failed()).isFalse();
    }

    @Test
    void teethAndCornersAreNoNecks() {
        // A star wheel: pointed teeth on a disc, thinner than the web at their tips.
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            points.add(Point.polar(10, 2 * Math.PI * i / 24));
            points.add(Point.polar(12, 2 * Math.PI * (i + 0.35) / 24));
            points.add(Point.polar(12, 2 * Math.PI * (i + 0.45) / 24));
            points.add(Point.polar(10, 2 * Math.PI * (i + 0.8) / 24));
        }
        Finding f = web(0.8, Region.of(Contour.polygon(points), circle(0, 0, 3)));
        assertThat(f.failed()).isFalse();
        assertThat(f.measured()).isCloseTo(6.9, within(0.1));
    }

    @Test
    void aPartThatIsNotThereFails() {
        Member plate = Mechanisms.member("plate", 0, Region.disc(Point.ORIGIN, 5), 0, 2);
        Finding f = Mechanisms.judge(Mechanisms.assembly(
                        Mechanisms.motion(3, List.of(s -> Placement.IDENTITY)),
                        List.of(plate),
                        new Requirement.LeastWeb("minimum-web", "other", 0.5)))
                .findings()
                .get(0);
        assertThat(f.failed()).isTrue();
    }
}
