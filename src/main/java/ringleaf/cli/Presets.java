// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The specs that come with the tool; a test holds the list against the folder. */
final class Presets {
    /** Names in alphabetical order. */
    static final List<String> NAMES = List.of(
            "cold-frame-vent",
            "field-camera-stop",
            "harbour-light",
            "lamp-carriage-rack",
            "lens-turntable-gears",
            "semaphore-arm-belt");

    private Presets() {}

    /** The text of a preset. */
    static String text(String name) {
        String path = "/ringleaf/presets/" + fileName(name);
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
        return name + ".yaml";
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
