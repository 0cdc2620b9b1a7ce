// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringleaf.report.DesignJson;
import ringleaf.report.Wrap;
import ringleaf.spec.text.Shown;

/** {@code check} of an output folder: whether its files are those of one run, by the digests in its design.json. */
final class FolderCheck {
    private static final int MOST_NAMED = 12;
    private static final int INDENT = 6;

    private FolderCheck() {}

    /** Whether a path is a folder that a run has written. */
    static boolean isOutput(Path path) {
        return Files.isDirectory(path) && Files.isRegularFile(path.resolve(RunFiles.DESIGN));
    }

    /** Looks at all files that the run lists; tells the verdict on standard output, what differs on standard error. */
    static int run(Path folder, String typed, Console console) {
        String shown = Shown.cut(typed, 300);
        Map<String, String> digests = EarlierRun.digests(folder);
        if (digests.isEmpty()) {
            throw Stop.wrong(
                    shown + "/" + RunFiles.DESIGN + " lists no digests of its files; `ringleaf make` writes them");
        }
        List<String> wrong = new ArrayList<>();
        try {
            unfinished(folder, wrong);
            for (Map.Entry<String, String> file : digests.entrySet()) {
                Path path = folder.resolve(file.getKey()).normalize();
                if (!path.startsWith(folder.normalize()) || !Files.isRegularFile(path)) {
                    wrong.add(file.getKey() + " is missing");
                } else if (!DesignJson.digest(Files.readAllBytes(path)).equals(file.getValue())) {
                    wrong.add(file.getKey() + " is of another run, or was changed since");
                }
            }
        } catch (IOException e) {
            throw Trouble.reading(shown, e);
        }
        if (wrong.isEmpty()) {
            console.out()
                    .print(Wrap.of(
                            "PASS  ",
                            "All " + digests.size() + " files beside " + shown + "/" + RunFiles.DESIGN
                                    + " are of the run that wrote it; what it found is in it and in report.html.",
                            INDENT));
            return Exit.FINE;
        }
        console.out()
                .print(Wrap.of(
                        "FAIL  ",
                        "Do not cut from " + shown + ": it holds files of several runs; make it again.",
                        INDENT));
        for (String line : wrong.subList(0, Math.min(MOST_NAMED, wrong.size()))) {
            console.err().print("  " + Shown.cut(line, 300) + "\n");
        }
        if (wrong.size() > MOST_NAMED) {
            console.err().print("  and " + (wrong.size() - MOST_NAMED) + " more\n");
        }
        return Exit.FAILED;
    }

    private static void unfinished(Path folder, List<String> wrong) throws IOException {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, OutputFolder.HIDDEN + "*")) {
            for (Path hidden : entries) {
                if (Files.isDirectory(hidden) && Commit.isLeftIn(hidden)) {
                    wrong.add(
                            "a run was ended while it moved its files here; the next one into this folder settles it");
                }
            }
        }
    }
}
