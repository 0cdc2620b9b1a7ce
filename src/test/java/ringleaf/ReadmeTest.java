// SPDX-License-Identifier: Apache-2.0
package ringleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringleaf.draw.format.Format;
import ringleaf.draw.format.Formats;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.spec.FabricationFields;
import ringleaf.spec.field.FieldHelp;

/**
 * README and chapters say what is true now. The tables between {@code <!-- fields of … -->} and {@code <!-- end of
 * fields -->} are written anew by {@code mvn -q test -Dtest=ReadmeTest -Dringleaf.docs=write}; look at the difference
 * before you keep it.
 */
class ReadmeTest {
    private static final Path README = Path.of("README.md");
    private static final Path CHAPTERS = Path.of("src/doc");
    private static final String END = "<!-- end of fields -->";
    private static final Pattern LINK = Pattern.compile("]\\(([^)#:]+)\\)");
    private static final Pattern GIVEN_CHECK = Pattern.compile(
            "(?:Finding\\.(?:of|atLeast|atMost)|[^a-z]on|new Requirement\\.[A-Za-z]+)\\(\\s*\"([a-z-]+)\"");
    private static final Pattern CODE_WORD = Pattern.compile("`([a-z-]+)`");
    private static final boolean WRITE = "write".equals(System.getProperty("ringleaf.docs"));

    private static String readme() throws IOException {
        return Files.readString(README);
    }

    private static List<Path> chapters() throws IOException {
        try (Stream<Path> files = Files.list(CHAPTERS)) {
            return files.filter(f -> f.toString().endsWith(".md")).sorted().toList();
        }
    }

    private static Map<String, String> tables() {
        Map<String, String> tables = new LinkedHashMap<>();
        for (Kind kind : Kinds.REGISTERED.all()) {
            tables.put(kind.name(), FieldHelp.markdown(kind.fields()));
        }
        tables.put("formats", Formats.markdown());
        tables.put(
                "fabrication",
                "For all families:\n\n" + FieldHelp.markdown(FabricationFields.GENERAL)
                        + "\nUnder the name of a family, for all that is made as it is (`spares`: of that family only):\n\n"
                        + FieldHelp.markdown(FabricationFields.ofFamily()));
        return tables;
    }

    static List<String> topics() {
        return List.copyOf(tables().keySet());
    }

    @ParameterizedTest
    @MethodSource("topics")
    void everyFieldStandsInAChapterAsTheCodeDeclaresIt(String topic) throws IOException {
        String begin = "<!-- fields of " + topic + ": written by `ringleaf help " + topic + " --markdown`,"
                + " held by a test -->\n";
        List<Path> holding = new ArrayList<>();
        for (Path chapter : chapters()) {
            String text = Files.readString(chapter);
            int from = text.indexOf(begin);
            if (from < 0) {
                continue;
            }
            holding.add(chapter);
            int table = from + begin.length();
            int to = text.indexOf(END, table);
            if (WRITE) {
                text = text.substring(0, table) + tables().get(topic) + text.substring(to);
                Files.writeString(chapter, text);
                to = text.indexOf(END, table);
            }
            assertThat(text.substring(table, to)).isEqualTo(tables().get(topic));
        }
        assertThat(holding).hasSize(1);
    }

    @Test
    void theQuickStartIsOneBlockOfTwoCommands() throws IOException {
        String readme = readme();
        int from = readme.indexOf("```sh\n");
        String block = readme.substring(from + 6, readme.indexOf("```", from + 6));
        assertThat(block.lines().toList()).hasSize(2);
        assertThat(block.lines().toList().get(1)).contains("mvn").contains("verify");
        assertThat(readme.indexOf("```sh\n", from + 6)).isEqualTo(-1);
    }

    @Test
    void everyPresetKindAndFormatIsNamed() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("presets"))) {
            for (Path file : files.toList()) {
                assertThat(readme())
                        .contains("`" + file.getFileName().toString().replace(".yaml", "") + "`");
            }
        }
        for (Kind kind : Kinds.REGISTERED.all()) {
            assertThat(readme()).contains("`" + kind.name() + "`");
        }
        String files = readme().substring(readme().indexOf("## What you get"), readme().indexOf("**Exit codes**"));
        for (Format format : Formats.ALL) {
            assertThat(files.toLowerCase(Locale.ROOT)).contains(format.name());
        }
    }

    @Test
    void itIsReadInAFewMinutesAndLeadsToEveryChapterAndPicture() throws IOException {
        assertThat(readme().lines().count()).isLessThanOrEqualTo(165);
        List<Path> leads = new ArrayList<>(links(README));
        for (Path chapter : chapters()) {
            assertThat(leads).contains(chapter);
            leads.addAll(links(chapter));
        }
        try (Stream<Path> pictures = Files.list(CHAPTERS.resolve("pictures"))) {
            assertThat(leads).containsAll(pictures.toList());
        }
    }

    /** Where the links of a file lead, each of which has to be there. */
    private static List<Path> links(Path file) throws IOException {
        List<Path> found = new ArrayList<>();
        Matcher links = LINK.matcher(Files.readString(file));
        while (links.find()) {
            Path base = file.getParent() == null ? Path.of("") : file.getParent();
            Path to = base.resolve(links.group(1)).normalize();
            assertThat(to).as("a link of " + file).exists();
            found.add(to);
        }
        return found;
    }

    /** The names of checks in the chapter, and those that the code gives. */
    @Test
    void everyCheckStandsInTheChapterAndNoneThatIsGone() throws IOException {
        StringBuilder code = new StringBuilder();
        try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
            for (Path source :
                    sources.filter(f -> f.toString().endsWith(".java")).toList()) {
                code.append(Files.readString(source));
            }
        }
        Set<String> given = found(GIVEN_CHECK, code.toString());
        Set<String> told = new TreeSet<>();
        Files.readString(CHAPTERS.resolve("checks.md"))
                .lines()
                .filter(line -> line.startsWith("| `"))
                .forEach(line -> told.addAll(found(CODE_WORD, line.substring(0, line.indexOf(" | ")))));
        assertThat(told).containsAll(given);
        for (String check : told) {
            assertThat(code).as("a check of this name").contains('"' + check + '"');
        }
    }

    private static Set<String> found(Pattern pattern, String text) {
        Set<String> names = new TreeSet<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            names.add(matcher.group(1));
        }
        return names;
    }
}
