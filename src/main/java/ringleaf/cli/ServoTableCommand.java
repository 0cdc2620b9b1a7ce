// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code servo-table}: the table from output to pulse for a servo's firmware. */
final class ServoTableCommand implements Command {
    private static final String MEASURED = "--measured";
    private static final String MECHANISM = "--mechanism";
    private static final String WITHIN = "--within";

    @Override
    public String name() {
        return "servo-table";
    }

    @Override
    public CommandSpec syntax() {
        CommandSpec table = Syntax.command(
                name(),
                "Writes a table from opening to servo pulse, as CSV and as a C header.",
                "Examples:%n"
                        + "  ringleaf servo-table harbour-light%n"
                        + "  ringleaf servo-table my.yaml --measured openings.csv%n"
                        + "%nThe file of --measured has a header, e.g. servo_deg,opening_mm, and a line for each%n"
                        + "opening measured on the finished thing: four or more, best six from open to closed.%n");
        Syntax.spec(table);
        table.addOption(Syntax.option(
                "DIR",
                "the output folder, in which servo/ is written" + " (default: out/ and the title's name)",
                Syntax.OUTPUT_SHORT,
                Syntax.OUTPUT));
        table.addOption(
                Syntax.option("FILE", "openings measured on the finished thing, to correct the table by", MEASURED));
        table.addOption(Syntax.option("NAME", "the mechanism that is meant (default: all with a servo)", MECHANISM));
        table.addOption(Syntax.option(
                "ERROR",
                "greatest error between rows, 0.001 to 10" + " (default: 0.02 mm of opening, 0.05 degrees)",
                WITHIN));
        Syntax.reading(table);
        return table;
    }

    @Override
    public int run(ParseResult given, Console console) {
        Run run = Run.read(Asked.of(given), console.surroundings(), console.in());
        return new ServoTableRun(console)
                .write(
                        run,
                        new ServoTableRun.Wish(
                                Optional.ofNullable(given.matchedOptionValue(Syntax.OUTPUT, null)),
                                Optional.ofNullable(given.matchedOptionValue(MECHANISM, null)),
                                Optional.ofNullable(given.matchedOptionValue(WITHIN, null)),
                                Optional.ofNullable(given.matchedOptionValue(MEASURED, null))));
    }
}
