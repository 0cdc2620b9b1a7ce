// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static ringleaf.mechanism.aperture.Apertures.failed;
import static ringleaf.mechanism.aperture.Apertures.spec;

import org.junit.jupiter.api.Test;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** Teeth of small rings keep room at their tips however the ring leans, and the judge of outlines agrees. */
class SmallDrivesTest {
    private static final String LASER = """
            fabrication:
              plate: {process: co2-laser, stock: acrylic-2}
              ring: {process: co2-laser, stock: acrylic-2}
              gear: {process: co2-laser, stock: acrylic-2}
            """;

    @Test
    void tipsKeepTheirRoomFromOpeningsOf8To60() {
        for (String making : new String[] {"", LASER}) {
            for (double opening : new double[] {8, 18, 35, 60}) {
                for (String module : new String[] {"", ", module: 0.4", ", module: 0.6", ", module: 1"}) {
                    int blades = 5 + (int) (opening / 6);
                    String text = spec(
                                    "full-opening: " + opening,
                                    "least-opening: " + opening / 2,
                                    "blades: " + blades,
                                    "blade-thickness: 0.1",
                                    "pin-diameter: 0.8",
                                    "drive: {by: pinion" + module + "}")
                            + making;
                    holds(text, module);
                }
            }
        }
    }

    private static void holds(String text, String module) {
        Design design = Apertures.design(text, 9);
        for (Finding finding : design.findings()) {
            if (finding.check().equals("tip-clearance")) {
                assertThat(finding.failed()).as(text).isFalse();
            }
            // Teeth too small for the play of their ring have no contact left, and that is told instead.
            if (finding.check().equals("contact-ratio") && !module.contains("0.4") && !module.contains("0.6")) {
                assertThat(finding.failed()).as(text).isFalse();
            }
        }
        if (failed(design.findings()).isEmpty()) {
            assertThat(failed(Judge.judge(design.assembly(), Options.DEFAULT).findings()))
                    .as(text)
                    .isEmpty();
        }
    }
}
