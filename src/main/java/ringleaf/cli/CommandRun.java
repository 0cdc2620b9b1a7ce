package ringleaf.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Kinds;
import ringleaf.part.Design;
import ringleaf.spec.SpecSchema;
import ringleaf.spec.field.FieldHelp;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecRefused;

/** One run of the tool: from the command line to the exit code. */
final class CommandRun {
    private final InputStream in;
    private final PrintStream out;
    private final PrintStream err;
    private final Surroundings surroundings;

    CommandRun(InputStream in, PrintStream out, PrintStream err, Surroundings surroundings) {
        this.in = in;
        this.out = out;
        this.err = err;
        this.surroundings = surroundings;
    }

    /** Runs it; whatever happens, the user reads plain words and no trace of the inside. */
    int run(String[] args) {
        WarmUp.start(args);
        try {
            Optional<Typed> plain = PlainLine.of(args);
            return plain.isPresent() ? make(plain.get()) : parsed(args);
        } catch (SpecRefused e) {
            err.print(e.getMessage());
            return Exit.WRONG;
        } catch (Stop e) {
            err.print("ringleaf: " + e.getMessage() + "\n");
            return e.exit();
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            err.print(ownFault(e) + "\n");
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

    private int parsed(String[] args) {
        CommandLine line = Syntax.line(args);
        if (args.length == 0) {
            usage(line, err);
            return Exit.WRONG;
        }
        ParseResult result;
        try {
            result = line.parseArgs(args);
        } catch (ParameterException e) {
            throw Stop.wrong(Mistyped.message(e));
        }
        List<CommandLine> chain = result.asCommandLineList();
        CommandLine last = chain.get(chain.size() - 1);
        if (last.isUsageHelpRequested()) {
            usage(last, out);
            return Exit.FINE;
        }
        for (CommandLine each : chain) {
            if (each.isVersionHelpRequested()) {
                out.print("ringleaf " + Version.text() + "\n");
                return Exit.FINE;
            }
            if (each.isUsageHelpRequested()) {
                usage(each, out);
                return Exit.FINE;
            }
        }
        if (!result.hasSubcommand()) {
            usage(line, err);
            return Exit.WRONG;
        }
        return command(last.getCommandName(), line, chain.get(chain.size() - 1).getParseResult());
    }

    private int command(String name, CommandLine line, ParseResult given) {
        switch (name) {
            case Syntax.MAKE:
                return make(new ParsedLine(given));
            case Syntax.CHECK:
                return check(new ParsedLine(given));
            case Syntax.EXPLORE:
                return new ExploreOptions(given).run(new ExploreCommand(in, out, err, surroundings));
            case Syntax.PREVIEW:
                return preview(new ParsedLine(given));
            case Syntax.TOLERANCE:
                return tolerance(new ParsedLine(given));
            case Syntax.SERVO_TABLE:
                return servoTable(new ParsedLine(given));
            case Syntax.NEW:
                return new NewCommand(surroundings, out).write(given.matchedPositionalValue(0, ""), given.matchedPositionalValue(1, null));
            case Syntax.COUPON:
                return coupon(new ParsedLine(given));
            case Syntax.PRESETS:
                return presets();
            case Syntax.SCHEMA:
                out.print(SpecSchema.write(Kinds.fields()));
                return Exit.FINE;
            default:
                return help(line, given);
        }
    }

    private int make(Typed given) {
        Wanted wanted = Wanted.of(
                given.value(Syntax.FORMATS),
                given.value(Syntax.DXF),
                given.value(Syntax.SOLIDS),
                given.value(Syntax.CHORD),
                given.value(Syntax.PAGE_SIZE));
        Run run = Run.read(asked(given), surroundings, in);
        return new MakeCommand(surroundings, out, err)
                .make(
                        run,
                        Optional.ofNullable(given.value(Syntax.OUTPUT)),
                        wanted,
                        given.value(Syntax.SLICE),
                        given.has(Syntax.ANYWAY));
    }

    private int check(Typed given) {
        Run run = Run.read(asked(given), surroundings, in);
        List<Design> designs = run.design();
        List<Judged> all = run.judge(designs, run.prepare(designs), surroundings, err);
        ResultText text = new ResultText();
        boolean failed = false;
        for (Judged judged : all) {
            text.design(judged.design());
            failed |= judged.failed();
        }
        out.print(text);
        out.flush();
        FindingsOut.print(all, surroundings.colour(), err);
        return failed ? Exit.FAILED : Exit.FINE;
    }

    private int coupon(Typed given) {
        CouponCommand command = new CouponCommand(
                surroundings,
                out,
                Optional.ofNullable(given.value(Syntax.SHARED)),
                Optional.ofNullable(given.value(Syntax.OUTPUT)));
        String process = given.value(Syntax.PROCESS);
        String read = given.value(Syntax.READ);
        if ((process == null) == (read == null)) {
            throw Stop.wrong("coupon takes either --process NAME, for a piece, or --read FILE, for a filled sheet");
        }
        List<String> others = read == null
                ? List.of(Syntax.REPLACE)
                : List.of(Syntax.STOCK, Syntax.FORMATS, Syntax.DXF);
        for (String other : others) {
            if (given.has(other)) {
                throw Stop.wrong(other + " has no meaning with " + (read == null ? Syntax.PROCESS : Syntax.READ));
            }
        }
        if (read != null) {
            return command.read(read, given.has(Syntax.REPLACE));
        }
        Wanted wanted = Wanted.ofOutlines(given.value(Syntax.FORMATS), given.value(Syntax.DXF));
        return command.make(process, Optional.ofNullable(given.value(Syntax.STOCK)), wanted);
    }

    private int preview(Typed given) {
        return new PreviewCommand(surroundings, out, err)
                .serve(asked(given), PreviewCommand.port(given.value(Syntax.PORT)));
    }

    private int tolerance(Typed given) {
        return new ToleranceCommand(surroundings, out, err)
                .look(
                        Run.read(asked(given), surroundings, in),
                        Optional.ofNullable(given.value(Syntax.OUTPUT)),
                        given.value(Syntax.BUILDS),
                        given.value(Syntax.SEED));
    }

    private int servoTable(Typed given) {
        Run run = Run.read(asked(given), surroundings, in);
        return new ServoTableCommand(surroundings, out, err).write(run, new ServoTableCommand.Wish(
                Optional.ofNullable(given.value(Syntax.OUTPUT)),
                Optional.ofNullable(given.value(Syntax.MECHANISM)),
                Optional.ofNullable(given.value(Syntax.WITHIN)),
                Optional.ofNullable(given.value(Syntax.MEASURED))));
    }

    private static Asked asked(Typed given) {
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

    private int presets() {
        int width = 0;
        for (String name : Presets.NAMES) {
            width = Math.max(width, name.length());
        }
        for (String name : Presets.NAMES) {
            out.print(name + " ".repeat(width - name.length() + 2) + Presets.summary(name) + "\n");
        }
        return Exit.FINE;
    }

    private int help(CommandLine line, ParseResult given) {
        String topic = given.matchedPositionalValue(0, null);
        if (topic == null) {
            usage(line, out);
            return Exit.FINE;
        }
        CommandLine command = line.getSubcommands().get(topic);
        if (command != null) {
            usage(command, out);
            return Exit.FINE;
        }
        List<String> known = new ArrayList<>(line.getSubcommands().keySet());
        for (Kind kind : Kinds.all()) {
            if (kind.name().equals(topic)) {
                boolean markdown = given.hasMatchedOption(Syntax.MARKDOWN);
                out.print(markdown ? FieldHelp.markdown(kind.fields()) : kindHelp(kind));
                return Exit.FINE;
            }
            known.add(kind.name());
        }
        if (topic.equals(Syntax.FABRICATION)) {
            out.print(given.hasMatchedOption(Syntax.MARKDOWN) ? FabricationHelp.markdown() : FabricationHelp.text());
            return Exit.FINE;
        }
        known.add(Syntax.FABRICATION);
        throw Stop.wrong("there is no command or kind " + Shown.quoted(topic) + "; " + Nearest.hint(topic, known));
    }

    private static String kindHelp(Kind kind) {
        return kind.name() + ": " + kind.summary() + "\n\nFields:\n" + FieldHelp.text(kind.fields());
    }

    private static void usage(CommandLine line, PrintStream to) {
        PrintWriter writer = new PrintWriter(to);
        line.usage(writer, Help.Ansi.OFF);
        writer.flush();
    }
}
