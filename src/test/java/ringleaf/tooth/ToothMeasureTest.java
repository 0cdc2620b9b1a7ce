// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.tooth.ToothFormTest.form;

import org.junit.jupiter.api.Test;

class ToothMeasureTest {
    @Test
    void spans() {
        for (double[] row : ReferenceTable.rows("span.csv")) {
            BasicRack rack = Forms.fullClearance(Math.toRadians(row[3]), 1, 1.2);
            ToothForm form = ToothForm.of(row[0], (int) row[1], row[2], 0, rack);
            assertThat(ToothMeasure.span(form, (int) row[4])).isCloseTo(row[5], within(6e-11));
        }
    }

    @Test
    void spanInvariants() {
        for (int teeth = 9; teeth < 120; teeth += 7) {
            ToothForm form = form(1.5, teeth, 0.1);
            int count = ToothMeasure.spanTeeth(form);
            double span = ToothMeasure.span(form, count);
            assertThat(ToothMeasure.span(form, count + 1) - span).isCloseTo(form.basePitch(), within(1e-12));
            ToothForm shifted = Forms.withShift(form, 1.1);
            // dW/dx = 2 m sin 20 = 0.684040287 m (computed)
            assertThat(ToothMeasure.span(shifted, count) - span).isCloseTo(0.684040287 * 1.5, within(1e-8));
            double thinner = ToothMeasure.span(form.withThinning(0.05), count) - span;
            assertThat(thinner).isCloseTo(-0.0469846310, within(1e-9));
            double touched = Math.hypot(form.baseRadius(), span / 2);
            assertThat(touched).isBetween(form.formRadius(), form.tipRadius());
        }
        for (double[] row : new double[][] {{12, 1.833}, {20, 2.722}, {60, 7.167}, {120, 13.833}}) {
            ToothForm form = form(1, (int) row[0], 0);
            assertThat(ToothMeasure.spanTeeth(form)).isEqualTo((int) Math.round(row[1]));
        }
    }

    @Test
    void overAndBetweenPins() {
        for (double[] row : ReferenceTable.rows("over-pins.csv")) {
            ToothForm form = form(row[0], (int) row[1], row[2]);
            assertThat(Math.toDegrees(PinMeasure.pinAngle(form, row[3]))).isCloseTo(row[4], within(6e-9));
            assertThat(PinMeasure.overPins(form, row[3])).isCloseTo(row[5], within(6e-11));
        }
        for (double[] row : ReferenceTable.rows("between-pins.csv")) {
            ToothForm form = form(1, (int) row[0], row[1]);
            assertThat(PinMeasure.betweenPins(form, row[2])).isCloseTo(row[3], within(6e-11));
        }
        // Handbook examples as remembered: z 20, ideal pin 1.7245 (full precision 1.724449), over 1.7: 22.2941;
        // internal z 40, between 1.7: 37.5951.
        assertThat(PinMeasure.bestPinDiameter(form(1, 20, 0))).isCloseTo(1.7245, within(6e-5));
        assertThat(PinMeasure.bestPinDiameter(form(1, 20, 0))).isCloseTo(1.724449, within(6e-7));
        assertThat(PinMeasure.overPins(form(1, 20, 0), 1.7)).isCloseTo(22.2941, within(5e-5));
        assertThat(PinMeasure.betweenPins(form(1, 40, 0), 1.7)).isCloseTo(37.5951, within(5e-5));
        assertThatThrownBy(() -> PinMeasure.overPins(form(1, 20, 0), 0.3)).hasMessageContaining("falls through");
        assertThatThrownBy(() -> PinMeasure.betweenPins(form(1, 40, 0), 5)).hasMessageContaining("does not enter");
    }
}
