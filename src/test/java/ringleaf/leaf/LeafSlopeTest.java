// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LeafSlopeTest {
    @Test
    void slopeAndStrainAreThoseOfTheStairAlongTheTangent() {
        double climb = 14 * 0.15 / (2 * Math.PI);
        double steepest = 0;
        double sharpest = 0;
        double h = 1e-4;
        for (double x = -20; x < 20; x += 1e-3) {
            double low = climb * Math.atan((x - h) / 4);
            double mid = climb * Math.atan(x / 4);
            double high = climb * Math.atan((x + h) / 4);
            steepest = Math.max(steepest, (high - low) / (2 * h));
            sharpest = Math.max(sharpest, Math.abs(high - 2 * mid + low) / (h * h));
        }
        assertThat(Math.tan(LeafSlope.slope(14, 0.15, 4))).isCloseTo(steepest, within(1e-8));
        assertThat(LeafSlope.strain(14, 0.15, 4)).isCloseTo(0.15 / 2 * sharpest, within(1e-7));
    }

    /** 14 blades of 0.15 mm closed to 8 mm slope by 4.8 degrees: within the 6 degrees of common practice for sheet. */
    @Test
    void limitsAreInverse() {
        double limit = Math.toRadians(6);
        assertThat(Math.toDegrees(LeafSlope.slope(14, 0.15, 4))).isCloseTo(4.776, within(1e-3));
        double r = LeafSlope.leastRadiusForSlope(14, 0.15, limit);
        assertThat(LeafSlope.slope(14, 0.15, r)).isCloseTo(limit, within(1e-12));
    }
}
