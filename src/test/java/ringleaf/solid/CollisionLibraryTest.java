// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringleaf.space.Pose;
import ringleaf.space.Vector;

/**
 * A public library (FCL, from Debian's {@code libfcl-dev}) finds the same distances of random pairs. It is compiled
 * here, and skipped where it or g++ is absent, unless RINGLEAF_REQUIRE_READERS=1 asks for it. (JTS's distances in space
 * are no judge of this: of slanted facets they are too great where edges are nearest beyond their ends, and too small
 * where a corner stands over a facet along a main axis but not along the facet's normal.)
 */
class CollisionLibraryTest {
    private static final int PAIRS = 200;

    @TempDir
    Path folder;

    @Test
    void randomPairsAreAsFarApartAsTheLibraryFinds() throws Exception {
        Path program = compiled();
        if (program == null) {
            assertThat(System.getenv("RINGLEAF_REQUIRE_READERS"))
                    .as("g++ and libfcl-dev are required")
                    .isNotEqualTo("1");
        }
        assumeTrue(program != null, "no g++ with libfcl-dev");
        StringBuilder input = new StringBuilder();
        List<Double> found = new ArrayList<>();
        int meeting = 0;
        for (int i = 0; i < PAIRS; i++) {
            Random random = new Random(500 + i);
            Mesh first = Bodies.lump(random, 4, 6 + 2 * random.nextInt(6));
            Mesh second = i % 3 == 0 ? Bodies.box(3, 1, 2) : Bodies.lump(random, 3, 6 + 2 * random.nextInt(6));
            Vector way = new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
            Pose pose = new Pose(Bodies.anyTurn(random), way.times((4 + 9 * random.nextDouble()) / way.length()));
            Nearness nearness = new Nearness(new Solid(first, 0), new Solid(second, 0));
            double distance = nearness.surfaces(pose, 1e9).orElseThrow().distance();
            found.add(distance);
            meeting += distance == 0 ? 1 : 0;
            append(input, first);
            append(input, second);
            append(input, pose);
        }
        List<String> lines = run(program, input.toString()).lines().toList();
        assertThat(lines).hasSize(PAIRS);
        for (int i = 0; i < PAIRS; i++) {
            assertThat(found.get(i)).as("pair " + i).isEqualTo(Double.parseDouble(lines.get(i)), within(1e-6));
        }
        assertThat(meeting).isBetween(20, 120);
    }

    private static void append(StringBuilder out, Mesh mesh) {
        out.append(mesh.cornerCount()).append(' ').append(mesh.triangleCount()).append('\n');
        for (int i = 0; i < mesh.corners().length; i++) {
            out.append(mesh.corners()[i]).append(i % 3 == 2 ? '\n' : ' ');
        }
        for (int i = 0; i < mesh.triangles().length; i++) {
            out.append(mesh.triangles()[i]).append(i % 3 == 2 ? '\n' : ' ');
        }
    }

    private static void append(StringBuilder out, Pose pose) {
        Vector x = pose.turn().apply(Vector.X);
        Vector y = pose.turn().apply(Vector.Y);
        Vector z = pose.turn().apply(Vector.Z);
        Vector s = pose.shift();
        out.append(x.x() + " " + y.x() + " " + z.x() + " " + s.x() + "\n");
        out.append(x.y() + " " + y.y() + " " + z.y() + " " + s.y() + "\n");
        out.append(x.z() + " " + y.z() + " " + z.z() + " " + s.z() + "\n");
    }

    private Path compiled() throws Exception {
        Path source = folder.resolve("near.cpp");
        try (InputStream in = getClass().getResourceAsStream("/readers/near.cpp")) {
            Files.copy(in, source);
        }
        Path program = folder.resolve("near");
        try {
            Process process = new ProcessBuilder(
                            "g++",
                            "-O1",
                            "-std=c++17",
                            "-I/usr/include/eigen3",
                            "-o",
                            program.toString(),
                            source.toString(),
                            "-lfcl",
                            "-lccd")
                    .redirectErrorStream(true)
                    .start();
            process.getInputStream().readAllBytes();
            return process.waitFor() == 0 ? program : null;
        } catch (java.io.IOException absent) {
            return null;
        }
    }

    private String run(Path program, String input) throws Exception {
        Path text = folder.resolve("pairs.txt");
        Files.writeString(text, input);
        Process process = new ProcessBuilder(program.toString())
                .redirectInput(text.toFile())
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isZero();
        return output;
    }
}
