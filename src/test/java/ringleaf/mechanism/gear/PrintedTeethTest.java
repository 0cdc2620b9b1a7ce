// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.mechanism.gear.Gears.design;
import static ringleaf.mechanism.gear.Gears.finding;
import static ringleaf.mechanism.gear.Gears.refusal;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.Spoken;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Status;

/** Fine teeth that are printed: they carry on with what a bead leaves of them, or it is told why not. */
class PrintedTeethTest {
    private static Design pair(double module) {
        return design("gear-pair", "ratio: 5:3", "module: " + module, "driver: {teeth: 18}");
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.8})
    void coarseTeethLoseLittle(double module) {
        Design pair = pair(module);
        assertThat(Gears.failed(pair)).isEmpty();
        double asDrawn = finding(pair, "contact-ratio").measured();
        assertThat(finding(pair, "contact-ratio-as-made").measured()).isBetween(1.2, asDrawn + 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.4, 0.3})
    void fineOnesFailWithTheReasonAndWhatWorks(double module) {
        Design pair = pair(module);
        Finding made = finding(pair, "contact-ratio-as-made");
        assertThat(made.failed()).isTrue();
        assertThat(Spoken.of(made)).contains("0.4 mm thick").contains("module: ");
        String told = pair.remedies().get(0);
        double coarse = Double.parseDouble(told.substring("module: ".length(), told.indexOf(" would")));
        assertThat(Gears.failed(pair(coarse))).as(told).isEmpty();
    }

    /** At m 0.5 a standard tooth is 0.785 mm thick; half of 0.1 mm backlash is taken from it. */
    @Test
    void aSingleGearTellsItsTooth() {
        Design gear = design("gear", "teeth: 40", "module: 0.5", "backlash: 0.1");
        Finding tooth = finding(gear, "tooth-thickness");
        assertThat(tooth.measured()).isCloseTo(Math.PI / 4 - 0.05, within(1e-9));
        assertThat(tooth.status()).isEqualTo(Status.WARN);
        assertThat(finding(design("gear", "teeth: 40", "module: 0.25", "backlash: 0.1"), "tooth-thickness")
                        .failed())
                .isTrue();
    }

    @Test
    void teethThatTheProcessLeavesNothingOfBlameTheModule() {
        String gear = refusal("gear", "teeth: 20", "module: 0.2", "backlash: 0.01");
        assertThat(gear).isEmpty();
        String pair = refusal("gear-pair", "module: 0.2", "driver: {teeth: 18}", "driven: {teeth: 30}");
        assertThat(pair).contains("module: teeth of module 0.2 are too fine for the process");
        String start = "the nearest that works is ";
        String nearest = pair.substring(pair.indexOf(start) + start.length(), pair.indexOf('\n'));
        assertThat(Gears.failed(
                        design("gear-pair", "module: " + nearest, "driver: {teeth: 18}", "driven: {teeth: 30}")))
                .isEmpty();
    }

    @Test
    void teethCutFromSheetAreNotPrinted() {
        Design cut = Gears.designs(
                        "title: T\nfabrication:\n  gear: {process: fibre-laser, stock: brass-0.15}\n"
                                + Gears.spec("gear-pair", "module: 0.3", "ratio: 2", "driver: {teeth: 20}")
                                        .replace("title: Test\n", ""),
                        31)
                .get(0);
        assertThat(cut.findings()).noneMatch(f -> f.check().equals("contact-ratio-as-made"));
    }
}
