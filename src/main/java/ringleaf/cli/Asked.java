package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is asked of a spec on the command line.
 *
 * @param spec file, preset or {@code -} for standard input
 * @param sets each {@code path=value}
 * @param states of the travel
 * @param thorough whether the judge looks at all of them
 * @param shared folder with the user's own catalogues
 */
record Asked(String spec, List<String> sets, int states, boolean thorough, Optional<String> shared) {
    /** What was typed for a command that has the options of {@link Syntax#reading} or {@link Syntax#judging}. */
    static Asked of(Typed given) {
        List<String> all = new ArrayList<>(given.values(Syntax.SET));
        if (given.has(Syntax.KERF)) {
            all.add("fabrication.kerf=true");
        }
        return new Asked(
                given.positional(0),
                all,
                States.of(given.value(Syntax.STATES)),
                given.has(Syntax.THOROUGH),
                Optional.ofNullable(given.value(Syntax.SHARED)));
    }
}
