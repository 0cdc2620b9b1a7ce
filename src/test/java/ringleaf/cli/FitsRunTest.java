// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fits by name of every kind, and that the holes they tell of are in the files. */
class FitsRunTest {
    private static final String SPEC = """
            title: Lens and arm
            fabrication:
              gear: {process: co2-laser, stock: acrylic-3}
              plate: {process: co2-laser, stock: acrylic-3}
            mechanisms:
              lens:
                kind: gear-pair
                module: 1.5
                fits: {thread-clearance: fine}
                driver: {teeth: 24, bore: {axle: 5, fit: sliding}}
                driven: {teeth: 36, bore: {form: bearing, bearing: "626", fit: glue}, hub-screws: {screw: M3, count: 4}}
              cage:
                kind: gear
                place: {at: {z: 20}}
                teeth: 40
                bore: {form: keyway, axle: 8, fit: press, key-width: 2.5}
              arm:
                kind: belt-drive
                place: {at: {z: 40}}
                belt: T2.5
                ratio: 5:2
                driver: {teeth: 20}
                driven: {bore: {form: d, axle: 5, across: 4.5, fit: press}}
                servo: micro-180
                axle-bearing: 625
                fits: {bearing-seat: glue, thread-clearance: coarse}
              roller:
                kind: belt-drive
                place: {at: {z: 100}}
                belt: T2.5
                ratio: 1
                centres: fixed
                centre-distance: 69
                idler: {axle: 3}
                driver: {teeth: 24, bore: {axle: 4}}
                driven: {bore: {axle: 4}}
                fits: {axle: sliding}
            """;

    private static final Pattern CIRCLE = Pattern.compile("<circle [^>]*r=\"([0-9.]+)\"");

    @TempDir
    Path folder;

    private Ran make(String out, String... more) throws IOException {
        Files.writeString(folder.resolve("lens.yaml"), SPEC);
        List<String> args = new ArrayList<>(List.of("make", "lens.yaml", "-o", out));
        args.addAll(List.of(more));
        return Ran.in(folder, args.toArray(new String[0]));
    }

    private JsonNode mechanisms(String out) throws IOException {
        return new ObjectMapper()
                .readTree(folder.resolve(out + "/design.json").toFile())
                .get("mechanisms");
    }

    private static JsonNode fit(JsonNode mechanism, String name, String part) {
        for (JsonNode fit : mechanism.get("fits")) {
            if (fit.get("name").asText().equals(name)
                    && fit.get("part").asText().equals(part)) {
                return fit;
            }
        }
        throw new AssertionError(name + " of " + part + " is not among the fits");
    }

    /** Allowances of the carbon dioxide laser: 0.15 running, 0.2 sliding, 0.05 taken for a press fit, half for glue. */
    @Test
    void everyFitTakesWhatTheProcessAllows() throws IOException {
        Ran ran = make("one");
        assertThat(ran.exit()).as(ran.err()).isZero();
        JsonNode all = mechanisms("one");
        Object[][] rows = {
            {"lens", "bore", "driver", "sliding", 5.0, 5.2},
            {"lens", "bearing-seat", "driven", "glue", 19.0, 19.075},
            {"lens", "hub-screw-hole", "driven", "thread-clearance", 3.0, 3.2},
            {"cage", "bore", "gear", "press", 8.0, 7.95},
            {"cage", "keyway", "gear", "press", 2.5, 2.45},
            {"arm", "bearing-seat", "base-plate", "glue", 16.0, 16.075},
            {"arm", "screw-hole", "front-plate", "thread-clearance", 3.0, 3.6},
            {"arm", "axle-bearing", "axle-bearing", "glue", 16.0, 16.0},
            {"arm", "bore", "driven-pulley", "press", 5.0, 5.0},
            {"roller", "bore", "driven-pulley", "running", 4.0, 4.3},
            {"roller", "idler-axle-hole", "front-plate", "sliding", 3.0, 3.2},
            {"roller", "driver-axle-hole", "base-plate", "sliding", 4.0, 4.2},
            {"roller", "driven-axle", "driven-axle", "sliding", 4.0, 4.0},
        };
        for (Object[] row : rows) {
            JsonNode fit = fit(all.get((String) row[0]), (String) row[1], (String) row[2]);
            assertThat(fit.get("fit").asText()).isEqualTo(row[3]);
            assertThat(fit.get("nominal").asDouble()).isCloseTo((Double) row[4], within(1e-9));
            assertThat(fit.get("outline").asDouble()).as(fit.toString()).isCloseTo((Double) row[5], within(1e-9));
        }
        String parts = Files.readString(folder.resolve("one/parts.csv"));
        assertThat(parts).contains("ball bearing 625, 5 x 16 x 5 mm").contains("ball bearing 626, 6 x 19 x 6 mm");
    }

    /** Round holes that design.json tells of are circles of the drawn size in the part's file, with kerf and without. */
    @Test
    void holesAreInTheFiles() throws IOException {
        assertThat(make("plain").exit()).isZero();
        assertThat(make("kerf", "--kerf").exit()).isZero();
        int found = 0;
        for (String out : new String[] {"plain", "kerf"}) {
            Iterator<Map.Entry<String, JsonNode>> mechanisms = mechanisms(out).fields();
            while (mechanisms.hasNext()) {
                JsonNode mechanism = mechanisms.next().getValue();
                for (JsonNode fit : mechanism.get("fits")) {
                    String shape = fit.get("shape").asText();
                    String file = svg(mechanism, fit.get("part").asText());
                    boolean round = shape.equals("hole") || shape.equals("seat");
                    if (!round || file.isEmpty() || isFormed(fit)) {
                        continue;
                    }
                    String text = Files.readString(folder.resolve(out + "/" + file));
                    assertThat(circles(text, fit.get("drawn").asDouble()))
                            .as(out + " " + fit)
                            .isGreaterThanOrEqualTo(fit.get("count").asInt());
                    found++;
                }
            }
        }
        assertThat(found).isGreaterThan(40);
    }

    /** Bores that are no plain circles: the driven pulley of the arm, the cage's keyway. */
    private static boolean isFormed(JsonNode fit) {
        return fit.get("name").asText().equals("bore")
                && (fit.get("nominal").asDouble() == 8
                        || fit.get("nominal").asDouble() == 5
                                && fit.get("fit").asText().equals("press"));
    }

    private static String svg(JsonNode mechanism, String part) {
        for (JsonNode each : mechanism.get("parts")) {
            if (each.get("name").asText().equals(part) && !each.get("files").isEmpty()) {
                return each.get("files").get(0).asText();
            }
        }
        return "";
    }

    private static int circles(String svg, double diameter) {
        int count = 0;
        Matcher matcher = CIRCLE.matcher(svg);
        while (matcher.find()) {
            count += Math.abs(2 * Double.parseDouble(matcher.group(1)) - diameter) < 2e-6 ? 1 : 0;
        }
        return count;
    }

    @Test
    void whatContradictsItselfIsToldOfAllMechanismsAtOnce() throws IOException {
        Ran ran = make(
                "none",
                "--set",
                "lens.driven.bore.bearing=999",
                "--set",
                "lens.driver.bore.diameter=5",
                "--set",
                "cage.bore.bearing=623",
                "--set",
                "arm.axle-bearing=608",
                "--set",
                "roller.fits.bearing-seat=press");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err())
                .contains("there is no bearing 999")
                .contains("contradicts axle")
                .contains("has no meaning for a bore of form keyway")
                .contains("what does: 605, 625, 635")
                .contains("has no meaning without bearings");
        assertThat(ran.showsATrace()).isFalse();
        assertThat(make("none", "--set", "lens.driven.bore.fit=running").err()).contains("does not turn in its seat");
        assertThat(make("none", "--set", "lens.driven.bore.bearing=6206").err()).contains("a smaller bearing");
        assertThat(make("none", "--set", "lens.fits.thread-clearance=loose").err())
                .contains("fine | medium | coarse");
    }
}
