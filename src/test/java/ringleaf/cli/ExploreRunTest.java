// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Whole runs of {@code explore}: what it prints, what it writes, what it leaves alone. */
class ExploreRunTest {
    private static final String SPEC = """
            title: Lamp
            mechanisms:
              shutter:
                kind: leaf-aperture
                full-opening: 48      # clear
                least-opening: 16
                blades: 10            # many
                blade-thickness: 0.1
                drive-pin: far-end
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void spec() throws Exception {
        Files.writeString(folder.resolve("lamp.yaml"), SPEC);
    }

    private Ran explore(String... more) {
        String[] args = new String[more.length + 2];
        args[0] = "explore";
        args[1] = "lamp.yaml";
        System.arraycopy(more, 0, args, 2, more.length);
        Ran ran = Ran.in(folder, args);
        assertThat(ran.showsATrace()).as(ran.out() + ran.err()).isFalse();
        return ran;
    }

    @Test
    void theTableTheFilesAndATakenSpecAgree() throws Exception {
        Ran ran = explore(
                "--vary",
                "shutter.blades=8..10",
                "--vary",
                "shutter.lap=0.5,0.8",
                "--keep",
                "3",
                "--minimise",
                "outer-diameter",
                "--take",
                "2",
                "--to",
                "mine.yaml");
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains("6 combinations at 61 states", "sorted by outer-diameter", "wrote mine.yaml (place 2)");
        List<String> rows = Files.readAllLines(folder.resolve("out/lamp/explore.csv"));
        assertThat(rows).hasSize(7);
        assertThat(rows.get(0))
                .startsWith("rank,shutter.blades,shutter.lap,result,best-trade-off,verified,outer-diameter_mm");
        String[] second = rows.get(2).split(",");
        String taken = Files.readString(folder.resolve("mine.yaml"));
        assertThat(taken)
                .contains("full-opening: 48      # clear\n", "blades: " + second[1] + "            # many\n")
                .contains("lap: " + second[2] + "\n");
        Ran made = Ran.in(folder, "check", "mine.yaml", "--states", "61", "--details");
        assertThat(made.exit()).as(made.err()).isZero();
        assertThat(made.out()).containsPattern("outer-diameter +" + second[6].replace(".", "\\.") + " mm");
    }

    @Test
    void theSameInputGivesTheSameBytesWhateverTheThreads() {
        String[] args = {"--vary", "shutter.blades=8..11", "--vary", "shutter.blade-thickness=0.1,0.15"};
        Map<String, String> before = null;
        String said = null;
        for (String threads : List.of("1", "2", "7")) {
            Ran ran = explore(args[0], args[1], args[2], args[3], "--threads", threads);
            Map<String, String> files = Ran.listing(folder);
            assertThat(said == null || said.equals(ran.out())).isTrue();
            assertThat(before == null || before.equals(files)).isTrue();
            said = ran.out();
            before = files;
        }
        assertThat(before).containsKeys("out/lamp/explore.csv", "out/lamp/explore.svg");
    }

    @Test
    void theChartHasRealTextAndAMarkForEveryDesign() throws Exception {
        assertThat(explore("--vary", "shutter.blades=8..11").exit()).isZero();
        String svg = Files.readString(folder.resolve("out/lamp/explore.svg"));
        Document chart =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        NodeList texts = chart.getElementsByTagName("text");
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < texts.getLength(); i++) {
            words.append(texts.item(i).getTextContent()).append('\n');
        }
        assertThat(words).contains("blades\n", "bezel, mm\n", "depth, mm\n", "best trade-offs");
        int tips = 0;
        NodeList titles = chart.getElementsByTagName("title");
        for (int i = 0; i < titles.getLength(); i++) {
            tips += titles.item(i).getTextContent().startsWith("place ") ? 1 : 0;
        }
        // Two plots with four designs each, and a star over each undominated one.
        assertThat(tips).isGreaterThanOrEqualTo(8);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--vary | shutter.blades=24..8 | reversed",
                "--vary | shutter.blades= | 0 combinations",
                "--vary | shutter.lap=a..b | not numeric",
                "--vary | shutter.lap=0..4..0.00001 | comes to 400001 combinations",
                "--vary | shutter.blads=8..9 | did you mean blades?",
                "--vary=shutter.blades=8,9 | --keep=0 | --keep: 0 is no whole number from 1 to 1000",
                "--vary=shutter.blades=8,9 | --to=x.yaml | there is no --take",
                "--vary=shutter.blades=8,9 | --take=3 | there are no more than 2 combinations",
                "--vary=shutter.blades=8,9 | --set=shutter.blades=10 | --vary puts its own values there",
                "--vary=shutter.blades=8,9 | --set=mechanisms.shutter.blades=10 | --vary puts its own values there",
                "--vary | shutter.blades=8..9.5 | takes whole numbers",
                "--vary | shutter.lap=0.4..0.6*1 | no whole number from 2 up",
                "--why-not | --yes | no meaning beside it",
                "--set | shutter.lap=0.5 | nothing is varied"
            })
    void wrongCommandLinesWriteNothing(String option, String value, String reason) {
        Map<String, String> before = Ran.listing(folder);
        Ran ran = explore(option, value);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(reason);
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    @Test
    void unknownFiguresAndGridsThatOnlyContradictAreRefused() {
        Ran figure = explore("--vary", "shutter.blades=8,9", "--minimise", "outer-diametr");
        assertThat(figure.exit()).isEqualTo(2);
        assertThat(figure.err()).contains("did you mean outer-diameter?");
        Ran against = explore("--vary", "shutter.least-opening=48,50");
        assertThat(against.exit()).isEqualTo(2);
        assertThat(against.err()).contains("every one of 2 combinations is inconsistent", "least-opening");
        assertThat(Files.exists(folder.resolve("out"))).isFalse();
    }

    @Test
    void nothingIsTakenOverAnExistingFile() throws Exception {
        Files.writeString(folder.resolve("lamp-1.yaml"), "mine");
        Ran ran = explore("--vary", "shutter.blades=8,9", "--take", "1");
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err()).contains("lamp-1.yaml: it exists already");
        assertThat(Files.readString(folder.resolve("lamp-1.yaml"))).isEqualTo("mine");
        assertThat(Files.exists(folder.resolve("out"))).isFalse();
    }

    @Test
    void aPlaceWithoutAWorkingDesignIsNotTakenAndNothingIsWritten() {
        Map<String, String> before = Ran.listing(folder);
        Ran ran = explore("--vary", "shutter.depth=5,20", "--take", "2");
        assertThat(ran.exit()).as(ran.err()).isEqualTo(2);
        assertThat(ran.err()).contains("--take 2: no design that works stands in that place; one works");
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    @Test
    void aMissingFolderOfTheTakenSpecIsFoundBeforeTheWork() {
        Map<String, String> before = Ran.listing(folder);
        Ran ran = explore("--vary", "shutter.blades=8,9", "--take", "1", "--to", "no/such/lamp.yaml");
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("cannot write no/such/lamp.yaml: there is no such folder");
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    @Test
    void whereNothingWorksThatIsToldAndTheExitIsOne() {
        Ran ran = explore("--vary", "shutter.blades=8,9", "--set", "shutter.outer-diameter={at-most: 50}");
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out()).contains("0 work, 2 fail (2 as calculated at once)", "outer-diameter");
        assertThat(ran.err()).contains("--why-not");
    }

    @Test
    void whyNotTellsWhatFailsAndWhatWouldFit() {
        Ran fine = explore("--why-not");
        assertThat(fine.exit()).isZero();
        assertThat(fine.out()).contains("every check holds, calculated and on the geometry");
        Ran ran = explore("--why-not", "--set", "shutter.outer-diameter={at-most: 72}");
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out())
                .contains("shutter fails\n  outer-diameter: ", "outer-diameter.at-most: ", " would fit (now 72 mm; ");
        assertThat(Files.exists(folder.resolve("out"))).isFalse();
        Ran check = Ran.in(folder, "check", "lamp.yaml", "--set", "shutter.outer-diameter={at-most: 72}");
        assertThat(check.err())
                .contains("what would mend it\n", "  outer-diameter.at-most: 81.2 mm would fit (now 72 mm)\n")
                .contains("  to try the first: --set shutter.full-opening=42mm\n");
        Ran typed = Ran.in(
                folder,
                "check",
                "lamp.yaml",
                "--set",
                "shutter.outer-diameter={at-most: 72}",
                "--set",
                "shutter.full-opening=42mm");
        assertThat(typed.exit()).isZero();
    }

    private static Duration cpu(Process process) {
        return process.info().totalCpuDuration().orElse(Duration.ZERO);
    }

    /** A child process that is told to end so many times, at once one after the other, while it tries combinations. */
    private Ran interrupted(int times, String... more) throws Exception {
        Path out = folder.resolve("stdout");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "ringleaf.cli.Main",
                "explore",
                "lamp.yaml",
                "--vary",
                "shutter.blades=7..30",
                "--vary",
                "shutter.lap=0.2..2..0.001"));
        command.addAll(List.of(more));
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(folder.resolve("stderr").toFile())
                .start();
        // Not by the clock, for a busy machine may not have started yet: some thousand combinations are left after
        // this.
        Duration enough = Duration.ofSeconds(5);
        for (int i = 0; i < 900 && cpu(process).compareTo(enough) < 0; i++) {
            process.waitFor(100, TimeUnit.MILLISECONDS);
        }
        for (int i = 0; i < times; i++) {
            new ProcessBuilder("kill", "-INT", Long.toString(process.pid()))
                    .start()
                    .waitFor();
            process.waitFor(50, TimeUnit.MILLISECONDS);
        }
        assertThat(process.waitFor(100, TimeUnit.SECONDS)).isTrue();
        return new Ran(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(folder.resolve("stderr"), StandardCharsets.UTF_8));
    }

    /** The rows of explore.csv: place, whether it works, what it was judged by. */
    private List<String[]> table() throws Exception {
        List<String> lines = Files.readAllLines(folder.resolve("out/lamp/explore.csv"));
        assertThat(lines.get(0)).startsWith("rank,shutter.blades,shutter.lap,result,best-trade-off,verified,");
        List<String[]> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            rows.add(line.split(",", -1));
        }
        return rows;
    }

    /** The best so far is judged, printed and written when somebody presses Ctrl-C. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void anInterruptLeavesTheBestSoFarJudgedInWholeFiles() throws Exception {
        Ran ran = interrupted(1, "--take", "2");
        assertThat(ran.exit()).isEqualTo(130);
        assertThat(ran.out())
                .containsPattern("[0-9]+ of 43224 combinations")
                .contains("written to out/lamp", "wrote lamp-2.yaml (place 2 so far)")
                .doesNotContain("NOT verified");
        List<String[]> rows = table();
        assertThat(rows.size()).isBetween(2, 43223);
        assertThat(rows.subList(0, 5)).allMatch(r -> r[3].equals("works") && r[5].equals("geometry"));
        assertThat(Files.readString(folder.resolve("out/lamp/explore.svg"))).endsWith("</svg>\n");
        assertThat(ran.err()).contains("stopped after " + rows.size() + " of 43224", "verified on the geometry");
        assertThat(Files.readString(folder.resolve("lamp-2.yaml"))).contains("blades: " + rows.get(1)[1] + " ");
        try (var files = Files.list(folder.resolve("out/lamp"))) {
            assertThat(files).hasSize(2);
        }
    }

    /** With 500 designs to judge the second one comes long before the last of them. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aSecondInterruptLeavesThemUnjudgedAndSaysSo() throws Exception {
        Ran ran = interrupted(2, "--keep", "500");
        assertThat(ran.exit()).isEqualTo(130);
        assertThat(ran.out()).contains("NOT verified: only calculated", "written to out/lamp");
        assertThat(ran.err()).containsPattern("[0-9]+ of [0-9]+ shown not verified on the geometry");
        List<String[]> rows = table();
        List<String> lines = ran.out()
                .lines()
                .filter(l -> l.matches(" *(\\* )? *[0-9]+  .*"))
                .toList();
        int unjudged = 0;
        for (String line : lines) {
            int place = Integer.parseInt(line.trim().replaceFirst("^\\* ", "").split(" ")[0]);
            boolean judged = rows.get(place - 1)[5].equals("geometry");
            assertThat(line).contains(judged ? "  verified  " : "  NOT verified  ");
            unjudged += judged ? 0 : 1;
        }
        assertThat(unjudged).isPositive();
        assertThat(Files.readString(folder.resolve("out/lamp/explore.svg")))
                .contains("not verified on the geometry", "works (calculated)")
                .endsWith("</svg>\n");
    }
}
