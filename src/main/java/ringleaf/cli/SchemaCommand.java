// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import ringleaf.spec.SpecSchema;

/** {@code schema}: prints the JSON Schema of a spec. */
final class SchemaCommand implements Command {
    @Override
    public String name() {
        return "schema";
    }

    @Override
    public CommandSpec syntax() {
        return Syntax.command(
                name(),
                "Prints the JSON Schema of a spec, for editors.",
                "Example:%n  ringleaf schema > ringleaf.schema.json%n");
    }

    @Override
    public int run(ParseResult given, Console console) {
        console.out().print(SpecSchema.write(console.surroundings().kinds().fields()));
        return Exit.FINE;
    }
}
