// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs of specs whose first guesses do not work. */
class DecidedRunTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(ints = {8, 15, 16, 17, 18, 19, 20})
    void anyNumberOfBladesIsMadeToWork(int blades) {
        Ran ran = Ran.in(folder, "check", "harbour-light", "--set", "shutter.blades=" + blades);
        assertThat(ran.exit()).as(ran.out() + ran.err()).isZero();
    }

    /** What was decided, put into the spec by hand, gives the same design and needs no decision. */
    @Test
    void whatIsDecidedIsToldAndHoldsAsItWouldBeTyped() throws IOException {
        Ran ran = Ran.in(folder, "make", "harbour-light", "--set", "shutter.blades=17", "-o", "a");
        assertThat(ran.exit()).as(ran.err()).isZero();
        JsonNode taken = mechanism("a").get("decisions");
        assertThat(taken).hasSize(1);
        String field = taken.get(0).get("field").asText();
        String value = taken.get(0).get("value").asText();
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("decided: " + field + " " + value + "; with the first guess, pin-engagement: ");
        Ran typed = Ran.in(
                folder,
                "make",
                "harbour-light",
                "--set",
                "shutter.blades=17",
                "--set",
                "shutter." + field + "=" + value,
                "-o",
                "b");
        assertThat(typed.exit()).isZero();
        assertThat(mechanism("b").has("decisions")).isFalse();
        assertThat(Files.readString(folder.resolve("b/parts/shutter-drive-ring.dxf")))
                .isEqualTo(Files.readString(folder.resolve("a/parts/shutter-drive-ring.dxf")));
    }

    /** A reduction of nine that bends its teeth with the usual module gets a coarser one. */
    @Test
    void coarserTeethWhereTheUsualOnesBreak() throws IOException {
        Files.writeString(folder.resolve("t.yaml"), """
                title: Reduction
                fabrication: {gear: {stock: acrylic-3}}
                mechanisms:
                  lens: {kind: gear-train, ratio: 9, drive: {servo: standard-180}}
                """);
        Ran ran = Ran.in(folder, "check", "t.yaml");
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("decided: module ", "bending");
    }

    /** Teeth that are left open leave room for what the pulleys are bored for. */
    @ParameterizedTest
    @CsvSource({
        "micro-180, 2.3, acrylic-3",
        "standard-180, 1.6, plywood-3",
        "sub-micro-180, 3, petg",
        "mini-180, 1, resin"
    })
    void pulleysCarryTheServoThatTurnsThem(String servo, String ratio, String stock) throws IOException {
        Files.writeString(folder.resolve("arm.yaml"), """
                title: Arm
                fabrication: {pulley: {stock: %s}, plate: {stock: acrylic-3}}
                mechanisms:
                  arm:
                    {kind: belt-drive, belt: curvilinear-2, ratio: %s, centre-distance: 90, servo: %s, travel: 40, load: 0.02Nm}
                """.formatted(stock, ratio, servo));
        Ran ran = Ran.in(folder, "check", "arm.yaml");
        assertThat(ran.exit()).as(ran.err()).isLessThan(2);
        assertThat(ran.err()).doesNotContain("leaves less than the web");
    }

    @Test
    void whatTheSpecSaysIsNotDecidedOtherwise() {
        Ran ran = Ran.in(
                folder,
                "check",
                "harbour-light",
                "--set",
                "shutter.blades=17",
                "--set",
                "shutter.ring-thickness=2",
                "--set",
                "shutter.clearances.ring-axial=0.15",
                "--set",
                "shutter.pin-diameter=1.5");
        assertThat(ran.out()).doesNotContain("decided: ring-thickness", "decided: clearances.ring-axial");
    }

    private JsonNode mechanism(String out) throws IOException {
        return new ObjectMapper()
                .readTree(folder.resolve(out).resolve("design.json").toFile())
                .get("mechanisms")
                .get("shutter");
    }
}
