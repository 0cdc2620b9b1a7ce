// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.explore.Exploration;
import ringleaf.explore.TakenSpec;
import ringleaf.spec.SetOption;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/**
 * The file that a design out of an exploration is written to as a spec, never over one that exists.
 *
 * @param shown its name as the user wrote it
 * @param surroundings that say where it lies
 */
record TakenFile(String shown, Surroundings surroundings) {

    /** Before the work, not after it. */
    void refuseUnwritable() {
        Path path = path();
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            throw existing();
        }
        Path folder = path.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw Stop.trouble("cannot write " + Shown.cut(shown, 300) + ": there is no such folder");
        }
    }

    /** Writes the design in a place of the order, counted from 1. */
    void write(Exploration.Result result, int place, AskedVariants of) {
        List<SetOption> options =
                result.grid().options(result.rows().get(place - 1).index());
        Node.Mapping meant = of.variants().root();
        Problems problems = new Problems();
        for (SetOption option : options) {
            meant = option.over(meant, problems);
        }
        List<SetOption> all = new ArrayList<>(of.sets());
        all.addAll(options);
        Optional<String> text = TakenSpec.of(of.variants().source(), all, meant);
        if (text.isEmpty()) {
            throw Stop.trouble("the values have no place of their own in the text of the spec (it uses aliases, or"
                    + " writes a map where a value is to stand); give them with --set instead");
        }
        write(text.get());
    }

    private void write(String text) {
        boolean made = false;
        try {
            Files.createFile(path());
            made = true;
            Files.write(path(), text.getBytes(StandardCharsets.UTF_8), StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw existing();
        } catch (IOException e) {
            if (made) {
                path().toFile().delete();
            }
            throw Trouble.writing(shown, e);
        }
    }

    private Path path() {
        return surroundings.place(shown, "the file of --to");
    }

    private Stop existing() {
        return Stop.trouble("cannot write " + Shown.cut(shown, 300) + ": it exists already, and is left as it is");
    }
}
