// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole runs with kerf, fits and sheets asked for. */
class SheetsRunTest {
    private static final String SPEC = """
            title: Lamp stop
            fabrication:
              kerf: true
              spares: 10%
              tabs: {count: 2, width: 0.5}
              sheet: {width: 210, height: 150, effort: 2}
              scale-bar: true
              blade: {process: photo-etch, stock: brass-0.15, kerf-width: 0.04}
              plate: {process: co2-laser, stock: acrylic-3}
              ring: {process: co2-laser, stock: acrylic-2}
            mechanisms:
              stop:
                kind: leaf-aperture
                full-opening: 30
                least-opening: 8
                blades: 10
                blade-thickness: 0.15
                fits: {pin-hole: press}
            """;

    @TempDir
    Path folder;

    private Ran make(String out, String... more) throws IOException {
        Files.writeString(folder.resolve("lamp.yaml"), SPEC);
        String[] args = new String[4 + more.length];
        System.arraycopy(new String[] {"make", "lamp.yaml", "-o", out}, 0, args, 0, 4);
        System.arraycopy(more, 0, args, 4, more.length);
        return Ran.in(folder, args);
    }

    @Test
    void everythingAskedForIsWrittenAndTwiceTheSame() throws IOException {
        Ran ran = make("one");
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(make("two").exit()).isZero();
        assertThat(Ran.listing(folder.resolve("one"))).isEqualTo(Ran.listing(folder.resolve("two")));
        assertThat(Ran.listing(folder.resolve("one")))
                .containsKeys(
                        "sheets.csv",
                        "sheets/photo-etch-brass-0-15-1.svg",
                        "sheets/photo-etch-brass-0-15-1.dxf",
                        "sheets/co2-laser-acrylic-3-1.svg",
                        "parts/stop-blade-kerf.svg",
                        "parts/stop-spacer-ring.svg")
                .doesNotContainKey("parts/stop-blade.svg");

        String blade = Files.readString(folder.resolve("one/parts/stop-blade-kerf.svg"));
        assertThat(blade)
                .contains("kerf of 0.04 mm is in")
                .doesNotContain("nominal")
                .contains("id=\"guide\"");
        String sheet = Files.readString(folder.resolve("one/sheets/photo-etch-brass-0-15-1.svg"));
        assertThat(sheet).contains("kerf of 0.04 mm is in").contains("inside before outside");
        // ten blades and a spare with two holes each, and three tooling holes
        String cut = sheet.substring(0, sheet.indexOf("id=\"mark\""));
        assertThat(cut.split("<circle", -1)).hasSizeGreaterThanOrEqualTo(26);

        JsonNode root =
                new ObjectMapper().readTree(folder.resolve("one/design.json").toFile());
        JsonNode stop = root.get("mechanisms").get("stop");
        JsonNode hole = null;
        for (JsonNode fit : stop.get("fits")) {
            hole = fit.get("name").asText().equals("drive-pin-hole") ? fit : hole;
        }
        assertThat(hole.get("fit").asText()).isEqualTo("press");
        assertThat(hole.get("nominal").asDouble()).isEqualTo(1);
        assertThat(hole.get("outline").asDouble()).isCloseTo(0.98, within(1e-9));
        assertThat(hole.get("drawn").asDouble()).isCloseTo(0.94, within(1e-9));
        for (JsonNode part : stop.get("parts")) {
            if (part.get("name").asText().equals("blade")) {
                assertThat(part.get("kerf").asDouble()).isEqualTo(0.04);
            }
        }
    }

    /** Colours by layer as they stand in a DXF file's table of layers, read line by line. */
    private static Map<String, String> colours(Path file) throws IOException {
        Map<String, String> colours = new TreeMap<>();
        List<String> lines = Files.readAllLines(file);
        for (int i = 0; i + 1 < lines.size(); i += 2) {
            if (lines.get(i).trim().equals("2") && lines.get(i - 1).equals("AcDbLayerTableRecord")) {
                for (int k = i + 2; !lines.get(k).trim().equals("0"); k += 2) {
                    if (lines.get(k).trim().equals("62")) {
                        colours.put(lines.get(i + 1), lines.get(k + 1).trim());
                    }
                }
            }
        }
        colours.remove("0");
        return colours;
    }

    /** Each layer of a file has a colour of its own, and by process what two lasers cut is told apart. */
    @Test
    void oneColourALayer() throws IOException {
        for (String line : new String[] {"usual", "by-process", "hairline"}) {
            Ran ran = make(
                    line,
                    "--formats",
                    "dxf",
                    "--set",
                    "fabrication.line=" + line,
                    "--set",
                    "fabrication.blade.process=fibre-laser");
            assertThat(ran.exit()).as(ran.err()).isZero();
            int layered = 0;
            try (Stream<Path> files = Files.walk(folder.resolve(line))) {
                for (Path file : (Iterable<Path>) files.filter(f -> f.toString().endsWith(".dxf"))::iterator) {
                    Map<String, String> colours = colours(file);
                    assertThat(colours.values()).as(file + " " + colours).doesNotHaveDuplicates();
                    layered += colours.size() > 2 ? 1 : 0;
                }
            }
            assertThat(layered).as("files with several layers").isGreaterThan(4);
            String sheets = line + "/sheets/";
            String fibre = colours(folder.resolve(sheets + "fibre-laser-brass-0-15-1.dxf"))
                    .get("cut");
            String co2 = colours(folder.resolve(sheets + "co2-laser-acrylic-3-1.dxf"))
                    .get("cut");
            assertThat(fibre.equals(co2)).as(line).isEqualTo(!line.equals("by-process"));
        }
    }

    @Test
    void whatCannotBeIsRefusedAndNothingIsWritten() throws IOException {
        String[][] wrong = {
            {"fabrication.sheet.width=40", "is too small for"},
            {"fabrication.plate.kerf-width=-0.1", "below the least"},
            {"stop.fits.pivot-bore=snug", "running | sliding"},
            {"fabrication.sheet.gap=0.05", "is below the kerf"},
            {"fabrication.plate.stock=brass-0.15", "does not make parts"},
            {"fabrication.plate.sheet={width: 300}", "height"},
            {"fabrication.spares=200%", "second set"},
        };
        for (String[] each : wrong) {
            Ran ran = make("none", "--set", each[0]);
            assertThat(ran.exit()).as(each[0] + ran.err()).isEqualTo(2);
            assertThat(ran.err()).contains(each[1]);
            assertThat(ran.showsATrace()).isFalse();
            assertThat(Files.exists(folder.resolve("none"))).isFalse();
        }
    }

    /** Printed parts of one stock lie together on a bed, as footprints with their levels. */
    @Test
    void printersHaveABed() throws IOException {
        Ran ran = make(
                "bed",
                "--set",
                "fabrication.ring={process: filament-print, stock: petg}",
                "--set",
                "fabrication.spacer={process: filament-print, stock: petg}",
                "--set",
                "fabrication.sheet.effort=1");
        assertThat(ran.exit()).as(ran.err()).isZero();
        String bed = Files.readString(folder.resolve("bed/sheets/filament-print-petg-1.svg"));
        assertThat(bed)
                .contains("id=\"level-1\"")
                .contains("id=\"level-2\"")
                .contains("spacer-ring: level-1 z 0 to ")
                .doesNotContain("id=\"cut\"")
                .doesNotContain("kerf of");
        assertThat(Files.readString(folder.resolve("bed/sheets.csv"))).contains("filament-print,petg,210,150,1,2,");
        Ran small = make(
                "none",
                "--set",
                "fabrication.ring={process: filament-print, stock: petg, sheet: {width: 50, height: 50}}");
        assertThat(small.exit()).isEqualTo(2);
        assertThat(small.err()).contains("50 by 50 mm is too small for drive-ring");
    }

    /** What a family says for itself goes over what is said for all, also for parts of other families of its stock. */
    @Test
    void ownSheetsGoOverThoseForAll() throws IOException {
        Ran ran = make(
                "own",
                "--set",
                "fabrication.plate={process: co2-laser, stock: acrylic-3, sheet: {width: 160, height: 120}}",
                "--set",
                "fabrication.spacer={process: co2-laser, stock: acrylic-3}",
                "--set",
                "fabrication.sheet.effort=1",
                "--anyway");
        // a spacer of whole sheets is too high for these pins, which is beside the point here
        assertThat(ran.exit()).as(ran.err()).isEqualTo(1);
        assertThat(Files.readString(folder.resolve("own/sheets.csv"))).contains("co2-laser,acrylic-3,160,120,");
        Ran two = make(
                "none",
                "--set",
                "fabrication.plate={stock: acrylic-3, sheet: {width: 160, height: 120}}",
                "--set",
                "fabrication.spacer={stock: acrylic-3, sheet: {width: 200, height: 120}}");
        assertThat(two.exit()).isEqualTo(2);
        assertThat(two.err()).contains("say it once, under plate or spacer: it holds for both");
    }

    /** A kerf that is measured on one machine never gets into what another one cuts, and one stock has one kerf. */
    @Test
    void kerfsBelongToProcessAndStock() throws IOException {
        assertThat(make(
                                "mixed",
                                "--set",
                                "fabrication.plate={process: co2-laser, stock: acrylic-3, kerf-width: 0.25}",
                                "--set",
                                "fabrication.spacer={process: co2-laser, stock: acrylic-3}",
                                "--set",
                                "fabrication.sheet.effort=1",
                                "--anyway")
                        .exit())
                .isEqualTo(1);
        JsonNode parts = new ObjectMapper()
                .readTree(folder.resolve("mixed/design.json").toFile())
                .get("mechanisms")
                .get("stop")
                .get("parts");
        for (JsonNode part : parts) {
            if (part.get("stock").asText().equals("acrylic-3")) {
                assertThat(part.get("kerf").asDouble())
                        .as(part.get("name").asText())
                        .isEqualTo(0.25);
            } else if (part.has("kerf") && !part.get("kerf").isNull()) {
                assertThat(part.get("kerf").asDouble())
                        .as(part.get("name").asText())
                        .isNotEqualTo(0.25);
            }
        }
        Ran two = make(
                "none",
                "--set",
                "fabrication.plate={stock: acrylic-3, kerf-width: 0.2}",
                "--set",
                "fabrication.spacer={stock: acrylic-3, kerf-width: 0.15}");
        assertThat(two.exit()).isEqualTo(2);
        assertThat(two.err()).contains("kerf-width", "both are acrylic-3 from one co2-laser");
    }

    @Test
    void leadsAreDrawnOnGuideAndContoursStayClosed() throws IOException {
        String[] effort = {"--set", "fabrication.sheet.effort=1"};
        make("without", effort);
        Ran ran = make("with", "--set", "fabrication.lead-in=1", effort[0], effort[1]);
        assertThat(ran.exit()).as(ran.err()).isZero();
        for (String file : new String[] {"parts/stop-base-plate-kerf.svg", "sheets/co2-laser-acrylic-3-1.svg"}) {
            String with = Files.readString(folder.resolve("with/" + file));
            String without = Files.readString(folder.resolve("without/" + file));
            int more = paths(guide(with)) - paths(guide(without));
            // ten bores, the opening, screws, the alignment
            assertThat(more).as(file).isGreaterThan(14);
            assertThat(paths(with) - paths(guide(with))).isEqualTo(paths(without) - paths(guide(without)));
        }
        // etching has no beginning
        String etched = "parts/stop-blade-kerf.svg";
        assertThat(Files.readString(folder.resolve("with/" + etched)))
                .isEqualTo(Files.readString(folder.resolve("without/" + etched)));
    }

    private static String guide(String svg) {
        return svg.substring(svg.indexOf("id=\"guide\""));
    }

    private static int paths(String svg) {
        return svg.split("<path", -1).length - 1;
    }

    @Test
    void slitNarrowerThanTheKerfHoldsFilesBack() throws IOException {
        Ran ran = make("slit", "--set", "fabrication.plate.kerf-width=1.9", "--set", "fabrication.sheet.gap=3");
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err()).contains("kerf-slits");
        assertThat(Ran.listing(folder.resolve("slit"))).doesNotContainKeys("parts/", "sheets/");
    }

    @Test
    void linesFollowTheProcessOrAreHairs() throws IOException {
        make("usual", "--set", "fabrication.sheet.effort=1");
        make("process", "--set", "fabrication.line=by-process");
        make("hair", "--set", "fabrication.line=hairline");
        String part = "parts/stop-base-plate-kerf.svg";
        String usual = Files.readString(folder.resolve("usual/" + part));
        String process = Files.readString(folder.resolve("process/" + part));
        String hair = Files.readString(folder.resolve("hair/" + part));
        assertThat(usual).contains("stroke-width=\"0.1\"").contains("#101010");
        assertThat(process).contains("stroke-width=\"0.1\"").contains("#d06000").doesNotContain("#101010");
        assertThat(hair).contains("stroke-width=\"0.01\"").doesNotContain("stroke-width=\"0.1\"");
    }

    @Test
    void nothingChangesUnlessItIsAskedFor() throws IOException {
        String plain = SPEC.replaceAll("(?m)^  (kerf|spares|tabs|sheet|scale-bar):.*\n", "")
                .replace(", kerf-width: 0.04", "");
        Files.writeString(folder.resolve("plain.yaml"), plain);
        assertThat(Ran.in(folder, "make", "plain.yaml", "-o", "plain").exit()).isZero();
        assertThat(Ran.listing(folder.resolve("plain")))
                .containsKey("parts/stop-blade.svg")
                .doesNotContainKeys("sheets/", "sheets.csv", "parts/stop-blade-kerf.svg");
        // fits are told all the same: the size that the file has, and what the machine makes of it
        JsonNode stop = new ObjectMapper()
                .readTree(folder.resolve("plain/design.json").toFile())
                .get("mechanisms")
                .get("stop");
        for (JsonNode fit : stop.get("fits")) {
            assertThat(fit.get("drawn")).as(fit.get("name").asText()).isEqualTo(fit.get("outline"));
        }
        assertThat(stop.get("fits").toString()).contains("kerf not in the file");
        assertThat(Ran.in(folder, "help", "fabrication").out())
                .contains("sheet.gap")
                .contains("kerf-width");
    }
}
