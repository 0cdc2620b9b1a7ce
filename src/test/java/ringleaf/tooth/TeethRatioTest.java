// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers of teeth for a ratio. */
class TeethRatioTest {
    @Test
    void exactRatiosAreAllMultiples() {
        List<TeethRatio> found = TeethRatio.near(5 / 3.0, 0, 12, 60);
        assertThat(found).isNotEmpty().allSatisfy(t -> {
            assertThat(3 * t.driven()).isEqualTo(5 * t.driver());
        });
        assertThat(found).contains(new TeethRatio(18, 30)).doesNotContain(new TeethRatio(17, 28));
    }

    @Test
    void roomInTheRatioLetsTeethWithoutACommonFactorIn() {
        List<TeethRatio> found = TeethRatio.near(5 / 3.0, 0.02, 12, 60);
        assertThat(found).contains(new TeethRatio(17, 28), new TeethRatio(18, 30));
        assertThat(new TeethRatio(17, 28).isHunting()).isTrue();
        assertThat(new TeethRatio(18, 30).isHunting()).isFalse();
        assertThat(found).allSatisfy(t -> assertThat(Math.abs(t.error(5 / 3.0))).isLessThanOrEqualTo(0.02 + 1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Math.PI, 0.3333, 1, 7.77})
    void whereNoneIsExactTheNearestIsTaken(double ratio) {
        List<TeethRatio> found = TeethRatio.near(ratio, 0, 12, 200);
        assertThat(found).isNotEmpty();
        double least = Double.POSITIVE_INFINITY;
        for (int a = 12; a <= 200; a++) {
            for (int b = 12; b <= 200; b++) {
                least = Math.min(least, Math.abs(new TeethRatio(a, b).error(ratio)));
            }
        }
        assertThat(Math.abs(found.get(0).error(ratio))).isLessThanOrEqualTo(least + 1e-9);
    }

    @Test
    void outOfReachIsNone() {
        assertThat(TeethRatio.near(1000, 0, 12, 200)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {14.5, 17.5, 20, 22.5, 25, 28, 30})
    void thereIsARackForEveryUsualPressureAngle(double degrees) {
        BasicRack rack = BasicRack.ofAngle(Math.toRadians(degrees));
        assertThat(rack.rounding())
                .isLessThanOrEqualTo(BasicRack.largestRounding(rack.pressureAngle(), rack.dedendum()));
        assertThat(rack.straightDepth()).isGreaterThanOrEqualTo(rack.addendum() - 1e-4);
        int teeth = (int) Math.ceil(rack.leastTeeth()) + 1;
        GearOutlineTest.gear(ToothForm.of(1, teeth, 0, 0, rack));
    }
}
