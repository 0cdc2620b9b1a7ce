// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code tolerance}: how far sizes may drift, and how many builds would work. */
final class ToleranceCommand implements Command {
    private static final String BUILDS = "--builds";
    private static final String SEED = "--seed";

    @Override
    public String name() {
        return "tolerance";
    }

    @Override
    public CommandSpec syntax() {
        CommandSpec tolerance = Syntax.command(
                name(),
                "Tells how far each size may drift before something gives way, and how many builds would work.",
                "Examples:%n"
                        + "  ringleaf tolerance harbour-light%n"
                        + "  ringleaf tolerance my.yaml --builds 10000 -o study%n"
                        + "%nWhat a process keeps sizes within is its repeatability in processes.yaml.%n");
        Syntax.spec(tolerance);
        tolerance.addOption(Syntax.option(
                "DIR",
                "writes tolerance/<mechanism>-drift.csv and -yield.csv there",
                Syntax.OUTPUT_SHORT,
                Syntax.OUTPUT));
        tolerance.addOption(Syntax.option(
                "N",
                "random builds, 1 to " + ToleranceRun.MOST_BUILDS + " (default: " + ToleranceRun.USUAL_BUILDS + ")",
                BUILDS));
        tolerance.addOption(Syntax.option(
                "N", "seed of the random numbers; the same seed gives the same builds (default: 1)", SEED));
        Syntax.reading(tolerance);
        return tolerance;
    }

    @Override
    public int run(ParseResult given, Console console) {
        return new ToleranceRun(console)
                .look(
                        Run.read(Asked.of(given), console.surroundings(), console.in()),
                        Optional.ofNullable(given.matchedOptionValue(Syntax.OUTPUT, null)),
                        given.matchedOptionValue(BUILDS, null),
                        given.matchedOptionValue(SEED, null));
    }
}
