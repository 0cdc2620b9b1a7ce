// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Shown;

/**
 * A number that may also be asked for within limits: {@code 110}, {@code {at-most: 110}}, {@code {at-least: 90}}.
 *
 * @param number how each of the numbers is read
 */
record BoundType(FieldType<? extends Number> number) implements FieldType<Bound> {
    private static final String LEAST = "at-least";
    private static final String MOST = "at-most";

    @Override
    public Bound read(Node node, Place place, Reading reading) {
        if (!(node instanceof Node.Mapping map)) {
            Number value = number.read(node, place, reading);
            return value == null ? null : Bound.of(value.doubleValue());
        }
        OptionalDouble least = OptionalDouble.empty();
        OptionalDouble most = OptionalDouble.empty();
        boolean good = true;
        for (Map.Entry<String, Node.Entry> entry : map.entries().entrySet()) {
            String key = entry.getKey();
            if (!key.equals(LEAST) && !key.equals(MOST)) {
                String hint = Nearest.hint(key, List.of(LEAST, MOST));
                Place keyPlace = entry.getValue().keyPlace().named(place.path() + '.' + key);
                reading.problems().at(keyPlace, "unknown key", hint);
                good = false;
                continue;
            }
            Node value = entry.getValue().value();
            Number read = number.read(value, value.place().named(place.path() + '.' + key), reading);
            good &= read != null;
            if (read != null && key.equals(LEAST)) {
                least = OptionalDouble.of(read.doubleValue());
            } else if (read != null) {
                most = OptionalDouble.of(read.doubleValue());
            }
        }
        if (good && least.isEmpty() && most.isEmpty()) {
            String hint = "write {at-most: …}, {at-least: …} or a value";
            reading.problems().nearest(place, "an empty map asks nothing", hint);
            return Bound.open();
        }
        if (least.isPresent() && most.isPresent() && least.getAsDouble() > most.getAsDouble()) {
            String reason = "at-least " + written(map, LEAST) + " is above at-most " + written(map, MOST);
            reading.problems().nearest(place, reason + ", so that nothing lies between them", "");
            return Bound.open();
        }
        return good ? new Bound(OptionalDouble.empty(), least, most) : null;
    }

    private static String written(Node.Mapping map, String key) {
        return map.get(key) instanceof Node.Scalar scalar ? Shown.quoted(scalar.text()) : "";
    }

    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        Map<String, Object> one = number.schema(inMillimetres);
        Map<String, Object> limits = new LinkedHashMap<>();
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put(LEAST, one);
        properties.put(MOST, one);
        limits.put("type", "object");
        limits.put("properties", properties);
        limits.put("minProperties", 1);
        limits.put("additionalProperties", false);
        Map<String, Object> either = new LinkedHashMap<>();
        either.put("anyOf", List.of(one, limits));
        return either;
    }

    @Override
    public Numeric numeric() {
        return number.numeric();
    }

    @Override
    public String takes() {
        return number.takes() + " or limits";
    }

    @Override
    public String limits() {
        return number.limits();
    }

    @Override
    public String reasons() {
        return number.reasons();
    }

    @Override
    public boolean lacksRange() {
        return number.lacksRange();
    }

    @Override
    public FieldType<Bound> withLeast(double least, String why) {
        return new BoundType(number.withLeast(least, why));
    }

    @Override
    public FieldType<Bound> withMost(double most, String why) {
        return new BoundType(number.withMost(most, why));
    }
}
