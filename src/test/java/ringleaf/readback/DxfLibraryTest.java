// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringleaf.draw.Drawings;
import ringleaf.draw.dxf.DxfVersion;
import ringleaf.draw.dxf.DxfWriter;
import ringleaf.geom.Contour;
import ringleaf.part.Part;

/**
 * A public library (ezdxf, for Python) reads every sample without an error or a repair, and finds the same area. It is
 * skipped where the library is absent, unless RINGLEAF_REQUIRE_READERS=1 asks for it.
 */
class DxfLibraryTest {
    private static final String[] PYTHONS = {"python3", "/usr/bin/python3"};

    @TempDir
    Path folder;

    @Test
    void everySampleIsReadWhole() throws Exception {
        String python = python();
        if (python == null) {
            assertThat(System.getenv("RINGLEAF_REQUIRE_READERS"))
                    .as("a python3 with ezdxf is required")
                    .isNotEqualTo("1");
        }
        assumeTrue(python != null, "no python3 with ezdxf");
        Path script = folder.resolve("read_dxf.py");
        try (InputStream in = getClass().getResourceAsStream("/readers/read_dxf.py")) {
            Files.copy(in, script);
        }
        List<String> command = new ArrayList<>(List.of(python, script.toString()));
        List<Part> parts = Samples.all(7);
        for (DxfVersion version : DxfVersion.values()) {
            for (Part part : parts) {
                Path file = folder.resolve(version + "-" + part.name() + "-" + command.size() + ".dxf");
                Files.write(file, DxfWriter.write(Drawings.of(part), version));
                command.add(file.toString());
            }
        }
        List<String> lines = run(command).lines().toList();
        assertThat(lines).hasSize(2 * parts.size());
        for (int i = 0; i < lines.size(); i++) {
            Part part = parts.get(i % parts.size());
            List<Contour> contours = part.layers().stream()
                    .flatMap(l -> l.regions().stream())
                    .flatMap(r -> r.contours().stream())
                    .toList();
            long circles = contours.stream().filter(Contour::isCircle).count();
            String[] words = lines.get(i).split(" ");
            assertThat(words[0]).isEqualTo(i < parts.size() ? "AC1015" : "AC1009");
            assertThat(words[1]).as("mm").isEqualTo("4");
            assertThat(words[2]).as("errors").isEqualTo("0");
            assertThat(words[3]).as("repairs").isEqualTo("0");
            assertThat(Long.parseLong(words[4])).isEqualTo(contours.size() - circles);
            assertThat(Long.parseLong(words[5])).isEqualTo(circles);
            assertThat(words[6]).as("view ports").isEqualTo("1");
            double area = contours.stream().mapToDouble(c -> Math.abs(c.area())).sum();
            assertThat(Double.parseDouble(words[7])).isEqualTo(area, within(1e-9 * area + 1e-7));
        }
    }

    private static String python() throws Exception {
        for (String python : PYTHONS) {
            try {
                Process process = new ProcessBuilder(python, "-c", "import ezdxf")
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

    private String run(List<String> command) throws Exception {
        Path errors = folder.resolve("errors.txt");
        Process process =
                new ProcessBuilder(command).redirectError(errors.toFile()).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(errors)).isZero();
        return output;
    }
}
