// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.mechanism.gear.Gears.choice;
import static ringleaf.mechanism.gear.Gears.design;
import static ringleaf.mechanism.gear.Gears.dimension;
import static ringleaf.mechanism.gear.Gears.finding;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.Spoken;
import ringleaf.part.Design;
import ringleaf.part.Part;
import ringleaf.report.FindingWords;

/** Trains: ratio, sense, speed, torque and height. */
class GearTrainTest {
    @ParameterizedTest
    @CsvSource({"12,2", "60,3", "3,1", "1:12,2", "2.4,1"})
    void ratiosAreSharedOut(String ratio, int stages) {
        Design train = design("gear-train", "ratio: " + ratio, "module: 1");
        String[] parts = ratio.split(":");
        double wanted = Double.parseDouble(parts[0]) / (parts.length > 1 ? Double.parseDouble(parts[1]) : 1);
        assertThat(dimension(train, "ratio")).isCloseTo(wanted, within(1e-9 * wanted));
        assertThat(train.parts()).hasSize(stages + 1);
        assertThat(choice(train, "sense").value())
                .isEqualTo(stages % 2 == 0 ? "same as the driver's" : "against the driver's");
        assertThat(Gears.failed(train)).isEmpty();
    }

    @Test
    void speedAndTorqueGoThroughIt() {
        Design train = design("gear-train", "ratio: 12", "module: 2", "drive: {torque: 0.02Nm, speed: 60}");
        assertThat(dimension(train, "output-speed")).isCloseTo(5, within(1e-9));
        assertThat(dimension(train, "output-torque")).isCloseTo(20 * 12 * 0.81, within(1e-9));
        Design servo = design("gear-train", "ratio: 12", "module: 2", "drive: {servo: micro-180}");
        assertThat(dimension(servo, "output-travel")).isCloseTo(15, within(1e-9));
    }

    @Test
    void aSharedShaftIsOnePartOfTwoLevels() {
        Design train = design(
                "gear-train",
                "module: 1",
                "width: 4",
                "gap: 1",
                "stages:",
                "  - {driver: {teeth: 15}, driven: {teeth: 45}}",
                "  - {at: 60, driver: {teeth: 16}, driven: {teeth: 48}}");
        Part shared = train.parts().get(1);
        assertThat(shared.layers()).hasSize(2);
        assertThat(shared.zFrom()).isEqualTo(0);
        assertThat(shared.layers().get(1).zFrom()).isEqualTo(4);
        assertThat(shared.zTo()).isEqualTo(9);
        assertThat(dimension(train, "ratio")).isCloseTo(9, within(1e-12));
        assertThat(dimension(train, "depth")).isEqualTo(9);
        assertThat(Gears.failed(train)).isEmpty();
        double[] last = train.motion().rows().get(60);
        assertThat(last[1]).isCloseTo(last[0] / 9, within(1e-9));
    }

    @Test
    void itKeepsWithinItsLength() {
        Design train = design("gear-train", "ratio: 10", "overall-length: {at-most: 80}", "drive: {torque: 1mNm}");
        assertThat(dimension(train, "overall-length")).isLessThanOrEqualTo(80 + 1e-6);
        assertThat(finding(train, "overall-length").failed()).isFalse();
        assertThat(dimension(train, "stage-1-module")).isGreaterThanOrEqualTo(0.5);
    }

    @Test
    void axlesThatAGearReachesOverAreTold() {
        Design train = design(
                "gear-train",
                "module: 1",
                "stages:",
                "  - {driver: {teeth: 14}, driven: {teeth: 70}}",
                "  - {driver: {teeth: 14}, driven: {teeth: 28}}");
        assertThat(finding(train, "axle-clearance").measured()).isNegative();
        assertThat(FindingWords.where(finding(train, "axle-clearance"))).contains("gear-2 and gear-3");
        assertThat(Spoken.of(finding(train, "axle-clearance"))).contains("the axle of gear-3 has to end at gear-2");
    }
}
