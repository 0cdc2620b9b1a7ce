// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Status;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

class BeltDriveTest {
    private static void passesTheJudge(Design design) {
        for (Finding finding : Judge.judge(design.assembly(), Options.DEFAULT).findings()) {
            assertThat(finding.status()).as(Spoken.of(finding)).isEqualTo(Status.PASS);
        }
    }

    @Test
    void thePresetHoldsAndIsFiveToTwo() throws IOException {
        Design design = Designs.of(Files.readString(Path.of("presets/semaphore-arm-belt.yaml")));
        assertThat(Designs.value(design, "ratio")).isEqualTo(2.5);
        assertThat(design.findings()).noneMatch(Finding::failed);
        assertThat(Designs.finding(design, "servo-travel").measured()).isCloseTo(150, within(1e-9));
        passesTheJudge(design);
    }

    @Test
    void aMovableDriveTakesTheStockedBeltNearestToTheWantedDistance() {
        Design design = Designs.of(Designs.drive(
                "T2.5", "driver: {teeth: 16}", "driven: {teeth: 40}", "centre-distance: 70", "plates: one"));
        double length = Designs.value(design, "belt-length");
        assertThat(length).isCloseTo(Designs.value(design, "belt-teeth") * 2.5, within(1e-9));
        double c = Designs.value(design, "centre-distance");
        double r1 = 16 * 2.5 / (2 * Math.PI);
        double r2 = 40 * 2.5 / (2 * Math.PI);
        assertThat(BeltPath.openLength(r1, r2, c)).isCloseTo(length, within(1e-9));
        for (int stocked : new int[] {48, 58, 64, 71, 80, 92, 98, 106, 114, 122, 132, 152, 168, 192, 200}) {
            double other = CentreDistance.ofOpenBelt(r1, r2, stocked * 2.5);
            if (!Double.isNaN(other)) {
                assertThat(Math.abs(other - 70)).isGreaterThanOrEqualTo(Math.abs(c - 70) - 1e-9);
            }
        }
        double slot = Designs.value(design, "slot-length");
        assertThat(slot).isBetween(0.5, 6.0);
        assertThat(Designs.how(design, "belt-teeth")).contains("teeth would stand at");
        passesTheJudge(design);
    }

    @Test
    void aBeltOfFewTeethInMeshWarns() {
        Design design = Designs.of(
                Designs.drive("XL", "driver: {teeth: 10}", "driven: {teeth: 20}", "belt-teeth: 50", "plates: none"));
        assertThat(Designs.value(design, "centre-distance")).isCloseTo(88.5305573833, within(1e-9));
        Finding mesh = Designs.finding(design, "teeth-in-mesh");
        assertThat(mesh.status()).isEqualTo(Status.WARN);
        assertThat(mesh.measured()).isCloseTo(4.708897, within(1e-6));
        assertThat(Spoken.of(mesh)).contains("0.6");
    }

    @Test
    void fixedCentresGetAnIdlerOnEitherSideThatTakesExactlyTheSlack() {
        for (String side : new String[] {"inside", "outside"}) {
            Design design = Designs.of(Designs.drive(
                    "MXL",
                    "driver: {teeth: 20}",
                    "driven: {teeth: 40}",
                    "centre-distance: 64",
                    "centres: fixed",
                    "idler: {side: " + side + "}",
                    "belt-teeth: 95"));
            assertThat(Designs.value(design, "belt-length")).isCloseTo(95 * 2.032, within(1e-6));
            assertThat(Designs.value(design, "centre-distance")).isEqualTo(64);
            assertThat(Designs.value(design, "idler-press")).as(side).isPositive();
            double wrap = Designs.value(design, "driver-wrap");
            double without = 2 * Math.toDegrees(Math.acos(20 * 2.032 / (2 * Math.PI) / 64));
            assertThat(wrap > without).as(side).isEqualTo(side.equals("outside"));
            passesTheJudge(design);
        }
    }

    @Test
    void severalWheelsStandWhereTheyArePut() {
        Design design = Designs.of(Designs.drive(
                "curvilinear-2",
                "driver: {teeth: 20}",
                "driven: {teeth: 30}",
                "centre-distance: 80",
                "at: 0",
                "plates: none",
                "further:",
                "  - {x: 60, y: 50, teeth: 24}",
                "  - {x: 28, y: 34, side: outside, diameter: 14}"));
        assertThat(Designs.value(design, "belt-length"))
                .isCloseTo(2 * Designs.value(design, "belt-teeth"), within(1e-6));
        assertThat(Designs.value(design, "wheel-3-teeth-in-mesh")).isPositive();
        passesTheJudge(design);
    }

    @Test
    void theRatioFindsTheFewestTeethWithSixInMesh() {
        Design design = Designs.of(Designs.drive("T2.5", "ratio: 5:2", "centre-distance: 60"));
        double small = Designs.value(design, "driver-teeth");
        assertThat(Designs.value(design, "driven-teeth")).isEqualTo(2.5 * small);
        assertThat(Designs.value(design, "driver-teeth-in-mesh")).isGreaterThanOrEqualTo(6);
        Design up = Designs.of(Designs.drive("T2.5", "ratio: 2:5", "centre-distance: 60"));
        assertThat(Designs.value(up, "driver-teeth")).isEqualTo(2.5 * Designs.value(up, "driven-teeth"));
        assertThat(Designs.refusal(Designs.drive("T2.5", "ratio: 3", "driver: {teeth: 16}", "driven: {teeth: 40}")))
                .contains("40:16");
        assertThat(Designs.refusal(Designs.drive("T2.5", "driver: {teeth: 16}")))
                .contains("ratio", "missing");
    }

    /** Torque and travel through the ratio, and the pull of the belt, by hand. */
    @Test
    void servoTravelAndTorqueGoThroughTheRatio() {
        Design design = Designs.of(Designs.drive(
                "T2.5",
                "driver: {teeth: 16}",
                "driven: {teeth: 40}",
                "centre-distance: 70",
                "servo: {travel: 120, torque: 100Nmm}",
                "load: 100Nmm"));
        assertThat(Designs.value(design, "travel")).isCloseTo(48, within(1e-9));
        assertThat(Designs.value(design, "driver-travel")).isCloseTo(120, within(1e-9));
        assertThat(Designs.value(design, "driven-torque")).isCloseTo(237.5, within(1e-9));
        assertThat(Designs.value(design, "effective-pull")).isCloseTo(100 / (20 / Math.PI), within(1e-9));
        assertThat(Designs.finding(design, "servo-torque").measured()).isCloseTo(100 / 2.5 / 0.95 * 2, within(1e-9));
        double[] last = design.motion().rows().get(design.motion().rows().size() - 1);
        assertThat(last[0]).isCloseTo(120, within(1e-9));
        assertThat(last[2]).isCloseTo(48, within(1e-9));
        assertThat(last[3]).isCloseTo(Math.toRadians(48) * 50 / Math.PI, within(1e-9));
        Design slow = Designs.of(Designs.drive(
                "T2.5",
                "driver: {teeth: 16}",
                "driven: {teeth: 40}",
                "centre-distance: 70",
                "travel: 90",
                "servo: {travel: 120, torque: 100Nmm}",
                "load: 200Nmm"));
        assertThat(Designs.finding(slow, "servo-travel").status()).isEqualTo(Status.FAIL);
        assertThat(Designs.finding(slow, "servo-torque").status()).isEqualTo(Status.FAIL);
        assertThat(slow.remedies()).anyMatch(r -> r.startsWith("travel: 47.9"));
    }

    @Test
    void obstaclesInTheBeltsWayAreFound() {
        String[] lines = {
            "driver: {teeth: 16}",
            "driven: {teeth: 40}",
            "centre-distance: 70",
            "obstacles: [{x: 12, y: 30, diameter: 4}]"
        };
        assertThat(Designs.finding(Designs.of(Designs.drive("T2.5", lines)), "obstacle-clearance")
                        .status())
                .isEqualTo(Status.FAIL);
        lines[3] = "obstacles: [{x: 25, y: 30, diameter: 4}]";
        assertThat(Designs.finding(Designs.of(Designs.drive("T2.5", lines)), "obstacle-clearance")
                        .status())
                .isEqualTo(Status.PASS);
    }

    @Test
    void boundsThatNoBeltMeetsAreAFindingWithARemedy() {
        Design design = Designs.of(Designs.drive(
                "T2.5", "driver: {teeth: 16}", "driven: {teeth: 40}", "centre-distance: {at-least: 70, at-most: 72}"));
        assertThat(Designs.finding(design, "centre-distance").status()).isEqualTo(Status.FAIL);
        assertThat(design.remedies()).anyMatch(r -> r.contains("at-least"));
    }

    @Test
    void badInputIsRefusedWithWhatWorks() {
        String[] pair = {"driver: {teeth: 16}", "driven: {teeth: 40}"};
        assertThat(Designs.refusal(Designs.drive("T2.5", "driver: {teeth: 8}", "driven: {teeth: 20}")))
                .contains("driver.teeth", "least of 10");
        assertThat(Designs.refusal(Designs.drive("T2.5", pair[0], pair[1], "centre-distance: 20")))
                .contains("touch", "nearest that works");
        assertThat(Designs.refusal(Designs.drive("T2.5", pair[0], pair[1], "belt-teeth: 40")))
                .contains("cannot span", "nearest that works");
        assertThat(Designs.refusal(Designs.drive("T2.5", pair[0], pair[1], "centres: fixed")))
                .contains("one figure");
        assertThat(Designs.refusal(Designs.drive(
                        "T2.5", pair[0], pair[1], "centre-distance: 70", "centres: fixed", "belt-teeth: 80")))
                .contains("cannot span");
        assertThat(Designs.refusal(Designs.drive("T2.6", pair[0], pair[1]))).contains("did you mean T2.5?");
        assertThat(Designs.refusal(Designs.drive("T2.5", pair[0], pair[1], "idler: {side: inside}")))
                .contains("centres: fixed");
        assertThat(Designs.refusal(Designs.drive(
                        "T2.5", pair[0], pair[1], "centre-distance: 70", "further: [{x: 90, y: 30, side: outside}]")))
                .contains("runs into itself", "further");
    }
}
