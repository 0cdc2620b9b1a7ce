// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A random spec gives a good design, the nearest one with its broken limits, or a clear refusal; never a trace. */
class RandomSpecTest {
    private static final String[] ODD = {
        "0",
        "-1",
        "1e9",
        ".nan",
        ".inf",
        "~",
        "''",
        "[]",
        "{}",
        "[1, 2]",
        "{a: 1}",
        "1:30",
        "0x10",
        "1,5",
        "2 1/2 in",
        "3/8\"",
        "12thou",
        "64mm + 12thou",
        "true",
        "\"\\u202e\"",
        "&a 5",
        "*a",
        "!!str 5",
        "lever",
        "{at-most: 1}",
        "{at-most: 0.001, at-least: 9}"
    };

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void plausibleSpecs(long seed) throws IOException {
        Random random = new Random(seed);
        double full = Math.round(Math.exp(Math.log(8) + random.nextDouble() * Math.log(40)) * 10) / 10.0;
        double least = Math.round(full * random.nextDouble() * 95) / 100.0;
        StringBuilder spec = new StringBuilder("mechanisms:\n  a:\n    kind: leaf-aperture\n");
        spec.append("    full-opening: ")
                .append(full)
                .append("\n    least-opening: ")
                .append(least)
                .append('\n');
        spec.append("    blades: ").append(3 + random.nextInt(30)).append('\n');
        spec.append("    blade-thickness: ")
                .append(0.05 + random.nextInt(20) * 0.05)
                .append('\n');
        if (random.nextBoolean()) {
            spec.append("    drive: {module: ")
                    .append(0.4 + random.nextInt(5) * 0.2)
                    .append("}\n");
        }
        if (random.nextInt(3) == 0) {
            spec.append("    outer-diameter: {at-most: ")
                    .append(full * (1.2 + random.nextDouble()))
                    .append("}\n");
        }
        if (random.nextInt(3) == 0) {
            spec.append("    drive-pin: ")
                    .append(random.nextBoolean() ? "lever" : "far-end")
                    .append('\n');
        }
        if (random.nextInt(3) == 0) {
            spec.append("    hand: right\n");
        }
        if (random.nextInt(4) == 0) {
            spec.append("    slot: linear-opening\n");
        }
        Ran ran = make(seed, spec.toString());
        assertThat(ran.exit()).as("seed " + seed + "\n" + spec + ran.err()).isIn(0, 1, 2);
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void spoiltSpecs(long seed) throws IOException {
        Random random = new Random(seed);
        String good = Presets.text("harbour-light");
        for (int i = 0; i < 60; i++) {
            String spoilt = spoilt(good, random);
            Map<String, String> before = Ran.listing(folder);
            Files.writeString(folder.resolve("s.yaml"), spoilt);
            Ran ran = Ran.in(folder, "check", "s.yaml", "--states", "3");
            Files.delete(folder.resolve("s.yaml"));
            assertThat(ran.showsATrace())
                    .as("seed " + seed + ", " + i + "\n" + spoilt + ran.err())
                    .isFalse();
            assertThat(ran.exit())
                    .as("seed " + seed + ", " + i + "\n" + spoilt + ran.err())
                    .isIn(0, 1, 2);
            assertThat(Ran.listing(folder)).isEqualTo(before);
        }
    }

    /** Two or three changes: a value made odd, a line lost, doubled or moved, a character changed. */
    private static String spoilt(String good, Random random) {
        String[] lines = good.split("\n", -1);
        for (int change = 0; change < 3; change++) {
            int at = random.nextInt(lines.length);
            int colon = lines[at].indexOf(": ");
            int kind = random.nextInt(5);
            if (kind < 2 && colon > 0 && !lines[at].startsWith("#")) {
                lines[at] = lines[at].substring(0, colon + 2) + ODD[random.nextInt(ODD.length)];
            } else if (kind == 2) {
                lines[at] = "";
            } else if (kind == 3) {
                lines[at] = lines[random.nextInt(lines.length)];
            } else if (!lines[at].isEmpty()) {
                int c = random.nextInt(lines[at].length());
                lines[at] = lines[at].substring(0, c) + (char) (32 + random.nextInt(95)) + lines[at].substring(c + 1);
            }
        }
        return String.join("\n", lines);
    }

    private Ran make(long seed, String spec) throws IOException {
        Files.writeString(folder.resolve("s.yaml"), spec);
        Ran ran = Ran.in(folder, "make", "s.yaml", "-o", "o", "--states", "13");
        assertThat(ran.showsATrace())
                .as("seed " + seed + "\n" + spec + ran.err())
                .isFalse();
        assertThat(folder.resolve("o/design.json").toFile().exists()).isEqualTo(ran.exit() < 2);
        return ran;
    }
}
