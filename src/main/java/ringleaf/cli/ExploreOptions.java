package ringleaf.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ParseResult;
import ringleaf.spec.text.Shown;

/** The options of {@code explore}, read and held against each other. */
final class ExploreOptions {
    /** States that every combination is checked at. */
    private static final int STATES = 61;

    private static final int KEPT = 5;
    private static final int MOST_KEPT = 1000;
    private static final int MOST_TAKEN = 1_000_000;
    private static final int MOST_THREADS = 256;

    private static final List<String> NOT_BESIDE_WHY_NOT = List.of(
            Syntax.VARY, Syntax.MINIMISE, Syntax.KEEP, Syntax.TAKE, Syntax.TO, Syntax.YES, Syntax.OUTPUT);

    private final ParseResult given;

    ExploreOptions(ParseResult given) {
        this.given = given;
    }

    int run(ExploreCommand command) {
        List<String> vary = List.of(given.matchedOptionValue(Syntax.VARY, new String[0]));
        boolean whyNot = given.hasMatchedOption(Syntax.WHY_NOT);
        String states = text(Syntax.STATES);
        Asked asked = new Asked(
                given.matchedPositionalValue(0, ""),
                List.of(given.matchedOptionValue(Syntax.SET, new String[0])),
                states == null ? STATES : States.of(states),
                false,
                Optional.ofNullable(text(Syntax.SHARED)));
        if (whyNot) {
            for (String other : NOT_BESIDE_WHY_NOT) {
                if (given.hasMatchedOption(other)) {
                    throw Stop.wrong(Syntax.WHY_NOT + " looks for changes by itself, and " + other
                            + " has no meaning beside it");
                }
            }
            return command.whyNot(asked, threads());
        }
        if (vary.isEmpty()) {
            throw Stop.wrong("nothing is varied; e.g. --vary shutter.blades=8..24, or --why-not for a spec that does"
                    + " not work");
        }
        if (text(Syntax.TO) != null && text(Syntax.TAKE) == null) {
            throw Stop.wrong("--to says where --take writes, and there is no --take");
        }
        return command.explore(
                asked,
                new ExploreCommand.Wish(
                        vary,
                        text(Syntax.MINIMISE),
                        number(Syntax.KEEP, KEPT, MOST_KEPT),
                        number(Syntax.TAKE, 0, MOST_TAKEN),
                        text(Syntax.TO),
                        text(Syntax.OUTPUT),
                        given.hasMatchedOption(Syntax.YES),
                        threads()));
    }

    private int threads() {
        return number(Syntax.THREADS, Runtime.getRuntime().availableProcessors(), MOST_THREADS);
    }

    private String text(String option) {
        return given.matchedOptionValue(option, null);
    }

    private int number(String option, int otherwise, int most) {
        String typed = text(option);
        if (typed == null) {
            return otherwise;
        }
        boolean digits = !typed.isEmpty() && typed.length() <= 9;
        for (int i = 0; digits && i < typed.length(); i++) {
            digits = typed.charAt(i) >= '0' && typed.charAt(i) <= '9';
        }
        int number = digits ? Integer.parseInt(typed) : 0;
        if (number < 1 || number > most) {
            throw Stop.wrong(option + ": " + Shown.quoted(typed) + " is no whole number from 1 to " + most);
        }
        return number;
    }
}
