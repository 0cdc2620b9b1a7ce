// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.mechanism.gear.Gears.choice;
import static ringleaf.mechanism.gear.Gears.design;
import static ringleaf.mechanism.gear.Gears.dimension;
import static ringleaf.mechanism.gear.Gears.finding;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.Spoken;
import ringleaf.part.Design;
import ringleaf.part.Dimension.Origin;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Status;

/** Pairs from specs: the handbook's values, what is solved from what, and the two judges agreeing. */
class GearPairTest {
    /**
     * The profile-shifted pair of the metric handbooks (module 3, 12/24 teeth, shifts 0.6 and 0.36), from memory;
     * full precision computed from the relations of ISO 21771.
     */
    @Test
    void theHandbooksShiftedPair() {
        Design pair = design(
                "gear-pair",
                "module: 3",
                "backlash: 0",
                "tips: full",
                "driver: {teeth: 12, profile-shift: 0.6}",
                "driven: {teeth: 24, profile-shift: 0.36}");
        assertThat(dimension(pair, "working-pressure-angle")).isCloseTo(26.08856344, within(1e-8));
        assertThat(dimension(pair, "centre-distance")).isCloseTo(56.49986972, within(1e-8));
        assertThat(dimension(pair, "driver-tip-diameter")).isCloseTo(44.839739, within(1e-6));
        assertThat(dimension(pair, "driven-tip-diameter")).isCloseTo(79.399739, within(1e-6));
        assertThat(dimension(pair, "driver-root-diameter")).isCloseTo(32.1, within(1e-9));
        assertThat(dimension(pair, "driven-root-diameter")).isCloseTo(66.66, within(1e-9));
        assertThat(dimension(pair, "contact-ratio")).isCloseTo(1.20210157, within(1e-8));
        assertThat(Gears.found(pair, "driver-profile-shift").origin()).isEqualTo(Origin.GIVEN);
    }

    /** The inverse of it: a = 56.4999 asks for a sum of shifts of 0.9600129776; computed. */
    @Test
    void aGivenDistanceSetsWorkingAngleAndShifts() {
        Design pair = design(
                "gear-pair", "module: 3", "centre-distance: 56.4999", "driver: {teeth: 12}", "driven: {teeth: 24}");
        assertThat(dimension(pair, "working-pressure-angle")).isCloseTo(26.08862615, within(1e-8));
        double sum = dimension(pair, "driver-profile-shift") + dimension(pair, "driven-profile-shift");
        assertThat(sum).isCloseTo(0.9600129776, within(1e-9));
        assertThat(Gears.found(pair, "centre-distance").origin()).isEqualTo(Origin.GIVEN);
        assertThat(Gears.failed(pair)).isEmpty();
    }

    /** m = 3, 12/24, unshifted, from the handbook (from memory): a 54. The balanced shifts keep it. */
    @ParameterizedTest
    @CsvSource({"17,17,1,17", "20,40,1,30", "24,120,0.8,57.6", "30,30,2,60"})
    void withoutADistanceTheReferenceDistanceIsKept(int driver, int driven, double module, double distance) {
        Design pair = design(
                "gear-pair", "module: " + module, "driver: {teeth: " + driver + "}", "driven: {teeth: " + driven + "}");
        assertThat(dimension(pair, "centre-distance")).isCloseTo(distance, within(0.02));
        assertThat(Gears.failed(pair)).isEmpty();
    }

    /** Contact ratio and backlash of a pair set apart, computed (20/40, module 1, 0.1 mm more). */
    @Test
    void setApartItHasTheComputedPlay() {
        Design pair = design(
                "gear-pair",
                "module: 1",
                "centre-distance: 30.1",
                "driver: {teeth: 20, profile-shift: 0}",
                "driven: {teeth: 40, profile-shift: 0}");
        assertThat(dimension(pair, "working-pressure-angle")).isCloseTo(20.51659474, within(1e-8));
        assertThat(dimension(pair, "backlash")).isCloseTo(0.0739450102, within(1e-9));
        assertThat(dimension(pair, "contact-ratio")).isCloseTo(1.5373572248, within(1e-9));
    }

    @Test
    void aboutFiveToThreeWithinForty() {
        Design exact = design("gear-pair", "ratio: 5:3", "overall-length: {at-most: 40}");
        assertThat(choice(exact, "teeth").value()).isEqualTo("18/30");
        assertThat(dimension(exact, "module")).isEqualTo(0.8);
        assertThat(dimension(exact, "overall-length")).isLessThanOrEqualTo(40 + 1e-6);
        assertThat(choice(exact, "teeth").how())
                .contains("also ")
                .contains("ratio")
                .contains("centres");
        Design about = design("gear-pair", "ratio: 5:3", "ratio-within: 3%", "overall-length: {at-most: 40}");
        assertThat(choice(about, "teeth").value()).isEqualTo("17/28");
        assertThat(choice(about, "teeth").how()).contains("18/30").contains("no common factor");
        assertThat(finding(about, "ratio").status()).isEqualTo(Status.PASS);
        assertThat(Spoken.of(finding(about, "ratio"))).contains("1.176 %");
        assertThat(Gears.found(about, "ratio").origin()).isEqualTo(Origin.SOLVED);
    }

    @ParameterizedTest
    @CsvSource({
        "'ratio: 5:3','module: 0.8','centre-distance: 40'",
        "'ratio: 2','module: 24dp','driver: {teeth: 15}'",
        "'module: 1','centre-distance: 40','driver: {teeth: 20}'",
        "'ratio: 1:3','driven: {teeth: 16}','centre-distance: {at-most: 60}'",
        "'centre-distance: 50','driver: {teeth: 20}','driven: {teeth: 37}'"
    })
    void anyTwoThatAreKnownAreEnough(String first, String second, String third) {
        Design pair = design("gear-pair", first, second, third);
        assertThat(Gears.failed(pair)).isEmpty();
        if (first.equals("ratio: 5:3")) {
            assertThat(dimension(pair, "centre-distance")).isEqualTo(40);
            assertThat(dimension(pair, "ratio")).isCloseTo(5 / 3.0, within(1e-12));
        }
        if (first.startsWith("ratio: 2")) {
            assertThat(dimension(pair, "module")).isCloseTo(25.4 / 24, within(1e-12));
            assertThat(dimension(pair, "driven-teeth")).isEqualTo(30);
        }
        if (first.equals("module: 1")) {
            assertThat(dimension(pair, "driven-teeth")).isEqualTo(60);
        }
    }

    @Test
    void aRatioThatNoTeethMakeIsTheNearestAndSaysSo() {
        Design pair = design("gear-pair", "ratio: 3.14159265", "module: 1");
        Finding ratio = finding(pair, "ratio");
        assertThat(ratio.status()).isEqualTo(Status.WARN);
        assertThat(ratio.measured()).isCloseTo(Math.PI, within(1e-3));
    }

    @Test
    void whatDoesNotFitFailsWithTheNearest() {
        Design pair = design("gear-pair", "ratio: 5:3", "module: 2", "overall-length: {at-most: 40}");
        assertThat(finding(pair, "overall-length").failed()).isTrue();
        assertThat(pair.remedies()).isNotEmpty();
        assertThat(dimension(pair, "module")).isEqualTo(2);
        Design far = design("gear-pair", "ratio: 2", "module: 2", "centre-distance: {at-most: 20}");
        assertThat(finding(far, "centre-distance").failed()).isTrue();
    }

    @Test
    void theOutlinesAgreeWithTheFormulas() {
        Design pair = design("gear-pair", "ratio: 5:3", "module: 1", "backlash: 0.1");
        double computed = Math.toDegrees(0.1 / workingRadius(pair));
        for (Finding finding : Gears.judged(pair)) {
            assertThat(finding.failed()).as(Spoken.of(finding)).isFalse();
            if (finding.check().equals("backlash")) {
                assertThat(finding.measured()).isCloseTo(computed, within(Math.toDegrees(0.003 / 15)));
            }
            if (finding.check().equals("mesh-clearance")) {
                double least = finding(pair, "mesh-clearance").measured();
                assertThat(finding.measured()).isCloseTo(least, within(0.001));
            }
        }
        // A pair of true involutes has no error; what is left is what arcs stray, half a micrometre on each flank.
        double span = Math.toRadians(finding(pair, "transmission-error").measured());
        assertThat(span * workingRadius(pair)).isLessThan(0.004);
    }

    private static double workingRadius(Design pair) {
        double ratio = dimension(pair, "ratio");
        return dimension(pair, "centre-distance") * ratio / (1 + ratio);
    }

    @Test
    void tipReliefShowsAsTransmissionError() {
        String[] relieved = {
            "module: 2",
            "driver: {teeth: 20, tip-relief: 0.03, tip-relief-depth: 1.2}",
            "driven: {teeth: 40, tip-relief: 0.03, tip-relief-depth: 1.2}"
        };
        Design with = design("gear-pair", relieved);
        Design without = design("gear-pair", "module: 2", "driver: {teeth: 20}", "driven: {teeth: 40}");
        assertThat(finding(with, "transmission-error").measured())
                .isGreaterThan(2 * finding(without, "transmission-error").measured());
    }

    @Test
    void theMotionTableFollowsTheRatio() {
        Design pair = design("gear-pair", "module: 1", "driver: {teeth: 20}", "driven: {teeth: 50}", "travel: 90");
        assertThat(pair.motion().columns())
                .containsExactly("angle_in_deg", "angle_out_deg", "transmission_error_deg", "gap");
        double[] last = pair.motion().rows().get(60);
        assertThat(last[0]).isCloseTo(90, within(1e-9));
        assertThat(last[1]).isCloseTo(-36, within(1e-9));
        assertThat(pair.motion().rows()).allSatisfy(row -> assertThat(row[3]).isPositive());
    }

    @Test
    void bendingIsToldAgainstTheStocksStrength() {
        Design light = design("gear-pair", "ratio: 2", "module: 1", "drive: {torque: 0.05Nm}");
        assertThat(finding(light, "bending").status()).isEqualTo(Status.PASS);
        Design heavy = design("gear-pair", "ratio: 2", "module: 1", "drive: {torque: 5Nm}");
        assertThat(finding(heavy, "bending").status()).isEqualTo(Status.FAIL);
        double hundredfold = 100 * finding(light, "bending").measured();
        assertThat(finding(heavy, "bending").measured()).isCloseTo(hundredfold, within(1e-6 * hundredfold));
        assertThat(heavy.remedies().toString()).contains("width");
        assertThat(dimension(light, "output-torque")).isCloseTo(50 * 2 * 0.9, within(1e-9));
    }

    @Test
    void otherLocalesSayTheSame() {
        Design here = design("gear-pair", "ratio: 5:3", "module: 0.8");
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            Design there = design("gear-pair", "ratio: 5:3", "module: 0.8");
            assertThat(there.findings()).isEqualTo(here.findings());
            assertThat(there.dimensions()).isEqualTo(here.dimensions());
            assertThat(there.choices()).isEqualTo(here.choices());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void threePhasesAndTheContactEnlarged() {
        Design pair = design("gear-pair", "ratio: 5:3", "module: 1");
        assertThat(pair.assembly().views())
                .extracting(v -> v.name())
                .containsExactly("mesh-1", "mesh-2", "mesh-3", "contact");
        assertThat(pair.assembly().views().get(3).window()).isPresent();
        assertThat(pair.assembly().views().get(3).lines()).isNotEmpty();
        double pitch = 360 / dimension(pair, "driver-teeth");
        for (int i = 0; i < 3; i++) {
            double angle =
                    pair.motion().rows().get(pair.assembly().views().get(i).state())[0];
            assertThat(angle / pitch).isCloseTo(i / 3.0, within(1e-9));
        }
    }
}
