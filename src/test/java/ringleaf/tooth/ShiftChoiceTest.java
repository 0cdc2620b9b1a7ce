// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ShiftChoiceTest {
    private static final BasicRack RACK = BasicRack.FORM_A;

    @Test
    void smallPinionsAreNotUndercut() {
        for (int teeth = 7; teeth < 40; teeth++) {
            double shift = ShiftChoice.forPinion(RACK, teeth);
            ToothForm form = ToothForm.of(1, teeth, shift, 0, RACK);
            assertThat(form.isUndercut()).isFalse();
            assertThat(shift > 0).isEqualTo(teeth < 18);
            ToothForm lowered = form.withLeastTipThickness(ShiftChoice.LEAST_TIP);
            assertThat(lowered.tipThickness()).isGreaterThan(ShiftChoice.LEAST_TIP - 1e-12);
            assertThat(lowered.tipRadius() < form.tipRadius()).isEqualTo(teeth < 10);
        }
    }

    @Test
    void slidingIsBalanced() {
        for (int[] teeth : new int[][] {{20, 112}, {24, 60}, {17, 40}, {30, 30}}) {
            ShiftChoice choice = ShiftChoice.of(RACK, teeth[0], teeth[1], 0, ShiftChoice.LEAST_TIP);
            assertThat(choice.pinion() + choice.gear()).isCloseTo(0, within(1e-12));
            GearPair pair = pair(teeth, choice);
            assertThat(ShiftChoice.pinionSliding(pair)).isCloseTo(ShiftChoice.gearSliding(pair), within(1e-8));
            assertThat(pair.contact().isClean()).isTrue();
            assertThat(pair.contact().ratio()).isGreaterThan(1.2);
        }
        assertThat(ShiftChoice.of(RACK, 30, 30, 0, 0.2).pinion()).isCloseTo(0, within(1e-9));
    }

    @Test
    void limitsComeFirst() {
        ShiftChoice choice = ShiftChoice.of(RACK, 8, 100, 0, ShiftChoice.LEAST_TIP);
        assertThat(choice.pinion()).isGreaterThanOrEqualTo(RACK.leastShift(8));
    }

    private static GearPair pair(int[] teeth, ShiftChoice choice) {
        return GearPair.of(
                        ToothForm.of(1, teeth[0], choice.pinion(), 0, RACK),
                        ToothForm.of(1, teeth[1], choice.gear(), 0, RACK))
                .withTipClearance(0.25);
    }
}
