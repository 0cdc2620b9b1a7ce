// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.mechanism.aperture.Apertures.design;
import static ringleaf.mechanism.aperture.Apertures.dimension;
import static ringleaf.mechanism.aperture.Apertures.failed;
import static ringleaf.mechanism.aperture.Apertures.spec;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.Spoken;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;
import ringleaf.verify.StateReport;
import ringleaf.verify.Verdict;

class ApertureDesignTest {
    private static final String[] SMALLEST = {
        "full-opening: 64", "least-opening: 20", "blades: 14", "blade-thickness: 0.15"
    };

    @Test
    void theSmallestSpecIsTurnedByHandAndHolds() {
        Design design = design(spec(SMALLEST));
        assertThat(failed(design.findings())).isEmpty();
        assertThat(failed(Judge.judge(design.assembly(), Options.DEFAULT).findings()))
                .isEmpty();
        assertThat(Apertures.choice(design, "drive")).isEqualTo("hand");
        assertThat(Apertures.choice(design, "pin-style")).isEqualTo("two-holes");
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-light", "cold-frame-vent", "field-camera-stop"})
    void everyPresetHoldsByFormulasAndByOutlines(String preset) throws IOException {
        Design design = design(Files.readString(Path.of("presets", preset + ".yaml")));
        assertThat(failed(design.findings())).isEmpty();
        Verdict verdict = Judge.judge(design.assembly(), Options.DEFAULT);
        assertThat(failed(verdict.findings())).isEmpty();
        for (StateReport state : verdict.states()) {
            double[] row = design.motion().rows().get(state.state());
            assertThat(state.inscribed()).isCloseTo(row[3], within(1e-6));
            assertThat(state.leakArea()).isEqualTo(row[5]).isZero();
            assertThat((double) state.leafLayers()).isLessThanOrEqualTo(dimension(design, "layers"));
        }
    }

    /** Plates of 3 mm acrylic need webs of 3 mm, which is what bounds blades that have little to cover. */
    @ParameterizedTest
    @ValueSource(strings = {"8", "10", "12"})
    void thickPlatesKeepTheirWebsBesideThePivots(String least) {
        Design design = design(spec(
                        "full-opening: 30",
                        "least-opening: " + least,
                        "blades: 10",
                        "blade-thickness: 0.15",
                        "fits: {pin-hole: press}",
                        "clearances: {opening: 0.15, blade: 0.3, slot-end: 0.3, bore: 0.15, slot: 0.15, ring-radial: 0.15}")
                + """
                fabrication:
                  plate: {process: co2-laser, stock: acrylic-3}
                """);
        assertThat(failed(design.findings())).isEmpty();
        assertThat(failed(Judge.judge(design.assembly(), Options.DEFAULT).findings()))
                .isEmpty();
        double web = (dimension(design, "blade-width") - dimension(design, "pin-diameter") - 0.15) / 2;
        assertThat(web).isCloseTo(3, within(0.03));
    }

    /** Common practice, no source: 16 blades of 0.2 mm suit about 86 mm, and about 90 degrees of teeth drive them. */
    @Test
    void theTradesSetOfSixteenBladesComesOut() {
        Design design = design(spec(
                "full-opening: 86",
                "least-opening: 43",
                "blades: 16",
                "blade-thickness: 0.2",
                "drive-pin: far-end",
                "drive: {module: 0.8, servo: standard-180}"));
        assertThat(failed(design.findings())).isEmpty();
        double pitch = 360 / dimension(design, "sector-teeth-full");
        assertThat(dimension(design, "sector-teeth-cut") * pitch).isLessThanOrEqualTo(90 + pitch);
    }

    @Test
    void theMirrorImageHasTheSameFiguresAndTurnsTheOtherWay() {
        String[] driven = {
            "full-opening: 40", "least-opening: 12", "blades: 10", "blade-thickness: 0.1", "drive: {at: 200}"
        };
        List<String> right = new ArrayList<>(List.of(driven));
        right.add("hand: right");
        Design left = design(spec(driven));
        Design mirrored = design(spec(right.toArray(String[]::new)).replace("at: 200", "at: -200"));
        for (int i = 0; i < left.parts().size(); i++) {
            Part a = left.parts().get(i);
            Part b = mirrored.parts().get(i);
            assertThat(b.name()).isEqualTo(a.name());
            if (a.isDrawn()) {
                assertThat(area(b)).isCloseTo(area(a), within(1e-9 * area(a)));
            }
        }
        int last = left.motion().rows().size() - 1;
        assertThat(mirrored.motion().rows().get(last)[1])
                .isCloseTo(-left.motion().rows().get(last)[1], within(1e-12));
        List<Finding> ours = Judge.judge(left.assembly(), Options.DEFAULT).findings();
        List<Finding> theirs = Judge.judge(mirrored.assembly(), Options.DEFAULT).findings();
        for (int i = 0; i < ours.size(); i++) {
            assertThat(theirs.get(i).status()).isEqualTo(ours.get(i).status());
            assertThat(theirs.get(i).measured()).isCloseTo(ours.get(i).measured(), within(1e-6));
        }
    }

    @Test
    void aGivenOuterDiameterIsKeptAndItsRoomGoesIntoTheLap() {
        Design least = design(spec(SMALLEST));
        double outer = dimension(least, "outer-diameter") + 6;
        List<String> lines = new ArrayList<>(List.of(SMALLEST));
        lines.add("outer-diameter: " + outer);
        Design given = design(spec(lines.toArray(String[]::new)));
        assertThat(failed(given.findings())).isEmpty();
        assertThat(dimension(given, "outer-diameter")).isCloseTo(outer, within(1e-9));
        assertThat(dimension(given, "actual-lap")).isGreaterThanOrEqualTo(dimension(least, "actual-lap"));
    }

    @Test
    void bladesThatCannotCloseSoFarNameTheLeastOpeningThatWorks() {
        Design shut = design(spec("full-opening: 40", "least-opening: 0", "blades: 12", "blade-thickness: 0.1"));
        List<Finding> steep = failed(shut.findings());
        assertThat(steep).extracting(Finding::check).contains("blade-slope");
        assertThat(Spoken.of(steep.get(0))).contains("least opening");
    }

    @Test
    void aLeverAndALinearSlotWorkTogether() {
        Design design = design(spec(
                "full-opening: 40",
                "least-opening: 20",
                "blades: 9",
                "blade-thickness: 0.1",
                "lap: 1",
                "drive-pin: lever",
                "slot: linear-opening",
                "clearances: {bore: 0.02, slot: 0.02, ring-radial: 0.03}"));
        List<double[]> rows = design.motion().rows();
        double open = rows.get(0)[3];
        double closed = rows.get(rows.size() - 1)[3];
        for (int i = 0; i < rows.size(); i++) {
            double even = open + (closed - open) * i / (rows.size() - 1);
            assertThat(rows.get(i)[3]).isCloseTo(even, within(1e-9));
        }
        List<Finding> judged = Judge.judge(design.assembly(), Options.DEFAULT).findings();
        assertThat(failed(judged)).extracting(Finding::check).doesNotContain("pin-in-slot");
    }

    @Test
    void aLinearSlotPastTheDipIsRefusedAndTheDipNamed() {
        Design design = design(spec(
                "full-opening: 64",
                "least-opening: 20",
                "blades: 14",
                "blade-thickness: 0.15",
                "drive-pin: far-end",
                "slot: linear-opening"));
        assertThat(failed(design.findings())).anySatisfy(f -> {
            assertThat(f.check()).isEqualTo("slot-pressure-angle");
            assertThat(Spoken.of(f)).contains("dip").contains("motion file");
        });
    }

    @Test
    void postsOnTheBaseHoldThickBladesEitherWayRound() {
        for (String hand : List.of("left", "right")) {
            Design design = design(spec(
                    "full-opening: 80",
                    "least-opening: 50",
                    "blades: 8",
                    "blade-thickness: 0.9",
                    "pin-style: base-posts",
                    "pin-diameter: 2",
                    "hand: " + hand,
                    "drive: {module: 1, servo: standard-180, at: 30}"));
            assertThat(failed(design.findings())).isEmpty();
            assertThat(failed(Judge.judge(design.assembly(), Options.DEFAULT).findings()))
                    .isEmpty();
        }
    }

    /** A 24-tooth pinion on a 64 mm shutter must turn further than any 180 degree servo; a compound pair makes it. */
    @Test
    void aStepUpTurnsASmallPinionFarEnough() {
        for (String hand : List.of("left", "right")) {
            String[] lines = {
                "full-opening: 64",
                "least-opening: 20",
                "blades: 14",
                "blade-thickness: 0.15",
                "drive-pin: far-end",
                "hand: " + hand,
                "drive: {by: pinion, pinion-teeth: 24, module: 0.8}"
            };
            Design direct = design(spec(lines));
            assertThat(failed(direct.findings())).extracting(Finding::check).contains("servo-reaches");
            lines[6] = "drive: {by: step-up, module: 0.8}";
            Design stepped = design(spec(lines));
            assertThat(dimension(stepped, "pinion-teeth")).isEqualTo(24);
            assertThat(dimension(stepped, "servo-travel-used")).isLessThan(180);
            assertThat(failed(stepped.findings())).isEmpty();
            assertThat(failed(Judge.judge(stepped.assembly(), Options.DEFAULT).findings()))
                    .isEmpty();
        }
    }

    @Test
    void thinBladesDoNotHoldOnPosts() {
        Design design = design(spec(
                "full-opening: 64",
                "least-opening: 30",
                "blades: 12",
                "blade-thickness: 0.2",
                "pin-style: base-posts"));
        assertThat(failed(design.findings())).extracting(Finding::check).contains("pin-engagement");
    }

    /** Where every closed form holds, the judge of outlines, which knows none of them, must agree. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void formulasAndOutlinesAgreeOnRandomApertures(long seed) {
        String text = random(new Random(seed));
        Design design = design(text, 31);
        Verdict verdict = Judge.judge(design.assembly(), Options.DEFAULT);
        if (failed(design.findings()).isEmpty()) {
            assertThat(failed(verdict.findings())).as("seed %d%n%s", seed, text).isEmpty();
        }
        for (StateReport state : verdict.states()) {
            assertThat(state.inscribed())
                    .as("seed %d%n%s", seed, text)
                    .isCloseTo(design.motion().rows().get(state.state())[3], within(1e-6));
        }
    }

    private static String random(Random random) {
        double full = Math.round(200 + 1000 * random.nextDouble()) / 10.0;
        double least = Math.round(full * (2 + 6 * random.nextDouble())) / 10.0;
        int blades = 6 + random.nextInt(16);
        List<String> lines = new ArrayList<>(List.of(
                "full-opening: " + full,
                "least-opening: " + least,
                "blades: " + blades,
                "blade-thickness: " + (random.nextBoolean() ? 0.1 : 0.2)));
        if (random.nextBoolean()) {
            lines.add("hand: right");
        }
        if (random.nextBoolean()) {
            lines.add("drive: {at: " + random.nextInt(360) + ", servo: standard-180}");
        }
        if (random.nextInt(3) == 0) {
            lines.add("drive-pin: lever");
        }
        return spec(lines.toArray(String[]::new));
    }

    private static double area(Part part) {
        return part.layers().stream()
                .flatMap(l -> l.regions().stream())
                .mapToDouble(r -> r.area())
                .sum();
    }
}
