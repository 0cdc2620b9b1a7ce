package ringleaf.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Shown;

/** {@code new}: writes a preset's spec to start from. */
final class NewCommand {
    private final Surroundings surroundings;
    private final PrintStream out;

    NewCommand(Surroundings surroundings, PrintStream out) {
        this.surroundings = surroundings;
        this.out = out;
    }

    /** Writes the preset to the file; null is a file of its own name. Never over anything that is there. */
    int write(String preset, String file) {
        if (!Presets.NAMES.contains(preset)) {
            throw Stop.wrong("there is no preset " + Shown.quoted(preset) + "; " + Nearest.hint(preset, Presets.NAMES));
        }
        String shown = file == null ? Presets.fileName(preset) : file;
        Path path = surroundings.place(shown, "FILE");
        boolean made = false;
        try {
            Files.createFile(path);
            made = true;
            Files.write(path, Presets.text(preset).getBytes(StandardCharsets.UTF_8), StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw Stop.trouble("cannot write " + Shown.cut(shown, 300) + ": it exists already, and is left as it is");
        } catch (IOException e) {
            if (made) {
                path.toFile().delete();
            }
            throw Trouble.writing(shown, e);
        }
        out.print("wrote " + shown + "; next: ringleaf make " + shown + "\n");
        return Exit.FINE;
    }
}
