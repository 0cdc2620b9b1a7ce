// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wrong specs and command lines: exit 2, a message that helps, nothing written or changed, within seconds. */
class BadInputTest {
    /** "Within seconds", as an assumption: ten on a busy machine. */
    private static final Duration SOON = Duration.ofSeconds(10);

    private static final String GOOD = "title: Lamp\n"
            + "mechanisms:\n"
            + "  shutter:\n"
            + "    kind: leaf-aperture\n"
            + "    full-opening: 64\n"
            + "    least-opening: 20\n"
            + "    blades: 14\n"
            + "    blade-thickness: 0.15\n";

    @TempDir
    Path folder;

    @BeforeEach
    void somethingIsThereAlready() throws IOException {
        Files.createDirectories(folder.resolve("out/lamp/parts"));
        Files.writeString(folder.resolve("out/lamp/parts/mine.svg"), "mine");
        Files.writeString(
                folder.resolve("out/lamp/design.json"), "{\"ringleaf\": \"0\", \"files\": [\"parts/mine.svg\"]}");
    }

    /** Runs make and check on a text; both refuse it in the same words and leave everything as it was. */
    private String refused(byte[] spec, String... more) throws IOException {
        Files.write(folder.resolve("lamp.yaml"), spec);
        Map<String, String> before = Ran.listing(folder);
        Ran made = run("make", more);
        Ran checked = run("check", more);
        assertThat(Ran.listing(folder)).isEqualTo(before);
        for (Ran ran : new Ran[] {made, checked}) {
            assertThat(ran.exit()).as(ran.err()).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.showsATrace()).as(ran.err()).isFalse();
            assertThat(ran.err().length()).isBetween(20, 60_000);
            assertThat(ran.err()).endsWith("\n");
            assertThat(ran.err().chars().filter(c -> c < ' ' && c != '\n')).isEmpty();
        }
        assertThat(made.err()).isEqualTo(checked.err());
        return made.err();
    }

    private String refused(String spec, String... more) throws IOException {
        return refused(spec.getBytes(StandardCharsets.UTF_8), more);
    }

    private Ran run(String command, String... more) {
        String[] args = new String[more.length + 2];
        args[0] = command;
        args[1] = "lamp.yaml";
        System.arraycopy(more, 0, args, 2, more.length);
        return assertTimeoutPreemptively(SOON, () -> Ran.in(folder, args));
    }

    private static String with(String field, String value) {
        String line = "    " + field + ": ";
        int at = GOOD.indexOf(line);
        return at < 0
                ? GOOD + line + value + "\n"
                : GOOD.substring(0, at) + line + value + GOOD.substring(GOOD.indexOf('\n', at));
    }

    @Test
    void theGoodSpecIsGoodSoThatTheOthersFailForTheirOwnReason() throws IOException {
        Files.writeString(folder.resolve("lamp.yaml"), GOOD);
        assertThat(run("check").exit()).isLessThan(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{",
                "a: [1, 2",
                "a: b: c",
                "\t- x",
                "\"",
                "&a *a",
                "- just\n- a list",
                "just words",
                "42",
                "null",
                "---",
                "# only a comment",
                "%YAML 9.9\n---\na: 1",
                "a: 1\n---\nb: 2",
                "!!java.io.File [/etc/passwd]",
                "? [a]\n: b",
                "<<: {a: 1}",
                "a: !!binary AAAA"
            })
    void notASpec(String text) throws IOException {
        assertThat(refused(text)).startsWith("lamp.yaml");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\n\n", "\uFEFF"})
    void empty(String text) throws IOException {
        assertThat(refused(text)).contains("empty").contains("ringleaf new");
    }

    @Test
    void binary() throws IOException {
        byte[] bytes = new byte[5000];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (i * 31);
        }
        assertThat(refused(bytes)).contains("binary");
        assertThat(refused(new byte[] {(byte) 0xC3, 0x28, 0x0A})).contains("UTF-8");
        assertThat(refused(GOOD.getBytes(StandardCharsets.UTF_16))).contains("UTF-16");
        assertThat(refused("title: a\u0007b\n" + GOOD)).contains("control character");
    }

    @Test
    void twentyMegabytes() throws IOException {
        byte[] bytes = new byte[20 << 20];
        Arrays.fill(bytes, (byte) '#');
        assertThat(refused(bytes)).contains("1 MiB");
        byte[] lines = "a: 1\n".repeat(200_000).getBytes(StandardCharsets.UTF_8);
        assertThat(refused(lines).lines().count()).isLessThan(200);
    }

    @Test
    void aliasBombAndDeepNesting() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++) {
            String below = "*a" + (i - 1);
            bomb.append("a")
                    .append(i)
                    .append(": &a")
                    .append(i)
                    .append(" [")
                    .append((below + ", ").repeat(8))
                    .append(below)
                    .append("]\n");
        }
        refused(bomb.toString());
        assertThat(refused("[".repeat(100_000))).contains("deep");
        assertThat(refused("{a: ".repeat(10_000))).contains("deep");
        refused("a: ".repeat(1000) + "b");
        refused("- ".repeat(50_000));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "blades         | 2           | below the least of 3",
                "blades         | 1e9         | 64",
                "blades         | 1000000000  | 64",
                "blades         | -3          | below",
                "blades         | 3.5         | whole number",
                "blades         | fourteen    | not a number",
                "blades         | .nan        | ",
                "blades         | 99999999999999999999999999 | ",
                "full-opening   | 0           | below",
                "full-opening   | -64         | below",
                "full-opening   | .nan        | ",
                "full-opening   | NaN         | ",
                "full-opening   | .inf        | ",
                "full-opening   | -Infinity   | ",
                "full-opening   | 1e12        | above",
                "full-opening   | 1e999       | ",
                "full-opening   | 1km         | ",
                "full-opening   | 1000000     | above",
                "full-opening   | 64,5        | ",
                "full-opening   | 1:04        | ",
                "full-opening   | 64 lightyears | ",
                "full-opening   | ''          | ",
                "full-opening   | [64]        | ",
                "full-opening   | {a: 64}     | ",
                "full-opening   | ~           | ",
                "blade-thickness| 0           | below",
                "blade-thickness| 100         | above",
                "least-opening  | 65          | ",
                "drive          | {by: stream} | ",
                "drive          | {by: pinion, module: 0} | ",
                "drive          | {servo: nano-9000} | ",
                "hand           | both        | left",
                "kind           | leaf-apperture | did you mean leaf-aperture?",
                "blade-thicknes | 0.2         | did you mean blade-thickness?"
            })
    void wrongValues(String field, String value, String said) throws IOException {
        String err = refused(with(field, value));
        assertThat(err).startsWith("lamp.yaml:").contains("^");
        if (said != null) {
            assertThat(err).contains(said);
        }
    }

    @Test
    void everyProblemIsReportedInOneRun() throws IOException {
        String err = refused(
                "titel: x\nunits: furlongs\nmechanisms:\n  a:\n    kind: leaf-aperture\n    blades: 2\n    full-opening: -1\n");
        assertThat(err).contains("titel", "furlongs", "below the least of 3", "least-opening", "blade-thickness");
        assertThat(err).contains("lamp.yaml:6:13: ");
    }

    @Test
    void duplicateKeys() throws IOException {
        assertThat(refused(GOOD + "    blades: 15\n")).contains("blades").contains("lamp.yaml:9:5");
        assertThat(refused("title: Again\n" + GOOD)).contains("title");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../../etc",
                "a/b",
                "a\\\\b",
                "..",
                ".",
                "/",
                "\\u0000",
                "\\e[31mred",
                "\\u202Etxt",
                "",
                "   ",
                "\\n\\n"
            })
    void pathTricksInTitles(String title) throws IOException {
        String err = refused(GOOD.replace("title: Lamp", "title: \"" + title + "\""));
        assertThat(err).contains("title");
    }

    @Test
    void aTitleOfMarkupIsHarmlessAndAnOverlongOneRefused() throws IOException {
        refused(GOOD.replace("title: Lamp", "title: " + "x".repeat(5000)));
        Files.writeString(folder.resolve("lamp.yaml"), GOOD.replace("title: Lamp", "title: '<script>\"&amp;'"));
        Ran ran = run("make", "-o", "o");
        assertThat(ran.exit()).isLessThan(2);
        for (String view : new String[] {"open", "half", "closed", "exploded"}) {
            assertThat(folder.resolve("o/views/shutter-" + view + ".svg"))
                    .content()
                    .doesNotContain("<script");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"../x", "a/b", "A B", "\"\"", "\"\\u0000\"", "con", "<b>", "x.y", "-a", "\"a\\nb\"", "ü"})
    void pathTricksInNames(String name) throws IOException {
        assertThat(refused(GOOD.replace("  shutter:", "  " + name + ":"))).startsWith("lamp.yaml:");
    }

    @Test
    void whatTheKindFindsIsToldWithEverythingElse() throws IOException {
        String err = refused(with("least-opening", "70").replace("blades: 14", "blades: 2") + "    lap: 9\n");
        assertThat(err)
                .contains("blades: 2 is below the least of 3")
                .contains("lap: 9 is above the most of 4 mm")
                .as("what the fields cannot know")
                .contains("least-opening: 70");
        assertThat(err.lines().filter(line -> line.startsWith("lamp.yaml:"))).hasSize(3);
    }

    @Test
    void aKeyThatIsNearlyRightIsReadAsWhatItMeans() throws IOException {
        String err = refused(with("least-opening", "70").replace("blade-thickness", "blade-thicknes"));
        assertThat(err)
                .contains("blade-thicknes: unknown key; did you mean blade-thickness?")
                .contains("least-opening: 70");
        assertThat(err).as("not missing as well").doesNotContain("is missing");
    }

    @Test
    void whatFollowsFromAMistakeIsNotToldAsAnother() throws IOException {
        // Both ends out of range: the kind would find the nearest allowed ones against each other as well.
        String err = refused(with("full-opening", "1").replace("least-opening: 20", "least-opening: 3000"));
        assertThat(err.lines().filter(line -> line.startsWith("lamp.yaml:"))).hasSize(2);
        assertThat(refused(with("blades", "x"))).as("nothing could be read").contains("blades");
        String other =
                refused(GOOD + "  pair:\n    kind: gear-pair\n    teeth: 17/28\n    module: 200\n    tooth: 3\n");
        assertThat(other).contains("module: 200 is above").contains("tooth: unknown key");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "blades",
                "=14",
                "shutter.=3",
                "shuter.blades=14",
                "shutter.blade=14",
                "shutter.blades=two",
                "shutter.blades=",
                "shutter.blades=1e9",
                "mechanisms=3",
                "a.b.c.d.e.f.g.h.i.j=1",
                "title=../x",
                "shutter.drive={by: ",
                "nothing=1"
            })
    void wrongSets(String set) throws IOException {
        assertThat(refused(GOOD, "--set", set)).contains("--set");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "make                       | SPEC is missing",
                "make a b                   | b",
                "maek lamp.yaml             | did you mean make?",
                "make lamp.yaml --sett a=1  | did you mean --set?",
                "make lamp.yaml --formats=  | --formats",
                "make lamp.yaml --formats svg,dfx | did you mean dxf?",
                "make lamp.yaml --formats svg --dxf r12 | --formats svg",
                "make lamp.yaml --dxf r13   | r12",
                "make lamp.yaml --states 2  | 3",
                "make lamp.yaml --states -1 | --states",
                "make lamp.yaml --states 1e3 | --states",
                "make lamp.yaml --states 99999999999999 | 3601",
                "make lamp.yaml --set       | --set",
                "make lamp.yaml -o          | DIR",
                "make lamp.yaml -o a -o b   | --output",
                "check lamp.yaml --anyway   | --anyway",
                "new                        | PRESET is missing",
                "new harbor-light           | did you mean harbour-light?",
                "help maek                  | did you mean make?",
                "--sett                     | --sett",
                "-x                         | -x",
                "make lamp.yaml --shared out | no catalogue"
            })
    void wrongCommandLines(String line, String said) throws IOException {
        Files.writeString(folder.resolve("lamp.yaml"), GOOD);
        Map<String, String> before = Ran.listing(folder);
        Ran ran =
                assertTimeoutPreemptively(SOON, () -> Ran.in(folder, line.trim().split(" +")));
        assertThat(ran.exit()).as(ran.err()).isEqualTo(2);
        assertThat(ran.err()).startsWith("ringleaf: ").contains(said);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.showsATrace()).isFalse();
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    @Test
    void emptyAndImpossiblePaths() throws IOException {
        Files.writeString(folder.resolve("lamp.yaml"), GOOD);
        assertThat(Ran.in(folder, "make", "").exit()).isEqualTo(2);
        assertThat(Ran.in(folder, "make", "a\0b").exit()).isEqualTo(2);
        assertThat(Ran.in(folder, "make", "lamp.yaml", "-o", "").exit()).isEqualTo(2);
        assertThat(Ran.in(folder, "make", "lamp.yaml", "-o", "a\0b").exit()).isEqualTo(2);
        assertThat(Ran.in(folder, "").exit()).isEqualTo(2);
    }

    @Test
    void noArgumentsShowTheUsageOnStandardError() {
        Ran ran = Ran.in(folder);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith("Usage: ringleaf");
    }
}
