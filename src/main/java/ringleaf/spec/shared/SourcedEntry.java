// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Reading;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/**
 * An entry as it stands in a file, its values parted from their sources.
 *
 * @param values plain, as fields read them
 * @param sources in words, by key
 * @param within how far values may lie from the true ones, by key, in the unit in which bare values are
 * @param own keys of the values that stand in a user's own file
 */
record SourcedEntry(
        String name,
        Place place,
        Node.Mapping values,
        Map<String, String> sources,
        Map<String, Double> within,
        Set<String> own) {
    private static final String VALUE = "is";
    private static final String SOURCE = "source";
    /** How far the true value lies from the measured one at most, in 95 of 100 such measurements. */
    private static final String WITHIN = "within";

    /** The table of sources at the head of a file: a short name for each sentence. */
    static Map<String, String> sources(Node node, Problems problems) {
        Map<String, String> sources = new LinkedHashMap<>();
        if (node == null) {
            return sources;
        }
        if (!(node instanceof Node.Mapping map)) {
            problems.at(node.place().named("sources"), "a map of short names and sentences is wanted");
            return sources;
        }
        for (Map.Entry<String, Node.Entry> entry : map.entries().entrySet()) {
            if (entry.getValue().value() instanceof Node.Scalar scalar) {
                sources.put(entry.getKey(), scalar.text());
            }
        }
        return sources;
    }

    /**
     * Parts {@code {is: …, source: …}} into value and source; a value may also stand alone.
     *
     * @param own whether it stands in a user's own file
     */
    static SourcedEntry of(
            String name, Place place, Node.Mapping map, Map<String, String> known, boolean own, Problems problems) {
        Map<String, Node.Entry> values = new LinkedHashMap<>();
        Map<String, String> sources = new LinkedHashMap<>();
        Map<String, Double> within = new LinkedHashMap<>();
        for (Map.Entry<String, Node.Entry> each : map.entries().entrySet()) {
            String key = each.getKey();
            Node value = each.getValue().value();
            if (value instanceof Node.Mapping pair) {
                value = pair.get(VALUE);
                Place at = each.getValue().keyPlace().named(Shown.quoted(name) + '.' + Shown.quoted(key));
                checkKeys(pair, at, problems);
                if (value == null) {
                    problems.at(at, "the map holds no value", "write {is: …, source: …} or the value alone");
                    continue;
                }
                if (pair.get(SOURCE) instanceof Node.Scalar source) {
                    sources.put(key, known.getOrDefault(source.text(), source.text()));
                }
                if (pair.get(WITHIN) != null) {
                    within(key, pair.get(WITHIN), within, problems);
                }
            }
            values.put(key, new Node.Entry(each.getValue().keyPlace(), value));
        }
        Node.Mapping plain = new Node.Mapping(map.place(), values);
        return new SourcedEntry(name, place, plain, sources, within, own ? values.keySet() : Set.of());
    }

    private static void checkKeys(Node.Mapping pair, Place at, Problems problems) {
        for (Map.Entry<String, Node.Entry> entry : pair.entries().entrySet()) {
            String key = entry.getKey();
            if (!key.equals(VALUE) && !key.equals(SOURCE) && !key.equals(WITHIN)) {
                Place place = entry.getValue().keyPlace().named(at.path() + '.' + Shown.quoted(entry.getKey()));
                problems.at(place, "unknown key", Nearest.hint(key, java.util.List.of(VALUE, SOURCE, WITHIN)));
            }
        }
    }

    private static void within(String key, Node node, Map<String, Double> within, Problems problems) {
        double value = -1;
        try {
            value = node instanceof Node.Scalar scalar ? Double.parseDouble(scalar.text()) : -1;
        } catch (NumberFormatException e) {
            // Reported below, with all else that is no such number.
            value = -1;
        }
        if (value >= 0 && value < 1e6) {
            within.put(key, value);
        } else {
            problems.at(
                    node.place().named(key + '.' + WITHIN),
                    "a plain number from 0 is wanted, in the unit of the value");
        }
    }

    /** This entry with the values of another laid over it. */
    SourcedEntry under(SourcedEntry over) {
        Map<String, Node.Entry> merged = new LinkedHashMap<>(values.entries());
        Map<String, String> mergedSources = new LinkedHashMap<>(sources);
        Map<String, Double> mergedWithin = new LinkedHashMap<>(within);
        for (Map.Entry<String, Node.Entry> each : over.values.entries().entrySet()) {
            merged.put(each.getKey(), each.getValue());
            mergedSources.remove(each.getKey());
            mergedWithin.remove(each.getKey());
        }
        mergedSources.putAll(over.sources);
        mergedWithin.putAll(over.within);
        Node.Mapping all = new Node.Mapping(over.values.place(), merged);
        Set<String> mergedOwn = new LinkedHashSet<>(own);
        mergedOwn.addAll(over.own);
        return new SourcedEntry(name, over.place, all, mergedSources, mergedWithin, mergedOwn);
    }

    Entry read(FieldSet fields, Reading reading) {
        Values bound = fields.bind(values, place, reading);
        return new Entry(name, bound, Map.copyOf(sources), within, own);
    }
}
