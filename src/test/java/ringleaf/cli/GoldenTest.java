// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole runs against what they once said and wrote, a folder a case below {@code golden}: {@code args} (one a line),
 * {@code stdout}, {@code stderr}, {@code exit}, {@code files} (the paths of all that is written) and, under
 * {@code expected/}, the whole text of some of them; anything else there is laid out for the run.
 *
 * <p>Words are compared exactly, numbers to a millionth of themselves: sines may differ in their last bit from one
 * machine to another. {@code -Dringleaf.golden=write} writes the cases anew; look at the difference before you keep it.
 */
class GoldenTest {
    private static final Path GOLDEN = Path.of("src/test/resources/golden");
    private static final List<String> SAID = List.of("args", "stdout", "stderr", "exit", "files");
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]+(\\.[0-9]+)?([eE][-+]?[0-9]+)?");
    private static final boolean WRITE = "write".equals(System.getProperty("ringleaf.golden"));

    @TempDir
    Path folder;

    static List<String> cases() throws IOException {
        try (Stream<Path> paths = Files.list(GOLDEN)) {
            return paths.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void saysAndWritesWhatItDid(String name) throws IOException {
        Path golden = GOLDEN.resolve(name);
        Result result = run(golden, folder.resolve("first"));
        if (WRITE) {
            write(golden, result);
        }
        for (String part : SAID) {
            assertThat(golden.resolve(part)).exists();
        }
        assertThat(Files.readString(golden.resolve("exit")).trim()).isEqualTo(Integer.toString(result.ran.exit()));
        same("stdout", golden.resolve("stdout"), result.ran.out());
        same("stderr", golden.resolve("stderr"), result.ran.err());
        assertThat(result.paths()).isEqualTo(Files.readString(golden.resolve("files")));
        for (String path : expected(golden)) {
            assertThat(result.files).as("an orphan below expected/").containsKey(path);
            same(
                    path,
                    golden.resolve("expected").resolve(path),
                    withoutDigests(new String(result.files.get(path), StandardCharsets.UTF_8)));
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void saysAndWritesTheSameBytesAgainWhereCommasPartDecimals(String name) throws IOException {
        Result first = run(GOLDEN.resolve(name), folder.resolve("first"));
        Locale usual = Locale.getDefault();
        Result again;
        try {
            Locale.setDefault(Locale.GERMANY);
            again = run(GOLDEN.resolve(name), folder.resolve("again"));
        } finally {
            Locale.setDefault(usual);
        }
        assertThat(again.ran).isEqualTo(first.ran);
        assertThat(again.files.keySet()).isEqualTo(first.files.keySet());
        for (Map.Entry<String, byte[]> file : first.files.entrySet()) {
            assertThat(again.files.get(file.getKey())).as(file.getKey()).isEqualTo(file.getValue());
        }
    }

    @Test
    void theComparisonSeesWhatDiffers() {
        assertThat(difference("a 1.0 b", "a 1.0000001 b")).isNull();
        assertThat(difference("a 1.0 b", "a 1.00001 b")).isNotNull();
        assertThat(difference("a 1.0 b", "a 1.0 c")).isNotNull();
        assertThat(difference("a 1.0 b", "a 1.0 b 2")).isNotNull();
        assertThat(difference("0", "0.000000001")).isNull();
        assertThat(difference("0", "0.001")).isNotNull();
    }

    private record Result(Ran ran, Map<String, byte[]> files) {
        String paths() {
            StringBuilder out = new StringBuilder();
            for (String path : files.keySet()) {
                out.append(path).append('\n');
            }
            return out.toString();
        }
    }

    private static Result run(Path golden, Path work) throws IOException {
        Files.createDirectories(work);
        List<String> laid = new ArrayList<>();
        try (Stream<Path> paths = Files.list(golden)) {
            for (Path path : (Iterable<Path>) paths::iterator) {
                String name = path.getFileName().toString();
                if (!SAID.contains(name) && !name.equals("expected")) {
                    Files.copy(path, work.resolve(name));
                    laid.add(name);
                }
            }
        }
        List<String> args = Files.readAllLines(golden.resolve("args"));
        Ran ran = Ran.in(work, args.toArray(new String[0]));
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(work)) {
            for (Path path : (Iterable<Path>) paths::iterator) {
                String name = work.relativize(path).toString().replace('\\', '/');
                if (Files.isRegularFile(path) && !laid.contains(name)) {
                    files.put(name, Files.readAllBytes(path));
                }
            }
        }
        return new Result(ran, files);
    }

    private static List<String> expected(Path golden) throws IOException {
        Path expected = golden.resolve("expected");
        if (!Files.exists(expected)) {
            return List.of();
        }
        try (Stream<Path> paths = Files.walk(expected)) {
            return paths.filter(Files::isRegularFile)
                    .map(path -> expected.relativize(path).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    private static void write(Path golden, Result result) throws IOException {
        Files.writeString(golden.resolve("stdout"), result.ran.out());
        Files.writeString(golden.resolve("stderr"), result.ran.err());
        Files.writeString(golden.resolve("exit"), result.ran.exit() + "\n");
        Files.writeString(golden.resolve("files"), result.paths());
        for (String path : expected(golden)) {
            byte[] content = result.files.get(path);
            if (content == null) {
                Files.delete(golden.resolve("expected").resolve(path));
            } else {
                String text = withoutDigests(new String(content, StandardCharsets.UTF_8));
                Files.writeString(golden.resolve("expected").resolve(path), text);
            }
        }
    }

    /** Digests change with the last bit of any number in any file; that they are true is looked at elsewhere. */
    private static String withoutDigests(String text) {
        return text.replaceAll("\"[0-9a-f]{64}\"", "\"digest\"");
    }

    private static void same(String what, Path golden, String actual) throws IOException {
        String difference = difference(Files.readString(golden), actual);
        if (difference != null) {
            fail(golden.getParent().getFileName() + ", " + what + ": " + difference);
        }
    }

    /** The first difference of two texts in words; null when they agree. */
    private static String difference(String expected, String actual) {
        String[] wanted = expected.split("\n", -1);
        String[] got = actual.split("\n", -1);
        for (int i = 0; i < Math.max(wanted.length, got.length); i++) {
            String a = i < wanted.length ? wanted[i] : "(no more lines)";
            String b = i < got.length ? got[i] : "(no more lines)";
            if (!a.equals(b) && !near(a, b)) {
                return "line " + (i + 1) + "\n  expected " + a + "\n  but was  " + b;
            }
        }
        return null;
    }

    private static boolean near(String a, String b) {
        if (!NUMBER.matcher(a).replaceAll("#").equals(NUMBER.matcher(b).replaceAll("#"))) {
            return false;
        }
        Matcher in = NUMBER.matcher(a);
        Matcher out = NUMBER.matcher(b);
        while (in.find() && out.find()) {
            double x = Double.parseDouble(in.group());
            double y = Double.parseDouble(out.group());
            if (Math.abs(x - y) > 1e-6 * Math.max(1e-2, Math.abs(x))) {
                return false;
            }
        }
        return true;
    }
}
