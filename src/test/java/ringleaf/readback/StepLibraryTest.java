// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringleaf.curve.Overlay;
import ringleaf.draw.step.StepWriter;
import ringleaf.fabricate.ThrownSpec;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.space.Pose;
import ringleaf.space.Turn;
import ringleaf.space.Vector;

/**
 * A public kernel (Open CASCADE, by gmsh for Python) reads every STEP file as closed solids of the volume, faces, box
 * and name that the outlines give. It is skipped where gmsh is absent, unless RINGLEAF_REQUIRE_READERS=1 asks for it.
 */
class StepLibraryTest {
    private static final String[] PYTHONS = {"python3", "/usr/bin/python3"};

    @TempDir
    Path folder;

    private String python;

    /** What was read of a file. */
    private record Read(int solids, double volume, int flat, int round, int other, double[] box, List<String> names) {}

    @BeforeEach
    void findReader() throws Exception {
        python = python();
        if (python == null) {
            assertThat(System.getenv("RINGLEAF_REQUIRE_READERS"))
                    .as("a python3 with gmsh is required")
                    .isNotEqualTo("1");
        }
        assumeTrue(python != null, "no python3 with gmsh");
    }

    @Test
    void everyPartOfEveryPreset() throws Exception {
        List<Part> parts = new ArrayList<>();
        try (Stream<Path> presets = Files.list(Path.of("presets"))) {
            for (Path preset : presets.sorted().toList()) {
                parts.addAll(ThrownSpec.design(Files.readString(preset))
                        .orElseThrow()
                        .drawn());
            }
        }
        assertThat(parts).hasSizeGreaterThan(20);
        assertReadWhole(parts);
    }

    @Test
    void samplesWithBlindBoresPinsSharedArcsAndNotches() throws Exception {
        List<Part> parts = new ArrayList<>(SolidSamples.all());
        parts.addAll(Samples.all(5));
        assertReadWhole(parts);
    }

    /** Levels that share edges, or parts of them; what touches itself along an edge bounds no solid and is left out. */
    @Test
    void thrownStacks() throws Exception {
        List<Part> parts = new ArrayList<>();
        for (long seed = 0; seed < 60; seed++) {
            Part part = SolidSamples.thrown(seed);
            if (write(part).isPresent()) {
                parts.add(part);
            }
        }
        assertThat(parts).hasSizeGreaterThan(40);
        assertReadWhole(parts);
    }

    @Test
    void aCavityAndLoosePieces() throws Exception {
        Region disc = Region.disc(Point.ORIGIN, 9);
        Region ring = Region.ring(Point.ORIGIN, 4, 9);
        Part hollow =
                SolidSamples.stack("hollow", List.of(Layer.of(disc, 0, 1), Layer.of(ring, 1, 3), Layer.of(disc, 3, 4)));
        List<Region> two = List.of(disc, Region.disc(new Point(30, 0), 2));
        Part loose = SolidSamples.stack("loose", List.of(new Layer(two, 1, 2)));
        assertReadWhole(List.of(hollow));
        byte[] file = write(loose).orElseThrow();
        Read read = read(List.of(save("loose", file))).get(0);
        assertThat(read.solids).isEqualTo(2);
        assertThat(read.volume).isEqualTo(Math.PI * 85, within(1e-9 * Math.PI * 85));
        assertThat(new String(file, StandardCharsets.US_ASCII)).contains("('loose 1',#", "('loose 2',#");
    }

    @Test
    void namesComeBackAsTheyWere() throws Exception {
        Part part = Samples.part("any", Region.disc(Point.ORIGIN, 5));
        String name = "d'accord \\ Leuchtturm \u00fc \u03a9";
        byte[] file =
                StepWriter.part(part, name, "\u00e9t\u00e9", "program 'x'").orElseThrow();
        assertThat(new String(file, StandardCharsets.UTF_8)).matches("[\\x0A\\x20-\\x7E]+");
        assertThat(read(List.of(save("names", file))).get(0).names).containsExactly(name);
    }

    @Test
    void anAssemblyIsPlacedParts() throws Exception {
        Part plate = Samples.part("plate", Region.of(Contour.rectangle(new Box(0, 0, 10, 4))));
        Part pin = Samples.part("pin", Region.disc(new Point(20, 0), 1));
        Turn upright = Turn.about(Vector.X, Math.PI / 2);
        byte[] file = StepWriter.assembly(
                List.of(
                        new StepWriter.Placed("plate", plate, Pose.NONE),
                        new StepWriter.Placed("left pin", pin, Pose.of(new Placement(0, new Point(-40, 0)))),
                        new StepWriter.Placed("right pin", pin, new Pose(upright, new Vector(60, 0, 0)))),
                "mast",
                "",
                "");
        Read read = read(List.of(save("mast", file))).get(0);
        assertThat(read.solids).isEqualTo(3);
        double volume = 120 + 2 * 3 * Math.PI;
        assertThat(read.volume).isEqualTo(volume, within(1e-9 * volume));
        double[] box = {-21, -3, -1, 81, 4, 3};
        assertThat(read.box).containsExactly(box, within(1e-6));
        assertThat(read.names).containsExactly("mast/left pin/pin", "mast/plate/plate", "mast/right pin/pin");
        assertThat(read.flat).isEqualTo(6 + 2 + 2);
        assertThat(read.round).isEqualTo(2);
        // the pin is written once
        assertThat(new String(file, StandardCharsets.US_ASCII).split("MANIFOLD_SOLID_BREP", -1))
                .hasSize(3);
    }

    private static Optional<byte[]> write(Part part) {
        return StepWriter.part(part, part.name(), "", "");
    }

    private void assertReadWhole(List<Part> parts) throws Exception {
        List<Path> files = new ArrayList<>();
        for (Part part : parts) {
            byte[] file = write(part).orElseThrow();
            assertThat(write(part).orElseThrow()).as("same bytes").isEqualTo(file);
            files.add(save(part.name() + "-" + files.size(), file));
        }
        List<Read> found = read(files);
        assertThat(found).hasSize(parts.size());
        for (int i = 0; i < parts.size(); i++) {
            assertAsDrawn(parts.get(i), found.get(i));
        }
    }

    private static void assertAsDrawn(Part part, Read read) {
        String what = part.name();
        List<Double> heights = heights(part);
        double volume = 0;
        int flat = 0;
        int round = 0;
        List<Region> below = List.of();
        for (int i = 0; i < heights.size(); i++) {
            boolean top = i + 1 == heights.size();
            List<Region> here = top ? List.of() : solid(part, (heights.get(i) + heights.get(i + 1)) / 2);
            flat += open(below, here) + open(here, below);
            for (Region region : here) {
                volume += region.area() * (heights.get(i + 1) - heights.get(i));
                for (Contour contour : region.contours()) {
                    for (Segment segment : contour.segments()) {
                        flat += segment instanceof Arc ? 0 : 1;
                        round += segment instanceof Arc ? 1 : 0;
                    }
                }
            }
            below = here;
        }
        assertThat(read.solids).as(what).isEqualTo(1);
        assertThat(read.volume).as(what).isEqualTo(volume, within(1e-9 * volume));
        assertThat(read.other).as(what).isZero();
        assertThat(read.flat).as(what).isEqualTo(flat);
        assertThat(read.round).as(what).isEqualTo(round);
        Box box = part.box();
        double[] drawn = {box.minX(), box.minY(), part.zFrom(), box.maxX(), box.maxY(), part.zTo()};
        assertThat(read.box).as(what).containsExactly(drawn, within(2e-6));
        assertThat(read.names).as(what).containsExactly(part.name());
    }

    private static List<Double> heights(Part part) {
        return part.layers().stream()
                .flatMap(layer -> Stream.of(layer.zFrom(), layer.zTo()))
                .map(z -> Math.rint(z * 1e8) / 1e8)
                .distinct()
                .sorted()
                .toList();
    }

    private static List<Region> solid(Part part, double z) {
        List<Region> regions = new ArrayList<>();
        part.layers().stream()
                .filter(layer -> layer.zFrom() < z && z < layer.zTo())
                .forEach(layer -> regions.addAll(layer.regions()));
        return part.layers().size() > 1 && regions.size() > 1 ? Overlay.union(regions) : regions;
    }

    /** How many flats of one level are not covered by the other. */
    private static int open(List<Region> one, List<Region> other) {
        return one.isEmpty() || other.isEmpty()
                ? one.size()
                : one.equals(other) ? 0 : Overlay.difference(one, other).size();
    }

    private Path save(String name, byte[] bytes) throws Exception {
        Path file = folder.resolve(name + ".step");
        Files.write(file, bytes);
        return file;
    }

    private static String python() throws Exception {
        for (String python : PYTHONS) {
            try {
                Process process = new ProcessBuilder(python, "-c", "import gmsh")
                        .redirectErrorStream(true)
                        .start();
                process.getInputStream().readAllBytes();
                if (process.waitFor() == 0) {
                    return python;
                }
            } catch (java.io.IOException absent) {
                // Not there: the next name may be.
                continue;
            }
        }
        return null;
    }

    private List<Read> read(List<Path> files) throws Exception {
        Path script = folder.resolve("read_step.py");
        if (!Files.exists(script)) {
            try (InputStream in = getClass().getResourceAsStream("/readers/read_step.py")) {
                Files.copy(in, script);
            }
        }
        List<String> command = new ArrayList<>(List.of(python, script.toString()));
        files.forEach(file -> command.add(file.toString()));
        Path errors = folder.resolve("errors.txt");
        Process process =
                new ProcessBuilder(command).redirectError(errors.toFile()).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(300, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(errors)).isZero();
        List<Read> found = new ArrayList<>();
        for (String line : output.lines().toList()) {
            found.add(parsed(line));
        }
        return found;
    }

    private static Read parsed(String line) throws Exception {
        Map<String, List<String>> values = new HashMap<>();
        try (JsonParser parser = new JsonFactory().createParser(line)) {
            String field = "";
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.FIELD_NAME) {
                    field = parser.getText();
                } else if (token.isScalarValue()) {
                    values.computeIfAbsent(field, f -> new ArrayList<>()).add(parser.getText());
                }
            }
        }
        double[] box =
                values.get("box").stream().mapToDouble(Double::parseDouble).toArray();
        List<String> names = values.get("names").stream()
                .map(name -> name.substring(name.indexOf('/') + 1))
                .toList();
        int[] counts = Stream.of("solids", "flat", "round", "other")
                .mapToInt(key -> Integer.parseInt(values.get(key).get(0)))
                .toArray();
        double volume = Double.parseDouble(values.get("volume").get(0));
        return new Read(counts[0], volume, counts[1], counts[2], counts[3], box, names);
    }
}
