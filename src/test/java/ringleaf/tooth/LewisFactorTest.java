// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The form factor from the outline against the handbook's table, and its own parabola. */
class LewisFactorTest {
    /** The table's teeth were drawn with another root radius; they agree within this share. */
    private static final double TABLE = 0.06;

    @Test
    void agreesWithTheHandbooksTable() {
        for (double[] row : ReferenceTable.rows("lewis-form-factor.csv")) {
            LewisFactor lewis = LewisFactor.of(Forms.of(1, (int) row[0]));
            assertThat(lewis.factor()).as(row[0] + " teeth").isCloseTo(row[1], within(TABLE * row[1]));
        }
    }

    @Test
    void theParabolaTouchesTheToothFromWithin() {
        ToothForm form = Forms.of(2, 18);
        LewisFactor lewis = LewisFactor.of(form);
        assertThat(lewis.factor())
                .isCloseTo(lewis.thickness() * lewis.thickness() / (6 * lewis.height() * 2), within(1e-12));
        // The weakest section lies in the root, under the involute and over the root circle.
        assertThat(lewis.radius()).isBetween(form.rootRadius(), form.formRadius() + 1e-9);
    }

    @Test
    void growsWithTeethAndShiftAndNotWithTheModule() {
        double plain = LewisFactor.of(Forms.of(1, 20)).factor();
        assertThat(LewisFactor.of(Forms.of(3, 20)).factor()).isCloseTo(plain, within(1e-9));
        assertThat(LewisFactor.of(Forms.of(1, 30)).factor()).isGreaterThan(plain);
        ToothForm shifted = ToothForm.of(1, 20, 0.3, 0, BasicRack.FORM_A);
        assertThat(LewisFactor.of(shifted).factor()).isGreaterThan(plain);
        assertThat(LewisFactor.of(Forms.of(1, 20).withThinning(0.2)).factor()).isLessThan(plain);
    }

    @Test
    void stressIsForceOverWidthModuleAndFactor() {
        LewisFactor lewis = LewisFactor.of(Forms.of(1, 20));
        assertThat(lewis.stress(100, 5, 1)).isCloseTo(100 / (5 * lewis.factor()), within(1e-9));
    }
}
