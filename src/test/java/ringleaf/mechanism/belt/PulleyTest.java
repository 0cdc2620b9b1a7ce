// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

class PulleyTest {
    @Test
    void diametersFollowThePitchAndThePitchLine() {
        for (String[] row : Reference.rows("pulley-diameters.csv")) {
            Design design = Designs.of(Designs.pulley(row[0], Integer.parseInt(row[1])));
            // half a unit of the last digit
            assertThat(Designs.value(design, "pitch-diameter")).isCloseTo(Reference.number(row, 2), within(0.00005001));
            assertThat(Designs.value(design, "outside-diameter"))
                    .isCloseTo(Reference.number(row, 3), within(0.00005001));
        }
    }

    @Test
    void t5PulleysAreAsTabulatedAndNotByTheRule() {
        for (String[] row : Reference.rows("pulley-t5.csv")) {
            Design design = Designs.of(Designs.pulley("T5", Integer.parseInt(row[0])));
            assertThat(Designs.value(design, "pitch-diameter")).isCloseTo(Reference.number(row, 1), within(0.0051));
            assertThat(Designs.value(design, "outside-diameter")).isEqualTo(Reference.number(row, 2));
            assertThat(Designs.value(design, "flange-diameter")).isEqualTo(Reference.number(row, 3));
            double byRule = Designs.value(design, "pitch-diameter") - 2 * 0.5;
            assertThat(Designs.value(design, "outside-diameter") - byRule).isBetween(0.08, 0.24);
        }
    }

    @Test
    void countsBetweenTheRowsOfATableSaySo() {
        Design design = Designs.of(Designs.pulley("T5", 27));
        assertThat(Designs.how(design, "outside-diameter")).contains("not tabulated");
        double difference = Designs.value(design, "pitch-diameter") - Designs.value(design, "outside-diameter");
        assertThat(difference).isBetween(0.75, 0.93);
    }

    @Test
    void everyBeltGivesAPulleyThatTheJudgePasses() {
        for (String belt : List.of("MXL", "XL", "L", "T2.5", "T5", "T10", "3M", "5M", "8M", "curvilinear-2")) {
            Design design = Designs.of(Designs.pulley(belt, 24));
            assertThat(Designs.finding(design, "tooth-entry").status()).as(belt).isEqualTo(Finding.Status.PASS);
            assertThat(Designs.value(design, "outline-deviation")).isLessThanOrEqualTo(0.0005);
            for (Finding finding :
                    Judge.judge(design.assembly(), Options.DEFAULT).findings()) {
                assertThat(finding.status())
                        .as(belt + ": " + Spoken.of(finding))
                        .isEqualTo(Finding.Status.PASS);
            }
        }
    }

    /** Belts whose grooves are a maker's own say so, and none pretends to a table. */
    @Test
    void grooveFormsThatNoOpenSourceGivesAreNamed() {
        for (String belt : List.of("3M", "5M", "8M", "curvilinear-2")) {
            Design design = Designs.of(Designs.pulley(belt, 24));
            assertThat(design.choices().get(1).how()).contains("maker's own", "no open source", "tooth section");
        }
        assertThat(Designs.of(Designs.pulley("XL", 24)).choices().get(1).how()).doesNotContain("maker");
        assertThat(Designs.refusal(Designs.pulley("5M", 24, "groove: trapezoid")))
                .contains("round", "groove: generated");
    }

    @Test
    void straightSidedBeltsMayHaveTheTabulatedTrapezoid() {
        for (String belt : List.of("XL", "L", "T5", "T10")) {
            Design design = Designs.of(Designs.pulley(belt, 24, "groove: trapezoid"));
            Finding rolls = Designs.finding(design, "tooth-entry");
            assertThat(rolls.status()).as(belt + " " + Spoken.of(rolls)).isNotEqualTo(Finding.Status.FAIL);
            assertThat(Designs.finding(design, "tip-clearance").measured())
                    .as(belt)
                    .isPositive();
        }
        assertThat(Designs.refusal(Designs.pulley("T5", 24, "groove: trapezoid", "backlash: 0.1")))
                .contains("backlash", "tabulated");
    }

    @Test
    void sheetMakesAStackOfPlatesWithTheSameHoles() {
        String spec = "fabrication:\n  pulley: {process: co2-laser, stock: acrylic-3}\n"
                + Designs.pulley("T5", 24, "belt-width: 10", "bore: {form: keyway, diameter: 6}");
        Design design = Designs.of(spec);
        Part rim = part(design, "pulley");
        Part flange = part(design, "flange");
        assertThat(rim.quantity()).isEqualTo(4);
        assertThat(flange.quantity()).isEqualTo(2);
        assertThat(rim.layers()).hasSize(1);
        assertThat(rim.layers().get(0).height()).isCloseTo(3, within(1e-12));
        // bore and three joining screws in both
        assertThat(rim.layers().get(0).regions().get(0).holes()).hasSize(4);
        assertThat(flange.layers().get(0).regions().get(0).holes())
                .isEqualTo(rim.layers().get(0).regions().get(0).holes());
        assertThat(Designs.refusal(spec + "    hub-height: 4\n")).contains("flat sheet");
    }

    @Test
    void aPrintedPulleyHasSeatsThatCentreItsFlangesAndAHub() {
        Design design = Designs.of(Designs.pulley("T5", 24, "hub-height: 6", "hub-diameter: 14"));
        Part rim = part(design, "pulley");
        assertThat(rim.layers()).hasSize(4);
        double seat = Designs.value(design, "flange-seat");
        assertThat(rim.layers().get(0).regions().get(0).box().width()).isCloseTo(seat, within(1e-9));
        double hole = part(design, "flange")
                .layers()
                .get(0)
                .regions()
                .get(0)
                .holes()
                .get(0)
                .box()
                .width();
        assertThat(hole - seat).isBetween(0.05, 0.5);
        assertThat(rim.zTo() - rim.layers().get(2).zTo()).isCloseTo(6, within(1e-9));
    }

    @Test
    void badInputIsRefusedWithWhatWorks() {
        assertThat(Designs.refusal(Designs.pulley("T5", 9))).contains("least of 10", "nearest that works is 10");
        assertThat(Designs.refusal(Designs.pulley("T-5", 20))).contains("belts.yaml", "did you mean T5?");
        assertThat(Designs.refusal(Designs.pulley("T5", 20, "outside-diameter: 20")))
                .contains("pitch circle");
        assertThat(Designs.refusal(Designs.pulley("T5", 20, "bore: {diameter: 28}")))
                .contains("web", "works");
        assertThat(Designs.refusal(Designs.pulley("T5", 20, "backlash: 2"))).contains("nearest that works is 1.25");
        assertThat(Designs.refusal(Designs.pulley("T5", 20, "belt-width: 10", "face-width: 6")))
                .contains("narrower");
        assertThat(Designs.refusal(Designs.pulley("T5", 20, "flanges: none", "flange-diameter: 40")))
                .contains("no flanges");
    }

    @Test
    void aUsersOwnFileOverridesAValueAndASpecWritesOutABelt() {
        SharedFiles own = (name, problems) -> name.equals("belts.yaml")
                ? List.of(SpecSource.of("belts.yaml", "belts:\n  XL:\n    pitch-line: 0.3\n"))
                : List.of();
        Problems problems = new Problems();
        Design design = Designs.read(Designs.pulley("XL", 20), problems, own).orElseThrow();
        assertThat(Designs.value(design, "outside-diameter")).isCloseTo(20 * 5.08 / Math.PI - 0.6, within(1e-9));
        String written = "mechanisms:\n  p:\n    kind: pulley\n    teeth: 20\n    belt: {pitch: 4, pitch-line: 0.4,"
                + " tooth-width: 2.2, tooth-height: 1, belt-height: 2, root-radius: 0.3}\n";
        assertThat(Designs.value(Designs.of(written), "pitch-diameter")).isCloseTo(80 / Math.PI, within(1e-9));
        assertThat(Designs.refusal(written.replace("tooth-width: 2.2", "tooth-width: 0.5")))
                .contains("flanks");
        assertThat(Designs.refusal(written.replace(", tooth-height: 1", ""))).contains("tooth-height: is missing");
    }

    @Test
    void partNamesAreDistinct() {
        Design design = Designs.of(Designs.pulley("T5", 24));
        Set<String> names = new HashSet<>();
        for (Part part : design.parts()) {
            assertThat(names.add(part.name())).isTrue();
        }
    }

    private static Part part(Design design, String name) {
        return design.parts().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
