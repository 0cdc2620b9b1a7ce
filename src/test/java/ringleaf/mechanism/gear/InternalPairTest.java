// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.mechanism.gear.Gears.design;
import static ringleaf.mechanism.gear.Gears.dimension;
import static ringleaf.mechanism.gear.Gears.finding;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.Spoken;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Status;

/** Rings: the much-quoted example and its flaw, the three conditions, contact ratios. */
class InternalPairTest {
    private static Design quoted(String tips, double shift) {
        return design(
                "gear-pair",
                "internal: true",
                "module: 3",
                "tips: " + tips,
                "driver: {teeth: 16, profile-shift: 0}",
                "driven: {teeth: 24, profile-shift: " + shift + "}");
    }

    /** The handbook's 16/24 pair with x2 = 0.5 (from memory; computed in full): it misses the condition by 0.0014. */
    @Test
    void theQuotedExampleMissesTheInvoluteCondition() {
        Design full = quoted("full", 0.5);
        assertThat(dimension(full, "working-pressure-angle")).isCloseTo(31.09362066, within(1e-8));
        assertThat(dimension(full, "centre-distance")).isCloseTo(3 * (4 + 0.3894225689), within(1e-8));
        Finding finding = finding(full, "involute-interference");
        assertThat(finding.status()).isEqualTo(Status.FAIL);
        assertThat(finding.measured()).isCloseTo(16 / 24.0 - 0.668093, within(1e-6));
        // At full height the shift alone leaves the tips in the roots, so only shortening is proposed.
        assertThat(Spoken.of(finding)).contains("tips: shortened clears it").doesNotContain("profile-shift");
        assertThat(Spoken.of(finding(quoted("shortened", 0.5), "involute-interference")))
                .contains("driven.profile-shift: 0.5026 clears it");
        // That shift clears it, and not much less does.
        assertThat(finding(quoted("full", 0.5026), "involute-interference").measured())
                .isBetween(0.0, 1e-3);
        assertThat(finding(quoted("full", 0.5024), "involute-interference").measured())
                .isNegative();
        // The later edition's 0.516 passes, as published.
        Design later = quoted("full", 0.516);
        assertThat(finding(later, "involute-interference").measured()).isCloseTo(16 / 24.0 - 0.659370, within(1e-6));
        assertThat(dimension(later, "centre-distance")).isCloseTo(13.1999522279, within(1e-9));
    }

    @Test
    void shortenedTipsClearItAndRoll() {
        Design shortened = quoted("shortened", 0.5);
        assertThat(finding(shortened, "involute-interference").status()).isEqualTo(Status.WARN);
        assertThat(Gears.failed(shortened)).isEmpty();
    }

    /** Contact ratios of standard internal pairs, computed; the tips of these need no shortening below the ring's. */
    @ParameterizedTest
    @CsvSource({"24,120,1.8644573087", "30,100,1.9082048642", "30,60,1.9980000888"})
    void contactRatios(int driver, int driven, double ratio) {
        Design pair = design(
                "gear-pair",
                "internal: true",
                "module: 1",
                "tips: full",
                "driver: {teeth: " + driver + "}",
                "driven: {teeth: " + driven + "}");
        assertThat(dimension(pair, "contact-ratio")).isCloseTo(ratio, within(1e-9));
        assertThat(dimension(pair, "centre-distance")).isCloseTo((driven - driver) / 2.0, within(1e-9));
    }

    /** Standard teeth of 20/35 cannot be put in from the side, 20/38 can: limits computed for full height. */
    @Test
    void trimmingAndTrochoid() {
        Design near = design(
                "gear-pair", "internal: true", "module: 1", "tips: full", "driver: {teeth: 20}", "driven: {teeth: 35}");
        assertThat(finding(near, "trimming").status()).isEqualTo(Status.WARN);
        Design far = design(
                "gear-pair", "internal: true", "module: 1", "tips: full", "driver: {teeth: 20}", "driven: {teeth: 38}");
        assertThat(finding(far, "trimming").status()).isEqualTo(Status.PASS);
        Design touching =
                design("gear-pair", "internal: true", "module: 1", "driver: {teeth: 20}", "driven: {teeth: 23}");
        Finding trochoid = finding(touching, "trochoid-interference");
        assertThat(trochoid.failed()).isTrue();
        assertThat(Spoken.of(trochoid)).contains("driven.teeth: 27 clears it");
    }

    @Test
    void bothTurnTheSameWay() {
        Design pair = design("gear-pair", "internal: true", "module: 1", "driver: {teeth: 20}", "driven: {teeth: 60}");
        double[] last = pair.motion().rows().get(60);
        assertThat(last[1]).isCloseTo(last[0] / 3, within(1e-9));
        assertThat(Gears.failed(pair)).isEmpty();
        assertThat(pair.parts()).extracting(p -> p.name()).contains("driver", "driven");
    }

    @Test
    void aPieceOfARingMeshesToo() {
        Design pair = design(
                "gear-pair",
                "internal: true",
                "module: 1",
                "travel: 120",
                "driver: {teeth: 18}",
                "driven: {teeth: 72, sector: {}}");
        assertThat(dimension(pair, "driven-teeth-cut")).isLessThan(20);
        assertThat(finding(pair, "mesh-at-stops").measured()).isGreaterThanOrEqualTo(1);
        assertThat(Gears.failed(pair)).isEmpty();
    }

    /** What the travel is rolled through with must see as much as the judge does: tips beside the mesh too. */
    @ParameterizedTest
    @CsvSource({"20,26", "20,23", "30,34", "18,60"})
    void gapAndErrorOfARingAreThoseOfTheJudge(int driver, int driven) {
        Design pair = design(
                "gear-pair",
                "internal: true",
                "module: 1",
                "backlash: 0.1",
                "driver: {teeth: " + driver + "}",
                "driven: {teeth: " + driven + "}");
        List<Finding> judged = Gears.judged(pair);
        Finding rolls = named(judged, "mesh-clearance");
        Finding play = named(judged, "backlash");
        // Where the outlines overlap the travel tells a gap of nought.
        assertThat(finding(pair, "mesh-clearance").measured()).isCloseTo(Math.max(0, rolls.measured()), within(0.002));
        if (rolls.measured() > 0) {
            double lost = dimension(pair, "backlash") / ringWorkingRadius(pair) - Math.toRadians(play.measured());
            double error = Math.toRadians(finding(pair, "transmission-error").measured());
            assertThat(error).isCloseTo(Math.max(0, lost), within(0.002 / 10));
        }
    }

    private static Finding named(List<Finding> findings, String check) {
        return findings.stream()
                .filter(f -> f.check().equals(check))
                .findFirst()
                .orElseThrow();
    }

    private static double ringWorkingRadius(Design pair) {
        double driver = dimension(pair, "driver-teeth");
        double driven = dimension(pair, "driven-teeth");
        return dimension(pair, "centre-distance") * driven / (driven - driver);
    }

    @Test
    void aRingOfOneToothMoreRunsIntoItsGear() {
        Design pair = design("gear-pair", "internal: true", "driver: {teeth: 20}", "driven: {teeth: 21}");
        assertThat(finding(pair, "trochoid-interference").failed()).isTrue();
        assertThat(finding(pair, "trimming").status()).isEqualTo(Status.WARN);
    }
}
