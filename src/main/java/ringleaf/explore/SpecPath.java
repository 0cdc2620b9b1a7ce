package ringleaf.explore;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Kinds;
import ringleaf.spec.Fabrication;
import ringleaf.spec.FabricationFields;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Numeric;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/**
 * A field of a spec by its path.
 *
 * @param keys from the root of the spec
 * @param field at the end of them, or the one whose limit the last key is
 */
public record SpecPath(List<String> keys, Field<?> field) {
    private static final String MECHANISMS = "mechanisms";
    private static final String FABRICATION = "fabrication";
    private static final List<String> LIMITS = List.of("at-least", "at-most");

    public SpecPath {
        keys = List.copyOf(keys);
    }

    /** As people write it, without the leading {@code mechanisms}. */
    public String shown() {
        return String.join(".", isOfMechanism() ? keys.subList(1, keys.size()) : keys);
    }

    /** The path within its mechanism; the whole one of what belongs to none. */
    public String within() {
        return String.join(".", isOfMechanism() ? keys.subList(2, keys.size()) : keys);
    }

    public boolean isOfMechanism() {
        return keys.get(0).equals(MECHANISMS);
    }

    /** The mechanism it belongs to; empty for what all share. */
    public String mechanism() {
        return isOfMechanism() ? keys.get(1) : "";
    }

    /** What kind of number stands there, or null. */
    public Numeric numeric() {
        return field.numeric();
    }

    /**
     * The field that a typed path means; empty when there is none, which is then among the problems.
     *
     * @param typed the path, from the root or from the name of a mechanism
     * @param root of the spec
     * @param place where messages point
     */
    static Optional<SpecPath> find(String typed, Node.Mapping root, Place place, Problems problems) {
        List<String> keys = new ArrayList<>();
        for (String key : typed.split("\\.", -1)) {
            if (key.isBlank()) {
                problems.at(place, "the path has an empty key", "e.g. shutter.blades");
                return Optional.empty();
            }
            keys.add(key.trim());
        }
        if (keys.get(0).equals(FABRICATION)) {
            return fabrication(keys, place, problems);
        }
        if (!keys.get(0).equals(MECHANISMS)) {
            keys.add(0, MECHANISMS);
        }
        Node.Mapping mechanisms = root.get(MECHANISMS) instanceof Node.Mapping map
                ? map
                : new Node.Mapping(place, java.util.Map.of());
        FieldSet fields = keys.size() > 1 ? fields(mechanisms.get(keys.get(1))) : null;
        if (fields == null) {
            Collection<String> names = mechanisms.entries().keySet();
            String name = keys.size() > 1 ? keys.get(1) : "";
            FieldSet only = names.size() == 1 ? fields(mechanisms.get(names.iterator().next())) : null;
            // The name left out: a single key that is a field, or a group with more behind it.
            Optional<String> near = only == null ? Optional.empty() : nearest(name, only);
            boolean leftOut = near.isPresent() && (keys.size() == 2 || only.find(near.get()).inner() != null);
            String path = leftOut ? near.get() + rest(keys, 2) : "";
            problems.at(
                    place,
                    "there is no mechanism " + Shown.quoted(name) + " in the spec",
                    leftOut
                            ? "did you mean " + names.iterator().next() + '.' + path + "?"
                            : Nearest.hint(name, names));
            return Optional.empty();
        }
        return walk(keys, 2, fields, place, problems);
    }

    private static String rest(List<String> keys, int from) {
        StringBuilder rest = new StringBuilder();
        for (String key : keys.subList(from, keys.size())) {
            rest.append('.').append(key);
        }
        return rest.toString();
    }

    private static Optional<String> nearest(String name, FieldSet fields) {
        Set<String> names = new LinkedHashSet<>();
        for (Field<?> field : fields.fields()) {
            names.add(field.name());
        }
        return Nearest.of(name, names);
    }

    private static FieldSet fields(Node mechanism) {
        if (!(mechanism instanceof Node.Mapping map) || !(map.get("kind") instanceof Node.Scalar scalar)) {
            return null;
        }
        for (Kind kind : Kinds.all()) {
            if (kind.name().equals(scalar.text())) {
                return kind.fields();
            }
        }
        return null;
    }

    private static Optional<SpecPath> fabrication(List<String> keys, Place place, Problems problems) {
        if (keys.size() > 1 && Fabrication.FAMILIES.contains(keys.get(1))) {
            return walk(keys, 2, FabricationFields.ofFamily(), place, problems);
        }
        if (keys.size() > 1 && FabricationFields.GENERAL.find(keys.get(1)) == null) {
            String hint = Nearest.hint(keys.get(1), Fabrication.FAMILIES);
            problems.at(place, "there is no family of parts " + Shown.quoted(keys.get(1)), hint);
            return Optional.empty();
        }
        return walk(keys, 1, FabricationFields.GENERAL, place, problems);
    }

    private static Optional<SpecPath> walk(
            List<String> keys, int from, FieldSet fields, Place place, Problems problems) {
        FieldSet here = fields;
        for (int i = from; i < keys.size(); i++) {
            Field<?> field = here.find(keys.get(i));
            if (field == null) {
                problems.at(place, "there is no field " + Shown.quoted(keys.get(i)), hint(keys.get(i), here));
                return Optional.empty();
            }
            boolean last = i == keys.size() - 1;
            if (last || field.isBound() && i == keys.size() - 2 && LIMITS.contains(keys.get(i + 1))) {
                return Optional.of(new SpecPath(keys, field));
            }
            if (field.inner() == null) {
                problems.at(place, Shown.quoted(keys.get(i)) + " has no " + Shown.quoted(keys.get(i + 1)),
                        field.isBound() ? "it takes at-least or at-most" : "");
                return Optional.empty();
            }
            here = field.inner();
        }
        problems.at(place, "the path names no field", "e.g. shutter.blades");
        return Optional.empty();
    }

    /** The nearest field, here or one level down. */
    private static String hint(String key, FieldSet fields) {
        Optional<String> near = nearest(key, fields);
        if (near.isPresent()) {
            return "did you mean " + near.get() + "?";
        }
        for (Field<?> field : fields.fields()) {
            Optional<String> deeper = field.inner() == null ? Optional.empty() : nearest(key, field.inner());
            if (deeper.isPresent()) {
                return "did you mean " + field.name() + '.' + deeper.get() + "?";
            }
        }
        Set<String> names = new LinkedHashSet<>();
        for (Field<?> field : fields.fields()) {
            names.add(field.name());
        }
        return Nearest.hint(key, names);
    }
}
