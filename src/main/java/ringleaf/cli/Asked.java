// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ParseResult;

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
    static Asked of(ParseResult given) {
        List<String> all = new ArrayList<>(List.of(given.matchedOptionValue(Syntax.SET, new String[0])));
        if (given.hasMatchedOption(Syntax.KERF)) {
            all.add("fabrication.kerf=true");
        }
        return new Asked(
                given.matchedPositionalValue(0, null),
                all,
                States.of(given.matchedOptionValue(Syntax.STATES, null)),
                given.hasMatchedOption(Syntax.THOROUGH),
                Optional.ofNullable(given.matchedOptionValue(Syntax.SHARED, null)));
    }
}
