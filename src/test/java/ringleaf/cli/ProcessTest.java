// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What only a process of its own shows: pipes that break, devices that are full, interrupts. */
@EnabledOnOs(OS.LINUX)
class ProcessTest {
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();
    private static final String CLASSES = System.getProperty("java.class.path");

    @TempDir
    Path folder;

    /** Runs a line of the shell in which {@code ringleaf} is the tool; its exit code and all it said. */
    private Ran shell(String line) throws IOException, InterruptedException {
        String tool = "ringleaf() { '" + JAVA + "' -cp '" + CLASSES + "' ringleaf.cli.Main \"$@\"; }\n";
        Path out = folder.resolve("stdout");
        Path err = folder.resolve("stderr");
        Path work = Files.createDirectories(folder.resolve("work"));
        Process process = new ProcessBuilder(List.of("bash", "-c", tool + line))
                .directory(work.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        process.getOutputStream().close();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Ran(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    @Test
    void aReaderThatStopsReadingIsNoTrouble() throws Exception {
        Ran ran = shell("ringleaf schema | head -n 1; exit ${PIPESTATUS[0]}");
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).isEqualTo("{\n");
    }

    @Test
    void aFullDeviceIsTrouble() throws Exception {
        Ran ran = shell("ringleaf presets > /dev/full");
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err())
                .startsWith("ringleaf: cannot write standard output: ")
                .hasLineCount(1);
    }

    @Test
    void filesThatDoNotFitLeaveTheOldOnesWhole() throws Exception {
        assertThat(shell("ringleaf make harbour-light -o o").exit()).isZero();
        Map<String, String> before = Ran.listing(folder.resolve("work"));
        // No file may grow beyond 4 blocks of 1024 bytes: as a full disk, in the middle of the first large file.
        Ran ran = shell("trap '' XFSZ; ulimit -f 4; ringleaf make harbour-light -o o --set shutter.lap=0.7");
        assertThat(ran.exit()).as(ran.err()).isEqualTo(3);
        assertThat(ran.err()).contains("ringleaf: cannot write o/").doesNotContain("\tat ");
        assertThat(Ran.listing(folder.resolve("work"))).isEqualTo(before);
    }

    @Test
    void theStreamsAreUtf8WhateverTheLocale() throws Exception {
        Ran plain = shell("LC_ALL=C ringleaf help leaf-aperture");
        assertThat(plain.exit()).isZero();
        Ran german = shell("LC_ALL=de_DE.ISO-8859-1 ringleaf check harbour-light 2>&1");
        assertThat(german.out().getBytes(StandardCharsets.UTF_8)).contains("°".getBytes(StandardCharsets.UTF_8));
        assertThat(german.out()).doesNotContain("\u001b");
    }

    @Test
    void interruptedRunsLeaveOldFilesWholeAndNoLitter() throws Exception {
        assertThat(shell("ringleaf make harbour-light -o o").exit()).isZero();
        Map<String, String> before = Ran.listing(folder.resolve("work"));
        assertThat(shell("ringleaf make harbour-light -o p --set shutter.lap=0.7")
                        .exit())
                .isZero();
        Map<String, String> after = Ran.listing(folder.resolve("work/p"));
        shell("rm -rf p");
        List<String> mixed = new ArrayList<>();
        for (long wait : new long[] {300, 700, 1100}) {
            Process process = new ProcessBuilder(
                            JAVA,
                            "-cp",
                            CLASSES,
                            "ringleaf.cli.Main",
                            "make",
                            "harbour-light",
                            "-o",
                            "o",
                            "--set",
                            "shutter.lap=0.7")
                    .directory(folder.resolve("work").toFile())
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            process.waitFor(wait, TimeUnit.MILLISECONDS);
            process.destroy();
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            Map<String, String> now = Ran.listing(folder.resolve("work"));
            assertThat(now.keySet()).isEqualTo(before.keySet());
            Map<String, String> inside = Ran.listing(folder.resolve("work/o"));
            if (!now.equals(before) && !inside.equals(after)) {
                mixed.add("after " + wait + " ms: " + inside);
            }
        }
        assertThat(mixed).isEmpty();
    }
}
