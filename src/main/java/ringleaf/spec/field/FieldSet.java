// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Renamed;
import ringleaf.spec.text.Shown;

/** Fields that stand side by side in a map, in the order in which they are shown. */
public final class FieldSet {
    private final Map<String, Field<?>> byName;

    private FieldSet(Map<String, Field<?>> byName) {
        this.byName = byName;
    }

    /** The fields; each has its own name, a help line and a stated range, or the code is wrong. */
    public static FieldSet of(Field<?>... fields) {
        return of(Arrays.asList(fields));
    }

    /** The fields; each has its own name, a help line and a stated range, or the code is wrong. */
    public static FieldSet of(List<Field<?>> fields) {
        Map<String, Field<?>> byName = new LinkedHashMap<>();
        for (Field<?> field : fields) {
            if (field.help().isEmpty()) {
                throw new IllegalArgumentException(field.name() + " has no line of help");
            }
            if (field.type().lacksRange()) {
                throw new IllegalArgumentException(field.name() + " states no range");
            }
            if (byName.put(field.name(), field) != null) {
                throw new IllegalArgumentException(field.name() + " is declared twice");
            }
        }
        return new FieldSet(byName);
    }

    /** The same with more fields after them. */
    public FieldSet and(Field<?>... more) {
        List<Field<?>> all = new ArrayList<>(byName.values());
        all.addAll(Arrays.asList(more));
        return of(all);
    }

    public Collection<Field<?>> fields() {
        return byName.values();
    }

    /** The field of this name, or null. */
    public Field<?> find(String name) {
        return byName.get(name);
    }

    boolean has(Field<?> field) {
        return byName.get(field.name()) == field;
    }

    /**
     * Reads every field of a map; what is wrong goes to the problems, and the values that are right are kept. A key that
     * is nearly that of a field which is not there is read as that field's.
     *
     * @param owner where messages about what is missing point, its path the prefix of the fields' paths
     */
    public Values bind(Node.Mapping map, Place owner, Reading reading) {
        return bind(map, owner, reading, List.of());
    }

    /** As the other; {@code handled} are keys that somebody else reads. */
    public Values bind(Node.Mapping map, Place owner, Reading reading, List<String> handled) {
        Values.Builder values = new Values.Builder(this, owner);
        for (Map.Entry<String, Node.Entry> entry : map.entries().entrySet()) {
            String key = entry.getKey();
            Field<?> field = byName.get(key);
            if (field != null) {
                Node value = entry.getValue().value();
                Place place = value.place().named(path(owner, key));
                if (value instanceof Node.Scalar scalar && scalar.isNothing()) {
                    place = entry.getValue().keyPlace().named(path(owner, key));
                }
                read(field, value, place, reading, values);
            } else if (!handled.contains(key)) {
                unknown(entry, map, handled, owner, reading, values);
            }
        }
        missing(values, owner, reading.problems());
        return values.build();
    }

    private void unknown(
            Map.Entry<String, Node.Entry> entry,
            Node.Mapping map,
            List<String> handled,
            Place owner,
            Reading reading,
            Values.Builder values) {
        String key = entry.getKey();
        Place place = entry.getValue().keyPlace().named(path(owner, Shown.quoted(key)));
        String hint = hint(key, handled);
        Optional<String> meant = Renamed.now(key, byName.keySet()).or(() -> Nearest.of(key, known(handled)));
        Field<?> field = meant.isPresent() ? byName.get(meant.get()) : null;
        if (field == null || map.entries().containsKey(field.name()) || values.has(field)) {
            reading.problems().at(place, "unknown key", hint);
            return;
        }
        reading.problems().nearest(place, "unknown key", hint);
        Node value = entry.getValue().value();
        read(field, value, value.place().named(path(owner, field.name())), reading, values);
    }

    /** Values of which none was given, as where a group was left out; {@code owner} is where messages point. */
    public Values none(Place owner) {
        return new Values.Builder(this, owner).build();
    }

    private static <T> void read(Field<T> field, Node node, Place place, Reading reading, Values.Builder values) {
        T value = field.type().read(node, place, reading);
        values.add(field, value, place);
    }

    private void missing(Values.Builder values, Place owner, Problems problems) {
        for (Field<?> field : byName.values()) {
            if (field.isRequired() && !values.has(field)) {
                String example = field.examples().isEmpty()
                        ? ""
                        : "e.g. " + field.name() + ": " + field.examples().get(0);
                problems.at(owner.named(path(owner, field.name())), "is missing (" + field.help() + ")", example);
            }
        }
    }

    /** The nearest key, here or one level down; else all that are known. */
    private String hint(String key, List<String> handled) {
        Optional<String> renamed = Renamed.now(key, byName.keySet());
        if (renamed.isPresent()) {
            return Renamed.hint(renamed.get());
        }
        List<String> known = known(handled);
        Optional<String> nearest = Nearest.of(key, known);
        if (nearest.isPresent()) {
            return "did you mean " + nearest.get() + "?";
        }
        for (Field<?> field : byName.values()) {
            FieldSet inner = field.type().inner();
            Optional<String> deeper = inner == null ? Optional.empty() : Nearest.of(key, inner.byName.keySet());
            if (deeper.isPresent()) {
                return "did you mean " + deeper.get() + " within " + field.name() + "?";
            }
        }
        return Nearest.hint(key, known);
    }

    private List<String> known(List<String> handled) {
        List<String> known = new ArrayList<>(handled);
        known.addAll(byName.keySet());
        return known;
    }

    private static String path(Place owner, String key) {
        return owner.path().isEmpty() ? key : owner.path() + '.' + key;
    }

    /** JSON Schema of a map with these fields; {@code inMillimetres} when bare lengths are surely millimetres. */
    public Map<String, Object> schema(boolean inMillimetres) {
        return schema(inMillimetres, Map.of());
    }

    /** As the other, with more properties before the fields. */
    public Map<String, Object> schema(boolean inMillimetres, Map<String, Object> before) {
        Map<String, Object> properties = new LinkedHashMap<>(before);
        List<String> required = new ArrayList<>();
        for (Field<?> field : byName.values()) {
            properties.put(field.name(), field.schema(inMillimetres));
            if (field.isRequired()) {
                required.add(field.name());
            }
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", properties);
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        schema.put("additionalProperties", false);
        return schema;
    }
}
