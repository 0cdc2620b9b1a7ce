package ringleaf.cli;

import java.util.Optional;
import ringleaf.spec.text.SpecRefused;

/** One run of the tool: from the command line to the exit code. */
final class CommandRun {
    private final Console console;

    CommandRun(Console console) {
        this.console = console;
    }

    /** Runs it; whatever happens, the user reads plain words and no trace of the inside. */
    int run(String[] args) {
        WarmUp.start(args);
        try {
            Optional<Typed> plain = PlainLine.of(args);
            return plain.isPresent() ? new MakeCommand().run(plain.get(), console) : ParsedRun.of(args, console);
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
