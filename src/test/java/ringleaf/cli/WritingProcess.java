// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** A process that writes sets of files into a folder, one after another, until it is ended. */
final class WritingProcess {
    static final int FILES = 120;

    private WritingProcess() {}

    /** Folder, mark of this process, number of sets; each set holds the mark and its own number in every file. */
    public static void main(String[] args) {
        for (int set = 0; set < Integer.parseInt(args[2]); set++) {
            new OutputFolder(Path.of(args[0]), "o").write(files(args[1] + set), f -> EarlierRun.files(f));
        }
    }

    static Map<String, byte[]> files(String mark) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        StringBuilder listed = new StringBuilder();
        for (int i = 0; i < FILES; i++) {
            String path = "parts/p" + i + ".svg";
            files.put(path, mark.getBytes(StandardCharsets.UTF_8));
            listed.append(i == 0 ? "" : ", ").append('"').append(path).append('"');
        }
        // a file that only some sets have
        if (mark.hashCode() % 2 == 0) {
            files.put("parts/even.svg", mark.getBytes(StandardCharsets.UTF_8));
            listed.append(", \"parts/even.svg\"");
        }
        String design = "{\"ringleaf\": \"" + mark + "\", \"files\": [" + listed + "]}";
        files.put("design.json", design.getBytes(StandardCharsets.UTF_8));
        return files;
    }
}
