// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import ringleaf.spec.text.Shown;

/** {@code explore}: varies fields and compares every combination; here its options, held against each other. */
final class ExploreCommand implements Command {
    private static final String VARY = "--vary";
    private static final String MINIMISE = "--minimise";
    private static final String KEEP = "--keep";
    private static final String TAKE = "--take";
    private static final String TO = "--to";
    private static final String YES = "--yes";
    private static final String THREADS = "--threads";
    private static final String WHY_NOT = "--why-not";

    /** States that every combination is checked at. */
    private static final int STATES = 61;

    private static final int KEPT = 5;
    private static final int MOST_KEPT = 1000;
    private static final int MOST_TAKEN = 1_000_000;
    private static final int MOST_THREADS = 256;

    private static final List<String> NOT_BESIDE_WHY_NOT = List.of(VARY, MINIMISE, KEEP, TAKE, TO, YES, Syntax.OUTPUT);

    @Override
    public String name() {
        return "explore";
    }

    @Override
    public CommandSpec syntax() {
        CommandSpec explore = Syntax.command(
                name(),
                "Varies fields, solves and checks every combination, and shows the best and what limits them.",
                "Examples:%n"
                        + "  ringleaf explore harbour-light --vary shutter.blades=8..24"
                        + " --vary shutter.lap=0.4,0.6,0.8%n"
                        + "  ringleaf explore my.yaml --vary 'shutter.full-opening=2in..3in*5' --minimise depth%n"
                        + "  ringleaf explore my.yaml --why-not%n"
                        + "%nVALUES: values and ranges with commas between them;"
                        + " 8..24 goes in steps of 1, 60..70..2.5%n"
                        + "in steps of 2.5, 2in..3in*5 gives five values. What takes names takes them too:%n"
                        + "  --vary shutter.drive-pin=far-end,lever"
                        + " --vary fabrication.blade.stock=brass-0.1,brass-0.15%n"
                        + "%nCtrl-C ends the search; the best so far are judged, printed and written, and the exit is"
                        + " 130.%nPressed again, they are left unjudged and marked so.%n"
                        + "%nCutting times come from the processes' cutting speeds, which are places to start from.%n");
        Syntax.spec(explore);
        explore.addOption(OptionSpec.builder(VARY)
                .paramLabel("PATH=VALUES")
                .type(String[].class)
                .auxiliaryTypes(String.class)
                .description("varies one field (repeatable; all combinations are tried)")
                .build());
        explore.addOption(Syntax.option(
                "FIGURE",
                "what to seek the least of: outer-diameter, depth, ring-travel,"
                        + " parts, cutting-length, cutting-time, ratio-error (%% that teeth miss a ratio), or any other"
                        + " dimension (default: the bezel of an aperture, length over all of gears, centre distance of belts)",
                MINIMISE));
        explore.addOption(Syntax.option(
                "N",
                "best designs that are verified on the geometry too, and that are shown (default: " + KEPT + ")",
                KEEP));
        explore.addOption(Syntax.option(
                "K", "writes the design in place K as a spec, once it is verified on the geometry", TAKE));
        explore.addOption(Syntax.option(
                "FILE",
                "where --take writes to, never over an existing file"
                        + " (default: the title's name and the place, as in harbour-light-1.yaml)",
                TO));
        explore.addOption(Syntax.flag("more than 100,000 combinations are meant", YES));
        explore.addOption(Syntax.flag(
                "the smallest changes that make a spec work that does not: single ones, else two" + " together",
                WHY_NOT));
        explore.addOption(Syntax.option(
                "DIR",
                "folder for explore.csv and explore.svg (default: out/ and the title's name)",
                Syntax.OUTPUT_SHORT,
                Syntax.OUTPUT));
        Syntax.sets(explore);
        explore.addOption(Syntax.option(
                "N",
                "states of the travel that every combination is checked at (default: " + STATES + ")",
                Syntax.STATES));
        explore.addOption(Syntax.option("N", "threads that share the work (default: one for each core)", THREADS));
        Syntax.shared(explore);
        return explore;
    }

    @Override
    public int run(ParseResult given, Console console) {
        List<String> vary = List.of(given.matchedOptionValue(VARY, new String[0]));
        boolean whyNot = given.hasMatchedOption(WHY_NOT);
        String states = given.matchedOptionValue(Syntax.STATES, null);
        Asked asked = new Asked(
                given.matchedPositionalValue(0, null),
                List.of(given.matchedOptionValue(Syntax.SET, new String[0])),
                states == null ? STATES : States.of(states),
                false,
                Optional.ofNullable(given.matchedOptionValue(Syntax.SHARED, null)));
        if (whyNot) {
            for (String other : NOT_BESIDE_WHY_NOT) {
                if (given.hasMatchedOption(other)) {
                    throw Stop.wrong(
                            WHY_NOT + " looks for changes by itself, and " + other + " has no meaning beside it");
                }
            }
            return new WhyNotRun(console).run(asked, threads(given));
        }
        if (vary.isEmpty()) {
            throw Stop.wrong("nothing is varied; e.g. --vary shutter.blades=8..24, or --why-not for a spec that does"
                    + " not work");
        }
        if (given.hasMatchedOption(TO) && !given.hasMatchedOption(TAKE)) {
            throw Stop.wrong("--to says where --take writes, and there is no --take");
        }
        return new ExploreRun(console)
                .explore(
                        asked,
                        new ExploreRun.Wish(
                                vary,
                                given.matchedOptionValue(MINIMISE, null),
                                number(given, KEEP, KEPT, MOST_KEPT),
                                number(given, TAKE, 0, MOST_TAKEN),
                                given.matchedOptionValue(TO, null),
                                given.matchedOptionValue(Syntax.OUTPUT, null),
                                given.hasMatchedOption(YES),
                                threads(given)));
    }

    private static int threads(ParseResult given) {
        return number(given, THREADS, Runtime.getRuntime().availableProcessors(), MOST_THREADS);
    }

    private static int number(ParseResult given, String option, int otherwise, int most) {
        String typed = given.matchedOptionValue(option, null);
        if (typed == null) {
            return otherwise;
        }
        long number = Digits.of(typed);
        if (number < 1 || number > most) {
            throw Stop.wrong(option + ": " + Shown.quoted(typed) + " is no whole number from 1 to " + most);
        }
        return (int) number;
    }
}
