// SPDX-License-Identifier: Apache-2.0
package ringleaf.linkage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LidSightTest {
    private final LidSight lid = new LidSight(53, 1.6, 40, 56, 1);

    @Test
    void theFramesRearIsAsTheWorkedCaseSays() {
        assertEquals(37.059951, lid.frameRear(), 1e-6);
        assertEquals(1.2, lid.roomInFrame(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"0,51.761448,52.842500", "20,58.781865,59.862917"})
    void theLeadingEdgeIsHiddenFrom(double psi, double open, double travel) {
        double angle = lid.hidden(lid.frameRear(), Math.toRadians(psi), 1);
        assertEquals(open, Math.toDegrees(angle), 1e-6);
        assertEquals(travel, Math.toDegrees(lid.travel(angle, 2)), 1e-6);
    }

    @Test
    void fromTooFarAsideItCannotBeHidden() {
        assertTrue(Double.isNaN(lid.hidden(lid.frameRear(), Math.toRadians(30), 1)));
        double most = lid.furthestSight(lid.frameRear(), 1);
        assertTrue(most > Math.toRadians(20) && most < Math.toRadians(30));
        assertFalse(Double.isNaN(lid.hidden(lid.frameRear(), most - 1e-6, 1)));
        assertTrue(Double.isNaN(lid.hidden(lid.frameRear(), most + 1e-4, 1)));
    }

    @Test
    void guidesJamBeyondTheOffsetOfStatics() {
        RodGuide guide = new RodGuide(24, 0.2);
        assertEquals(60, guide.jamsBeyond(), 1e-12);
        assertEquals(1, guide.jamming(60), 1e-12);
        // 10 N in the middle of 100 mm of steel rod of 3 mm: 10 * 1e6 / (48 * 210000 * 3.9761) mm, worked by hand.
        assertEquals(0.2495, RodGuide.sag(10, 100, 3, 210000), 1e-4);
    }
}
