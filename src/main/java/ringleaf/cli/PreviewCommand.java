// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code preview}: a local page that shows a spec and is drawn anew whenever it is saved. */
final class PreviewCommand implements Command {
    private static final String PORT = "--port";

    @Override
    public String name() {
        return "preview";
    }

    @Override
    public CommandSpec syntax() {
        CommandSpec preview = Syntax.command(
                name(),
                "Serves a page on this machine alone that is drawn anew whenever the spec is saved.",
                "Example:%n  ringleaf preview my-light.yaml%n"
                        + "%nIt prints the address to open in a browser. Mistakes of the spec are shown in the page;"
                        + "%nthe last good design stays. Ctrl-C ends it.%n");
        preview.addPositional(Syntax.positional(0, "SPEC", true, "a file, or a preset's name"));
        preview.addOption(Syntax.option("N", "the port to serve on (default: any that is free)", PORT));
        Syntax.judging(preview);
        return preview;
    }

    @Override
    public int run(ParseResult given, Console console) {
        return new PreviewRun(console).serve(Asked.of(given), PreviewRun.port(given.matchedOptionValue(PORT, null)));
    }
}
