// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static ringleaf.mechanism.gear.Gears.design;

import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.part.Design;
import ringleaf.part.Finding;

/** Teeth without any play touch and do not overlap; whether that holds is no matter of rounding. */
class NoPlayTest {
    @Test
    void randomPairsWithoutBacklashHold() {
        Random random = new Random(11);
        double[] modules = {0.5, 0.8, 1, 1.25, 1.7};
        for (int i = 0; i < 24; i++) {
            boolean ring = i % 4 == 3;
            int driver = 13 + random.nextInt(25);
            int driven = driver + (ring ? 30 : 0) + random.nextInt(40);
            double module = modules[random.nextInt(modules.length)];
            Design pair = design(
                    "gear-pair",
                    "internal: " + ring,
                    "backlash: 0",
                    "module: " + module,
                    "driver: {teeth: " + driver + "}",
                    "driven: {teeth: " + driven + "}");
            String which = driver + "/" + driven + " of module " + module + (ring ? " in a ring" : "");
            for (Finding finding : Gears.failed(pair)) {
                assertThat(Spoken.of(finding))
                        .as(which + ", " + finding.check())
                        .isEmpty();
            }
        }
    }
}
