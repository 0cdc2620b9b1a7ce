// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;

/** What a terminal shows of a run: whether to cut and why in its first line, all of it on one screen of 80 by 24. */
class VerdictTest {
    private static final int COLUMNS = 80;
    private static final int ROWS = 24;

    @TempDir
    Path folder;

    /** Both streams as a terminal shows them. */
    private String screen(String... args) {
        ByteArrayOutputStream both = new ByteArrayOutputStream();
        PrintStream to = new PrintStream(both, true, StandardCharsets.UTF_8);
        Main.run(args, new ByteArrayInputStream(new byte[0]), to, to, new Surroundings(folder, true, false));
        return both.toString(StandardCharsets.UTF_8).replaceAll("[^\n]*\r *\r", "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-light", "semaphore-arm-belt", "cold-frame-vent", "field-camera-stop"})
    void whatPassesSaysSoFirstOnOneScreen(String preset) {
        for (String command : new String[] {"make", "check"}) {
            String screen = screen(command, preset);
            assertThat(screen).startsWith("PASS  ").contains(" may be cut: ");
            assertThat(screen.lines()).hasSizeLessThanOrEqualTo(ROWS);
            assertThat(screen.lines()).allMatch(line -> line.length() <= COLUMNS);
        }
    }

    @Test
    void whatFailsSaysWhyFirstAndThenWhatWouldMendIt() {
        String screen = screen("make", "harbour-light", "--set", "shutter.outer-diameter=100");
        assertThat(screen)
                .startsWith(
                        "FAIL  Do not cut Harbour light: outer-diameter 110.8 mm where at most 100 mm is\n      allowed (spacer-ring).\n");
        assertThat(screen.indexOf("fail  outer-diameter 110.8 mm, at most 100 mm"))
                .isPositive();
        assertThat(screen.indexOf("what would mend it\n"))
                .isGreaterThan(screen.indexOf("fail  outer-diameter"))
                .isLessThan(screen.indexOf("  outer diameter     110.8 mm\n"));
        assertThat(screen).contains("part files are held back");
        assertThat(screen.lines()).allMatch(line -> line.length() <= COLUMNS);
        assertThat(screen("make", "harbour-light", "--set", "shutter.outer-diameter=100", "--anyway"))
                .contains("part files are written although a check failed");
    }

    @Test
    void detailsTellTheRest() {
        String brief = screen("make", "harbour-light");
        assertThat(brief).doesNotContain("pivot-radius").doesNotContain("pass  ");
        String all = screen("make", "harbour-light", "--details");
        assertThat(all)
                .startsWith(brief.substring(0, brief.indexOf("written to")))
                .contains("  pivot-radius ", "pass  lap ", "on the geometry, to 2 µm", "build order\n", "cautions\n");
    }

    @Test
    void severalMechanismsAreJudgedInOneSentence() throws IOException {
        Files.writeString(folder.resolve("two.yaml"), """
                title: Searchlight
                mechanisms:
                  nod: {kind: gear-pair, driver: {teeth: 20}, driven: {teeth: 40}, module: 1, width: 5}
                  stop: {kind: leaf-aperture, full-opening: 24, least-opening: 6, blades: 10, blade-thickness: 0.05, depth: 2, place: {at: {x: 101}}}
                """);
        String screen = screen("check", "two.yaml");
        assertThat(screen).startsWith("FAIL  Do not cut Searchlight: stop: depth ");
        assertThat(screen).contains("nod (gear-pair)\n").contains("stop (leaf-aperture)\n");
    }

    @Test
    void inchesAreToldInInches() throws IOException {
        Files.writeString(folder.resolve("vent.yaml"), """
                title: Vent
                units: in
                mechanisms:
                  vent:
                    kind: leaf-aperture
                    full-opening: 2 1/2
                    least-opening: 3/4
                    blades: 12
                    blade-thickness: 6thou
                    drive: {module: 0.8}
                """);
        String screen = screen("make", "vent.yaml", "--details");
        assertThat(screen).contains("  full-opening             2.5 in", "  blade-thickness          0.006 in");
        assertThat(screen.lines().filter(line -> line.matches(".*\\d mm\\b.*")))
                .allMatch(line -> line.matches(".*(odule|rating circles).*"), "only a module stays in mm");
        String page = Files.readString(folder.resolve("out/vent/report.html"));
        String read = page.substring(0, page.indexOf("<script type=\"application/json\""))
                // What is bought is sold in its own measure.
                .replaceAll("<td>bought, [^<]*", " ")
                .replaceAll("<[^>]*>", " ");
        assertThat(read).contains("Lengths in in");
        assertThat(Pattern.compile("\\d mm\\b")
                        .matcher(read.replaceAll("\\bmodule +[\\d.]+ mm", ""))
                        .results())
                .isEmpty();
        assertThat(Files.readString(folder.resolve("out/vent/design.json")))
                .contains("\"units\": \"mm\"", "\"value\": 63.5");
    }

    @Test
    void everyKindSaysWhatComesFirst() {
        for (Kind kind : Kinds.REGISTERED.all()) {
            assertThat(kind.headline()).as(kind.name()).hasSizeBetween(5, 14);
        }
    }
}
