// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Axes: where values lie on them, and their ticks. */
class ScaleTest {
    @Test
    void equalRatiosLieEquallyFarApart() {
        Scale scale = Scale.ofRatios("ms", List.of(0.4, 3.0, 60.0));
        assertThat(scale.labels()).containsExactly("0.5", "1", "2", "5", "10", "20", "50");
        double step = scale.share(2) - scale.share(1);
        assertThat(scale.share(4) - scale.share(2)).isCloseTo(step, within(1e-12));
        assertThat(scale.share(40) - scale.share(20)).isCloseTo(step, within(1e-12));
        assertThat(scale.share(0.4)).isBetween(0.0, 0.1);
        assertThat(scale.share(60)).isBetween(0.9, 1.0);
    }

    @Test
    void oneValueLiesInTheMiddleAndTicksCanBeChosen() {
        Scale scale = Scale.ofRatios("blades", List.of(16.0)).withTicks(List.of(16.0));
        assertThat(scale.share(16)).isCloseTo(0.5, within(1e-12));
        assertThat(scale.labels()).containsExactly("16");
        assertThatThrownBy(() -> Scale.ofRatios("ms", List.of(1.0, 0.0))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void equalDifferencesLieEquallyFarApartOtherwise() {
        Scale scale = Scale.of("mm", List.of(1.0, 9.0));
        assertThat(scale.share(5)).isCloseTo(0.5, within(1e-12));
        assertThat(scale.ticks()).contains(2.0, 4.0, 6.0, 8.0);
    }
}
