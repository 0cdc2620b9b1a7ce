// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import ringleaf.draw.format.Format;
import ringleaf.draw.format.FormatOption;
import ringleaf.draw.format.Formats;

/** What the syntax of commands is built of, and what several of them have in common. */
final class Syntax {
    static final String OUTPUT = "--output";
    static final String OUTPUT_SHORT = "-o";
    static final String SET = "--set";
    static final String FORMATS = "--formats";
    static final String STATES = "--states";
    static final String THOROUGH = "--thorough";
    static final String DETAILS = "--details";
    /** Where a command that judges says what, for its help. */
    static final String STREAMS =
            "%nVerdict, figures and files go to standard output; findings and errors to standard error.%n";

    static final String KERF = "--kerf";
    static final String SHARED = "--shared";

    private static final String SPEC = "a file, a preset's name, or - for standard input";

    private Syntax() {}

    /** The command line, with every command. */
    static CommandLine line() {
        CommandSpec root = command(
                "ringleaf",
                "Turns a short spec into exact, checked, cut-ready outlines of printable mechanism parts.",
                "Begin with:%n"
                        + "  ringleaf make harbour-light       make a preset into out/harbour-light%n"
                        + "  ringleaf new harbour-light        write its spec, to change it%n"
                        + "%nExit codes: 0 all checks passed or only warned, 1 a check failed,%n"
                        + "2 spec or command line wrong, 3 cannot read or write.%n");
        for (Command command : Commands.ALL) {
            root.addSubcommand(command.name(), command.syntax());
        }
        return new CommandLine(root);
    }

    /** Shows how the tool or a command is used. */
    static void usage(CommandLine line, PrintStream to) {
        PrintWriter writer = new PrintWriter(to);
        line.usage(writer, Help.Ansi.OFF);
        writer.flush();
    }

    /** The spec, as the first that is no option. */
    static void spec(CommandSpec command) {
        command.addPositional(positional(0, "SPEC", true, SPEC));
    }

    /** What changes a spec that is read. */
    static void reading(CommandSpec command) {
        sets(command);
        shared(command);
    }

    /** What changes a spec that is read, and how closely its design is looked at. */
    static void judging(CommandSpec command) {
        sets(command);
        command.addOption(option(
                "N",
                "states of the travel that are swept, " + States.LEAST + " to " + States.MOST + " (default: "
                        + States.USUAL + ")",
                STATES));
        command.addOption(flag("outlines carry the kerf, as with fabrication.kerf=true", KERF));
        command.addOption(
                flag("judges outlines at every state, and not only at ends, extremes and nine between", THOROUGH));
        shared(command);
    }

    /** Whether all is told of a run that says the verdict first. */
    static void details(CommandSpec command) {
        command.addOption(
                flag("tells all: every size with how it was found, every check, order of assembly, cautions", DETAILS));
    }

    /** In which formats files are written, and what may be chosen about these. */
    static void formats(CommandSpec command, List<? extends Format> formats) {
        command.addOption(option(
                "LIST",
                "formats to write, with commas between: " + String.join(", ", Formats.names(formats)) + " (default: "
                        + String.join(",", Formats.names(Formats.usual(formats))) + "; see ringleaf help formats)",
                FORMATS));
        for (FormatOption each : Formats.options(formats)) {
            command.addOption(option(each.label(), each.help(), each.name()));
        }
    }

    static void sets(CommandSpec command) {
        command.addOption(OptionSpec.builder(SET)
                .paramLabel("PATH=VALUE")
                .type(String[].class)
                .auxiliaryTypes(String.class)
                .description("overrides one field, e.g. mechanisms.shutter.blades=14 (repeatable;"
                        + " a leading mechanisms. may be left out)")
                .build());
    }

    static void shared(CommandSpec command) {
        command.addOption(option(
                "FOLDER", "folder with own catalogues (stock.yaml, servos.yaml, …) laid over the ready ones", SHARED));
    }

    static CommandSpec command(String name, String description, String footer) {
        CommandSpec command = CommandSpec.create().name(name);
        command.usageMessage()
                .description(description)
                .footer("", footer)
                .width(100)
                .sortOptions(false);
        command.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("shows this and ends")
                .build());
        command.addOption(OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("shows the version and ends")
                .build());
        return command;
    }

    static OptionSpec option(String label, String description, String... names) {
        return OptionSpec.builder(names)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build();
    }

    static OptionSpec flag(String description, String name) {
        return OptionSpec.builder(name)
                .type(boolean.class)
                .description(description)
                .build();
    }

    static PositionalParamSpec positional(int index, String label, boolean required, String description) {
        return PositionalParamSpec.builder()
                .index(Integer.toString(index))
                .arity(required ? "1" : "0..1")
                .required(required)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build();
    }
}
