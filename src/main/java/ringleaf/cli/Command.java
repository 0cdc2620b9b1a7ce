// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** One command of the tool; {@link Commands} lists them all. */
interface Command {
    /** The word it is called by. */
    String name();

    /** What may stand on its line, and its help; a new one each time, as the options' library takes it for its own. */
    CommandSpec syntax();

    /**
     * Does it.
     *
     * @param given what was typed after the name, held against the syntax
     * @return the code to end with
     */
    int run(ParseResult given, Console console);
}
