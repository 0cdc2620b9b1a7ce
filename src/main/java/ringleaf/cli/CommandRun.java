// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import ringleaf.spec.text.SpecRefused;

/** One run of the tool: from the command line to the exit code. */
final class CommandRun {
    private final Console console;

    CommandRun(Console console) {
        this.console = console;
    }

    /** Runs it; whatever happens, the user reads plain words and no trace of the inside. */
    int run(String[] args) {
        try {
            return obeyed(args);
        } catch (SpecRefused e) {
            console.err().print(e.getMessage());
            return Exit.WRONG;
        } catch (Stop e) {
            console.err().print("ringleaf: " + e.getMessage() + "\n");
            return e.exit();
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            console.err().print(ownFault(e) + "\n");
            return Exit.TROUBLE;
        }
    }

    /** Reads the line and does what it says, or shows the help that it asks for. */
    private int obeyed(String[] args) {
        CommandLine line = Syntax.line();
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
        return Commands.named(last.getCommandName()).run(last.getParseResult(), console);
    }

    /** What a user is told when the tool itself is wrong. */
    static String ownFault(Throwable e) {
        return "ringleaf " + Version.text() + ": an error of the tool itself and not of yours (" + place(e)
                + "); please report it with the command line and the spec";
    }

    /** Where it broke, in one word for the report. */
    private static String place(Throwable e) {
        Throwable cause = e.getCause() == null ? e : e.getCause();
        String name = cause.getClass().getSimpleName();
        for (StackTraceElement at : cause.getStackTrace()) {
            if (at.getClassName().startsWith("ringleaf.")) {
                String type = at.getClassName().substring(at.getClassName().lastIndexOf('.') + 1);
                return name + " at " + type + ":" + at.getLineNumber();
            }
        }
        return name;
    }
}
