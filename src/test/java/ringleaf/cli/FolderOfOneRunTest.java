// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever happens to runs that write into one folder, in the end it holds the files of one of them. */
class FolderOfOneRunTest {
    private static final long SEED = 5;
    private static final int KILLS = 16;

    @TempDir
    Path folder;

    private Process writer(String mark, int sets) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> line = List.of(
                java,
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                WritingProcess.class.getName(),
                folder.resolve("o").toString(),
                mark,
                Integer.toString(sets));
        return new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said-" + mark).toFile())
                .start();
    }

    /** The marks of the sets whose files lie there: one, or the folder is a mixture. */
    private Set<String> marks() throws IOException {
        Set<String> marks = new LinkedHashSet<>();
        Set<String> found = new TreeSet<>();
        try (Stream<Path> parts = Files.list(folder.resolve("o/parts"))) {
            for (Path part : (Iterable<Path>) parts::iterator) {
                marks.add(Files.readString(part));
                found.add("parts/" + part.getFileName());
            }
        }
        String design = Files.readString(folder.resolve("o/design.json"));
        String mark = design.substring(14, design.indexOf('"', 14));
        marks.add(mark);
        Set<String> wanted = new TreeSet<>(WritingProcess.files(mark).keySet());
        wanted.remove("design.json");
        assertThat(found).isEqualTo(wanted);
        return marks;
    }

    @Test
    void twoAtOnceNeverMixTheirFiles() throws Exception {
        Process a = writer("a", 30);
        Process b = writer("b", 30);
        a.waitFor();
        b.waitFor();
        assertThat(Files.readString(folder.resolve("said-a"))).isEmpty();
        assertThat(Files.readString(folder.resolve("said-b"))).isEmpty();
        assertThat(List.of(a.exitValue(), b.exitValue())).containsOnly(0);
        assertThat(marks()).hasSize(1);
        try (Stream<Path> left = Files.list(folder.resolve("o"))) {
            assertThat(left.map(path -> path.getFileName().toString()))
                    .containsExactlyInAnyOrder("design.json", "parts");
        }
    }

    /** Killed at any moment, with the next one starting beside it; then one set settles what is left. */
    @Test
    void killedAtAnyMomentTheNextRunSettlesIt() throws Exception {
        Random random = new Random(SEED);
        List<Process> all = new ArrayList<>();
        int unfinished = 0;
        for (int i = 0; i < KILLS; i++) {
            Process writer = writer("k" + i + "-", 100_000);
            all.add(writer);
            long end = System.nanoTime() + 30_000_000_000L;
            // it writes once its mark is there
            while (!design().contains("k" + i + "-") && System.nanoTime() < end && writer.isAlive()) {
                Thread.sleep(5);
            }
            assertThat(writer.isAlive())
                    .as(Files.readString(folder.resolve("said-k" + i + "-")))
                    .isTrue();
            Thread.sleep(random.nextInt(400));
            writer.destroyForcibly().waitFor();
            unfinished += isUnfinished() ? 1 : 0;
            OutputFolder after = new OutputFolder(folder.resolve("o"), "o");
            after.write(Map.of(), f -> List.of());
            assertThat(marks()).as("seed " + SEED + ", kill " + i).hasSize(1);
        }
        System.out.println(unfinished + " of " + KILLS + " were killed between their moves");
        assertThat(unfinished)
                .as("seed " + SEED + ": none was killed where it matters")
                .isPositive();
    }

    private String design() throws IOException {
        try {
            return new String(Files.readAllBytes(folder.resolve("o/design.json")), StandardCharsets.UTF_8);
        } catch (NoSuchFileException e) {
            return "";
        }
    }

    private boolean isUnfinished() throws IOException {
        try (Stream<Path> left = Files.list(folder.resolve("o"))) {
            return left.anyMatch(path -> Files.isDirectory(path) && Commit.isLeftIn(path));
        }
    }

    @Test
    void checkSaysThatAFolderIsAMixture() throws IOException {
        assertThat(Ran.in(folder, "make", "cold-frame-vent", "-o", "o", "--states", "5")
                        .exit())
                .isZero();
        Ran good = Ran.in(folder, "check", "o");
        assertThat(good.exit()).as(good.err()).isZero();
        assertThat(good.out()).startsWith("PASS  All ").contains("are of the run that wrote it");
        Path part = folder.resolve("o/parts.csv");
        Files.writeString(part, Files.readString(part) + "\n");
        Files.delete(folder.resolve("o/report.html"));
        Ran mixed = Ran.in(folder, "check", "o");
        assertThat(mixed.exit()).isEqualTo(1);
        assertThat(mixed.out()).startsWith("FAIL  Do not cut from o: it holds files of several runs");
        assertThat(mixed.err())
                .contains("parts.csv is of another run, or was changed since")
                .contains("report.html is missing");
    }
}
