// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static ringleaf.mechanism.aperture.Apertures.spec;

import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** Closed forms of the room beside pins, held against the build order, which looks at outlines and knows none of them. */
class PinsBesideBladesTest {
    private static double room(Design design, String where) {
        for (Finding finding : design.findings()) {
            if (finding.check().equals("pin-clearance") && Spoken.where(finding).contains(where)) {
                return finding.measured();
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static boolean canBeBuilt(Design design) {
        for (Finding finding : Judge.judge(design.assembly(), Options.DEFAULT).findings()) {
            if (finding.check().equals("build-order") && finding.failed()) {
                return false;
            }
        }
        return true;
    }

    @Test
    void whatTheBuildOrderRefusesIsRefusedByCalculation() {
        Random random = new Random(4071);
        int refused = 0;
        for (int i = 0; i < 40; i++) {
            int blades = 5 + random.nextInt(20);
            double opening = 8 + random.nextInt(20);
            double width = 3 + random.nextInt(8);
            boolean posts = random.nextInt(3) == 0;
            String text = spec(
                    "full-opening: " + opening,
                    "least-opening: " + opening * (0.4 + 0.4 * random.nextDouble()),
                    "blades: " + blades,
                    "blade-thickness: " + (posts ? "0.8" : random.nextBoolean() ? "0.1" : "0.6"),
                    "blade-width: " + width,
                    posts ? "pin-style: base-posts" : "pin-diameter: " + (1 + random.nextInt(2)),
                    "hand: " + (random.nextBoolean() ? "left" : "right"),
                    "drive-pin: far-end");
            Design design = Apertures.design(text, 7);
            double roots = room(design, "beside the next blade's root");
            double tips = room(design, "beside the next blade's end");
            boolean built = canBeBuilt(design);
            if (Math.min(roots, tips) >= 0.1) {
                assertThat(built).as("case %d%n%s", i, text).isTrue();
            }
            if (roots < -0.01) {
                assertThat(built).as("case %d, roots %s%n%s", i, roots, text).isFalse();
                refused++;
            }
        }
        assertThat(refused).as("cases on either side").isBetween(5, 35);
    }
}
