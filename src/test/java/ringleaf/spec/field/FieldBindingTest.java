// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

class FieldBindingTest {
    private final Problems problems = new Problems();

    private Values read(String text, LengthUnit units) {
        SpecSource source = SpecSource.of("vent.yaml", text);
        Node root = YamlReader.read(source, problems).orElseThrow();
        return VentFields.FIELDS.bind((Node.Mapping) root, source.at(1, 1), new Reading(units, problems));
    }

    private String messages(String text) {
        read(text, LengthUnit.MM);
        return problems.text();
    }

    @Test
    void givesTypedValuesInInnerUnits() {
        Values values = read("""
                full-opening: 2 1/2 in
                flaps: 14
                flap-thickness: 12thou
                outer-width: {at-most: 110}
                flap-span: 145
                stops: [32, 22.6mm, 16]
                marks: false
                drive:
                  at: 250
                  module: 0.8
                  torque: 1.8kgcm
                """, LengthUnit.IN);
        assertThat(problems.text()).isEmpty();
        assertThat(values.require(VentFields.OPENING)).isEqualTo(63.5);
        assertThat(values.require(VentFields.FLAPS)).isEqualTo(14);
        assertThat(values.get(VentFields.SHEET).orElseThrow()).isCloseTo(0.3048, within(1e-15));
        assertThat(values.bound(VentFields.WIDTH).atMost().orElseThrow()).isCloseTo(2794, within(1e-9));
        assertThat(values.bound(VentFields.SPAN).exactly().orElseThrow()).isCloseTo(Math.toRadians(145), within(1e-15));
        assertThat(values.require(VentFields.STOPS)).containsExactly(32 * 25.4, 22.6, 16 * 25.4);
        assertThat(values.require(VentFields.MARKS)).isFalse();
        Values drive = values.require(VentFields.DRIVE);
        assertThat(drive.require(VentFields.MODULE))
                .as("a module is in mm always")
                .isEqualTo(0.8);
        assertThat(drive.require(VentFields.AT)).isCloseTo(Math.toRadians(250), within(1e-15));
        assertThat(drive.require(VentFields.TORQUE)).isCloseTo(176.5197, within(1e-9));
    }

    @Test
    void anOldNameIsReadAsTheNewOneAndRefusedWithIt() {
        Field<Double> length = Field.length("overall-length").help("length over all");
        SpecSource source = SpecSource.of("vent.yaml", "within: 80");
        Node root = YamlReader.read(source, problems).orElseThrow();
        Values values =
                FieldSet.of(length).bind((Node.Mapping) root, source.at(1, 1), new Reading(LengthUnit.MM, problems));
        assertThat(values.require(length)).isEqualTo(80);
        assertThat(problems.text()).startsWith("vent.yaml:1:1: within: unknown key; it is now called overall-length\n");
        assertThat(problems.gaps()).isZero();
        assertThat(messages("within: 80")).as("where there is no such field").contains("within: unknown key; known: ");
    }

    @Test
    void fillsDefaultsAndTellsThemFromGivenValues() {
        Values values = read("{full-opening: 64, flaps: 14, drive: {}}", LengthUnit.CM);
        assertThat(problems.text()).isEmpty();
        assertThat(values.require(VentFields.LAP))
                .as("defaults are in mm in every document")
                .isEqualTo(0.6);
        assertThat(values.isGiven(VentFields.LAP)).isFalse();
        assertThat(values.isGiven(VentFields.FLAPS)).isTrue();
        assertThat(values.require(VentFields.PIN)).isEqualTo("two-holes");
        assertThat(values.get(VentFields.SHEET)).isEmpty();
        assertThat(values.bound(VentFields.WIDTH)).isEqualTo(Bound.open());
        Values drive = values.require(VentFields.DRIVE);
        assertThat(drive.require(VentFields.SPARE)).isEqualTo(0.5);
        assertThat(drive.isGiven(VentFields.BY)).isFalse();
        assertThat(values.where(VentFields.LAP).path()).isEqualTo("lap");
        assertThat(drive.where(VentFields.AT).path()).isEqualTo("drive.at");
    }

    @Test
    void reportsEveryWrongFieldInOneRun() {
        String text = messages("""
                full-opening: 0.5
                flaps: 2
                lapp: 1
                pin-style: tow-holes
                outer-width: {at-least: 90, at-most: 80}
                modul: 0.8
                drive: {at: 400, module: 0.1, torque: 5, by: steam}
                """);
        assertThat(text)
                .contains("vent.yaml:1:15: full-opening: 0.5 is below the least of 1 mm (a smaller gap is closed")
                .contains("vent.yaml:2:8: flaps: 2 is below the least of 3 (two flaps cannot close a round opening)\n"
                        + "  2 | flaps: 2\n    |        ^\n")
                .contains("vent.yaml:3:1: lapp: unknown key; did you mean lap?")
                .contains("vent.yaml:4:12: pin-style: tow-holes is not one of two-holes | posts; did you mean two-h")
                .contains("vent.yaml:5:14: outer-width: at-least 90 is above at-most 80")
                .contains("vent.yaml:6:1: modul: unknown key; did you mean module within drive?")
                .contains("drive.at: 400 is above the most of 360 deg")
                .contains("drive.module: 0.1 is below the least of 0.2 mm (finer teeth cannot be cut)")
                .contains("drive.torque: a torque needs a unit (Nmm, mNm, Nm, kgcm, ozin)")
                .contains("drive.by: steam is not one of pinion | hand");
        assertThat(problems.count()).isEqualTo(10);
    }

    @Test
    void saysWhatIsMissingAndGivesAnExample() {
        assertThat(messages("lap: 1"))
                .contains("full-opening: is missing (height that must be clear); e.g. full-opening: 64")
                .contains("flaps: is missing (number of flaps); e.g. flaps: 14");
    }

    @Test
    void refusesValuesOfTheWrongShape() {
        assertThat(messages("""
                        full-opening: [1, 2]
                        flaps: "14"
                        flap-thickness:
                        outer-width: {}
                        marks: yes
                        drive: pinion
                        note: "a\\tb"
                        """))
                .contains("full-opening: a length is wanted, and not a list")
                .contains("flaps: a whole number is wanted, and not a text in quotes")
                .contains("flap-thickness: has no value; a length is wanted; leave the key out for its default")
                .contains("outer-width: an empty map asks nothing")
                .contains("marks: yes is neither true nor false")
                .contains("drive: a map of keys and values is wanted, and not a single value")
                .contains("note: holds a character that is not seen (U+0009)");
    }

    @Test
    void namesTheNearestCountAndTheNearestLengthInTheUnitsWritten() {
        assertThat(messages("{full-opening: 0.01in, flaps: 14.4}"))
                .contains("0.01in is below the least of 1 mm")
                .contains("the nearest that works is 0.03938in")
                .contains("14.4 is not a whole number; the nearest that works is 14");
    }

    @Test
    void aDeclarationWithoutHelpOrRangeIsRefused() {
        assertThatThrownBy(() -> FieldSet.of(Field.count("n").help("count"))).hasMessageContaining("no range");
        assertThatThrownBy(() -> FieldSet.of(Field.number("n").help("x").atLeast(0, "why")))
                .hasMessageContaining("no range");
        assertThatThrownBy(() -> FieldSet.of(Field.length("n"))).hasMessageContaining("no line of help");
        assertThatThrownBy(() -> FieldSet.of(VentFields.LAP, VentFields.LAP)).hasMessageContaining("twice");
        assertThatThrownBy(() -> read("{}", LengthUnit.MM).get(VentFields.AT)).hasMessageContaining("not among");
    }
}
