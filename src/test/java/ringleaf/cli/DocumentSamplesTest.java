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
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What README and chapters show as specs passes, what they show as commands is read, and mistakes look as they show. */
class DocumentSamplesTest {
    private static final Pattern YAML = Pattern.compile("(?s)```yaml\n(.*?)```");
    private static final Pattern COMMANDS = Pattern.compile("(?s)```(?:sh)?\n(.*?)```");
    private static final Pattern MISTAKE = Pattern.compile("(?s)```\n(my-light\\.yaml:[0-9]+:.*?)```");

    @TempDir
    Path folder;

    private static List<Path> documents() throws IOException {
        List<Path> all = new ArrayList<>(List.of(Path.of("README.md")));
        try (Stream<Path> chapters = Files.list(Path.of("src/doc"))) {
            all.addAll(
                    chapters.filter(f -> f.toString().endsWith(".md")).sorted().toList());
        }
        return all;
    }

    private static List<String> found(Pattern pattern, Path document) throws IOException {
        List<String> blocks = new ArrayList<>();
        Matcher matcher = pattern.matcher(Files.readString(document));
        while (matcher.find()) {
            blocks.add(matcher.group(1));
        }
        return blocks;
    }

    /** Specs that are shown whole. */
    private static List<String> specs(Path document) throws IOException {
        return found(YAML, document).stream()
                .filter(block -> block.startsWith("mechanisms:") || block.contains("\nmechanisms:"))
                .toList();
    }

    @TestFactory
    List<DynamicTest> everySpecThatIsShownPasses() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path document : documents()) {
            for (String spec : specs(document)) {
                tests.add(DynamicTest.dynamicTest(document.getFileName() + " " + (tests.size() + 1), () -> {
                    Path file = Files.writeString(folder.resolve("my-light.yaml"), spec);
                    Ran ran = Ran.in(folder, "check", file.getFileName().toString(), "--states", "31");
                    assertThat(ran.exit()).as(ran.err()).isZero();
                }));
            }
        }
        assertThat(tests.size()).isGreaterThanOrEqualTo(4);
        return tests;
    }

    /** README's spec with two blades, as the mistake beside it shows. */
    @Test
    void mistakesLookAsTheyAreShown() throws IOException {
        int shown = 0;
        for (Path document : documents()) {
            for (String mistake : found(MISTAKE, document)) {
                shown++;
                String spec = specs(document).get(0).replaceFirst("blades: [0-9]+", "blades: 2");
                Files.writeString(folder.resolve("my-light.yaml"), spec);
                assertThat(Ran.in(folder, "check", "my-light.yaml").err())
                        .as(document.toString())
                        .isEqualTo(mistake);
            }
        }
        assertThat(shown).isPositive();
    }

    @Test
    void everyCommandThatIsShownIsRead() throws IOException {
        int read = 0;
        for (Path document : documents()) {
            for (String block : found(COMMANDS, document)) {
                for (String line : block.lines().toList()) {
                    Matcher command = Pattern.compile(".*?(?:target/)?ringleaf (?=[a-z])([^#]*?)(?:#.*|>.*)?")
                            .matcher(line);
                    if (line.startsWith("mvn") || !line.contains("ringleaf ") || !command.matches()) {
                        continue;
                    }
                    String[] words = command.group(1).replace("'", "").trim().split(" +");
                    CommandLine.ParseResult result = Syntax.line().parseArgs(words);
                    assertThat(result.hasSubcommand()).as(line).isTrue();
                    read++;
                }
            }
        }
        assertThat(read).isGreaterThanOrEqualTo(12);
    }

    /** What follows a command that asks why not is what it says. */
    @Test
    void reasonsAreTheOnesThatAreShown() throws IOException {
        int shown = 0;
        for (String block : found(COMMANDS, Path.of("src/doc/explore.md"))) {
            List<String> lines = block.lines().toList();
            if (lines.get(0).endsWith("--why-not")) {
                String[] words = lines.get(0).substring("ringleaf ".length()).split(" ");
                Ran ran = Ran.in(folder, words);
                assertThat(ran.out() + ran.err()).contains(lines.subList(1, lines.size()));
                shown++;
            }
        }
        assertThat(shown).isEqualTo(2);
    }
}
