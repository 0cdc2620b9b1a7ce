// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;

/**
 * Several values in a row; a single one may stand alone.
 *
 * @param item how each is read
 * @param most how many at most
 */
record ListType<T>(FieldType<T> item, int most) implements FieldType<List<T>> {

    @Override
    public List<T> read(Node node, Place place, Reading reading) {
        if (!(node instanceof Node.Sequence sequence)) {
            T single = item.read(node, place, reading);
            return single == null ? null : List.of(single);
        }
        List<Node> items = sequence.items();
        if (items.isEmpty() || items.size() > most) {
            reading.problems().at(place, items.size() + " values stand here; 1 to " + most + " are allowed");
            return null;
        }
        List<T> values = new ArrayList<>();
        for (Node each : items) {
            T value = item.read(each, each.place().named(place.path()), reading);
            if (value != null) {
                values.add(value);
            }
        }
        return values.size() == items.size() ? List.copyOf(values) : null;
    }

    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        Map<String, Object> one = item.schema(inMillimetres);
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("type", "array");
        row.put("items", one);
        row.put("minItems", 1);
        row.put("maxItems", most);
        Map<String, Object> either = new LinkedHashMap<>();
        either.put("anyOf", List.of(one, row));
        return either;
    }

    @Override
    public String takes() {
        return "list of " + item.takes();
    }

    @Override
    public String limits() {
        return item.limits();
    }

    @Override
    public String reasons() {
        return item.reasons();
    }

    @Override
    public boolean lacksRange() {
        return item.lacksRange();
    }

    @Override
    public FieldType<List<T>> withLeast(double least, String why) {
        return new ListType<>(item.withLeast(least, why), most);
    }

    @Override
    public FieldType<List<T>> withMost(double greatest, String why) {
        return new ListType<>(item.withMost(greatest, why), most);
    }

    @Override
    public FieldType<List<T>> withOption(String name, String meaning) {
        return new ListType<>(item.withOption(name, meaning), most);
    }

    @Override
    public FieldSet inner() {
        return item.inner();
    }
}
