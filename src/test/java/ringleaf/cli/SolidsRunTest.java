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
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.readback.MeshChecker;
import ringleaf.readback.ReadMesh;
import ringleaf.readback.StlReader;
import ringleaf.readback.ThreeMfReader;

/** Whole runs with solids asked for, and what is refused. */
class SolidsRunTest {
    private static final String PRINTED = """
            title: Printed stop
            mechanisms:
              stop:
                kind: leaf-aperture
                full-opening: 40
                least-opening: 30
                blades: 8
                blade-thickness: 0.6
                pin-style: one-glued
            """;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {"harbour-light", "lamp-carriage-rack", "lens-slide", "lens-turntable-gears", "semaphore-arm-belt"
            })
    void solidsOfPresetsHaveNoFaultAndTheVolumeOfTheirOutlines(String preset) throws Exception {
        String[] args = {"make", preset, "-o", "out", "--formats", "stl,3mf", "--solids", "all", "--states", "21"};
        Ran ran = Ran.in(folder, args);
        assertThat(ran.exit()).as(ran.err()).isZero();
        JsonNode root =
                new ObjectMapper().readTree(folder.resolve("out/design.json").toFile());
        boolean checker = MeshChecker.isThere();
        int solids = 0;
        for (JsonNode mechanism : root.get("mechanisms")) {
            for (JsonNode part : mechanism.get("parts")) {
                for (JsonNode file : part.get("files")) {
                    assertThat(folder.resolve("out").resolve(file.asText())).exists();
                    if (file.asText().endsWith(".stl")) {
                        solids++;
                        check(folder.resolve("out").resolve(file.asText()), part, checker);
                    }
                }
            }
        }
        assertThat(solids).isGreaterThan(2);
        List<String> listed = new ArrayList<>();
        root.get("files").forEach(f -> listed.add(f.asText()));
        try (Stream<Path> written = Files.list(folder.resolve("out/solids"))) {
            written.forEach(p -> assertThat(listed).contains("solids/" + p.getFileName()));
        }
    }

    private static void check(Path file, JsonNode part, boolean checker) throws Exception {
        byte[] bytes = Files.readAllBytes(file);
        assertThat(StlReader.header(bytes)).startsWith("mm, chords within 0.01 mm");
        ReadMesh read = StlReader.read(bytes);
        assertThat(read.faults()).isZero();
        if (part.get("layers").size() == 1) {
            double height = part.get("layers").get(0).get("z").get(1).asDouble()
                    - part.get("layers").get(0).get("z").get(0).asDouble();
            double bound = 0.01 * part.get("perimeter").asDouble() * height + 0.01;
            assertThat(read.volume()).isCloseTo(part.get("area").asDouble() * height, within(bound));
            assertThat(read.greatest(2)).isCloseTo(height, within(1e-5));
        }
        if (checker) {
            assertThat(MeshChecker.volume(file, 1)).isCloseTo(read.volume(), within(1e-4 * read.volume()));
        }
    }

    @Test
    void printedPartsByDefaultOnePlateForEachStockAndTwiceTheSameBytes() throws Exception {
        Files.writeString(folder.resolve("stop.yaml"), PRINTED);
        for (String out : new String[] {"one", "two"}) {
            Ran ran = Ran.in(folder, "make", "stop.yaml", "-o", out, "--formats", "svg,stl,3mf", "--chord", "0.05mm");
            assertThat(ran.exit()).as(ran.err()).isZero();
        }
        assertThat(Ran.listing(folder.resolve("one"))).isEqualTo(Ran.listing(folder.resolve("two")));
        assertThat(Ran.listing(folder.resolve("one")).keySet())
                .contains("solids/stop-blade.stl", "solids/stop-base-plate.stl", "solids/filament-print-pla.3mf")
                .doesNotContain("solids/stop-drive-pin.stl", "parts/stop-blade.dxf");
        ThreeMfReader.Plate plate =
                ThreeMfReader.read(Files.readAllBytes(folder.resolve("one/solids/filament-print-pla.3mf")));
        assertThat(plate.metadata().get("Description")).contains("chords within 0.05 mm");
        assertThat(plate.copies().stream().filter(c -> c.number().startsWith("stop-blade ")))
                .hasSize(8);
        for (ThreeMfReader.Solid solid : plate.solids()) {
            assertThat(solid.mesh().faults()).as(solid.name()).isZero();
            assertThat(solid.mesh().least(2)).isZero();
        }
        // an earlier run's solids go when they are no longer asked for
        assertThat(Ran.in(folder, "make", "stop.yaml", "-o", "one").exit()).isZero();
        assertThat(Ran.listing(folder.resolve("one")).keySet()).doesNotContain("solids/stop-blade.stl");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "stl | blade | 0.15 mm is thinner than anything here prints (filament-print from 0.4 mm",
                "stl | servo,nut | no solid of servo: it is bought (micro-180",
                "stl | servo,nut | no solid of nut: it is bought (M2 nut, ISO 4032) and not made here",
                "3mf | base-plat | there is no part base-plat; did you mean base-plate?",
                "3mf | base-plate, | a name of a part is empty",
                "svg | all | --solids all has no meaning without stl, 3mf or step among --formats"
            })
    void solidsThatCannotBeAreRefusedAndNothingIsWritten(String formats, String parts, String message)
            throws IOException {
        Ran ran = Ran.in(folder, "make", "harbour-light", "--formats", formats, "--solids", parts, "--states", "9");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains(message);
        assertThat(Ran.listing(folder)).containsOnlyKeys("/");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.0001 | is below the least of 0.0005 mm",
                "2mm | is above the most of 0.5 mm",
                "fine | is not a length",
                "0,01 | decimal"
            })
    void chordsThatCannotBeAreRefused(String chord, String message) {
        Ran ran = Ran.in(folder, "make", "harbour-light", "--formats", "stl", "--chord", chord);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("--chord: ").contains(message);
    }

    @Test
    void nothingPrintedIsSaidInsteadOfAnEmptyFolder() throws IOException {
        Files.writeString(folder.resolve("pair.yaml"), """
                title: Pair
                fabrication:
                  gear: {process: co2-laser, stock: acrylic-3}
                  plate: {process: co2-laser, stock: acrylic-3}
                mechanisms:
                  pair:
                    kind: gear
                    teeth: 24
                """);
        Ran ran = Ran.in(folder, "make", "pair.yaml", "--formats", "stl");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("no part of this spec is printed; --solids all");
    }

    @Test
    void bladesThinnerThanThePrinterPrintsAreRefusedWithTheReason() throws IOException {
        String[] printed = {
            "make",
            "harbour-light",
            "--formats",
            "stl",
            "--set",
            "fabrication.blade.process=filament-print",
            "--set",
            "fabrication.blade.stock=petg"
        };
        Ran ran = Ran.in(folder, printed);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("0.15 mm is outside what filament-print makes, 0.4 to 200 mm");
        assertThat(Ran.listing(folder)).containsOnlyKeys("/");
    }

    /** STEP alone is of every part that is made, thin ones too; with a format of printers it is of the same parts. */
    @Test
    void stepIsOfAllPartsUnlessItGoesWithMeshes() throws Exception {
        Ran alone = Ran.in(folder, "make", "harbour-light", "-o", "alone", "--formats", "step", "--states", "21");
        assertThat(alone.exit()).as(alone.err()).isZero();
        assertThat(solids("alone"))
                .contains("shutter-blade.step", "shutter-base-plate.step", "shutter-spacer-ring.step")
                .allMatch(name -> name.endsWith(".step"));
        Ran both = Ran.in(folder, "make", "harbour-light", "-o", "both", "--formats", "stl,step", "--states", "21");
        assertThat(both.exit()).as(both.err()).isZero();
        assertThat(solids("both"))
                .containsExactlyInAnyOrder(
                        "shutter-spacer-ring.step",
                        "shutter-spacer-ring.stl",
                        "shutter-standoff.step",
                        "shutter-standoff.stl");
        String[] printed = {
            "make", "harbour-light", "-o", "printed", "--formats", "step", "--solids", "printed", "--states", "21"
        };
        assertThat(Ran.in(folder, printed).exit()).isZero();
        assertThat(solids("printed")).containsExactlyInAnyOrder("shutter-spacer-ring.step", "shutter-standoff.step");
    }

    private List<String> solids(String run) throws IOException {
        try (Stream<Path> written = Files.list(folder.resolve(run).resolve("solids"))) {
            return written.map(p -> p.getFileName().toString()).toList();
        }
    }
}
