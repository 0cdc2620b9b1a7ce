// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.mechanism.aperture.Apertures.spec;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.mechanism.Bolt;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.part.Part;

/** Screws and spacers of an aperture can be bought or made, and reach what they hold. */
class FastenersTest {
    private static final List<String> DRIVEN = List.of(
            "full-opening: 64",
            "least-opening: 24",
            "blades: 14",
            "blade-thickness: 0.15",
            "drive: {servo: micro-180}");

    private static Part part(Design design, String name) {
        return design.parts().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private static List<Finding> found(Design design, String check) {
        return design.findings().stream().filter(f -> f.check().equals(check)).toList();
    }

    private static String with(String head, String... lines) {
        List<String> all = new java.util.ArrayList<>(DRIVEN);
        all.addAll(List.of(lines));
        return spec(all.toArray(String[]::new)).replace("mechanisms:", head + "mechanisms:");
    }

    /** Whatever the stack comes to: the screw is sold, holds all threads of its nut, and the next shorter one would not. */
    @Test
    void screwsAreTheShortestOnesSoldThatReach() {
        Random random = new Random(77);
        for (int i = 0; i < 12; i++) {
            String text = spec(
                    "full-opening: " + (30 + random.nextInt(60)),
                    "least-opening: 12",
                    "blades: " + (6 + random.nextInt(10)),
                    "blade-thickness: 0.1",
                    "plate-thickness: " + (2 + random.nextInt(4)),
                    "screw: " + List.of("M2", "M2.5", "M3").get(random.nextInt(3)));
            Design design = Apertures.design(text, 7);
            ApertureDesign sizes = Apertures.sizes(text);
            double grip = sizes.stack().depth();
            String order = part(design, "screw").source().stock();
            double length = Double.parseDouble(order.replaceAll(".* x ([0-9.]+),.*", "$1"));
            double need = grip
                    + sizes.spec().screw().nutHeight()
                    + sizes.spec().screw().pitch();
            List<Double> lengths = sizes.spec().screw().sold().lengths();
            assertThat(lengths).as(text).contains(length);
            assertThat(length).isGreaterThanOrEqualTo(need - 1e-9);
            assertThat(lengths).noneMatch(other -> other >= need && other < length);
            assertThat(part(design, "nut").quantity())
                    .isEqualTo(part(design, "screw").quantity());
            Finding reaches = found(design, "screw-length").get(0);
            assertThat(reaches.measured())
                    .isCloseTo(length - grip - sizes.spec().screw().nutHeight(), within(1e-9));
        }
    }

    @Test
    void aStackThickerThanTheLongestScrewFails() {
        String text = spec(
                "full-opening: 64",
                "least-opening: 20",
                "blades: 14",
                "blade-thickness: 0.15",
                "screw: M1.6",
                "plate-thickness: 9");
        Finding reaches = found(Apertures.design(text, 7), "screw-length").get(0);
        assertThat(reaches.failed()).isTrue();
        assertThat(Spoken.of(reaches)).contains("M1.6 x 20").contains("not sold longer");
    }

    @Test
    void standoffsArePrintedExactlyAsLongAsTheServoNeedsAndStandOnEveryLongScrew() {
        Design design = Apertures.design(with(""), 7);
        ApertureDesign sizes = Apertures.sizes(with(""));
        Part standoff = part(design, "standoff");
        assertThat(standoff.source().process()).isEqualTo("filament-print");
        assertThat(standoff.zTo()).isCloseTo(sizes.stack().coverBottom(), within(1e-9));
        assertThat(standoff.zFrom()).isCloseTo(part(design, "servo-plate").zTo(), within(1e-9));
        List<Member> placed = design.assembly().members().stream()
                .filter(m -> m.part().name().equals("standoff"))
                .toList();
        assertThat(placed)
                .hasSize(standoff.quantity())
                .hasSize(sizes.housing().servoScrews().size());
        for (int i = 0; i < placed.size(); i++) {
            assertThat(placed.get(i).home().apply(sizes.housing().servoScrews().get(0)))
                    .isEqualTo(sizes.housing().servoScrews().get(i));
        }
        assertThat(part(design, "servo-screw").quantity()).isEqualTo(2);
        assertThat(found(design, "standoff-length")).singleElement().matches(f -> f.status() == Finding.Status.PASS);
    }

    @Test
    void withoutAPrinterAStandoffThatIsNotSoldIsToldOf() {
        Design design = Apertures.design(
                with("fabrication:\n  spacer: {process: co2-laser, stock: acrylic-2}\n"
                        + "  plate: {process: co2-laser, stock: acrylic-3}\n"),
                7);
        double length = Apertures.dimension(design, "servo-standoff");
        assertThat(found(design, "standoff-length")).singleElement().satisfies(f -> {
            assertThat(f.status()).isEqualTo(Finding.Status.WARN);
            assertThat(Spoken.of(f)).contains(ringleaf.part.Words.mm(length) + " long (");
        });
        assertThat(part(design, "standoff").isDrawn()).isFalse();
    }

    @Test
    void aPinThatIsNotSoldWarnsAndNamesItsNeighbours() {
        Design design = Apertures.design(with("", "pin-diameter: 1.1"), 7);
        assertThat(found(design, "rod-size")).singleElement().satisfies(f -> {
            assertThat(f.status()).isEqualTo(Finding.Status.WARN);
            assertThat(Spoken.of(f)).contains("1 and 1.2 mm are");
        });
    }

    @Test
    void theScrewOfATrialPieceHasTwoNuts() {
        String text = with("");
        ApertureDesign sizes = Apertures.sizes(text);
        Design piece = Apertures.trialPiece(text, 7, 3);
        Bolt bolt = new Bolt("trial-screw", sizes.spec().screw(), sizes.stack().ringTop(), 2);
        assertThat(part(piece, "trial-screw").source().stock())
                .isEqualTo(sizes.spec().screw().order(bolt.length()));
        assertThat(part(piece, "trial-nut").quantity()).isEqualTo(2);
    }

    /** Where the servo's ears lie on the base itself, heads before it would stand in spacer or cavity. */
    @Test
    void aServoOnTheBaseItselfIsToldToTakeFlatHeads() {
        Design design = Apertures.design(with("", "plate-thickness: 8"), 7);
        assertThat(part(design, "servo-plate")).isNull();
        assertThat(part(design, "servo-screw")).isNull();
        assertThat(found(design, "screw-head")).singleElement().satisfies(f -> {
            assertThat(f.status()).isEqualTo(Finding.Status.WARN);
            assertThat(Spoken.of(f)).contains("countersink the base");
        });
        assertThat(part(design, "packing").quantity()).isEqualTo(2);
        assertThat(design.assembly().members().stream()
                        .filter(m -> m.part().name().equals("packing")))
                .hasSize(2);
    }
}
