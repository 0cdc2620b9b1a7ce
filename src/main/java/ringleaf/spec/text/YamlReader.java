// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import java.util.Iterator;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads one YAML document into nodes with places.
 *
 * <p>Works on the library's events, so that depth, number of values and aliases are limited before anything grows.
 */
public final class YamlReader {
    /** Nested maps and lists; a spec needs five. */
    public static final int DEPTH_LIMIT = 50;
    /** Values, those that aliases repeat counted again. */
    public static final int VALUE_LIMIT = 20_000;
    /** Aliases in one text. */
    public static final int ALIAS_LIMIT = 100;

    private YamlReader() {}

    /**
     * The document's root.
     *
     * @return empty when the text is not YAML or goes beyond a limit, which is then among the problems
     */
    public static Optional<Node> read(SpecSource source, Problems problems) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel("")
                .setUseMarks(true)
                // The library (2.10) fails on a character beyond U+FFFF that straddles two fillings of its buffer.
                .setBufferSize(source.text().length() + 1)
                .setCodePointLimit(SpecSource.SIZE_LIMIT + 1)
                .build();
        NodeBuilder builder = new NodeBuilder(source, problems);
        try {
            Iterator<Event> events =
                    new Parse(settings).parseString(source.text()).iterator();
            while (events.hasNext() && builder.takes(events.next())) {
                continue;
            }
        } catch (MarkedYamlEngineException e) {
            report(source, e, problems);
            return Optional.empty();
        } catch (YamlEngineException e) {
            problems.of(source, "is not readable as YAML (" + Shown.cut(firstLine(e.getMessage()), 160) + ")", "");
            return Optional.empty();
        }
        return builder.root();
    }

    private static void report(SpecSource source, MarkedYamlEngineException e, Problems problems) {
        Optional<Mark> mark = e.getProblemMark().isPresent() ? e.getProblemMark() : e.getContextMark();
        Place place = mark.isPresent()
                ? source.at(mark.get().getLine() + 1, mark.get().getColumn() + 1)
                : source.whole();
        String line = place.line() == 0 ? "" : source.line(place.line());
        if (line.isBlank() && place.line() > 1) {
            place = lastWritten(source, place.line() - 1);
        }
        int tab = tabInIndent(line);
        if (tab >= 0) {
            problems.at(
                    source.at(place.line(), tab + 1),
                    "a tab stands in the indentation, where YAML takes spaces only",
                    "replace it by spaces");
            return;
        }
        problems.at(place, "not readable as YAML: " + plainWords(e), "");
    }

    /** What is missing at the end of a text is missed after its last line that holds something. */
    private static Place lastWritten(SpecSource source, int from) {
        int number = from;
        while (number > 1 && source.line(number).isBlank()) {
            number--;
        }
        String line = source.line(number);
        return source.at(number, line.codePointCount(0, line.length()) + 1);
    }

    private static int tabInIndent(String line) {
        for (int i = 0; i < line.length(); i++) {
            if (line.charAt(i) == '\t') {
                return i;
            }
            if (line.charAt(i) != ' ') {
                return -1;
            }
        }
        return -1;
    }

    private static String plainWords(MarkedYamlEngineException e) {
        String problem = firstLine(e.getProblem());
        String context = firstLine(e.getContext());
        if (problem.startsWith("mapping values are not allowed")) {
            return "a colon and a space stand where no key can be (put a text that holds a colon in quotes, "
                    + "and check the indentation)";
        }
        String words = context.isEmpty() ? problem : context + ", " + problem;
        return Shown.cut(words, 160);
    }

    private static String firstLine(String text) {
        if (text == null) {
            return "";
        }
        int end = text.indexOf('\n');
        return end < 0 ? text : text.substring(0, end);
    }
}
