// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Family;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.MotionTable;
import ringleaf.part.Part;
import ringleaf.part.ShownUnit;

class ReportTest {
    private static final Part RING = new Part(
            "drive-ring",
            Family.RING,
            1,
            new Part.Source("co2-laser", "acrylic-3"),
            List.of(Layer.of(Region.ring(Point.ORIGIN, 30, 40), 3, 6)),
            List.of(),
            "");
    private static final Part SCREW = new Part(
            "screw", Family.PIN, 6, new Part.Source("bought", "M2.5, 12 mm"), List.of(), List.of(), "with a nut");
    private static final Finding GOOD = Finding.of("lap")
            .at(Finding.Place.state(-1, "closed"))
            .atLeast(0.61, 0.6, "mm")
            .inWords("the blades overlap enough");
    private static final Finding BAD = Finding.of("light-tight")
            .onOutlines(1e-6)
            .about("blade 1", "blade 2")
            .at(Finding.Place.state(180, "state 180").withPoint(new ringleaf.geom.Point(3, -4)))
            .atMost(0.034, 0, "mm2")
            .inWords("the blades leave slits");

    private static Design design(List<String> remedies) {
        Map<String, Double> travel = new LinkedHashMap<>();
        travel.put("ring-travel", 85.61951234567891);
        travel.put("unknown", Double.NaN);
        List<double[]> rows = new ArrayList<>();
        rows.add(new double[] {0, 64.3, 1e-12});
        rows.add(new double[] {1.0 / 3, 20, Double.NaN});
        return new Design(
                "shutter",
                "leaf-aperture",
                List.of(new Choice("drive-pin", "lever", Dimension.Origin.SOLVED, "the smaller housing")),
                List.of(
                        new Dimension("blades", 14, "1", Dimension.Origin.GIVEN, ""),
                        new Dimension("pivot-radius", 0.1 + 0.2, "mm", Dimension.Origin.SOLVED, "limited by lap")),
                List.of(RING, SCREW),
                null,
                new MotionTable(
                        List.of("ring_deg", "opening_diameter", "leak_area"),
                        rows,
                        "clearance_at",
                        List.of("blade 1, ring", "a \"b\"")),
                List.of(GOOD),
                travel,
                remedies);
    }

    private static byte[] json() {
        return DesignJson.write(
                "0.1.0",
                "Harbour light",
                List.of(new MechanismReport(
                        design(List.of("2 mm more outside")),
                        List.of(GOOD, BAD),
                        Map.of("drive-ring", List.of("parts/shutter-drive-ring.svg")))),
                List.of(),
                Map.of());
    }

    @Test
    void designIsWrittenAsAgreed() throws Exception {
        JsonNode root = new ObjectMapper().readTree(json());
        assertThat(root.fieldNames()).toIterable().containsExactly("ringleaf", "title", "units", "mechanisms");
        JsonNode shutter = root.at("/mechanisms/shutter");
        assertThat(shutter.fieldNames())
                .toIterable()
                .containsExactly("kind", "choices", "dimensions", "parts", "findings", "travel", "remedies");
        assertThat(shutter.at("/choices/drive-pin/value").asText()).isEqualTo("lever");
        assertThat(shutter.at("/choices/drive-pin/from").asText()).isEqualTo("solved");
        assertThat(shutter.at("/dimensions/pivot-radius").toString())
                .isEqualTo("{\"value\":0.3,\"unit\":\"mm\",\"from\":\"solved\",\"how\":\"limited by lap\"}");
        assertThat(shutter.at("/dimensions/blades/from").asText()).isEqualTo("given");
        JsonNode ring = shutter.at("/parts/0");
        assertThat(ring.at("/layers/0/z").toString()).isEqualTo("[3,6]");
        assertThat(ring.at("/box").toString()).isEqualTo("[80,80]");
        assertThat(ring.at("/area").asDouble()).isEqualTo(Math.PI * 700, org.assertj.core.api.Assertions.within(1e-8));
        assertThat(ring.at("/files/0").asText()).isEqualTo("parts/shutter-drive-ring.svg");
        assertThat(shutter.at("/parts/1/files").size()).isZero();
        assertThat(shutter.at("/findings/1").toString())
                .isEqualTo("{\"check\":\"light-tight\",\"status\":\"fail\",\"measured\":0.034,\"limit\":0,"
                        + "\"unit\":\"mm2\",\"relation\":\"at most\",\"judge\":\"outlines\",\"slack\":1.0E-6,"
                        + "\"subjects\":[\"blade 1\",\"blade 2\"],\"state\":180,\"at\":[3,-4],"
                        + "\"where\":\"state 180, blade 1 and blade 2, at (3, -4)\","
                        + "\"message\":\"the blades leave slits\"}");
        assertThat(shutter.at("/travel/unknown").isNull()).isTrue();
        assertThat(new String(json(), StandardCharsets.UTF_8))
                .contains("85.619512346")
                .endsWith("}\n");
    }

    @Test
    void nothingDependsOnTheLocale() {
        byte[] json = json();
        byte[] csv = MotionCsv.write(design(List.of()).motion());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(json()).isEqualTo(json);
            assertThat(MotionCsv.write(design(List.of()).motion())).isEqualTo(csv);
            assertThat(FindingsText.of(List.of(GOOD), ShownUnit.MM, false)).contains("0.61 mm");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void tablesAreQuotedAsTheStandardSays() {
        assertThat(new String(MotionCsv.write(design(List.of()).motion()), StandardCharsets.UTF_8))
                .isEqualTo("ring_deg,opening_diameter,leak_area,clearance_at\n"
                        + "0,64.3,0,\"blade 1, ring\"\n"
                        + "0.333333333,20,,\"a \"\"b\"\"\"\n");
        assertThat(new String(PartsCsv.write(List.of(design(List.of()))), StandardCharsets.UTF_8))
                .isEqualTo("name,quantity,process,stock,size,mechanism,note,spares,pieces\n"
                        + "drive-ring,1,co2-laser,acrylic-3,80 x 80 x 3,shutter,,0,1\n"
                        + "screw,6,bought,\"M2.5, 12 mm\",\"M2.5, 12 mm\",shutter,with a nut,0,6\n");
    }

    @Test
    void findingsReadFailFirst() {
        assertThat(FindingsText.of(List.of(GOOD, BAD), ShownUnit.MM, false))
                .isEqualTo("      check        measured   limit            judged           where\n"
                        + "fail  light-tight  0.034 mm²  at most 0 mm²    on the geometry  state 180, blade 1 and blade 2,"
                        + " at (3, -4)\n"
                        + "      the blades leave slits\n"
                        + "pass  lap          0.61 mm    at least 0.6 mm  calculated       closed\n"
                        + "1 failed, 0 warned, 1 passed\n");
        assertThat(FindingsText.of(List.of(GOOD, BAD), ShownUnit.MM, true)).contains("\u001b[1;31mfail\u001b[0m");
        Finding none = Finding.of("lap")
                .unmeasured(Finding.Relation.AT_LEAST, 30, "deg", true)
                .inWords("was not measured");
        assertThat(FindingsText.of(List.of(none), ShownUnit.MM, false))
                .contains("lap    -")
                .contains("at least 30°");
    }

    @Test
    void whatDoesNotPassIsToldBrieflyTheWorstFirst() {
        Finding little = Finding.of("pin-clearance")
                .about("pivot-pin")
                .atLeast(0.0998, 0.1, "mm")
                .inWords("the pin is near its neighbour");
        Finding odd = Finding.of("belt-pull").orWarn().plain(false).inWords("compare it with the maker's figure");
        String brief = FindingsText.brief(List.of(GOOD, odd, little, BAD), ShownUnit.MM, false);
        assertThat(brief)
                .isEqualTo("fail  light-tight 0.034 mm², at most 0 mm²: state 180, blade 1 and blade 2, at\n"
                        + "      (3, -4) (on the geometry)\n"
                        + "      the blades leave slits\n"
                        + "fail  pin-clearance 0.0998 mm, at least 0.1 mm: pivot-pin (calculated)\n"
                        + "      the pin is near its neighbour\n"
                        + "warn  belt-pull (calculated)\n"
                        + "      compare it with the maker's figure\n");
        assertThat(Verdict.of(List.of(GOOD, odd, little, BAD), ShownUnit.MM).reason())
                .isEqualTo("light-tight 0.034 mm² where at most 0 mm² is allowed (state 180, blade 1 and blade 2);"
                        + " pin-clearance fails too");
        assertThat(Verdict.of(List.of(GOOD, odd), ShownUnit.MM).reason()).isEqualTo("1 check holds; mind belt-pull");
        assertThat(Verdict.of(List.of(GOOD, GOOD), ShownUnit.MM).reason()).isEqualTo("all 2 checks hold");
        assertThat(FindingsText.brief(List.of(GOOD), ShownUnit.MM, true)).isEmpty();
    }

    @Test
    void whatFailsByAHairIsToldSoThatItShows() {
        Finding hair = Finding.of("depth").atMost(16.0034, 16, "mm").inWords("front to back");
        assertThat(FindingWords.measured(hair, ShownUnit.MM)).isEqualTo("16.0034 mm");
        assertThat(FindingWords.limit(hair, ShownUnit.MM)).isEqualTo("at most 16 mm");
    }

    @Test
    void linesEndBeforeTheEdgeOfTheTerminal() {
        String words = "word ".repeat(60);
        assertThat(Wrap.of("  1. ", words, 5).lines()).hasSize(4).allMatch(line -> line.length() <= Wrap.WIDTH);
        assertThat(Wrap.of("", "x".repeat(100) + " y", 2)).isEqualTo("x".repeat(100) + "\n  y\n");
    }

    @Test
    void aViewSaysItsState() {
        MotionTable table = new MotionTable(
                List.of("servo_deg", "ring_deg", "slot_pressure_deg", "opening_diameter", "lap"),
                List.of(new double[] {0, 44.6474, 5.04, 35.618, 0.6}, new double[] {1, Double.NaN, 0, 64, 0}),
                "",
                List.of());
        assertThat(ViewFiles.caption(table, true, 0)).isEqualTo("servo 0°, ring 44.6°, opening 35.62 mm");
        assertThat(ViewFiles.caption(table, true, 1)).isEqualTo("servo 1°, opening 64 mm");
        assertThat(ViewFiles.caption(table, true, 2)).isEmpty();
    }

    @Test
    void filesStayInTheirFolder() {
        FileSet files = new FileSet();
        assertThat(files.add("parts/a.svg", new byte[1])).isEqualTo("parts/a.svg");
        assertThat(files.add("parts/a.svg", new byte[2])).isEqualTo("parts/a-2.svg");
        assertThat(files.files().keySet()).containsExactly("parts/a.svg", "parts/a-2.svg");
        for (String bad : List.of("/a", "../a", "a/../b", "a//b", "", "a\\b", "a b", ".a", "a/")) {
            assertThatThrownBy(() -> files.add(bad, new byte[0])).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(FileNames.of("../Harbour  Light\u0000!")).isEqualTo("harbour-light");
        assertThat(FileNames.of("\u00e9\u00e9")).isEqualTo("unnamed");
        assertThat(FileNames.of("x".repeat(500))).hasSize(60);
    }
}
