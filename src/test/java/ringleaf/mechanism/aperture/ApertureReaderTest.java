// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static ringleaf.mechanism.aperture.Apertures.refusal;
import static ringleaf.mechanism.aperture.Apertures.spec;

import org.junit.jupiter.api.Test;

/** Contradictions that no single field shows. */
class ApertureReaderTest {
    @Test
    void theLeastOpeningLiesBelowTheFullOne() {
        assertThat(refusal(spec("full-opening: 20", "least-opening: 20", "blades: 9", "blade-thickness: 0.1")))
                .contains("test.yaml:6:20: least-opening: 20 mm is not below the full opening of 20 mm");
    }

    @Test
    void aThicknessThatContradictsItsStockNamesBoth() {
        String text = "fabrication:\n  blade: {stock: brass-0.15}\n"
                + spec("full-opening: 64", "least-opening: 20", "blades: 14", "blade-thickness: 0.2");
        assertThat(refusal(text)).contains("0.2").contains("brass-0.15").contains("blade-thickness");
    }

    @Test
    void allContradictionsComeInOneRun() {
        String refusal = refusal(spec(
                "full-opening: 64",
                "least-opening: 70",
                "blades: 14",
                "blade-thickness: 0.15",
                "outer-diameter: 60",
                "depth: {at-least: 3}",
                "pin-style: one-glued",
                "drive-pin: far-end",
                "lever: 4",
                "drive: {by: hand, module: 1, servo: micro-180}"));
        assertThat(refusal)
                .contains("least-opening")
                .contains("outer-diameter")
                .contains("depth")
                .contains("pin-style")
                .contains("lever")
                .contains("drive.module")
                .contains("drive.servo");
    }

    @Test
    void aPinionKnowsNoArm() {
        assertThat(refusal(spec(
                        "full-opening: 64",
                        "least-opening: 20",
                        "blades: 14",
                        "blade-thickness: 0.15",
                        "drive: {arm-width: 5}")))
                .contains("drive.arm-width");
    }
}
