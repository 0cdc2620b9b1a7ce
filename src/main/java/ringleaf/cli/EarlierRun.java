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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.draw.format.Formats;

/** What an earlier run left in a folder, by the list in its design.json. */
final class EarlierRun {
    /** What a run writes besides its formats and not every run does, as patterns of {@link Formats#fits}. */
    private static final List<String> BESIDES = List.of("motion/*.csv", "views/*.svg", "sheets.csv");

    private final List<String> files = new ArrayList<>();
    private final Map<String, String> digests = new LinkedHashMap<>();

    private EarlierRun() {}

    /**
     * Paths within the folder of the files that an earlier run wrote; none when there is no design.json of ours or it
     * cannot be read. A path that could lead anywhere else is passed over.
     */
    static List<String> files(Path folder) {
        return read(folder).files;
    }

    /** Digests of all files of that run by their paths as they stand there, to be looked at only; none where there is no design.json of ours. */
    static Map<String, String> digests(Path folder) {
        return read(folder).digests;
    }

    private static EarlierRun read(Path folder) {
        Path design = folder.resolve(RunFiles.DESIGN);
        EarlierRun run = new EarlierRun();
        if (!Files.isRegularFile(design, LinkOption.NOFOLLOW_LINKS)) {
            return run;
        }
        try (JsonParser json = new JsonFactory().createParser(Files.readAllBytes(design))) {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                return run;
            }
            boolean ours = false;
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String key = json.currentName();
                JsonToken value = json.nextToken();
                ours |= key.equals("ringleaf");
                if (key.equals("files") && value == JsonToken.START_ARRAY) {
                    run.collectFiles(json);
                } else if (key.equals("digests") && value == JsonToken.START_OBJECT) {
                    run.collectDigests(json);
                } else {
                    json.skipChildren();
                }
            }
            return ours ? run : new EarlierRun();
        } catch (IOException e) {
            // Not a file of ours, or no longer: then nothing here is known to be ours.
            return new EarlierRun();
        }
    }

    private void collectFiles(JsonParser json) throws IOException {
        while (json.nextToken() == JsonToken.VALUE_STRING) {
            String path = json.getText();
            if (isOurs(path)) {
                files.add(path);
            }
        }
    }

    private void collectDigests(JsonParser json) throws IOException {
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String path = json.currentName();
            json.nextToken();
            digests.put(path, json.getText());
        }
    }

    private static boolean isOurs(String path) {
        return Formats.write(path) || BESIDES.stream().anyMatch(pattern -> Formats.fits(path, pattern));
    }
}
