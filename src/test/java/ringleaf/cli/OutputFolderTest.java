// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files come whole or not at all, and nothing of the user's is touched. */
class OutputFolderTest {
    @TempDir
    Path folder;

    private static Map<String, byte[]> files(String... pathsAndTexts) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (int i = 0; i < pathsAndTexts.length; i += 2) {
            files.put(pathsAndTexts[i], pathsAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
        }
        return files;
    }

    private OutputFolder at(String name) {
        return new OutputFolder(folder.resolve(name), name);
    }

    @Test
    void writesIntoNewAndOldFoldersAndLeavesNoLitter() {
        at("a/b").write(files("parts/x.svg", "1", "design.json", "2"), f -> List.of());
        assertThat(Ran.listing(folder).keySet())
                .containsExactly("/", "a/", "a/b/", "a/b/design.json", "a/b/parts/", "a/b/parts/x.svg");
        at("a/b").write(files("parts/x.svg", "3", "design.json", "4"), f -> List.of());
        assertThat(folder.resolve("a/b/parts/x.svg")).hasContent("3");
        assertThat(Ran.listing(folder)).hasSize(6);
    }

    @Test
    void takesAwayOnlyWhatAnEarlierRunListed() throws IOException {
        at("o").write(files("parts/x.svg", "1", "views/v.svg", "v", "design.json", "2"), f -> List.of());
        Files.writeString(folder.resolve("o/parts/mine.svg"), "mine");
        Files.writeString(folder.resolve("outside.svg"), "outside");
        at("o").write(
                        files("design.json", "3"),
                        f -> List.of("parts/x.svg", "views/v.svg", "design.json", "parts/never.svg", "../outside.svg"));
        assertThat(folder.resolve("o/parts/x.svg")).doesNotExist();
        assertThat(folder.resolve("o/parts/mine.svg")).hasContent("mine");
        assertThat(folder.resolve("o/views")).doesNotExist();
        assertThat(folder.resolve("o/design.json")).hasContent("3");
        assertThat(folder.resolve("outside.svg")).hasContent("outside");
    }

    @Test
    void whatADesignJsonListsIsBelievedOnlyWithinItsFolder() throws IOException {
        Path design = folder.resolve("design.json");
        Files.writeString(
                design,
                "{\"ringleaf\": \"1\", \"mechanisms\": {\"files\": [\"parts/no.svg\"]}, \"files\": [\"parts/a.svg\", \"motion/m.csv\","
                        + " \"../b.svg\", \"parts/../../c.svg\", \"/etc/d.svg\", \"parts/.e.svg\", \"parts/f.txt\","
                        + " \"parts\\\\g.svg\", \"parts/sub/h.svg\", \"notes.csv\", \"parts/\", \"\"]}");
        assertThat(EarlierRun.files(folder)).containsExactly("parts/a.svg", "motion/m.csv");
        for (String other :
                new String[] {"{\"files\": [\"parts/a.svg\"]}", "[]", "", "{\"ringleaf\": ", "\0", "{\"files\": {}}"}) {
            Files.writeString(design, other);
            assertThat(EarlierRun.files(folder)).as(other).isEmpty();
        }
        Files.delete(design);
        Files.createDirectory(design);
        assertThat(EarlierRun.files(folder)).isEmpty();
    }

    @Test
    void aLinkedSubfolderIsNotEmptied() throws IOException {
        Files.createDirectories(folder.resolve("mine"));
        Files.writeString(folder.resolve("mine/x.svg"), "mine");
        Files.createDirectories(folder.resolve("o"));
        Files.createSymbolicLink(folder.resolve("o/parts"), folder.resolve("mine"));
        at("o").write(files("design.json", "1"), f -> List.of("parts/x.svg"));
        assertThat(folder.resolve("mine/x.svg")).hasContent("mine");
    }

    @Test
    void aFolderWhereAFileShouldBeChangesNothing() throws IOException {
        at("o").write(files("parts/x.svg", "1", "design.json", "2"), f -> List.of());
        Files.createDirectories(folder.resolve("o/parts.csv"));
        Map<String, String> before = Ran.listing(folder);
        assertThatThrownBy(() -> at("o").write(
                                files("parts/x.svg", "3", "new/y.svg", "4", "parts.csv", "5"),
                                f -> List.of("parts/x.svg")))
                .isInstanceOf(Stop.class)
                .hasMessageContaining("o/parts.csv")
                .hasMessageContaining("folder");
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    @Test
    void aFileWhereAFolderShouldBeChangesNothing() throws IOException {
        Files.createDirectories(folder.resolve("o"));
        Files.writeString(folder.resolve("o/parts"), "mine");
        Map<String, String> before = Ran.listing(folder);
        assertThatThrownBy(() -> at("o").write(files("motion/m.csv", "1", "parts/x.svg", "3"), f -> List.of()))
                .isInstanceOf(Stop.class)
                .hasMessageContaining("o/parts");
        assertThat(Ran.listing(folder)).isEqualTo(before);
        assertThatThrownBy(() -> at("o/parts/deeper").check())
                .isInstanceOf(Stop.class)
                .hasMessageContaining("not a folder");
        assertThatThrownBy(() -> at("o/parts").check()).isInstanceOf(Stop.class).hasMessageContaining("file");
        assertThatThrownBy(() -> at("o/parts/deeper").write(files("x", "1"), f -> List.of()))
                .isInstanceOf(Stop.class);
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    @Test
    void linksInACircleAreRefused() throws IOException {
        Files.createSymbolicLink(folder.resolve("a"), folder.resolve("b"));
        Files.createSymbolicLink(folder.resolve("b"), folder.resolve("a"));
        Map<String, String> before = Ran.listing(folder);
        assertThatThrownBy(() -> at("a").check()).isInstanceOf(Stop.class).hasMessageContaining("cannot write a: ");
        assertThatThrownBy(() -> at("a/out").check())
                .isInstanceOf(Stop.class)
                .hasMessageContaining("cannot write a/out: ");
        assertThatThrownBy(() -> at("a").write(files("x", "1"), f -> List.of())).isInstanceOf(Stop.class);
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    @Test
    void aNameThatIsTooLongChangesNothing() {
        Map<String, String> before = Ran.listing(folder);
        assertThatThrownBy(() -> at("new/" + "x".repeat(300)).write(files("x", "1"), f -> List.of()))
                .isInstanceOf(Stop.class)
                .hasMessageContaining("too long");
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    @Test
    void whatAKilledRunLeftIsSweptAtOnce() throws IOException {
        Path left = Files.createDirectories(folder.resolve("o/.ringleaf-12ab"));
        Files.writeString(left.resolve("0"), "half a file");
        at("o").write(files("x", "1"), f -> List.of());
        assertThat(Ran.listing(folder).keySet()).containsExactly("/", "o/", "o/x");
    }

    /** Killed after its steps were written down and the first was done: the next run does the rest before its own. */
    @Test
    void stepsOfAKilledRunAreCompleted() throws IOException {
        Path left = Files.createDirectories(folder.resolve("o/.ringleaf-12ab"));
        Files.writeString(folder.resolve("o/a"), "new");
        Files.writeString(folder.resolve("o/b"), "old");
        Files.writeString(folder.resolve("o/c"), "old");
        Files.writeString(left.resolve("1"), "new");
        Files.writeString(left.resolve("forward"), "0 old a\n1 old b\n- old c\n");
        at("o").write(files("x", "1"), f -> List.of());
        assertThat(folder.resolve("o/b")).hasContent("new");
        assertThat(Ran.listing(folder).keySet()).containsExactly("/", "o/", "o/a", "o/b", "o/x");
    }

    @Test
    void stepsThatLeadOutOfTheFolderAreNotTaken() throws IOException {
        Path left = Files.createDirectories(folder.resolve("o/.ringleaf-12ab"));
        Files.writeString(folder.resolve("mine"), "mine");
        Files.writeString(left.resolve("forward"), "- old ../mine\n");
        assertThatThrownBy(() -> at("o").write(files("x", "1"), f -> List.of()))
                .isInstanceOf(Stop.class)
                .hasMessageContaining("leads out of the folder");
        assertThat(folder.resolve("mine")).hasContent("mine");
    }

    /** The last of three moves is refused: the first two are taken back. */
    @Test
    void aRefusedMoveTakesThoseBeforeItBack() throws IOException {
        at("o").write(files("a", "1", "b", "1", "design.json", "1"), f -> List.of());
        Map<String, String> before = Ran.listing(folder);
        Map<String, byte[]> next = files("a", "2", "new/n", "2", "design.json", "2");
        assertThatThrownBy(() -> at("o").write(next, f -> {
                    // a folder that somebody puts there after everything was prepared
                    blocked(f.resolve("design.json"));
                    return List.of("b");
                }))
                .isInstanceOf(Stop.class)
                .hasMessageContaining("o/design.json")
                .hasMessageEndingWith("; nothing was changed");
        Files.delete(folder.resolve("o/design.json/held"));
        Files.delete(folder.resolve("o/design.json"));
        Files.writeString(folder.resolve("o/design.json"), "1");
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    private static void blocked(Path file) {
        try {
            Files.delete(file);
            Files.createDirectory(file);
            Files.createFile(file.resolve("held"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
