// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import ringleaf.spec.field.FieldHelp;
import ringleaf.spec.field.VentFields;

class SpecSchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(SpecSchema.write(Specs.KINDS));
    private static final String VENT = "mechanisms: {v: {kind: flap-vent, full-opening: 64, flaps: 14, %s}}";

    /** The text as an editor sees it: YAML 1.2 core turned into JSON. */
    private static boolean meets(String yaml) {
        LoadSettings core = LoadSettings.builder().setSchema(new CoreSchema()).build();
        JsonNode json = JSON.valueToTree(new Load(core).loadFromString(yaml));
        return SCHEMA.validate(json).isEmpty();
    }

    private static String vent(String more) {
        return VENT.replace("%s", more);
    }

    @Test
    void meetsItsOwnMetaSchemaAndIsTheSameTextEveryTime() throws Exception {
        String text = SpecSchema.write(Specs.KINDS);
        assertThat(SpecSchema.write(Specs.KINDS)).isEqualTo(text).endsWith("}\n");
        JsonSchema meta = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(JSON.readTree(text))).isEmpty();
        assertThat(text).contains("two flaps cannot close a round opening");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lap: 0",
                "lap: 3/8",
                "lap: 2 1/2 in",
                "lap: 86mm + 12thou",
                "lap: .5",
                "outer-width: {at-most: 110}",
                "outer-width: {at-least: 4in, at-most: 5in}",
                "outer-width: 110mm",
                "flap-span: 145",
                "flap-span: {at-most: 2.5rad}",
                "pin-style: posts",
                "stops: [32, 1in]",
                "stops: 32",
                "marks: false",
                "note: 64",
                "note: hello",
                "drive: {}",
                "drive: {at: 250, module: 0.8, torque: 1.8kgcm, spare: 20%, screw: M3}",
                "drive: {screw: 623}"
            })
    void whatReadsMeetsTheSchema(String more) {
        assertThat(Specs.messages(vent(more))).as("reads").isEmpty();
        assertThat(meets(vent(more))).isTrue();
    }

    @Test
    void wholeDocumentsMeetIt() {
        assertThat(meets(Specs.WHOLE)).isTrue();
        assertThat(meets(Specs.SMALLEST)).isTrue();
        assertThat(meets("title: 64\n" + Specs.SMALLEST)).isTrue();
        assertThat(meets("units: thou\n" + Specs.SMALLEST.replace("64", "60000")))
                .isTrue();
        assertThat(meets("units: in\n" + Specs.SMALLEST.replace("64", "0.05"))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lap: 5001",
                "lap: -1",
                "lap: '2,5'",
                "lap: 5 furlongs",
                "flaps: 2",
                "flaps: 65",
                "flaps: 14.5",
                "lapp: 1",
                "outer-width: {}",
                "outer-width: {atmost: 1}",
                "pin-style: glue",
                "marks: maybe",
                "stops: []",
                "drive: pinion",
                "drive: {module: 0.1}",
                "drive: {torque: 5}",
                "drive: {spare: 20}"
            })
    void whatIsRefusedFailsTheSchemaTooWhereASchemaCanSay(String more) {
        String text = more.startsWith("flaps")
                ? "mechanisms: {v: {kind: flap-vent, full-opening: 64, " + more + "}}"
                : vent(more);
        assertThat(Specs.messages(text)).as("is refused").isNotEmpty();
        assertThat(meets(text)).isFalse();
    }

    @Test
    void wrongDocumentsFailIt() {
        for (String wrong : new String[] {
            "{}",
            "mechanisms: {}",
            "mechanisms: {v: {}}",
            "mechanisms: {v: {kind: nothing}}",
            "mechanisms: {V: {kind: slide-vent}}",
            "mechanisms: {v: {kind: slide-vent, flaps: 3}}",
            "title: a/b\n" + Specs.SMALLEST,
            "title: a..b\n" + Specs.SMALLEST,
            "title: ''\n" + Specs.SMALLEST,
            "units: ft\n" + Specs.SMALLEST,
            "extra: 1\n" + Specs.SMALLEST,
            "fabrication: {plates: {stock: pla}}\n" + Specs.SMALLEST,
            "fabrication: {plate: {process: co2-laser}}\n" + Specs.SMALLEST,
            Specs.SMALLEST.replace("full-opening: 64", "full-opening: 0.5")
        }) {
            assertThat(Specs.messages(wrong)).as(wrong).isNotEmpty();
            assertThat(meets(wrong)).as(wrong).isFalse();
        }
    }

    @Test
    void everyRandomSpecThatReadsMeetsTheSchema() {
        long seed = 31;
        Random random = new Random(seed);
        String[] lengths = {"64", "0.01", "5000", "12thou", "3/8in", "1 1/2", "0", "5001", "200000", "1e3", "64mm + 1in"
        };
        String[] units = {"mm", "cm", "in", "thou"};
        int read = 0;
        for (int run = 0; run < 1500; run++) {
            String text = "units: " + units[random.nextInt(4)] + "\nmechanisms: {v: {kind: flap-vent, flaps: "
                    + random.nextInt(70) + ", full-opening: " + lengths[random.nextInt(lengths.length)] + ", lap: "
                    + lengths[random.nextInt(lengths.length)] + ", outer-width: {at-least: "
                    + lengths[random.nextInt(lengths.length)] + "}, drive: {module: "
                    + lengths[random.nextInt(lengths.length)] + "}}}";
            if (Specs.messages(text).isEmpty()) {
                read++;
                assertThat(meets(text))
                        .as("seed %d, run %d: %s", seed, run, text)
                        .isTrue();
            }
        }
        assertThat(read).isGreaterThan(60);
    }

    @Test
    void helpAndThePageOfDefaultsComeFromTheSameDeclaration() {
        assertThat(FieldHelp.text(VentFields.FIELDS))
                .contains("  lap             least overlap of neighbours\n"
                        + "                  length, 0 to 5000 mm; default: 0.6mm\n")
                .contains("  drive.module    module of the teeth\n")
                .contains("  two-holes | posts; default: two-holes\n                    two-holes: both are wire\n")
                .contains("whole number, 3 to 64; must be given");
        assertThat(FieldHelp.markdown(VentFields.FIELDS))
                .contains("| `flaps` | number of flaps | whole number, 3 to 64 (least: two flaps cannot close a round "
                        + "opening; most: more than 64 flaps are too many hinges) | must be given |")
                .contains("two-holes \\| posts (two-holes: both are wire; posts: the base carries posts) | two-holes");
    }
}
