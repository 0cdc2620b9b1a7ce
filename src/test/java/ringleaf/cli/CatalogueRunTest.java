// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringleaf.spec.shared.Catalogue;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;

/** {@code catalogue} lists what a spec can name, and the chapter's own entries work. */
class CatalogueRunTest {
    private static final Path CHAPTER = Path.of("src/doc/catalogues.md");

    @TempDir
    Path folder;

    static List<String> names() {
        return Catalogues.NAMES;
    }

    private static Catalogue<?> ready(String name) {
        return new Catalogues(SharedFiles.NONE, new Problems()).named(name);
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyNameStandsInAListWithSizesAndSources(String name) {
        Ran ran = Ran.in(folder, "catalogue", name);
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        String sources = ran.out().substring(ran.out().indexOf("\nsources\n"));
        for (String entry : ready(name).names()) {
            String line = ran.out()
                    .lines()
                    .filter(l -> l.startsWith(entry + " "))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(entry));
            String[] numbers = line.substring(line.lastIndexOf("  ")).trim().split(" ");
            assertThat(numbers).isNotEmpty();
            for (String number : numbers) {
                assertThat(sources).as(line).contains("\n  " + number + "  ");
            }
        }
        assertThat(Ran.in(folder, "catalogue").out()).contains("\n" + name + " ");
    }

    @Test
    void anEntryShowsEveryValueWithItsUnitAndSource() {
        String out = Ran.in(folder, "catalogue", "stock", "acrylic-3").out();
        assertThat(out).containsPattern("thickness +3 mm +nominal thickness, as the stock is sold");
        assertThat(out).containsPattern("slope-limit +3° +common practice, no source");
        assertThat(Ran.in(folder, "catalogue", "screws", "M3").out())
                .contains("5, 6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50 mm");
    }

    @Test
    void ownEntriesAreMarkedAndWrongOnesRefused() throws IOException {
        Files.createDirectories(folder.resolve("shared"));
        Files.copy(Path.of("presets/harbour-light.yaml"), folder.resolve("light.yaml"));
        Files.writeString(folder.resolve("shared/screws.yaml"), "screws: {M2: {lengths: [7, 14]}}\n");
        Ran ran = Ran.in(folder, "catalogue", "screws", "--beside", "light.yaml");
        assertThat(ran.out()).containsPattern("(?m)^M2 .* 7, 14 mm +changed ").doesNotContain("M3  changed");
        assertThat(Ran.in(folder, "catalogue", "screws", "M2", "--shared", "shared")
                        .out())
                .containsPattern("lengths +7, 14 mm +your own")
                .containsPattern("thread +2 mm +nominal");
        assertThat(Ran.in(folder, "catalogue", "--shared", "shared").out()).containsPattern("screws +8 +1 ");
        Files.writeString(folder.resolve("shared/screws.yaml"), "screws: {M2: {lenghts: [7, 14]}}\n");
        Ran wrong = Ran.in(folder, "catalogue", "screws", "--shared", "shared");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.out()).isEmpty();
        assertThat(wrong.err()).contains("shared/screws.yaml:1:15: M2.lenghts: unknown key; did you mean lengths?");
    }

    @Test
    void unknownNamesAreToldWithTheNearest() {
        assertThat(Ran.in(folder, "catalogue", "servo").err())
                .contains("no catalogue servo")
                .contains("did you mean servos?");
        Ran entry = Ran.in(folder, "catalogue", "servos", "mikro-180");
        assertThat(entry.exit()).isEqualTo(2);
        assertThat(entry.err()).contains("there is no servo mikro-180 in servos.yaml; did you mean micro-180?");
    }

    /** The stock and the servo that the chapter shows are taken by a run, and change only what they say. */
    @Test
    void theEntriesOfTheChapterWork() throws IOException {
        List<String> blocks = new ArrayList<>();
        Matcher fenced = Pattern.compile("(?s)```yaml\n(.*?)```").matcher(Files.readString(CHAPTER));
        while (fenced.find()) {
            blocks.add(fenced.group(1));
        }
        Files.createDirectories(folder.resolve("shared"));
        for (String block : blocks) {
            String name = block.substring(0, block.indexOf(':'));
            Files.writeString(folder.resolve("shared/" + name + ".yaml"), block);
        }
        Files.writeString(
                folder.resolve("light.yaml"),
                Files.readString(Path.of("presets/harbour-light.yaml"))
                        .replace("stock: brass-0.15}", "stock: brass-0.12}")
                        .replace("blade-thickness: 0.15 ", "blade-thickness: 0.12 ")
                        .replace("servo: micro-180 ", "servo: tower-light "));
        Ran ran = Ran.in(folder, "make", "light.yaml");
        assertThat(ran.err()).doesNotContain("light.yaml:");
        assertThat(ran.exit()).isLessThan(2);
        String parts = Files.readString(folder.resolve("out/harbour-light/parts.csv"));
        assertThat(parts).contains("fibre-laser,brass-0.12").contains("tower-light, travel 170°");
        assertThat(Files.readString(folder.resolve("out/harbour-light/design.json")))
                .contains("2.85");
        assertThat(Ran.in(folder, "catalogue", "stock", "--beside", "light.yaml")
                        .out())
                .containsPattern("(?m)^brass-0.12 .* own ")
                .containsPattern("(?m)^acrylic-3 .*2.85 mm.* changed ");
    }
}
