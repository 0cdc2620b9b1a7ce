// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import ringleaf.draw.format.Formats;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Kind;
import ringleaf.spec.PlaceFields;
import ringleaf.spec.field.FieldHelp;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Shown;

/** {@code help}: how a command is used, or every field of a kind. */
final class HelpCommand implements Command {
    private static final String MARKDOWN = "--markdown";
    /** Topics beside commands and kinds. */
    private static final String FABRICATION = "fabrication";

    private static final String FORMATS = "formats";

    @Override
    public String name() {
        return "help";
    }

    @Override
    public CommandSpec syntax() {
        CommandSpec help = Syntax.command(
                name(),
                "Shows how a command is used, or every field of a kind of mechanism with its default.",
                "Examples:%n  ringleaf help make%n  ringleaf help leaf-aperture%n");
        help.addPositional(Syntax.positional(0, "TOPIC", false, "a command, a kind, fabrication or formats"));
        help.addOption(Syntax.flag("the fields as a table in Markdown", MARKDOWN));
        return help;
    }

    @Override
    public int run(ParseResult given, Console console) {
        CommandLine line = Syntax.line();
        String topic = given.matchedPositionalValue(0, null);
        CommandLine command = topic == null ? line : line.getSubcommands().get(topic);
        if (command != null) {
            Syntax.usage(command, console.out());
            return Exit.FINE;
        }
        console.out()
                .print(fields(
                        console.surroundings().kinds(),
                        topic,
                        given.hasMatchedOption(MARKDOWN),
                        new ArrayList<>(line.getSubcommands().keySet())));
        return Exit.FINE;
    }

    /** What every kind takes, and what of this one others may stand on. */
    private static String place(Kind kind) {
        StringBuilder out = new StringBuilder("\nOf every kind:\n").append(FieldHelp.text(PlaceFields.ALL));
        out.append("\nBodies on which others may stand, e.g. place: {on: ")
                .append(kind.name())
                .append('.')
                .append(kind.bodies().get(0).name())
                .append("} with the mechanism's own name before the full stop:\n");
        for (BodyName body : kind.bodies()) {
            out.append("  ")
                    .append(body.name())
                    .append(": ")
                    .append(body.help())
                    .append('\n');
        }
        return out.toString();
    }

    private static String fields(Kinds kinds, String topic, boolean markdown, List<String> known) {
        for (Kind kind : kinds.all()) {
            if (kind.name().equals(topic)) {
                return markdown
                        ? FieldHelp.markdown(kind.fields())
                        : kind.name() + ": " + kind.summary() + "\n\nFields:\n" + FieldHelp.text(kind.fields())
                                + place(kind);
            }
            known.add(kind.name());
        }
        if (topic.equals(FABRICATION)) {
            return markdown ? FabricationHelp.markdown() : FabricationHelp.text();
        }
        if (topic.equals(FORMATS)) {
            return markdown
                    ? Formats.markdown()
                    : "What --formats names, with the files of each and its options:\n\n" + Formats.text();
        }
        known.add(FABRICATION);
        known.add(FORMATS);
        throw Stop.wrong("there is no command or kind " + Shown.quoted(topic) + "; " + Nearest.hint(topic, known));
    }
}
