// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Segment;

class RackOutlineTest {
    private static final BasicRack RACK = BasicRack.FORM_A;

    @Test
    void barHasTheRacksMeasures() {
        RackOutline outline = new RackOutline(3, RACK, 0);
        Contour bar = outline.bar(5, 10);
        assertThat(bar.isCounterClockwise()).isTrue();
        assertThat(bar.box().height()).isCloseTo(13, within(1e-12));
        assertThat(bar.box().width()).isCloseTo(5 * 3 * Math.PI, within(1e-12));
        Polygon polygon = Flattened.polygon(bar, 1e-6);
        assertThat(polygon.isValid()).isTrue();
        // SDP/SI, Elements of Metric Gear Technology, Table 10-2: rack of module 3, thickness 4.7124 on the datum line.
        Geometry datum = Flattened.FACTORY.createLineString(new org.locationtech.jts.geom.Coordinate[] {
            new org.locationtech.jts.geom.Coordinate(-4, 0), new org.locationtech.jts.geom.Coordinate(4, 0)
        });
        assertThat(datum.intersection(polygon).getLength()).isCloseTo(4.7124, within(5e-5));
        for (Segment piece : bar.segments()) {
            if (piece instanceof Arc arc) {
                assertThat(arc.radius()).isCloseTo(3 * 0.38, within(1e-12));
            }
        }
        // One tooth more adds one pitch of bar.
        double tooth = outline.bar(6, 10).area() - bar.area();
        double deeper = outline.bar(6, 11).area() - outline.bar(6, 10).area();
        assertThat(deeper).isCloseTo(6 * 3 * Math.PI, within(1e-9));
        assertThat(outline.bar(2, 10).area()).isCloseTo(2 * tooth, within(1e-9));
    }

    @Test
    void pinionRollsOnTheBar() {
        ToothForm pinion = ToothForm.of(1, 20, 0.1, 0.03, RACK);
        Polygon gear = Flattened.polygon(GearOutlineTest.gear(pinion), 1e-5);
        Polygon bar = Flattened.polygon(new RackOutline(1, RACK, 0.02).bar(11, 4), 1e-5);
        IndexedFacetDistance toBar = new IndexedFacetDistance(bar.getBoundary());
        double height = RackPair.of(pinion).mountingDistance();
        double middle = 5 * Math.PI;
        for (int i = 0; i < 8; i++) {
            double turn = pinion.pitchAngle() * i / 8;
            // A space points down over the middle tooth; turning by +turn rolls the pinion to -x.
            AffineTransformation place =
                    AffineTransformation.rotationInstance(-Math.PI / 2 + pinion.pitchAngle() / 2 + turn);
            place.translate(middle - pinion.referenceRadius() * turn, height);
            Geometry placed = place.transform(gear);
            assertThat(placed.intersection(bar).getArea()).isZero();
            double gap = toBar.distance(placed.getBoundary());
            assertThat(gap).isCloseTo((0.03 + 0.02) / 2 * Math.cos(RACK.pressureAngle()), within(0.0006));
        }
    }

    @Test
    void fullRoundRootsHaveNoFlat() {
        double angle = RACK.pressureAngle();
        BasicRack round =
                new BasicRack(angle, 1, 1.25, BasicRack.largestRounding(RACK.pressureAngle(), RACK.dedendum()));
        Contour bar = new RackOutline(2, round, 0).bar(3, 5);
        assertThat(Flattened.polygon(bar, 1e-5).isValid()).isTrue();
        for (Segment piece : bar.segments()) {
            assertThat(piece.length()).isGreaterThan(0.1);
        }
        assertThatThrownBy(() -> new RackOutline(1, round, -0.1)).hasMessageContaining("room");
        assertThatThrownBy(() -> new RackOutline(1, RACK, 0).bar(0, 5)).hasMessageContaining("tooth");
    }
}
