// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import ringleaf.draw.format.Format;
import ringleaf.draw.format.FormatOption;
import ringleaf.draw.format.Formats;
import ringleaf.draw.format.OutlineFormat;
import ringleaf.draw.format.PageFormat;
import ringleaf.draw.format.SolidFormat;
import ringleaf.report.PartFiles;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Shown;

/**
 * In which formats files are wanted.
 *
 * @param formats each once, in the order in which they are written
 * @param options about them as typed, by name; those with listed values hold one of these
 * @param solids where there are to be any
 */
record Wanted(List<Format> formats, Map<String, String> options, Optional<SolidsAsked> solids) {
    /**
     * What the command line asks for.
     *
     * @param known formats among which may be chosen
     * @param given the value of an option by its name, or null
     */
    static Wanted of(List<? extends Format> known, UnaryOperator<String> given) {
        String typed = given.apply(Syntax.FORMATS);
        List<Format> asked = typed == null ? Formats.usual(known) : named(typed, known);
        Map<String, String> options = new LinkedHashMap<>();
        for (FormatOption option : Formats.options(known)) {
            String value = given.apply(option.name());
            if (value != null) {
                if (!option.values().isEmpty() && !option.values().contains(value)) {
                    throw unknown(option.name(), option.what(), value, option.values());
                }
                if (Formats.taking(option, asked).isEmpty()) {
                    throw withoutMeaning(option, value, asked, known);
                }
                options.put(option.name(), value);
            }
        }
        List<Format> all = known.stream()
                .<Format>map(format -> format)
                .filter(f -> asked.stream().anyMatch(a -> a.members().contains(f)))
                .toList();
        List<SolidFormat> solid = Formats.only(all, SolidFormat.class);
        return new Wanted(
                all, options, solid.isEmpty() ? Optional.empty() : Optional.of(SolidsAsked.of(solid, options)));
    }

    /** How outlines are written. */
    PartFiles.Wanted outlines() {
        return new PartFiles.Wanted(Formats.only(formats, OutlineFormat.class), options);
    }

    /** Formats of pages. */
    List<PageFormat> pages() {
        return Formats.only(formats, PageFormat.class);
    }

    private static List<Format> named(String typed, List<? extends Format> known) {
        List<Format> formats = new ArrayList<>();
        for (String part : typed.split(",", -1)) {
            String name = part.trim();
            int at = Formats.names(known).indexOf(name);
            if (at < 0) {
                throw unknown(Syntax.FORMATS, "format", name, Formats.names(known));
            }
            formats.add(known.get(at));
        }
        return formats;
    }

    private static Stop withoutMeaning(
            FormatOption option, String value, List<Format> asked, List<? extends Format> known) {
        List<String> taking = Formats.names(Formats.taking(option, known));
        int last = taking.size() - 1;
        String any = last == 0 ? taking.get(0) : String.join(", ", taking.subList(0, last)) + " or " + taking.get(last);
        return Stop.wrong(option.name() + " " + Shown.quoted(value) + " has no meaning without " + any + " among "
                + Syntax.FORMATS + "; try " + Syntax.FORMATS + " " + String.join(",", Formats.names(asked)) + ","
                + taking.get(last));
    }

    private static Stop unknown(String option, String what, String name, List<String> known) {
        String said =
                name.isEmpty() ? "a name of a " + what + " is empty" : "there is no " + what + " " + Shown.quoted(name);
        return Stop.wrong(option + ": " + said + "; " + Nearest.hint(name, known));
    }
}
