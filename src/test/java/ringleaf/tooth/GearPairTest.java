// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.tooth.ToothFormTest.EXACT;
import static ringleaf.tooth.ToothFormTest.form;

import org.junit.jupiter.api.Test;

class GearPairTest {
    @Test
    void profileShiftedPair() {
        // KHK Gear Technical Reference / SDP/SI Elements of Metric Gear Technology, profile-shifted spur gears, as
        // remembered; the further digits are computed.
        GearPair pair = GearPair.of(form(3, 12, 0.6), form(3, 24, 0.36));
        assertThat(Involute.inv(pair.workingAngle())).isCloseTo(0.0343161297, within(1e-10));
        assertThat(Math.toDegrees(pair.workingAngle())).isCloseTo(26.08856344, within(5e-9));
        assertThat(pair.centreDistance()).isCloseTo(56.49986972, within(5e-9));
        assertThat(2 * pair.pinionWorkingRadius()).isCloseTo(37.666580, within(5e-7));
        assertThat(2 * pair.gearWorkingRadius()).isCloseTo(75.333160, within(5e-7));
        GearPair cleared = pair.withTipClearance(0.75);
        assertThat(cleared.pinion().tipDiameter()).isCloseTo(44.839739, within(1e-6));
        assertThat(cleared.gear().tipDiameter()).isCloseTo(79.399739, within(1e-6));
        assertThat(cleared.pinion().rootRadius()).isCloseTo(32.1 / 2, within(1e-12));
        assertThat(cleared.gear().rootRadius()).isCloseTo(66.66 / 2, within(1e-12));
        assertThat(cleared.contact().ratio()).isCloseTo(1.20210157, within(5e-9));
        assertThat(cleared.pinion().tipThickness()).isCloseTo(1.26402007, within(5e-9));
        assertThat(cleared.gear().tipThickness()).isCloseTo(2.21324639, within(5e-9));
        assertThat(cleared.pinionTipClearance()).isCloseTo(0.75, within(1e-12));
        assertThat(cleared.gearTipClearance()).isCloseTo(0.75, within(1e-12));
        assertThat(pair.pinionTipClearance()).isLessThan(0.75);
        assertThat(pair.normalBacklash()).isCloseTo(0, within(1e-12));
    }

    @Test
    void shiftsFromAForcedDistance() {
        assertThat(GearPair.shiftSum(3, EXACT, 36, 56.4999)).isCloseTo(0.9600129776, within(1e-9));
        assertThat(GearPair.shiftSum(3, EXACT, 36, 56.5)).isCloseTo(0.9600558369, within(1e-9));
        GearPair pair = GearPair.of(form(3, 12, 0.6), form(3, 24, GearPair.shiftSum(3, EXACT, 36, 56.5) - 0.6));
        assertThat(pair.centreDistance()).isCloseTo(56.5, within(1e-11));
    }

    @Test
    void contactRatios() {
        for (double[] row : ReferenceTable.rows("contact-ratio.csv")) {
            GearPair pair = GearPair.of(form(1, (int) row[0], 0), form(1, (int) row[1], 0));
            assertThat(pair.contact().ratio()).isCloseTo(row[2], within(6e-11));
        }
        // The formula alone gives plausible ratios where the mate's tip passes the base tangent point: must be seen.
        for (double[] row : new double[][] {{12, 24, 1.5111222305}, {12, 120, 1.6458547208}, {15, 60, 1.6330731758}}) {
            ContactPath path = GearPair.of(form(1, (int) row[0], 0), form(1, (int) row[1], 0))
                    .contact();
            assertThat(path.ratio()).isCloseTo(row[2], within(6e-11));
            assertThat(path.isClean()).isFalse();
            assertThat(path.gearTipPastTangent()).isPositive();
            assertThat(path.usableRatio()).isLessThan(path.ratio());
        }
    }

    @Test
    void racks() {
        for (double[] row : new double[][] {{20, 1.7688237002}, {40, 1.8471713604}, {17, 1.7478047712}}) {
            RackPair pair = RackPair.of(form(1, (int) row[0], 0));
            assertThat(pair.ratio()).isCloseTo(row[1], within(6e-11));
            assertThat(pair.interference() <= 1e-9).isEqualTo(row[0] > 17);
        }
        // Limit for many teeth: 4/(pi sin 2a) (computed).
        assertThat(RackPair.of(form(1, 10_000_000, 0)).ratio()).isCloseTo(1.9808090970, within(1e-6));
        assertThat(RackPair.of(form(2, 20, 0.3)).mountingDistance()).isEqualTo(20.6);
    }

    @Test
    void tipLimits() {
        for (double[] row : ReferenceTable.rows("tip-limit.csv")) {
            GearPair pair = GearPair.of(form(1, (int) row[0], 0), form(1, (int) row[1], 0));
            ContactPath path = pair.contact();
            assertThat(path.gearTipPastTangent() > 0).isEqualTo(row[3] == 1);
            assertThat(2 * path.gearTipLimit()).isLessThanOrEqualTo(row[2] + 1e-8);
        }
    }

    @Test
    void backlashFromTheDistance() {
        for (double[] row : ReferenceTable.rows("backlash.csv")) {
            GearPair pair = GearPair.of(form(1, 20, 0), form(1, 40, 0)).withCentreDistance(30 + row[0]);
            assertThat(Math.toDegrees(pair.workingAngle())).isCloseTo(row[1], within(1e-8));
            assertThat(pair.backlash()).isCloseTo(row[2], within(6e-11));
            assertThat(pair.normalBacklash()).isCloseTo(row[3], within(6e-11));
            assertThat(pair.contact().ratio()).isCloseTo(row[4], within(6e-11));
            // The usual first-order rule 2 da tan a reads less.
            assertThat(2 * row[0] * Math.tan(EXACT.pressureAngle())).isLessThan(pair.backlash());
        }
    }

    @Test
    void backlashFromThinning() {
        // jt = 0.1 at the reference distance: jbn 0.0939692621, 0.5729577951 degrees on 20 teeth (computed).
        GearPair pair =
                GearPair.of(form(1, 20, 0).withThinning(0.06), form(1, 40, 0).withThinning(0.04));
        assertThat(pair.backlash()).isCloseTo(0.1, within(1e-13));
        assertThat(pair.normalBacklash()).isCloseTo(0.0939692621, within(6e-11));
        assertThat(Math.toDegrees(pair.pinionPlay())).isCloseTo(0.5729577951, within(6e-11));
        assertThat(pair.gearPlay()).isCloseTo(pair.pinionPlay() / 2, within(1e-13));
        for (double share = 0; share <= 1; share += 0.25) {
            GearPair spread =
                    GearPair.of(form(0.8, 17, 0.3), form(0.8, 60, -0.1)).withCentreDistance(31.3);
            GearPair split = spread.withNormalBacklash(0.12, share);
            assertThat(split.normalBacklash()).isCloseTo(0.12, within(1e-13));
            double total = split.pinion().thinning() + split.gear().thinning();
            assertThat(split.pinion().thinning()).isCloseTo(share * total, within(1e-14));
        }
    }

    @Test
    void anglesOfContactBelongToOneLine() {
        GearPair pair = GearPair.of(form(0.8, 20, 0.1), form(0.8, 112, -0.1)).withTipClearance(0.2);
        ContactPath path = pair.contact();
        assertThat(path.isClean()).isTrue();
        assertThat(path.usableRatio()).isEqualTo(path.ratio());
        double turned = path.gearAngleBefore() + path.gearAngleAfter();
        assertThat(turned / pair.gear().pitchAngle()).isCloseTo(path.ratio(), within(1e-12));
    }

    @Test
    void refusesWhatIsNoPair() {
        assertThatThrownBy(() -> GearPair.of(form(1, 20, 0), form(2, 20, 0))).hasMessageContaining("share module");
        assertThatThrownBy(() -> new GearPair(form(1, 20, 0), form(1, 20, 0), 18))
                .hasMessageContaining("base circles");
    }
}
