package ringleaf.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** A run whose line is read by the options' library, which is loaded from here and for nothing else. */
final class ParsedRun {
    private ParsedRun() {}

    /** Reads the line and does what it says, or shows the help that it asks for. */
    static int of(String[] args, Console console) {
        CommandLine line = Syntax.line(args);
        ParseResult result;
        try {
            result = line.parseArgs(args);
        } catch (ParameterException e) {
            throw Stop.wrong(Mistyped.message(e));
        }
        List<CommandLine> chain = result.asCommandLineList();
        CommandLine last = chain.get(chain.size() - 1);
        if (last.isUsageHelpRequested()) {
            Syntax.usage(last, console.out());
            return Exit.FINE;
        }
        for (CommandLine each : chain) {
            if (each.isVersionHelpRequested()) {
                console.out().print("ringleaf " + Version.text() + "\n");
                return Exit.FINE;
            }
            if (each.isUsageHelpRequested()) {
                Syntax.usage(each, console.out());
                return Exit.FINE;
            }
        }
        if (!result.hasSubcommand()) {
            Syntax.usage(line, console.err());
            return Exit.WRONG;
        }
        return Commands.named(last.getCommandName()).run(new ParsedLine(last.getParseResult()), console);
    }
}
