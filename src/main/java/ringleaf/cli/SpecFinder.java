// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/** Finds the text that SPEC on the command line means. */
final class SpecFinder {
    private final Surroundings surroundings;
    private final InputStream in;

    SpecFinder(Surroundings surroundings, InputStream in) {
        this.surroundings = surroundings;
        this.in = in;
    }

    /**
     * The text: a file where there is one, else the preset of that name; {@code -} is standard input.
     *
     * @return empty when it is no text, which is then among the problems
     */
    Optional<SpecSource> find(String typed, Problems problems) {
        if (typed.equals("-")) {
            return read("standard input", in, problems);
        }
        Path path = surroundings.place(typed, "SPEC");
        boolean preset = Presets.has(typed);
        if (preset && !Files.isRegularFile(path)) {
            return Optional.of(SpecSource.of(Presets.fileName(typed), Presets.text(typed)));
        }
        if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            throw Stop.trouble(missing(typed));
        }
        if (Files.isDirectory(path)) {
            throw Stop.trouble("cannot read " + Shown.cut(typed, 300) + ": it is a folder, and a spec is a file");
        }
        try (InputStream file = Trouble.open(path)) {
            return SpecSource.read(typed, file, problems);
        } catch (IOException e) {
            throw Trouble.reading(typed, e);
        }
    }

    private static Optional<SpecSource> read(String name, InputStream from, Problems problems) {
        try {
            return SpecSource.read(name, from, problems);
        } catch (IOException e) {
            throw Trouble.reading(name, e);
        }
    }

    private static String missing(String typed) {
        String name = typed.substring(Math.max(typed.lastIndexOf('/'), typed.lastIndexOf('\\')) + 1);
        int dot = name.lastIndexOf('.');
        name = dot > 0 ? name.substring(0, dot) : name;
        Optional<String> nearest = Nearest.of(name, Presets.names());
        String hint = nearest.isPresent()
                ? "did you mean " + nearest.get() + "?"
                : "presets: " + String.join(", ", Presets.names());
        String reason = Trouble.reason(new NoSuchFileException(typed));
        return "cannot read " + Shown.cut(typed, 300) + ": " + reason + ", nor a preset of that name; " + hint;
    }
}
