// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code presets}: lists the presets with a line each. */
final class PresetsCommand implements Command {
    @Override
    public String name() {
        return "presets";
    }

    @Override
    public CommandSpec syntax() {
        return Syntax.command(name(), "Lists the presets with a line each.", "Example:%n  ringleaf presets%n");
    }

    @Override
    public int run(ParseResult given, Console console) {
        int width = 0;
        for (String name : Presets.names()) {
            width = Math.max(width, name.length());
        }
        for (String name : Presets.names()) {
            console.out().print(name + " ".repeat(width - name.length() + 2) + Presets.summary(name) + "\n");
        }
        return Exit.FINE;
    }
}
