// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/**
 * A public mesh checker (Debian's admesh, a program of its own). Where it is absent tests that use it are skipped,
 * unless RINGLEAF_REQUIRE_READERS=1 asks for it.
 */
public final class MeshChecker {
    private MeshChecker() {}

    /** Whether it is there. */
    public static boolean isThere() throws Exception {
        boolean there;
        try {
            Process process = new ProcessBuilder("admesh", "--version")
                    .redirectErrorStream(true)
                    .start();
            process.getInputStream().readAllBytes();
            there = process.waitFor() == 0;
        } catch (IOException absent) {
            there = false;
        }
        if (!there) {
            assertThat(System.getenv("RINGLEAF_REQUIRE_READERS"))
                    .as("admesh is required")
                    .isNotEqualTo("1");
        }
        return there;
    }

    /** Asks that it finds closed bodies without a fault, so many unless 0; gives the volume that it finds, mm³. */
    public static double volume(Path stl, int bodies) throws Exception {
        Process process = new ProcessBuilder("admesh", stl.toString())
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        Map<String, String> figures = new TreeMap<>();
        for (String line : output.split("\n")) {
            String[] words = line.split(":");
            if (words.length > 1 && !line.startsWith("Header") && !line.startsWith("Input")) {
                figures.put(words[0].trim(), words[1].trim());
                if (words.length > 2) {
                    figures.put("Volume", words[2].trim());
                }
            }
        }
        assertThat(figures.get("Total disconnected facets")).as(output).matches("0\\s+0");
        for (String fault : new String[] {
            "Degenerate facets",
            "Edges fixed",
            "Facets removed",
            "Facets added",
            "Facets reversed",
            "Backwards edges",
            "Normals fixed"
        }) {
            assertThat(figures.get(fault)).as(fault + "\n" + output).isEqualTo("0");
        }
        if (bodies > 0) {
            assertThat(figures.get("Number of parts")).as(output).startsWith(bodies + " ");
        }
        return Double.parseDouble(figures.get("Volume"));
    }
}
