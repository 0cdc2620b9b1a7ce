// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pipe that nobody writes to, in place of each file that is read: told, never waited for. */
class PipeForAFileTest {
    @TempDir
    Path folder;

    private void pipe(String name) throws Exception {
        Process made;
        try {
            made = new ProcessBuilder("mkfifo", folder.resolve(name).toString()).start();
        } catch (IOException e) {
            assumeTrue(false, "no mkfifo here");
            return;
        }
        assumeTrue(made.waitFor() == 0);
    }

    private Ran ran(String... args) {
        // a minute is for ever here: what waits for a pipe waits without end
        return assertTimeoutPreemptively(Duration.ofMinutes(1), () -> Ran.in(folder, args));
    }

    @Test
    void inPlaceOfASpec() throws Exception {
        pipe("spec.yaml");
        for (String command :
                new String[] {"check", "make", "preview", "tolerance", "servo-table", "explore --why-not"}) {
            Ran ran = ran((command + " spec.yaml").split(" "));
            assertThat(ran.exit()).as(command + ran.err()).isEqualTo(3);
            assertThat(ran.err()).as(command).contains("spec.yaml").contains("it is a pipe or a device");
        }
    }

    @Test
    void inPlaceOfACatalogueOrADrawing() throws Exception {
        Files.createDirectory(folder.resolve("shared"));
        pipe("shared/servos.yaml");
        Files.writeString(
                folder.resolve("s.yaml"),
                "title: S\nmechanisms:\n  s: {kind: slide, stroke: 20, drive: {servo: micro-180}}\n");
        Ran ran = ran("check", "s.yaml");
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err()).contains("servos.yaml").contains("it is a pipe or a device");
        pipe("bezel.dxf");
        Files.delete(folder.resolve("shared/servos.yaml"));
        Ran drawn = ran("check", "harbour-light", "--set", "shutter.housing={outline: bezel.dxf}");
        assertThat(drawn.exit()).as(drawn.err()).isNotZero();
        assertThat(drawn.err()).contains("bezel.dxf").contains("pipe or a device");
    }

    /** What looks like a catalogue and is none is told: it would be passed over, and the user's own values with it. */
    @Test
    void whatLooksLikeACatalogueIsTold() throws Exception {
        Files.writeString(folder.resolve("s.yaml"), "title: S\nmechanisms:\n  s: {kind: slide, stroke: 20}\n");
        for (String name : new String[] {"servos.yml", "servo.yaml", "Servos.YAML"}) {
            Files.createDirectories(folder.resolve("shared"));
            Files.writeString(folder.resolve("shared").resolve(name), "servos: {}\n");
            Ran ran = ran("check", "s.yaml");
            assertThat(ran.exit()).as(name).isEqualTo(2);
            assertThat(ran.err()).contains("shared/" + name, "did you mean servos.yaml?");
            Files.delete(folder.resolve("shared").resolve(name));
        }
        Files.writeString(folder.resolve("shared/notes.txt"), "mine");
        assertThat(ran("check", "s.yaml").exit()).isZero();
        Files.delete(folder.resolve("shared/notes.txt"));
        Files.delete(folder.resolve("shared"));
        Files.writeString(folder.resolve("shared"), "servos: {}");
        Ran ran = ran("check", "s.yaml");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("shared beside the spec is no folder");
    }
}
