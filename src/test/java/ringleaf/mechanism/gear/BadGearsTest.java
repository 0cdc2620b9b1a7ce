// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.mechanism.gear.Gears.refusal;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.part.Design;

/** What cannot be is refused in its place, with the limit and the nearest that works; the nearest then does. */
class BadGearsTest {
    @Test
    void teethBelowThePossible() {
        assertThat(refusal("gear", "teeth: 3")).contains("teeth: 3 is below the least of 4");
        assertThat(refusal("gear", "teeth: 4", "profile-shift: -0.5"))
                .contains("undercut cuts off")
                .contains("profile-shift: 4 teeth of module 1 cannot be");
        String pointed = refusal("gear", "teeth: 10", "profile-shift: 1.5");
        int from = pointed.indexOf("the nearest that works is ") + "the nearest that works is ".length();
        String nearest = pointed.substring(from, pointed.indexOf('\n', from));
        assertThat(refusal("gear", "teeth: 10", "profile-shift: " + nearest)).isEmpty();
        assertThat(refusal("gear", "teeth: 6")).isEmpty();
        assertThat(refusal("gear", "teeth: 10", "profile-shift: 1.5")).contains("meet at radius");
    }

    @Test
    void pairsOfDifferentTeeth() {
        assertThat(refusal("gear-pair", "driver: {teeth: 18, module: 1}", "driven: {teeth: 30, module: 0.8}"))
                .contains("driven.module: 0.8 mm and 1 mm do not mesh")
                .contains("the nearest that works is 1");
        assertThat(refusal(
                        "gear-pair",
                        "driver: {teeth: 18, pressure-angle: 20}",
                        "driven: {teeth: 30, pressure-angle: 25}"))
                .contains("driven.pressure-angle: 25° and 20° do not mesh");
    }

    @ParameterizedTest
    @CsvSource({"20,external", "26.5,external", "5,internal", "30,internal"})
    void distancesOutOfReachTellTheNearestAndItWorks(double distance, String mesh) {
        boolean inner = mesh.equals("internal");
        String driven = inner ? "driven: {teeth: 60}" : "driven: {teeth: 30}";
        String internal = "internal: " + inner;
        String text = refusal(
                "gear-pair", "module: 1", internal, "centre-distance: " + distance, "driver: {teeth: 18}", driven);
        assertThat(text).contains("is out of reach of 18 and").contains("they mesh from");
        int from = text.indexOf("the nearest that works is ") + "the nearest that works is ".length();
        String nearest = text.substring(from, text.indexOf("mm", from));
        assertThat(refusal(
                        "gear-pair",
                        "module: 1",
                        internal,
                        "centre-distance: " + nearest,
                        "driver: {teeth: 18}",
                        driven))
                .isEmpty();
    }

    @Test
    void boresThatEatTheRoot() {
        String text = refusal("gear", "teeth: 20", "bore: {diameter: 17}");
        assertThat(text).contains("eats the root").contains("the nearest that works is diameter: 15.9mm");
        assertThat(refusal("gear", "teeth: 20", "bore: {diameter: 15.9mm}")).isEmpty();
        String screws = refusal("gear", "teeth: 20", "hub-screws: {screw: M3, count: 4, circle: 16}");
        assertThat(screws).contains("hub-screws.circle: screws on a circle of 16 mm come nearer to the rim");
        assertThat(refusal("gear", "teeth: 20", "hub-screws: {screw: M3, count: 4, circle: " + nearest(screws) + "}"))
                .isEmpty();
        assertThat(refusal("gear", "teeth: 60", "internal: true", "ring-diameter: 62"))
                .contains("leaves less than the web")
                .contains("the nearest that works is 64.1mm");
        assertThat(refusal("gear", "teeth: 60", "internal: true", "ring-diameter: 64.1"))
                .isEmpty();
    }

    /** Solved teeth and modules have the limits of those that are spelt out, so that no valid spec grows without end. */
    @Test
    void solvedTeethAreNoMoreThanGivenOnesMayBe() {
        String text = refusal("gear-pair", "ratio: 1000", "driver: {teeth: 20}");
        assertThat(text).contains("takes 20 and 20000 teeth, and 1000 are the most of one gear");
        assertThat(refusal("gear-pair", "ratio: " + nearest(text), "driver: {teeth: 20}"))
                .isEmpty();
        assertThat(refusal("gear-pair", "ratio: 1000", "internal: true", "driver: {teeth: 60}"))
                .contains("takes 60 and 60000 teeth");
        assertThat(refusal("gear-pair", "ratio: 0.002", "driven: {teeth: 20}")).contains("takes 10000 and 20 teeth");
        String far = refusal("gear-pair", "module: 1", "centre-distance: 5000", "driver: {teeth: 20}");
        assertThat(far).contains("takes 20 and 9980 teeth, and 1000 are the most of one gear");
        String coarse = refusal("gear-pair", "centre-distance: 5000", "driver: {teeth: 20}", "driven: {teeth: 60}");
        assertThat(coarse).contains("takes a module of 125, and 20 is the coarsest");
        assertThat(refusal(
                        "gear-pair",
                        "centre-distance: " + nearest(coarse),
                        "driver: {teeth: 20}",
                        "driven: {teeth: 60}"))
                .isEmpty();
        String large = refusal("gear", "teeth: 1000", "module: 20");
        assertThat(large).contains("make a gear of").contains("no stock is larger than 5000 mm");
        assertThat(refusal("gear", "teeth: 248", "module: 20")).isEmpty();
        assertThat(large).contains("the nearest that works is 248");
    }

    @Test
    void contradictionsNameBothSides() {
        assertThat(refusal("gear-pair", "ratio: 5:2", "driver: {teeth: 18}", "driven: {teeth: 30}"))
                .contains("2.5 contradicts 18 and 30 teeth, which make 1.6667")
                .contains("30:18");
        assertThat(refusal("gear-pair", "internal: true", "driver: {teeth: 30}", "driven: {teeth: 30}"))
                .contains("a ring of 30 teeth does not hold a driver of 30");
        assertThat(refusal("gear-pair", "module: 1")).contains("two of ratio");
        assertThat(refusal("gear-pair", "ratio: 900")).contains("gear-train");
        assertThat(refusal("gear-train", "module: 1")).contains("ratio: is missing");
        assertThat(refusal("gear-train", "ratio: 12", "stages: [{driver: {teeth: 14}, driven: {teeth: 40}}]"))
                .contains("contradicts the stages, which make 2.8571");
        assertThat(refusal("gear-pair", "driver: {teeth: 14}", "driven: {teeth: 40, sector: {}}"))
                .contains("travel: is missing");
        assertThat(refusal("gear", "teeth: 20", "sector: {teeth: 19}")).contains("the nearest that works is 18");
    }

    @Test
    void tipsThatDoNotFit() {
        String text = refusal("gear", "teeth: 20", "tip-rounding: 2");
        assertThat(text).contains("does not fit");
        int from = text.indexOf("the nearest that works is ") + "the nearest that works is ".length();
        String nearest = text.substring(from, text.indexOf("mm", from));
        assertThat(refusal("gear", "teeth: 20", "tip-rounding: " + nearest)).isEmpty();
        assertThat(refusal("gear", "teeth: 20", "tip-relief: 0.05", "tip-relief-depth: 2.2"))
                .contains("below the involute");
    }

    @Test
    void fieldsWithoutAMeaningAreRefused() {
        assertThat(refusal("gear", "teeth: 60", "internal: true", "bore: {diameter: 3}"))
                .contains("no meaning");
        assertThat(refusal("gear", "teeth: 20", "ring-diameter: 40")).contains("no meaning");
        assertThat(refusal("gear", "teeth: 20", "bore: {form: round, key-width: 2}"))
                .contains("no meaning");
        assertThat(refusal("gear", "teeth: 20", "bore: {form: d, diameter: 4, across: 1}"))
                .contains("between");
    }

    @Test
    void noRawNumbersInMessages() {
        assertThat(refusal("gear", "teeth: 10", "profile-shift: 1.5")).doesNotContainPattern("\\d\\.\\d{5}");
    }

    @Test
    void openingsThatDoNotFitAreRefusedAndTheNearestFits() {
        String wide = refusal("gear", "teeth: 60", "lightening: {form: spokes, count: 6, spoke-width: 9}");
        assertThat(wide).contains("lightening.spoke-width: 6 spokes of 9 mm leave windows");
        refitted(wide, "spoke-width: ", "lightening: {form: spokes, count: 6, spoke-width: %s}", 6);
        String many = refusal("gear", "teeth: 60", "lightening: {form: spokes, count: 24}");
        assertThat(many).contains("lightening.count: 24 spokes of");
        refitted(many, "count: ", "lightening: {form: spokes, count: %s}", 0);
        String thin = refusal("gear", "teeth: 60", "lightening: {form: spokes, spoke-width: 0.4}");
        assertThat(thin).contains("lightening.spoke-width: 0.4 mm is less than the least web");
        refitted(thin, "", "lightening: {form: spokes, spoke-width: %s}", 5);
        String holes = refusal("gear", "teeth: 20", "bore: {axle: 6}", "lightening: {form: holes, count: 24}");
        assertThat(holes).contains("lightening.count: 24 holes of the least web");
        assertThat(refusal("gear", "teeth: 16", "bore: {axle: 8}", "lightening: {form: spokes}"))
                .contains("lightening.form: between hub and rim there are");
        assertThat(refusal("gear", "teeth: 60", "sector: {teeth: 8, shape: segment}", "lightening: {form: holes}"))
                .contains("no meaning for a segment");
    }

    /** What is proposed reads, and the openings are cut. */
    private static void refitted(String refused, String named, String line, int count) {
        String start = "the nearest that works is " + named;
        int from = refused.indexOf(start) + start.length();
        assertThat(from).as(refused).isGreaterThan(start.length());
        String nearest = refused.substring(from).split("[^0-9.]", 2)[0];
        Design design = Gears.design("gear", "teeth: 60", String.format(line, nearest));
        int openings =
                design.parts().get(0).layers().get(0).regions().get(0).holes().size() - 1;
        assertThat(openings).as(nearest).isEqualTo(count > 0 ? count : Integer.parseInt(nearest));
    }

    @Test
    void backlashIsBlamedForWhatItTakes() {
        String gear = refusal("gear", "teeth: 20", "backlash: 5");
        assertThat(gear).contains("backlash: half of 5 mm is more than teeth of module 1 can lose");
        assertThat(refusal("gear", "teeth: 20", "backlash: " + nearest(gear))).isEmpty();
        for (String more : List.of("driven: {teeth: 40}", "centre-distance: 30.2\n    driven: {teeth: 40}")) {
            String pair = refusal("gear-pair", "module: 1", "backlash: 5", "driver: {teeth: 20}", more);
            assertThat(pair).contains("backlash: 5 mm is more than 20 and 40 teeth of module 1 can lose");
            assertThat(refusal("gear-pair", "module: 1", "backlash: " + nearest(pair), "driver: {teeth: 20}", more))
                    .isEmpty();
        }
        String train =
                refusal("gear-train", "stages: [{backlash: 5, driver: {teeth: 15}, driven: {teeth: 45}}]", "module: 1");
        assertThat(train).contains("stages.backlash: 5 mm is more than");
    }

    @Test
    void shiftsThatCannotBeTellTheNearest() {
        String driver =
                refusal("gear-pair", "module: 1", "driver: {teeth: 8, profile-shift: -0.9}", "driven: {teeth: 30}");
        assertThat(driver).contains("driver.profile-shift: 8 and 30 teeth of module 1 cannot be with it");
        assertThat(refusal(
                        "gear-pair",
                        "module: 1",
                        "driver: {teeth: 8, profile-shift: " + nearest(driver) + "}",
                        "driven: {teeth: 30}"))
                .isEmpty();
    }

    @Test
    void ringsTooSmallTellTheNearestThatRuns() {
        String text = refusal("gear-pair", "internal: true", "driver: {teeth: 30}", "driven: {teeth: 30}");
        Design pair = Gears.design(
                "gear-pair", "internal: true", "driver: {teeth: 30}", "driven: {teeth: " + nearest(text) + "}");
        assertThat(Gears.failed(pair)).isEmpty();
    }

    @Test
    void aShaftHasOneBoreAndAStageItsOwnBacklash() {
        assertThat(refusal(
                        "gear-train",
                        "stages:",
                        "  - {driver: {teeth: 15}, driven: {teeth: 45, bore: {axle: 4}}}",
                        "  - {driver: {teeth: 15, bore: {axle: 3}}, driven: {teeth: 45}}"))
                .contains("stages.driver.bore: the shaft's bore stands with the driven gear of stage 1");
        Design train = Gears.design(
                "gear-train",
                "stages:",
                "  - {backlash: 0.3, driver: {teeth: 15}, driven: {teeth: 45, bore: {diameter: 4.2}}}",
                "  - {driver: {teeth: 15}, driven: {teeth: 45}}");
        for (var layer : train.parts().get(1).layers()) {
            assertThat(layer.regions().get(0).holes().get(0).box().width()).isCloseTo(4.2, within(1e-9));
        }
        assertThat(Gears.dimension(train, "stage-1-backlash")).isCloseTo(0.3, within(1e-9));
        assertThat(refusal(
                        "gear-train",
                        "stages:",
                        "  - {driver: {teeth: 15}, driven: {teeth: 24, lightening: {form: holes}}}",
                        "  - {driver: {teeth: 18}, driven: {teeth: 45}}"))
                .contains("stages.driven.lightening.form: between hub and rim");
    }

    private static String nearest(String refused) {
        String start = "the nearest that works is ";
        int from = refused.indexOf(start);
        assertThat(from).as(refused).isPositive();
        return refused.substring(from + start.length()).split("[^0-9.-]", 2)[0];
    }

    @Test
    void oneRunTellsEverything() {
        assertThat(refusal(
                        "gear-pair",
                        "width: 0.01",
                        "driver: {teeth: 20, module: 1}",
                        "driven: {teeth: 30, module: 0.8, hub-screws: {circle: 4}}"))
                .contains("width: 0.01 is below")
                .contains("driven.module: 0.8 mm and 1 mm do not mesh")
                .contains("driven.hub-screws.circle: screws on a circle of 4 mm");
        assertThat(refusal("gear", "teeth: 20", "module: 50", "backlash: 5", "bore: {form: round, key-width: 2}"))
                .contains("module: 50 is above")
                .contains("bore.key-width: has no meaning");
    }
}
