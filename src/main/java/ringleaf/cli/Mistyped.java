// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Renamed;
import ringleaf.spec.text.Shown;

/** Says what is wrong with a command line, and what was likely meant. */
final class Mistyped {
    private Mistyped() {}

    static String message(ParameterException e) {
        CommandLine line = e.getCommandLine();
        String command = line.getCommandName();
        String more = "; `" + line.getCommandSpec().qualifiedName(" ") + " --help` shows how it is used";
        if (e instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unmatched(unmatched.getUnmatched().get(0), line) + more;
        }
        if (e instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            ArgSpec first = missing.getMissing().get(0);
            String after = first instanceof OptionSpec option ? " after " + option.longestName() : "";
            return command + ": " + first.paramLabel() + " is missing" + after + more;
        }
        if (e instanceof OverwrittenOptionException twice && twice.getOverwritten() instanceof OptionSpec option) {
            return command + ": " + option.longestName() + " may stand once only" + more;
        }
        if (e.getArgSpec() instanceof OptionSpec option && option.type() == boolean.class) {
            return command + ": " + option.longestName() + " takes no value; it stands alone, or is left out" + more;
        }
        return command + ": " + Shown.cut(e.getMessage(), 300) + more;
    }

    private static String unmatched(String typed, CommandLine line) {
        if (typed.startsWith("-")) {
            List<String> known =
                    new ArrayList<>(line.getCommandSpec().optionsMap().keySet());
            known.removeIf(name -> !name.startsWith("--"));
            int equals = typed.indexOf('=');
            String name = equals < 0 ? typed : typed.substring(0, equals);
            Optional<String> now = Renamed.now(name, known);
            if (now.isPresent()) {
                return "there is no option " + name + "; " + Renamed.hint(now.get());
            }
            return "there is no option " + Shown.quoted(name) + "; " + Nearest.hint(name, known);
        }
        List<String> commands = new ArrayList<>(line.getSubcommands().keySet());
        if (!commands.isEmpty()) {
            return "there is no command " + Shown.quoted(typed) + "; " + Nearest.hint(typed, commands);
        }
        if (line.getCommandSpec().positionalParameters().isEmpty()) {
            return line.getCommandName() + " takes options only, and " + Shown.quoted(typed) + " is none";
        }
        return "nothing more is wanted than what stands before " + Shown.quoted(typed);
    }
}
