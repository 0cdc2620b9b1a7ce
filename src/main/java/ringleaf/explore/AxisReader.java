// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import ringleaf.kinds.Kinds;
import ringleaf.spec.SetOption;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Numeric;
import ringleaf.spec.field.QuantityReader;
import ringleaf.spec.field.Unit;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

/**
 * Reads {@code --vary PATH=VALUES}: values and ranges with commas between them. A range is {@code 8..24},
 * {@code 60..70..2.5} with a step, or {@code 2in..3in*5} with a number of values.
 */
final class AxisReader {
    private static final int LONGEST = 20_000;
    private static final String FORM = "e.g. --vary shutter.blades=8..24 or --vary shutter.lap=0.4,0.6,0.8";

    private final Kinds kinds;
    private final Node.Mapping root;
    private final LengthUnit units;
    private final Problems problems;

    /**
     * A reader.
     *
     * @param kinds that it may name
     * @param root of the spec
     */
    AxisReader(Kinds kinds, Node.Mapping root, Problems problems) {
        this.kinds = kinds;
        this.root = root;
        this.problems = problems;
        LengthUnit named = root.get("units") instanceof Node.Scalar scalar ? LengthUnit.of(scalar.text()) : null;
        this.units = named == null ? LengthUnit.MM : named;
    }

    /**
     * An axis whose values are counted and not yet written out.
     *
     * @param items values and ranges
     * @param places where each stands
     */
    record Counted(SpecPath path, SpecSource source, List<Span> items, List<Place> places) {
        long size() {
            long size = 0;
            for (Span item : items) {
                size += item.size();
            }
            return size;
        }
    }

    /** Reads one; empty when it is wrong, which is then among the problems. */
    Optional<Counted> read(String typed) {
        SpecSource source = SpecSource.ofOption("--vary " + Shown.cut(typed, 120), typed);
        Place place = source.whole();
        int equals = typed.indexOf('=');
        if (equals <= 0 || typed.length() > LONGEST) {
            problems.at(place, "is not of the form PATH=VALUES", FORM);
            return Optional.empty();
        }
        Optional<SpecPath> path = new PathFinder(kinds, root, source, problems).find(typed.substring(0, equals));
        if (typed.substring(equals + 1).isBlank()) {
            problems.at(place, "has no value after the =: 0 combinations", FORM);
            return Optional.empty();
        }
        if (path.isEmpty()) {
            return Optional.empty();
        }
        boolean good = true;
        List<Span> items = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        int from = equals + 1;
        for (String item : split(typed.substring(from))) {
            Place own = source.within(from + Math.max(0, item.indexOf(item.trim())));
            Optional<Span> span = Span.read(item.trim(), path.get(), units, own, problems);
            if (span.isEmpty() && hasDecimalCommas(typed.substring(equals + 1))) {
                problems.at(
                        source.within(equals + 1),
                        "a comma stands between values, never in a number",
                        "decimals take a point: "
                                + typed.substring(equals + 1).trim().replace(',', '.'));
                return Optional.empty();
            }
            good &= span.isPresent();
            span.ifPresent(items::add);
            places.add(own);
            from += item.length() + 1;
        }
        return good ? Optional.of(new Counted(path.get(), source, items, places)) : Optional.empty();
    }

    /** A range like 0,4..0,6. */
    private static boolean hasDecimalCommas(String values) {
        return values.trim().matches("[0-9]+,[0-9]+\\.\\.[0-9]+,[0-9]+");
    }

    /** Writes the values out. */
    Optional<Axis> axis(Counted counted) {
        List<String> texts = new ArrayList<>();
        List<SetOption> options = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        for (int k = 0; k < counted.items().size(); k++) {
            Span item = counted.items().get(k);
            Place place = counted.places().get(k);
            ends.add(texts.size());
            for (int i = 0; i < item.size(); i++) {
                String text = item.text(i);
                Optional<Node> node = node(text, place);
                if (node.isEmpty()) {
                    return Optional.empty();
                }
                texts.add(text);
                options.add(new SetOption(counted.source(), counted.path().keys(), node.get()));
            }
            if (item.size() > 1) {
                ends.add(texts.size() - 1);
            }
        }
        if (new HashSet<>(texts).size() < texts.size()) {
            problems.at(counted.source().whole(), "names a value twice");
            return Optional.empty();
        }
        Numeric numeric = counted.path().numeric();
        Unit shown = numeric == null ? null : numeric.quantity().shown();
        return Optional.of(new Axis(
                counted.path(), texts, numbers(texts, numeric), shown == null ? "" : shown.spelling(), options, ends));
    }

    /** The values in the quantity's shown unit; none when some are no numbers, as limits and pitches are. */
    private List<Double> numbers(List<String> texts, Numeric numeric) {
        List<Double> numbers = new ArrayList<>();
        for (String text : numeric == null ? List.<String>of() : texts) {
            QuantityReader.Result result = QuantityReader.read(text, numeric.quantity(), numeric.bare(units));
            if (result.refused()) {
                return List.of();
            }
            Unit shown = numeric.quantity().shown();
            numbers.add(shown == null ? result.value() : shown.from(result.value()));
        }
        return numbers;
    }

    private Optional<Node> node(String text, Place place) {
        if (text.charAt(0) == '{' || text.charAt(0) == '[') {
            return YamlReader.read(SpecSource.ofOption(place.source().name(), text), problems);
        }
        return Optional.of(new Node.Scalar(place, text, true));
    }

    /** At commas outside braces and brackets. */
    private static List<String> split(String values) {
        List<String> items = new ArrayList<>();
        int depth = 0;
        int from = 0;
        for (int i = 0; i < values.length(); i++) {
            char c = values.charAt(i);
            depth += c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
            if (c == ',' && depth == 0) {
                items.add(values.substring(from, i));
                from = i + 1;
            }
        }
        items.add(values.substring(from));
        return items;
    }
}
