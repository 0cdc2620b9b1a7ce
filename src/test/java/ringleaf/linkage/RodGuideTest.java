// SPDX-License-Identifier: Apache-2.0
package ringleaf.linkage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RodGuideTest {
    /** Statics of a sleeve that is pushed beside its middle, as every textbook has it: L 24, mu 0.2 jams beyond e = 60. */
    @Test
    void aSleeveJamsBeyondTheOffsetOfStatics() {
        RodGuide guide = new RodGuide(24, 0.2);
        assertEquals(60, guide.jamsBeyond(), 1e-12);
        assertEquals(1, guide.jamming(60), 1e-12);
        assertEquals(0.5, guide.jamming(-30), 1e-12);
    }

    /** 10 N in the middle of 100 mm of steel rod of 3 mm: 10 * 1e6 / (48 * 210000 * 3.97608) mm, worked by hand. */
    @Test
    void aRodBendsByTheTableOfBeams() {
        assertEquals(0.24951, RodGuide.sag(10, 100, 3, 210000), 1e-5);
    }
}
