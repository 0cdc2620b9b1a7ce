// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import ringleaf.geom.Point;
import ringleaf.geom.Tolerance;

/** A sector cut as long as computed lets the pinion through to both ends; one space less does not. */
class SectorReachTest {
    private static final BasicRack RACK = BasicRack.FORM_A;
    private static final double DIRECTION = 2.0;

    static List<GearPair> pairs() {
        return List.of(
                GearPair.of(Forms.of(0.8, 53), Forms.of(0.8, 112)).withNormalBacklash(0.1, 0.5),
                GearPair.of(Forms.of(0.8, 20), Forms.of(0.8, 112)).withNormalBacklash(0.1, 0.5),
                GearPair.of(ToothForm.of(1, 12, 0.4, 0, RACK), ToothForm.of(1, 60, -0.4, 0, RACK))
                        .withNormalBacklash(0.05, 0.5)
                        .withTipClearance(0.25));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void rimIsCutJustFarEnough(GearPair pair) {
        for (double wider : new double[] {0, 0.15}) {
            double rim = pair.gear().tipRadius() + wider;
            SectorReach reach = SectorReach.of(pair, rim);
            int spaces = 14;
            double travel = (spaces + 1) * pair.gear().pitchAngle() - 2 * reach.halfAngle();
            Polygon sector = Flattened.polygon(
                    GearOutline.of(pair.gear(), Tolerance.CURVE).sectorRim(rim, spaces, DIRECTION), 1e-5);
            assertThat(travel).isPositive();
            assertThat(reach.spaces(travel, 0)).isEqualTo(spaces);
            assertThat(reach.spaces(travel + 1e-6, 0)).isEqualTo(spaces + 1);
            assertThat(reach.spaces(travel, 2)).isEqualTo(spaces + 4);
            for (int i = 0; i <= 12; i++) {
                assertThat(overlap(pair, sector, spaces, travel * (i / 12.0 - 0.5)))
                        .isLessThan(1e-6);
            }
            // Half a degree of the pinion farther, and a tooth stands on the uncut rim.
            double more =
                    Math.toRadians(0.5) * pair.pinion().teeth() / pair.gear().teeth();
            assertThat(overlap(pair, sector, spaces, travel / 2 + more)).isGreaterThan(1e-6);
            assertThat(overlap(pair, sector, spaces, -travel / 2 - more)).isGreaterThan(1e-6);
        }
    }

    @Test
    void contactLiesOnCutTeeth() {
        for (GearPair pair : pairs()) {
            SectorReach reach = SectorReach.of(pair, pair.gear().tipRadius());
            ContactPath path = pair.contact();
            double farthest = Math.max(path.gearAngleBefore(), path.gearAngleAfter());
            assertThat(farthest).isLessThan(reach.halfAngle());
        }
        GearPair pair = pairs().get(0);
        assertThatThrownBy(() -> SectorReach.of(pair, 40)).hasMessageContaining("tip circle");
    }

    private static double overlap(GearPair pair, Polygon sector, int spaces, double turn) {
        Polygon pinion = Flattened.polygon(GearOutlineTest.gear(pair.pinion()), 1e-5);
        // Middle of a space: on the sector's middle for an odd number of spaces, half a pitch beside it for an even.
        double space = DIRECTION + turn + (spaces % 2 == 0 ? pair.gear().pitchAngle() / 2 : 0);
        AffineTransformation place = AffineTransformation.rotationInstance(pair.pinionPhase(space, DIRECTION));
        Point centre = Point.polar(pair.centreDistance(), DIRECTION);
        place.translate(centre.x(), centre.y());
        return AffineTransformation.rotationInstance(turn)
                .transform(sector)
                .intersection(place.transform(pinion))
                .getArea();
    }
}
