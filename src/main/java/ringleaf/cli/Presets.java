// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** The specs that come with the tool: every file of the folder that is packed with it. */
final class Presets {
    private static final String FOLDER = "ringleaf/presets/";
    private static final String ENDING = ".yaml";

    private Presets() {}

    /** Names in alphabetical order. */
    static List<String> names() {
        try {
            Path own = Path.of(Presets.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            if (Files.isRegularFile(own)) {
                try (ZipFile jar = new ZipFile(own.toFile())) {
                    return named(jar.stream().map(ZipEntry::getName));
                }
            }
            try (Stream<Path> files = Files.list(own.resolve(FOLDER))) {
                return named(files.map(file -> FOLDER + file.getFileName()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("where the jar lies has no path", e);
        }
    }

    private static List<String> named(Stream<String> paths) {
        return paths.filter(path -> path.startsWith(FOLDER) && path.endsWith(ENDING))
                .map(path -> path.substring(FOLDER.length(), path.length() - ENDING.length()))
                .sorted()
                .toList();
    }

    /** Whether there is a preset of this name. */
    static boolean has(String name) {
        return name.matches("[a-z0-9-]+") && Presets.class.getResource("/" + FOLDER + fileName(name)) != null;
    }

    /** The text of a preset. */
    static String text(String name) {
        String path = "/" + FOLDER + fileName(name);
        try (InputStream in = Presets.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is missing from the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String fileName(String name) {
        return name + ENDING;
    }

    /** What the preset is: the first sentence of its comment. */
    static String summary(String name) {
        StringBuilder comment = new StringBuilder();
        for (String line : text(name).split("\n", -1)) {
            if (!line.startsWith("#")) {
                break;
            }
            comment.append(comment.length() == 0 ? "" : " ")
                    .append(line.substring(1).trim());
            int end = comment.indexOf(". ");
            if (end > 0 || comment.toString().endsWith(".")) {
                return comment.substring(0, end > 0 ? end + 1 : comment.length());
            }
        }
        return comment.toString();
    }
}
