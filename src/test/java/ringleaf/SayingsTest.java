// SPDX-License-Identifier: Apache-2.0
package ringleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What is told to people is data wherever it is found, and words in one file a package, which only the report reads. */
class SayingsTest {
    private static final Path MAIN = Path.of("src/main/java/ringleaf");
    private static final Path FILES = Path.of("src/main/resources/ringleaf");
    private static final Pattern SAYS =
            Pattern.compile("(?:Saying\\.of|\\.says|Place\\.when)\\(\\s*(\"[a-z]+\\.[a-z0-9-]+\"[,)])?");
    private static final Pattern MARK = Pattern.compile("\\{(\\d+)");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final Pattern SENTENCE = Pattern.compile("\\p{L}+[,;:]? \\p{L}+[,;:]? \\p{L}+");
    /** Reading a spec is refused in words, fields explain themselves, and who writes code is told what went wrong. */
    private static final Pattern OTHER_WORDS =
            Pattern.compile("(?i)Exception|problem|refus|reason|\\bField|\\.help\\(|@SuppressWarnings");

    /** Packages that find, judge and design, and how many sentences each still makes: a list that only gets shorter. */
    private static final Map<String, Integer> LEFT = Map.ofEntries(
            Map.entry("fabricate", 13),
            Map.entry("firmware", 30),
            Map.entry("groove", 3),
            Map.entry("leaf", 12),
            Map.entry("mechanism", 24),
            Map.entry("mechanism/aperture", 321),
            Map.entry("mechanism/belt", 161),
            Map.entry("mechanism/body", 23),
            Map.entry("mechanism/gear", 97),
            Map.entry("mechanism/rack", 80),
            Map.entry("part", 1),
            Map.entry("tolerance", 6),
            Map.entry("tooth", 0),
            Map.entry("verify", 0));

    @TestFactory
    Stream<DynamicTest> everyKeyHasWordsAndAllWordsAreUsed() {
        return files().stream()
                .map(file -> DynamicTest.dynamicTest(FILES.relativize(file).toString(), () -> {
                    String name = file.getParent().getFileName().toString();
                    TreeSet<String> words = new TreeSet<>();
                    read(file).stringPropertyNames().forEach(key -> words.add(name + "." + key));
                    TreeSet<String> used = new TreeSet<>();
                    for (Path source : sources(MAIN)) {
                        for (Said said : said(source)) {
                            if (said.key.startsWith(name + ".")) {
                                used.add(said.key);
                                assertThat(MAIN.resolve(FILES.relativize(file.getParent())))
                                        .as("%s is said by its own package", said.key)
                                        .isEqualTo(source.getParent());
                            }
                        }
                    }
                    assertThat(words).isEqualTo(used);
                }));
    }

    @Test
    void keysStandInTheirOrder() throws IOException {
        for (Path file : files()) {
            List<String> keys = Files.readAllLines(file).stream()
                    .filter(line -> line.matches("[a-z0-9-]+ = .*"))
                    .map(line -> line.substring(0, line.indexOf(' ')))
                    .toList();
            assertThat(keys).hasSameSizeAs(read(file).keySet()).isSorted().doesNotHaveDuplicates();
        }
    }

    @Test
    void argumentsAreThoseOfTheWords() {
        Map<String, Properties> words = new TreeMap<>();
        files().forEach(file -> words.put(file.getParent().getFileName().toString(), read(file)));
        for (Path source : sources(MAIN)) {
            for (Said said : said(source)) {
                int point = said.key.indexOf('.');
                assertThat(words).as(said.key).containsKey(said.key.substring(0, point));
                String text = words.get(said.key.substring(0, point)).getProperty(said.key.substring(point + 1));
                assertThat(text).as(said.key).isNotNull();
                TreeSet<Integer> marks = new TreeSet<>();
                MARK.matcher(text).results().forEach(mark -> marks.add(Integer.valueOf(mark.group(1))));
                assertThat(marks)
                        .as(said.key)
                        .isEqualTo(new TreeSet<>(
                                IntStream.range(0, said.arguments).boxed().toList()));
            }
        }
    }

    /** A key that is put together could not be looked up here. */
    @Test
    void keysAreWrittenOut() {
        for (Path source : sources(MAIN)) {
            if (source.startsWith(MAIN.resolve("part"))) {
                continue;
            }
            String text = text(source);
            Matcher says = SAYS.matcher(text);
            while (says.find()) {
                boolean ready = text.startsWith("says(", says.start() + 1) && !text.startsWith("\"", says.end());
                assertThat(says.group(1) != null || ready)
                        .as("%s, at %s", source, text.substring(says.start(), says.end()))
                        .isTrue();
            }
        }
    }

    @Test
    void nobodyElseMakesSentences() {
        LEFT.forEach((name, most) -> {
            int sentences = 0;
            for (Path source : sources(MAIN.resolve(name))) {
                sentences += source.getParent().equals(MAIN.resolve(name)) ? sentences(source) : 0;
            }
            assertThat(sentences).as(name).isLessThanOrEqualTo(most);
        });
    }

    private static int sentences(Path source) {
        int sentences = 0;
        for (String statement : code(source).split("[;{}]\\s*\n")) {
            Matcher literal = LITERAL.matcher(OTHER_WORDS.matcher(statement).find() ? "" : statement);
            while (literal.find()) {
                sentences += SENTENCE.matcher(literal.group(1)).find() ? 1 : 0;
            }
        }
        return sentences;
    }

    private record Said(String key, int arguments) {}

    private static List<Said> said(Path source) {
        String text = text(source);
        List<Said> all = new ArrayList<>();
        Matcher says = SAYS.matcher(text);
        while (says.find()) {
            if (says.group(1) != null) {
                String key = says.group(1);
                all.add(new Said(key.substring(1, key.length() - 2), arguments(text, says.start(1))));
            }
        }
        return all;
    }

    /** How many arguments stand between the key at {@code from} and the bracket that ends them. */
    private static int arguments(String text, int from) {
        int depth = 0;
        int count = 0;
        boolean quoted = false;
        for (int i = from; depth >= 0; i++) {
            char c = text.charAt(i);
            if (c == '"' && text.charAt(i - 1) != '\\') {
                quoted = !quoted;
            } else if (!quoted && (c == '(' || c == '{')) {
                depth++;
            } else if (!quoted && (c == ')' || c == '}')) {
                depth--;
            } else if (!quoted && c == ',' && depth == 0) {
                count++;
            }
        }
        return count;
    }

    private static String code(Path source) {
        return text(source).replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)^\\s*//.*$", "");
    }

    private static List<Path> files() {
        return sources(FILES, "words.properties");
    }

    private static List<Path> sources(Path folder) {
        return sources(folder, ".java");
    }

    private static List<Path> sources(Path folder, String end) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> path.toString().endsWith(end)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Properties read(Path file) {
        Properties words = new Properties();
        try (Stream<String> lines = Files.lines(file)) {
            words.load(new java.io.StringReader(String.join("\n", lines.toList())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words;
    }

    private static String text(Path source) {
        try {
            return Files.readString(source);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
