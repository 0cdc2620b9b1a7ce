// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.curve.ArcSlot;
import ringleaf.curve.Winding;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.tooth.Forms;
import ringleaf.tooth.GearOutline;
import ringleaf.tooth.ToothForm;

class TabsTest {
    private static final Region LEAF = Region.of(ArcSlot.of(Point.ORIGIN, 37, 5, 0, 2.4));
    private static final List<Region> WORKING = List.of(
            Region.disc(new Point(37, 0), 6),
            Region.disc(Point.polar(37, 2.4), 6),
            Region.ring(Point.ORIGIN, 31.9, 32.1));

    @Test
    void neverStandOnWorkingEdges() {
        TabPlan plan = new TabPlan(3, 0.6, 0.1, WORKING);
        List<Path> bridges = plan.bridges(LEAF);
        assertThat(bridges).hasSize(3);
        for (Path bridge : bridges) {
            assertThat(length(bridge)).isCloseTo(0.7, within(1e-9));
            for (Region region : WORKING) {
                assertThat(Winding.of(region, bridge.start())).isZero();
                assertThat(Winding.of(region, bridge.end())).isZero();
            }
        }
    }

    @Test
    void cutsAndBridgesMakeUpTheWholeContour() {
        for (int count = 1; count <= 4; count++) {
            TabPlan plan = new TabPlan(count, 0.6, 0.1, WORKING);
            double cut = 0;
            for (Path path : plan.cuts(LEAF)) {
                cut += length(path);
            }
            assertThat(cut).isCloseTo(LEAF.outer().length() - count * 0.7, within(1e-9));
            assertThat(plan.cuts(LEAF)).hasSize(count);
        }
    }

    @Test
    void noRoomMeansNoTab() {
        Region square = Region.of(Contour.rectangle(new Box(0, 0, 10, 10)));
        TabPlan plan = new TabPlan(2, 0.5, 0, List.of(Region.disc(new Point(5, 5), 20)));
        Part part = new Part(
                "p",
                Family.PLATE,
                1,
                new Part.Source("co2-laser", "acrylic-3"),
                List.of(Layer.of(square, 0, 3)),
                List.of(),
                "");
        assertThat(plan.room(part)).isZero();
        assertThat(plan.narrower(part)).isNaN();
        // two corners of 1.6 mm stand out of the working disc: room for one tab less wide at each
        TabPlan wide = new TabPlan(2, 5, 0, List.of(Region.disc(new Point(5, 5), 6.2)));
        assertThat(wide.room(part)).isLessThan(2);
        assertThat(wide.narrower(part)).isLessThan(5);
        assertThat(new TabPlan(2, wide.narrower(part), 0, wide.working()).room(part))
                .isEqualTo(2);
        assertThat(plan.cuts(square)).isEmpty();
    }

    @Test
    void onWheelsTheyStandOnTipsAndNeverOnFlanks() {
        ToothForm form = Forms.of(2, 24);
        Region wheel =
                Region.of(GearOutline.of(form, Tolerance.CURVE).external().placed(Placement.shift(40, 7)));
        Part gear = new Part(
                "gear",
                Family.GEAR,
                1,
                new Part.Source("co2-laser", "acrylic-3"),
                List.of(Layer.of(wheel, 0, 3)),
                List.of(),
                "");
        TabPlan plan = new TabPlan(3, 0.5, 0.1, Preparation.working(gear));
        List<Path> bridges = plan.bridges(wheel);
        assertThat(bridges).hasSize(3);
        for (Path bridge : bridges) {
            for (Point end : List.of(bridge.start(), bridge.end())) {
                assertThat(end.distance(new Point(40, 7))).isCloseTo(form.tipRadius(), within(0.021));
            }
        }
    }

    private static double length(Path path) {
        return path.segments().stream().mapToDouble(Segment::length).sum();
    }
}
