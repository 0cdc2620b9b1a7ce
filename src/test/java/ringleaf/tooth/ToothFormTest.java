// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class ToothFormTest {
    private static final double TWENTY = Math.toRadians(20);
    /** A rack whose straight flank is exactly one module deep, as the computed tables assume. */
    static final BasicRack EXACT = Forms.fullClearance(TWENTY, 1, 1.25);

    private static final Offset<Double> TIGHT = within(1e-9);

    @Test
    void rackLimits() {
        assertThat(BasicRack.largestRounding(TWENTY, 1.25)).isCloseTo(0.471911, within(5e-7));
        assertThat(EXACT.straightDepth()).isCloseTo(1, within(1e-15));
        assertThatThrownBy(() -> new BasicRack(TWENTY, 1, 1.25, 0.48)).hasMessageContaining("full round");
        assertThatThrownBy(() -> new BasicRack(TWENTY, 1, 0.9, 0.1)).hasMessageContaining("dedendum");
        assertThatThrownBy(() -> new BasicRack(Double.NaN, 1, 1.25, 0.3)).hasMessageContaining("pressure angle");
    }

    @Test
    void undercutLimits() {
        // Computed from 2 ha/sin^2 a and ha - z sin^2 a/2.
        double[][] least = {{14.5, 31.902940317}, {20, 17.097264341}, {22.5, 13.656854249}, {25, 11.197819864}, {30, 8}
        };
        for (double[] row : least) {
            BasicRack rack = Forms.fullClearance(Math.toRadians(row[0]), 1, 1.1);
            assertThat(rack.leastTeeth()).isCloseTo(row[1], within(5e-9));
        }
        double[][] shift = {
            {8, 0.532088886},
            {10, 0.415111108},
            {12, 0.298133329},
            {14, 0.181155551},
            {15, 0.122666662},
            {16, 0.064177772},
            {17, 0.005688883}
        };
        for (double[] row : shift) {
            int teeth = (int) row[0];
            assertThat(EXACT.leastShift(teeth)).isCloseTo(row[1], TIGHT);
            assertThat(form(1, teeth, row[1] + 1e-6).isUndercut()).isFalse();
            assertThat(form(1, teeth, row[1] - 1e-6).isUndercut()).isTrue();
        }
        assertThat(form(1, 17, 0).straightEnd()).isNegative();
        assertThat(form(1, 18, 0).isUndercut()).isFalse();
    }

    @Test
    void formDiameters() {
        for (double[] row : ReferenceTable.rows("form-diameter.csv")) {
            ToothForm form = form(row[0], (int) row[1], row[2]);
            assertThat(form.formDiameter()).isCloseTo(row[3], within(1e-8));
        }
    }

    @Test
    void tipThicknesses() {
        for (double[] row : ReferenceTable.rows("tooth-tip-thickness.csv")) {
            ToothForm form = form(1, (int) row[0], row[1]);
            assertThat(form.tipDiameter()).isCloseTo(row[2], TIGHT);
            assertThat(form.thickness()).isCloseTo(row[3], within(5e-9));
            assertThat(Math.toDegrees(form.pressureAngleAt(form.tipRadius()))).isCloseTo(row[4], within(5e-7));
            assertThat(form.tipThickness()).isCloseTo(row[5], within(5e-9));
            assertThat(form.thicknessAt(form.baseDiameter())).isCloseTo(row[6], within(5e-9));
        }
    }

    @Test
    void peakingLimits() {
        for (double[] row : ReferenceTable.rows("peaking-limit.csv")) {
            int teeth = (int) row[0];
            assertThat(ToothForm.shiftForTip(EXACT, teeth, 0)).isCloseTo(row[1], within(5e-9));
            ToothForm pointed = form(1, teeth, row[1]);
            assertThat(pointed.peakRadius()).isCloseTo(pointed.tipRadius(), within(1e-7));
        }
    }

    @Test
    void circlesOfTheSectorExample() {
        // Module 0.5, 120 teeth: d 60, da 61, df 58.75, db 56.381557247 (computed).
        ToothForm form = form(0.5, 120, 0);
        assertThat(form.referenceDiameter()).isEqualTo(60);
        assertThat(form.tipDiameter()).isEqualTo(61);
        assertThat(2 * form.rootRadius()).isEqualTo(58.75);
        assertThat(form.baseDiameter()).isCloseTo(56.381557247, TIGHT);
        assertThat(Math.toDegrees(form.pitchAngle())).isCloseTo(3, TIGHT);
        assertThat(form.pitch()).isCloseTo(Math.PI / 2, TIGHT);
        assertThat(Forms.of(1, 20).basePitch()).isCloseTo(2.952131434094, within(1e-12));
    }

    @Test
    void thinningIsTakenFromTheThickness() {
        ToothForm plain = form(1, 24, 0.2);
        ToothForm thin = plain.withThinning(0.05);
        assertThat(plain.thickness() - thin.thickness()).isCloseTo(0.05, within(1e-14));
        assertThat(2 * thin.rootRadius()).isEqualTo(2 * plain.rootRadius());
        assertThat(thin.formDiameter()).isEqualTo(plain.formDiameter());
        // A thinning of 0.05 is worth the shift -0.0686869355 in thickness and span (computed).
        ToothForm shifted = Forms.withShift(plain, 0.2 - 0.0686869355);
        assertThat(shifted.thickness()).isCloseTo(thin.thickness(), TIGHT);
    }

    @Test
    void tipCanBeLoweredToAThickness() {
        ToothForm form = form(1, 8, EXACT.leastShift(8));
        assertThat(form.tipThickness()).isLessThan(0.2);
        ToothForm lowered = form.withLeastTipThickness(0.2);
        assertThat(lowered.tipThickness()).isCloseTo(0.2, within(1e-12));
        assertThat(lowered.tipRadius()).isLessThan(form.tipRadius());
        ToothForm thick = form(1, 30, 0);
        assertThat(thick.withLeastTipThickness(0.2)).isSameAs(thick);
    }

    @Test
    void refusesWhatIsNoGear() {
        assertThatThrownBy(() -> Forms.of(0, 20)).hasMessageContaining("module");
        assertThatThrownBy(() -> Forms.of(Double.NaN, 20)).hasMessageContaining("module");
        assertThatThrownBy(() -> Forms.of(1, 3)).hasMessageContaining("at least 4");
        assertThatThrownBy(() -> Forms.of(1, 20).withTipRadius(8)).hasMessageContaining("root radius");
        assertThatThrownBy(() -> Forms.of(1, 20).thicknessAt(18)).hasMessageContaining("base circle");
    }

    static ToothForm form(double module, int teeth, double shift) {
        return ToothForm.of(module, teeth, shift, 0, EXACT);
    }
}
