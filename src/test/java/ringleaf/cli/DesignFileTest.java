// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** design.json of every preset against a schema of its own and against what the contract promises of it. */
class DesignFileTest {
    private static final List<String> ALWAYS = List.of(
            "full-opening",
            "least-opening",
            "blades",
            "pivot-radius",
            "blade-width",
            "blade-span",
            "blade-inner-radius",
            "cavity-radius",
            "outer-diameter",
            "envelope-width",
            "ring-travel",
            "pin-diameter",
            "layers",
            "depth");
    private static final List<String> WITH_PINION = List.of(
            "module",
            "pressure-angle",
            "pinion-teeth",
            "sector-teeth-full",
            "sector-teeth-cut",
            "pinion-profile-shift",
            "sector-profile-shift",
            "backlash",
            "centre-distance",
            "pinion-angle",
            "outline-deviation");
    private static final List<String> CHOICES = List.of("drive-pin", "pin-style", "slot", "hand", "drive");
    private static final String MOTION = "servo_deg,ring_deg,blade_deg,opening_diameter,opening_area,leak_area,lap,"
            + "slot_pressure_deg,pin_radius,clearance,clearance_at";

    @TempDir
    Path folder;

    static List<String> presets() {
        return Presets.names();
    }

    private static JsonSchema schema() throws IOException {
        try (InputStream in = DesignFileTest.class.getResourceAsStream("design.schema.json")) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(in);
        }
    }

    @ParameterizedTest
    @MethodSource("presets")
    void isWhatTheContractPromises(String preset) throws IOException {
        Ran ran = Ran.in(folder, "make", preset, "-o", "o");
        assertThat(ran.exit()).as(ran.err()).isZero();
        JsonNode design = new ObjectMapper().readTree(Files.readAllBytes(folder.resolve("o/design.json")));
        assertThat(schema().validate(design)).isEmpty();
        Set<String> listed = new TreeSet<>();
        design.get("files").forEach(file -> listed.add(file.asText()));
        listed.add("design.json");
        assertThat(listed).isEqualTo(onDisk());
        design.get("mechanisms").fields().forEachRemaining(each -> mechanism(each.getKey(), each.getValue(), listed));
    }

    private void mechanism(String name, JsonNode mechanism, Set<String> listed) {
        if (mechanism.get("kind").asText().equals("leaf-aperture")) {
            aperture(name, mechanism, listed);
        }
        for (JsonNode part : mechanism.get("parts")) {
            boolean drawn = part.get("layers").size() > 0;
            assertThat(part.get("files")).as(part.get("name").asText()).hasSize(drawn ? 2 : 0);
            assertThat(part.has("box") && part.has("area") && part.has("perimeter"))
                    .isEqualTo(drawn);
            part.get("files").forEach(file -> assertThat(listed).contains(file.asText()));
        }
        assertThat(listed).contains("views/" + name + "-exploded.svg", "motion/" + name + ".csv");
    }

    private void aperture(String name, JsonNode mechanism, Set<String> listed) {
        JsonNode dimensions = mechanism.get("dimensions");
        assertThat(ALWAYS).allMatch(dimensions::has);
        assertThat(CHOICES).allMatch(mechanism.get("choices")::has);
        if (mechanism.at("/choices/drive/value").asText().equals("pinion")) {
            assertThat(WITH_PINION).allMatch(dimensions::has);
        }
        if (mechanism.at("/choices/drive-pin/value").asText().equals("lever")) {
            assertThat(List.of("lever", "lever-angle")).allMatch(dimensions::has);
        }
        for (String view : List.of("open", "half", "closed", "exploded")) {
            assertThat(listed).contains("views/" + name + "-" + view + ".svg");
        }
        Path table = folder.resolve("o/motion/" + name + ".csv");
        assertThat(table).content().startsWith(MOTION + "\n").hasLineCount(182);
    }

    private Set<String> onDisk() throws IOException {
        Set<String> files = new TreeSet<>();
        try (Stream<Path> paths = Files.walk(folder.resolve("o"))) {
            paths.filter(Files::isRegularFile)
                    .forEach(path -> files.add(
                            folder.resolve("o").relativize(path).toString().replace('\\', '/')));
        }
        return files;
    }
}
