// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Shown;

/** {@code new}: writes a preset's spec to start from, never over anything that is there. */
final class NewCommand implements Command {
    @Override
    public String name() {
        return "new";
    }

    @Override
    public CommandSpec syntax() {
        CommandSpec fresh = Syntax.command(
                name(),
                "Writes a commented spec to start from; never over an existing file.",
                "Example:%n  ringleaf new harbour-light my-light.yaml%n");
        fresh.addPositional(Syntax.positional(0, "PRESET", true, "a name that `ringleaf presets` lists"));
        fresh.addPositional(Syntax.positional(
                1, "FILE", false, "where to (default: the preset's name and .yaml); - for standard output"));
        return fresh;
    }

    @Override
    public int run(ParseResult given, Console console) {
        String preset = given.matchedPositionalValue(0, null);
        if (!Presets.has(preset)) {
            throw Stop.wrong(
                    "there is no preset " + Shown.quoted(preset) + "; " + Nearest.hint(preset, Presets.names()));
        }
        String file = given.matchedPositionalValue(1, null);
        if ("-".equals(file)) {
            console.out().print(Presets.text(preset));
            return Exit.FINE;
        }
        String shown = file == null ? Presets.fileName(preset) : file;
        Path path = console.surroundings().place(shown, "FILE");
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
        console.out().print("wrote " + shown + "; next: ringleaf make " + shown + "\n");
        return Exit.FINE;
    }
}
