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
import ringleaf.draw.format.Formats;

/** What an earlier run left in a folder, by the list in its design.json. */
final class EarlierRun {
    /** What a run writes besides its formats and not every run does, as patterns of {@link Formats#fits}. */
    private static final List<String> BESIDES = List.of("motion/*.csv", "views/*.svg", "sheets.csv");

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
        return Formats.write(path) || BESIDES.stream().anyMatch(pattern -> Formats.fits(path, pattern));
    }
}
