// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ringleaf.kinds.Kinds;
import ringleaf.spec.field.Field;

/** Commands other than whole runs, and how SPEC and the output folder are found. */
class CommandsTest {
    @TempDir
    Path folder;

    static List<String> presets() {
        return Presets.names();
    }

    static List<String> commands() {
        return Commands.ALL.stream().map(Command::name).toList();
    }

    @Test
    void helpListsTheCommandsInTheirOrder() {
        List<String> listed = new ArrayList<>();
        String out = Ran.in(folder, "--help").out();
        for (String line : out.substring(out.indexOf("Commands:"), out.indexOf("Begin with:"))
                .split("\n", -1)) {
            if (line.matches("  [a-z].*")) {
                listed.add(line.trim().split(" ", 2)[0]);
            }
        }
        assertThat(listed).isEqualTo(commands());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "coupon co2-laser | coupon takes options only, and co2-laser is none",
                "tolerance harbour-light --builds 5 --builds 6 | tolerance: --builds may stand once only",
                "check harbour-light --kerf --kerf | check: --kerf may stand once only",
                "check harbour-light --kerf=maybe | check: --kerf takes no value",
                "servo-table harbour-light --mechanism | servo-table: NAME is missing after --mechanism",
                "preview | preview: SPEC is missing",
                "preview harbour-light --port 0 | --port: 0 is no whole number from 1 to 65535",
                "tolerance harbour-light --seed=-1 | --seed: -1 is no whole number from 0",
                "tolerance harbour-light --builds= | --builds: \"\" is no whole number from 1",
                "coupon --process= | there is no process \"\"",
                "new harbour-light a b | nothing more is wanted than what stands before b"
            })
    void mistypedLinesAreToldInPlainWordsAndWriteNothing(String line, String reason) throws IOException {
        Ran ran = Ran.in(folder, line.split(" "));
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).startsWith("ringleaf: ").contains(reason).doesNotContain("ringleaf: ringleaf");
        assertThat(ran.out()).isEmpty();
        assertThat(Ran.listing(folder).keySet()).containsExactly("/");
    }

    @Test
    void aFolderWhereAFileIsWantedAndAFileWhereAFolderIs() throws IOException {
        Files.createDirectory(folder.resolve("d"));
        Ran measured = Ran.in(folder, "servo-table", "harbour-light", "--measured", "d");
        assertThat(measured.exit()).isEqualTo(3);
        assertThat(measured.err()).contains("cannot read d: it is a folder, and a file is wanted");
        Files.createDirectory(folder.resolve("o"));
        Files.writeString(folder.resolve("o/servo"), "mine");
        Ran table = Ran.in(folder, "servo-table", "harbour-light", "-o", "o");
        assertThat(table.exit()).isEqualTo(3);
        assertThat(table.err()).contains("cannot write o/servo/shutter.csv: a file stands where its folder should be");
        assertThat(folder.resolve("o/servo")).hasContent("mine");
    }

    @Test
    void theListOfPresetsIsTheFolder() throws IOException {
        List<String> files = new ArrayList<>();
        try (Stream<Path> paths = Files.list(Path.of("presets"))) {
            paths.map(path -> path.getFileName().toString()).sorted().forEach(files::add);
        }
        assertThat(files)
                .isEqualTo(Presets.names().stream().map(Presets::fileName).toList());
        Ran ran = Ran.in(folder, "presets");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()
                        .lines()
                        .map(line -> line.substring(0, line.indexOf(' ')))
                        .toList())
                .isEqualTo(Presets.names());
        assertThat(ran.out().lines()).allMatch(line -> line.length() > 40, "has a line of words");
    }

    @ParameterizedTest
    @MethodSource("presets")
    void newWritesAPresetThatMakeTakes(String preset) throws IOException {
        assertThat(Ran.in(folder, "new", preset, "my.yaml").exit()).isZero();
        assertThat(folder.resolve("my.yaml")).hasSameTextualContentAs(Path.of("presets", preset + ".yaml"));
        Ran own = Ran.in(folder, "make", "my.yaml", "-o", "own");
        Ran ready = Ran.in(folder, "make", preset, "-o", "ready");
        assertThat(own.exit()).as(own.err()).isZero();
        assertThat(Ran.listing(folder.resolve("own"))).isEqualTo(Ran.listing(folder.resolve("ready")));
        assertThat(own.err()).isEqualTo(ready.err());
        assertThat(own.out().replace("to own", "to ready")).isEqualTo(ready.out());
    }

    @Test
    void newWritesToStandardOutputWhereAsked() throws IOException {
        Ran ran = Ran.in(folder, "new", "lens-slide", "-");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).isEqualTo(Presets.text("lens-slide"));
        assertThat(folder.resolve("-")).doesNotExist();
    }

    @Test
    void newNeverWritesOverAFile() throws IOException {
        Files.writeString(folder.resolve("harbour-light.yaml"), "mine");
        Files.createSymbolicLink(folder.resolve("dangling.yaml"), folder.resolve("nowhere"));
        Files.createDirectory(folder.resolve("d"));
        Map<String, String> before = Ran.listing(folder);
        for (String[] args : new String[][] {
            {"new", "harbour-light"},
            {"new", "harbour-light", "dangling.yaml"},
            {"new", "harbour-light", "d"},
            {"new", "harbour-light", "no/such/folder.yaml"}
        }) {
            Ran ran = Ran.in(folder, args);
            assertThat(ran.exit()).isEqualTo(3);
            assertThat(ran.err())
                    .startsWith("ringleaf: cannot write ")
                    .contains(args.length > 2 ? args[2] : "harbour-light.yaml");
            assertThat(ran.out()).isEmpty();
        }
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    @Test
    void aFileWinsOverAPresetOfItsNameAndAFolderDoesNot() throws IOException {
        Files.createDirectory(folder.resolve("harbour-light"));
        assertThat(Ran.in(folder, "check", "harbour-light").exit()).isZero();
        Files.delete(folder.resolve("harbour-light"));
        Files.writeString(folder.resolve("harbour-light"), "nonsense");
        assertThat(Ran.in(folder, "check", "harbour-light").err()).startsWith("harbour-light:1:1: ");
    }

    @Test
    void aSpecThatCannotBeReadIsTroubleWithItsPath() throws IOException {
        Files.createDirectory(folder.resolve("d"));
        Files.createSymbolicLink(folder.resolve("a"), folder.resolve("b"));
        Files.createSymbolicLink(folder.resolve("b"), folder.resolve("a"));
        for (String spec :
                new String[] {"d", "a", "no/such.yaml", "harbor-light.yaml", "d/x", "x".repeat(300), "/proc/self/mem"
                }) {
            Ran ran = Ran.in(folder, "check", spec);
            assertThat(ran.exit()).as(spec + ran.err()).isEqualTo(3);
            assertThat(ran.err()).startsWith("ringleaf: cannot read " + spec);
            assertThat(ran.showsATrace()).isFalse();
        }
        assertThat(Ran.in(folder, "check", "harbor-light.yaml").err()).contains("did you mean harbour-light?");
        assertThat(Ran.in(folder, "check", "zzz").err()).contains("presets: cold-frame-vent");
    }

    @Test
    void troubleWithTheOutputFolderIsFoundBeforeTheWork() throws IOException {
        Files.writeString(folder.resolve("f"), "mine");
        for (String output : new String[] {"f", "f/deeper", "/proc/ringleaf/x", "/dev/null"}) {
            Ran ran = Ran.in(folder, "make", "harbour-light", "-o", output);
            assertThat(ran.exit()).as(ran.err()).isEqualTo(3);
            assertThat(ran.err()).contains("ringleaf: cannot write " + output).doesNotContain("\tat ");
        }
        assertThat(Ran.listing(folder).keySet()).containsExactly("/", "f");
    }

    @Test
    void aSpecMayComeThroughStandardInput() {
        Ran file = Ran.in(folder, "check", "harbour-light");
        Ran piped = Ran.with(new Surroundings(folder, false, false), Presets.text("harbour-light"), "check", "-");
        assertThat(piped).isEqualTo(file);
        Ran empty = Ran.with(new Surroundings(folder, false, false), "", "check", "-");
        assertThat(empty.exit()).isEqualTo(2);
        assertThat(empty.err()).startsWith("standard input: ");
    }

    @Test
    void formatsVersionsAndOverridesReachTheFiles() throws IOException {
        assertThat(Ran.in(folder, "make", "harbour-light", "-o", "a", "--formats", "dxf", "--dxf", "r12")
                        .exit())
                .isZero();
        try (Stream<Path> parts = Files.list(folder.resolve("a/parts"))) {
            assertThat(parts).isNotEmpty().allMatch(path -> path.toString().endsWith(".dxf"));
        }
        assertThat(folder.resolve("a/parts/shutter-blade.dxf")).content().contains("AC1009");
        assertThat(Ran.in(folder, "make", "harbour-light", "-o", "a", "--formats=svg", "--set", "shutter.lap=0.7")
                        .exit())
                .isZero();
        try (Stream<Path> parts = Files.list(folder.resolve("a/parts"))) {
            assertThat(parts).as("files of the earlier run").isNotEmpty().allMatch(path -> path.toString()
                    .endsWith(".svg"));
        }
        assertThat(folder.resolve("a/design.json")).content().containsPattern("\"value\" ?: 0.7,");
        assertThat(Ran.in(folder, "make", "harbour-light", "-o", "b", "--states", "7")
                        .exit())
                .isZero();
        assertThat(folder.resolve("b/motion/shutter.csv")).content().hasLineCount(8);
    }

    @Test
    void aFailedCheckHoldsThePartFilesBackAndTakesOldOnesAway() throws IOException {
        assertThat(Ran.in(folder, "make", "harbour-light", "-o", "o").exit()).isZero();
        assertThat(folder.resolve("o/parts/shutter-blade.svg")).exists();
        Files.writeString(folder.resolve("o/parts/notes.svg"), "mine");
        String[] failing = {"make", "harbour-light", "-o", "o", "--set", "shutter.depth={at-most: 5}"};
        Ran held = Ran.in(folder, failing);
        assertThat(held.exit()).isEqualTo(1);
        assertThat(held.err()).contains("fail  depth").contains("held back").contains("--anyway");
        assertThat(Ran.listing(folder.resolve("o")).keySet())
                .containsExactly(
                        "/",
                        "design.json",
                        "motion/",
                        "motion/shutter.csv",
                        "parts.csv",
                        "parts/",
                        "parts/notes.svg",
                        "report.html",
                        "views/",
                        "views/shutter-closed.svg",
                        "views/shutter-exploded.svg",
                        "views/shutter-half.svg",
                        "views/shutter-open.svg");
        Ran all = Ran.in(
                folder, Stream.concat(Stream.of(failing), Stream.of("--anyway")).toArray(String[]::new));
        assertThat(all.exit()).isEqualTo(1);
        assertThat(folder.resolve("o/parts/shutter-blade.dxf")).exists();
        assertThat(folder.resolve("o/parts/notes.svg")).hasContent("mine");
    }

    @Test
    void ownCataloguesGoOverTheReadyOnes() throws IOException {
        Files.createDirectory(folder.resolve("mine"));
        Files.writeString(
                folder.resolve("mine/servos.yaml"),
                "servos:\n  micro-180:\n    travel: 20\n    cautions: [Mind the tide.]\n");
        Ran ran = Ran.in(folder, "make", "harbour-light", "-o", "o", "--shared", "mine", "--details");
        assertThat(ran.exit()).as(ran.err()).isEqualTo(1);
        assertThat(ran.err()).contains("servo-reaches");
        assertThat(ran.out()).contains("Mind the tide.");
        Files.writeString(folder.resolve("mine/servos.yaml"), "servos:\n  micro-180:\n    travel: far\n");
        Ran wrong = Ran.in(folder, "check", "harbour-light", "--shared", "mine");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).startsWith("mine/servos.yaml:3:13: ");
        Ran missing = Ran.in(folder, "check", "harbour-light", "--shared", "yours");
        assertThat(missing.exit()).isEqualTo(3);
        assertThat(missing.err()).contains("yours");
    }

    @Test
    void cautionsAreThoseOfWhatIsUsedAndSaidOnce() {
        String out = Ran.in(folder, "make", "harbour-light", "--details").out();
        String cautions = out.substring(out.indexOf("cautions\n"));
        assertThat(cautions)
                .contains("fibre-laser: ", "co2-laser: ", "brass-0.15: ", "micro-180: ")
                .doesNotContain("photo-etch");
        assertThat(cautions.split("\n  (?! )")).doesNotHaveDuplicates().hasSize(12);
        assertThat(Ran.in(folder, "make", "harbour-light").out())
                .as("never left out altogether")
                .contains("11 cautions (co2-laser, acrylic-3, acrylic-2, fibre-laser, brass-0.15,");
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandHasHelpWithAnExampleAndAVersion(String command) {
        Ran help = Ran.in(folder, command, "--help");
        assertThat(help.exit()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(help.out())
                .contains("Usage: ringleaf " + command)
                .contains("Example")
                .contains("  ringleaf " + command);
        assertThat(Ran.in(folder, "help", command)).isEqualTo(help);
        Ran version = Ran.in(folder, command, "--version");
        assertThat(version).isEqualTo(Ran.in(folder, "--version"));
        assertThat(version.out()).matches("ringleaf [0-9]+\\.[0-9]+\\.[0-9]+\n");
        assertThat(Ran.in(folder, "--help").out()).contains("\n  " + command + " ");
    }

    @Test
    void theHelpOfMakeLeadsToEveryFieldWithItsDefault() {
        assertThat(Ran.in(folder, "make", "--help").out()).contains("ringleaf help leaf-aperture");
        String page = Ran.in(folder, "help", "leaf-aperture").out();
        String table = Ran.in(folder, "help", "leaf-aperture", "--markdown").out();
        for (Field<?> field : Kinds.REGISTERED.named("leaf-aperture").fields().fields()) {
            assertThat(page).contains("\n  " + field.name() + " ").contains(field.help());
            assertThat(table).contains("\n| `" + field.name() + "` | ");
        }
    }

    @Test
    void theSchemaIsJson() throws IOException {
        Ran ran = Ran.in(folder, "schema");
        assertThat(ran.exit()).isZero();
        assertThat(new ObjectMapper().readTree(ran.out()).path("$schema").asText())
                .contains("2020-12");
    }

    @Test
    void colourIsForTerminalsThatWantIt() {
        String[] args = {"check", "harbour-light", "--details"};
        Ran plain = Ran.in(folder, args);
        Ran coloured = Ran.with(new Surroundings(folder, true, true), "", args);
        assertThat(plain.err()).doesNotContain("\u001b");
        assertThat(coloured.err()).contains("\u001b[32mpass");
        assertThat(coloured.out()).isEqualTo(plain.out());
        assertThat(coloured.err().replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(plain.err());
    }

    @Test
    void thoroughJudgesEveryStateAndCountsOnATerminalOnly() {
        String[] args = {"check", "harbour-light", "--states", "21", "--thorough"};
        Ran silent = Ran.in(folder, args);
        Ran watched = Ran.with(new Surroundings(folder, true, false), "", args);
        assertThat(silent.err()).doesNotContain("\r");
        assertThat(watched.err())
                .contains("\rshutter [########################] 21 of 21 states judged")
                .endsWith(silent.err());
        assertThat(watched.out()).isEqualTo(silent.out());
    }
}
