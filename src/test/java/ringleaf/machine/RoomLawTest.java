// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class RoomLawTest {
    /** A library's own quantiles; the approximation is stated to be within 4.5e-4. */
    @Test
    void quantilesAreThoseOfTheNormalDistribution() {
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        for (double tail = 1e-6; tail <= 0.5; tail *= 1.3) {
            assertThat(RoomLaw.quantile(tail))
                    .as("tail %s", tail)
                    .isCloseTo(-normal.inverseCumulativeProbability(tail), within(4.5e-4));
        }
    }

    @Test
    void oneBuildInTwoHundredHasAJointWithoutRoom() {
        Random random = new Random(20261125);
        for (int copies : new int[] {1, 9, 40}) {
            double room = RoomLaw.room(copies, 0.2, 0.1, 0.05);
            int spoilt = 0;
            int builds = 40_000;
            for (int i = 0; i < builds; i++) {
                boolean touches = false;
                for (int k = 0; k < copies; k++) {
                    double off =
                            (0.2 * random.nextGaussian() + 0.1 * random.nextGaussian() + 0.05 * random.nextGaussian())
                                    / RoomLaw.COVERAGE;
                    touches |= off > room;
                }
                spoilt += touches ? 1 : 0;
            }
            // five deviations of the count, and what rounding up to 0.01 mm saves
            assertThat(spoilt / (double) builds).as("%d copies", copies).isBetween(0.0025, 0.0068);
        }
    }

    @Test
    void roomGrowsWithEachPartAndWithTheirNumberAndIsNothingForPerfectOnes() {
        assertThat(RoomLaw.room(5, 0, 0)).isZero();
        assertThat(RoomLaw.room(1, 0.2, 0.1)).isGreaterThan(RoomLaw.room(1, 0.2));
        assertThat(RoomLaw.room(20, 0.2)).isGreaterThan(RoomLaw.room(2, 0.2));
        assertThat(RoomLaw.words(9, 0.2, 0.1))
                .isEqualTo("processes keep 0.2 and 0.1 mm: 1.63 times their root-sum-square for 9 of them");
    }
}
