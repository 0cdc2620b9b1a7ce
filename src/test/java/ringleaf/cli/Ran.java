// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** One run of the tool in a folder, with what it said and how it ended. */
record Ran(int exit, String out, String err) {
    /** Runs the tool without a terminal and with nothing on standard input. */
    static Ran in(Path folder, String... args) {
        return with(new Surroundings(folder, false, false), "", args);
    }

    static Ran with(Surroundings surroundings, String input, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Main.run(
                args,
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8),
                surroundings);
        return new Ran(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Everything below a folder: path to content, a folder's path ending in a slash. */
    static Map<String, String> listing(Path folder) {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : (Iterable<Path>) paths::iterator) {
                String name = folder.relativize(path).toString();
                if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
                    all.put(name + "/", "");
                } else if (Files.isSymbolicLink(path)) {
                    all.put(name, "-> " + Files.readSymbolicLink(path));
                } else {
                    byte[] bytes = Files.readAllBytes(path);
                    all.put(name, bytes.length + " bytes, " + Arrays.hashCode(bytes));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    /** Whether any line looks like the inside of the tool. */
    boolean showsATrace() {
        String all = out + err;
        return all.contains("\tat ") || all.contains("Exception") || all.contains("error of the tool itself");
    }
}
