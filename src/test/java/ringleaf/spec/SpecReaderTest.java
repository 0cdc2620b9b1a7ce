// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.VentFields;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecRefused;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

class SpecReaderTest {

    @Test
    void readsAWholeDocument() {
        Specs specs = new Specs();
        SpecDocument document = specs.read(Specs.WHOLE).orElseThrow(() -> new SpecRefused(specs.problems));
        assertThat(document.title()).isEqualTo("Harbour light");
        assertThat(document.slug()).isEqualTo("harbour-light");
        assertThat(document.units()).isEqualTo(LengthUnit.MM);
        assertThat(document.mechanisms()).extracting(MechanismSpec::name).containsExactly("vent", "slide-2");
        assertThat(document.mechanisms().get(0).values().require(VentFields.OPENING))
                .isEqualTo(63.5);
        Making blade = document.fabrication().given("blade").orElseThrow();
        assertThat(blade.process().name()).isEqualTo("fibre-laser");
        assertThat(blade.stock().thickness()).hasValue(0.15);
        assertThat(document.fabrication().of("plate", 3).process().name())
                .as("the usual process of the stock")
                .isEqualTo("co2-laser");
    }

    @Test
    void theSmallestSpecTakesDefaults() {
        SpecDocument document = new Specs().read(Specs.SMALLEST).orElseThrow();
        assertThat(document.title()).isEqualTo("harbour light");
        assertThat(document.slug()).isEqualTo("harbour-light");
        Making thin = document.fabrication().of("blade", 0.5);
        assertThat(thin.process().name()).isEqualTo("fibre-laser");
        assertThat(thin.stock().thickness()).hasValue(0.5);
        assertThat(thin.stock().slopeLimit()).as("thicker than shim").isCloseTo(Math.toRadians(3), within(1e-15));
        assertThat(thin.given()).isFalse();
        assertThat(document.fabrication().of("blade", 0.2).stock().slopeLimit())
                .isCloseTo(Math.toRadians(6), within(1e-15));
        assertThat(document.fabrication().of("blade", 0.8).process().makesLayers())
                .isTrue();
        assertThat(document.fabrication().of("plate", 3).stock().name()).isEqualTo("pla");
    }

    @Test
    void aDefaultThatAnOwnCatalogueSpoiltIsRefusedWithItsPlace() {
        Specs specs = new Specs();
        SpecDocument document = specs.read(
                        Specs.SMALLEST,
                        (file, problems) -> file.equals("processes.yaml")
                                ? List.of(SpecSource.of("mine.yaml", "processes: {filament-print: {kerf: -1}}"))
                                : List.of())
                .orElseThrow();
        assertThat(document.fabrication().of("blade", 0.2).process().name()).isEqualTo("fibre-laser");
        assertThatThrownBy(() -> document.fabrication().of("plate", 3))
                .isInstanceOf(SpecRefused.class)
                .hasMessageStartingWith("mine.yaml:1:36: filament-print.kerf: -1 is below the least of 0 mm");
    }

    @Test
    void aThicknessThatContradictsItsStockNamesBoth() {
        Specs specs = new Specs();
        SpecDocument document = specs.read(Specs.WHOLE.replace("{stock: acrylic-3}", "{stock: pla}"))
                .orElseThrow();
        Making blade = document.fabrication().of("blade", 0.2);
        var where = document.mechanisms().get(0).values().where(VentFields.SHEET);
        assertThat(blade.agrees(0.15, where, specs.problems)).isTrue();
        assertThat(blade.agrees(0.2, where, specs.problems)).isFalse();
        assertThat(specs.problems.text())
                .startsWith("harbour-light.yaml:7:3: flap-thickness: 0.2 mm contradicts the stock brass-0.15, "
                        + "which is 0.15 mm thick; ask for 0.15mm or name another stock\n");
        Making plate = document.fabrication().of("plate", 0.1);
        assertThat(plate.stock().thickness()).hasValue(0.1);
        assertThat(plate.agrees(0.1, where, specs.problems)).isFalse();
        assertThat(specs.problems.text())
                .contains("0.1 mm cannot be made by filament-print, which makes 0.4 to 200 mm");
    }

    @Test
    void tellsEverythingThatIsWrongInOneRun() {
        Problems problems = new Problems();
        Specs specs = new Specs();
        assertThat(specs.read("""
                        title: ../etc
                        unit: mm
                        fabrication:
                          blade: {process: co2-laser, stock: brass-0.15}
                          plates: {stock: acrylic-3}
                          ring: {stock: acrilic-3}
                          gear: {process: fiber-laser, stock: acrylic-3}
                          spacer: acrylic-3
                        mechanisms:
                          Vent 1: {kind: flap-vent, full-opening: 64, flaps: 14}
                          con: {kind: flap-vnt}
                          empty: {}
                          text: flap-vent
                          vent:
                            kind: flap-vent
                            flaps: 2
                        """)).isEmpty();
        assertThat(specs.problems.text())
                .contains(":1:8: title: holds a /, which parts folders")
                .contains(":2:1: unit: unknown key; did you mean units?")
                .contains(":4:20: fabrication.blade.process: co2-laser does not make parts of brass-0.15 "
                        + "(hard brass shim); what does: fibre-laser, photo-etch")
                .contains(":5:3: fabrication.plates: there is no such family of parts; did you mean plate?")
                .contains("fabrication.ring.stock: there is no stock acrilic-3 in stock.yaml; did you mean acrylic-3?")
                .contains("fabrication.gear.process: there is no process fiber-laser in processes.yaml; "
                        + "did you mean fibre-laser?")
                .contains("fabrication.spacer: a map with process: and stock: is wanted, and not a single value")
                .contains(":10:3: mechanisms: Vent 1 is not a name for a mechanism")
                .contains("mechanisms: con is a device's name on some systems")
                .contains("kind: there is no kind flap-vnt; did you mean flap-vent?")
                .contains("kind: is missing in empty; known: flap-vent, slide-vent")
                .contains("text: a map with a kind: is wanted")
                .contains(":14:3: full-opening: is missing")
                .contains(":16:12: flaps: 2 is below the least of 3 (two flaps cannot close a round opening)\n"
                        + "  16 |     flaps: 2\n     |            ^\n");
        assertThat(problems.isEmpty()).isTrue();
        assertThatThrownBy(specs.problems::throwIfAny)
                .isInstanceOf(SpecRefused.class)
                .hasMessage(specs.problems.text());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "# only a comment\n",
                "just a text",
                "- a\n- list\n",
                "<html><body>no</body></html>",
                "mechanisms: 5",
                "mechanisms:",
                "mechanisms: {}",
                "mechanisms: []",
                "{}",
                "title: x",
                "mechanisms: {a: }",
                "mechanisms: {a: {kind: [x]}}",
                "mechanisms: {a: {kind: flap-vent, full-opening: 64, flaps: 1e9}}",
                "mechanisms: {a: {kind: flap-vent, full-opening: 1 km, flaps: 3}}",
                "mechanisms: {a: {kind: flap-vent, full-opening: 1e12, flaps: 3}}",
                "mechanisms: {a: {kind: flap-vent, full-opening: .nan, flaps: 3}}",
                "mechanisms: {a: {kind: flap-vent, full-opening: -64, flaps: 3}}",
                "mechanisms: {a: {kind: flap-vent, full-opening: 0, flaps: 3}}",
                "mechanisms: {a: {kind: flap-vent, full-opening: '2,5', flaps: 3}}",
                "mechanisms: {a: {kind: flap-vent, full-opening: 64, flaps: 014}}",
                "mechanisms: {a: {kind: flap-vent, full-opening: 64, flaps: 3, <<: {}}}",
                "units: furlong\nmechanisms: {a: {kind: flap-vent, full-opening: 64, flaps: 3}}",
                "title: ''\nmechanisms: {a: {kind: flap-vent, full-opening: 64, flaps: 3}}",
                "title: \"a\\u0000b\"\nmechanisms: {a: {kind: flap-vent, full-opening: 64, flaps: 3}}",
                "title: '!!!'\nmechanisms: {a: {kind: flap-vent, full-opening: 64, flaps: 3}}",
                "mechanisms: {../a: {kind: flap-vent, full-opening: 64, flaps: 3}}",
                "fabrication: []\nmechanisms: {a: {kind: flap-vent, full-opening: 64, flaps: 3}}"
            })
    void refusesWithAMessageThatNamesTheFile(String text) {
        Specs specs = new Specs();
        assertThat(specs.read(text)).isEmpty();
        assertThat(specs.problems.text()).startsWith("harbour-light.yaml").doesNotContain("Exception");
    }

    @Test
    void aSpecWithoutIndentationIsToldWhereItsKeysBelong() {
        assertThat(Specs.messages("kind: flap-vent\nflaps: 14\nmechanisms:\n"))
                .contains(":1:1: kind: belongs to a mechanism; put it under its name within mechanisms:, indented")
                .contains(":2:1: flaps: belongs to a mechanism");
    }

    @Test
    void readsAndComplainsTheSameWhereDecimalsTakeAComma() {
        String wrong =
                Specs.WHOLE.replace("14", "1.5").replace("110", "0.0001in").replace("250", "2,5");
        String before = Specs.messages(wrong);
        String schema = SpecSchema.write(Specs.KINDS);
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Specs.messages(wrong)).isEqualTo(before).contains("0.0003938in");
            assertThat(SpecSchema.write(Specs.KINDS)).isEqualTo(schema);
            assertThat(Specs.messages(Specs.WHOLE)).isEmpty();
        } finally {
            Locale.setDefault(locale);
        }
    }

    @Test
    void refusesMoreMechanismsThanAFileShouldHold() {
        StringBuilder text = new StringBuilder("mechanisms:\n");
        for (int i = 0; i < 51; i++) {
            text.append("  v").append(i).append(": {kind: slide-vent}\n");
        }
        assertThat(Specs.messages(text.toString())).contains("51 mechanisms stand here, and 50 are the most");
        assertThat(new Specs().read(text.toString().replace("  v50: {kind: slide-vent}\n", "")))
                .isPresent();
    }

    @Test
    void garbageGivesProblemsAndNothingElse() {
        long seed = 4242;
        Random random = new Random(seed);
        String[] pieces = {
            "title",
            "units",
            "mechanisms",
            "vent",
            "kind",
            "flap-vent",
            "full-opening",
            ": ",
            "\n",
            "\n  ",
            "\n    ",
            "64",
            "{",
            "}",
            "[",
            "]",
            ",",
            "- ",
            "&a ",
            "*a",
            "!!x ",
            "|",
            ">",
            "'",
            "\"",
            "#",
            "? ",
            "\t",
            "é",
            "😀",
            "---",
            "%",
            "1/2",
            "in",
            "at-most",
            "null",
            "~",
            "2,5",
            ".nan",
            "@",
            "`"
        };
        for (int run = 0; run < 1200; run++) {
            StringBuilder text = new StringBuilder(run % 3 == 0 ? Specs.WHOLE : run % 3 == 1 ? Specs.SMALLEST : "");
            int changes = 1 + random.nextInt(12);
            for (int k = 0; k < changes; k++) {
                int at = random.nextInt(text.length() + 1);
                if (random.nextBoolean() && at < text.length()) {
                    text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(6)));
                } else {
                    text.insert(at, pieces[random.nextInt(pieces.length)]);
                }
            }
            Specs specs = new Specs();
            try {
                boolean read = specs.read(text.toString()).isPresent();
                assertThat(read).as("read or problems").isEqualTo(specs.problems.isEmpty());
            } catch (RuntimeException | StackOverflowError e) {
                throw new AssertionError("seed " + seed + ", run " + run + ":\n" + text, e);
            }
        }
    }

    @Test
    void rawBytesGiveProblemsAndNothingElse() throws Exception {
        long seed = 777;
        Random random = new Random(seed);
        for (int run = 0; run < 300; run++) {
            byte[] bytes = new byte[random.nextInt(300)];
            for (int i = 0; i < bytes.length; i++) {
                bytes[i] = (byte) (run % 2 == 0 ? 9 + random.nextInt(118) : random.nextInt(256));
            }
            Problems problems = new Problems();
            var source = SpecSource.read("noise", new java.io.ByteArrayInputStream(bytes), problems);
            if (source.isPresent()) {
                YamlReader.read(source.get(), problems);
            } else {
                assertThat(problems.isEmpty()).as("seed %d, run %d", seed, run).isFalse();
            }
            assertThat(problems.text()).doesNotContain("\u001b");
        }
    }
}
