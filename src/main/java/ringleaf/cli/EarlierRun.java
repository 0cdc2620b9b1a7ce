// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What an earlier run left in a folder, by the list in its design.json. */
final class EarlierRun {
    private static final List<String> FOLDERS = List.of("parts/", "motion/", "views/", "sheets/", "solids/");
    /** Files at the top that not every run writes. */
    private static final List<String> TOP = List.of("paper.pdf", "drawing.pdf", "sheets.csv");

    private static final List<String> SUFFIXES = List.of(".svg", ".dxf", ".csv", ".stl", ".3mf");

    private EarlierRun() {}

    /**
     * Paths within the folder of the files that an earlier run wrote; none when there is no design.json of ours or it
     * cannot be read. A path that could lead anywhere else is passed over.
     */
    static List<String> files(Path folder) {
        Path design = folder.resolve("design.json");
        List<String> files = new ArrayList<>();
        if (!Files.isRegularFile(design, LinkOption.NOFOLLOW_LINKS)) {
            return files;
        }
        try (JsonParser json = new JsonFactory().createParser(Files.readAllBytes(design))) {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                return files;
            }
            boolean ours = false;
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String key = json.currentName();
                JsonToken value = json.nextToken();
                ours |= key.equals("ringleaf");
                if (key.equals("files") && value == JsonToken.START_ARRAY) {
                    collect(json, files);
                } else {
                    json.skipChildren();
                }
            }
            return ours ? files : List.of();
        } catch (IOException e) {
            // Not a file of ours, or no longer: then nothing here is known to be ours.
            return List.of();
        }
    }

    private static void collect(JsonParser json, List<String> files) throws IOException {
        while (json.nextToken() == JsonToken.VALUE_STRING) {
            String path = json.getText();
            if (isOurs(path)) {
                files.add(path);
            }
        }
    }

    private static boolean isOurs(String path) {
        if (TOP.contains(path)) {
            return true;
        }
        String name = null;
        for (String folder : FOLDERS) {
            if (path.startsWith(folder)) {
                name = path.substring(folder.length());
            }
        }
        if (name == null || name.isEmpty() || name.charAt(0) == '.') {
            return false;
        }
        boolean suffixed = false;
        for (String suffix : SUFFIXES) {
            suffixed |= name.endsWith(suffix);
        }
        for (int i = 0; suffixed && i < name.length(); i++) {
            char c = name.charAt(i);
            suffixed = c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-' || c == '.';
        }
        return suffixed;
    }
}
