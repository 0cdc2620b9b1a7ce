// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringleaf.spec.text.Place;

/** The values read by a set of fields, each with its place. */
public final class Values {
    private final FieldSet fields;
    private final Place owner;
    private final Map<String, Given> given;

    private record Given(Object value, Place place) {}

    private Values(FieldSet fields, Place owner, Map<String, Given> given) {
        this.fields = fields;
        this.owner = owner;
        this.given = given;
    }

    static final class Builder {
        private final FieldSet fields;
        private final Place owner;
        private final Map<String, Given> given = new LinkedHashMap<>();

        Builder(FieldSet fields, Place owner) {
            this.fields = fields;
            this.owner = owner;
        }

        /** Notes a value; a refused one is null and only its place is kept. */
        void add(Field<?> field, Object value, Place place) {
            given.put(field.name(), new Given(value, place));
        }

        /** Whether something stood there, be it refused. */
        boolean has(Field<?> field) {
            return given.containsKey(field.name());
        }

        Values build() {
            return new Values(fields, owner, given);
        }
    }

    /** The same with one value put in the place of what was given, as if it had been typed there. */
    public <T> Values with(Field<T> field, T value) {
        Map<String, Given> changed = new LinkedHashMap<>(given);
        changed.put(field.name(), new Given(value, where(field)));
        return new Values(fields, owner, changed);
    }

    /** The same as if one value had been left out. */
    public Values without(Field<?> field) {
        Map<String, Given> changed = new LinkedHashMap<>(given);
        changed.remove(field.name());
        return new Values(fields, owner, changed);
    }

    /** The value that was given, or the default where that is a value, or nothing. */
    public <T> Optional<T> get(Field<T> field) {
        Optional<T> own = given(field);
        return own.isPresent() ? own : Optional.ofNullable(field.defaultValue());
    }

    /** The value that was given, if it was. */
    @SuppressWarnings("unchecked")
    public <T> Optional<T> given(Field<T> field) {
        if (!fields.has(field)) {
            throw new IllegalArgumentException(field.name() + " is not among the fields");
        }
        Given one = given.get(field.name());
        return one == null ? Optional.empty() : Optional.ofNullable((T) one.value());
    }

    /** The value that was given or the default, for a field that is required or has a default value. */
    public <T> T require(Field<T> field) {
        Optional<T> value = get(field);
        if (value.isEmpty()) {
            throw new IllegalStateException(field.name() + " has neither a value nor a default");
        }
        return value.get();
    }

    /** Whether the user gave a value. */
    public boolean isGiven(Field<?> field) {
        return given(field).isPresent();
    }

    /** Whether the user gave what was refused: it counts as left out, and that is told already. */
    public boolean isRefused(Field<?> field) {
        Given one = given.get(field.name());
        return one != null && one.value() == null;
    }

    /** Whether every required field has a value; else that it lacks one was already reported. */
    public boolean isComplete() {
        for (Field<?> field : fields.fields()) {
            if (field.isRequired() && !isGiven(field)) {
                return false;
            }
        }
        return true;
    }

    /** What is asked of a value that may be bounded; nothing is asked when it was left out. */
    public Bound bound(Field<Bound> field) {
        return get(field).orElse(Bound.open());
    }

    /** The place of a value, or of its owner when it was left out; either way with the field's path. */
    public Place where(Field<?> field) {
        if (!fields.has(field)) {
            throw new IllegalArgumentException(field.name() + " is not among the fields");
        }
        Given one = given.get(field.name());
        if (one != null) {
            return one.place();
        }
        return owner.named(owner.path().isEmpty() ? field.name() : owner.path() + '.' + field.name());
    }

    /** The place of the map as a whole. */
    public Place where() {
        return owner;
    }

    public FieldSet fields() {
        return fields;
    }

    /** Names of what was given, in the order of the text. */
    public List<String> inOrder() {
        return given.entrySet().stream()
                .filter(one -> one.getValue().value() != null)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Paths of everything that was given, those of groups with a full stop and those of lists with a number between. */
    public Set<String> givenPaths() {
        Set<String> paths = new TreeSet<>();
        for (Field<?> field : fields.fields()) {
            Optional<?> value = given(field);
            if (value.isEmpty()) {
                continue;
            }
            paths.add(field.name());
            if (value.get() instanceof Values inner) {
                addPaths(field.name(), inner, paths);
            } else if (value.get() instanceof List<?> list) {
                for (int i = 0; i < list.size(); i++) {
                    if (list.get(i) instanceof Values inner) {
                        addPaths(field.name() + "." + (i + 1), inner, paths);
                    }
                }
            }
        }
        return paths;
    }

    private static void addPaths(String before, Values inner, Set<String> to) {
        for (String path : inner.givenPaths()) {
            to.add(before + "." + path);
        }
    }
}
