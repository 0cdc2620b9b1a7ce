// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.spec.Fabrication;
import ringleaf.spec.FabricationFields;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/** Finds the field that a typed path means; what is wrong with the path is among the problems, at its own place. */
final class PathFinder {
    private static final String FABRICATION = "fabrication";
    private static final List<String> LIMITS = List.of("at-least", "at-most");
    private static final String EXAMPLE = "e.g. shutter.blades";

    private final Kinds kinds;
    private final Node.Mapping root;
    private final SpecSource source;
    private final Problems problems;
    private final List<String> keys = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    /** Where fields are listed, as words behind a hint. */
    private String listed = "";

    /**
     * A search.
     *
     * @param kinds that it may name
     * @param root of the spec
     * @param source the option, whose text begins with the path
     */
    PathFinder(Kinds kinds, Node.Mapping root, SpecSource source, Problems problems) {
        this.kinds = kinds;
        this.root = root;
        this.source = source;
        this.problems = problems;
    }

    /** The field that a path means, from the root of the spec or from the name of a mechanism. */
    Optional<SpecPath> find(String typed) {
        int from = 0;
        for (String key : typed.split("\\.", -1)) {
            if (key.isBlank()) {
                return refused(source.within(from), "the path has an empty key", EXAMPLE);
            }
            keys.add(key.trim());
            places.add(source.within(from + key.indexOf(key.trim())));
            from += key.length() + 1;
        }
        String first = keys.get(0);
        if (first.equals(FABRICATION)) {
            listed = "`ringleaf help fabrication` lists all fields";
            return fabrication();
        }
        Node.Mapping mechanisms = root.get(SpecPath.MECHANISMS) instanceof Node.Mapping map
                ? map
                : new Node.Mapping(source.whole(), Map.of());
        if (keys.size() == 1
                && mechanisms.get(first) == null
                && !rootReason(first).isEmpty()) {
            return refused(places.get(0), rootReason(first), varied(mechanisms));
        }
        if (!first.equals(SpecPath.MECHANISMS)) {
            keys.add(0, SpecPath.MECHANISMS);
            places.add(0, places.get(0));
        }
        if (keys.size() == 1) {
            return refused(places.get(0), "the path names no mechanism", varied(mechanisms));
        }
        Kind kind = kind(mechanisms.get(keys.get(1)));
        if (kind == null) {
            return noMechanism(mechanisms);
        }
        listed = "`ringleaf help " + kind.name() + "` lists all fields";
        return walk(2, kind.fields());
    }

    /** Why a field of the spec's root cannot vary; empty when there is none of this name. */
    private static String rootReason(String name) {
        return switch (name) {
            case "title" -> "cannot vary: the title names the output folder and changes no design";
            case "units" -> "cannot vary: it says what bare numbers mean; give values a unit, as in 2in..3in*5";
            default -> "";
        };
    }

    private static String varied(Node.Mapping mechanisms) {
        return "what can vary are the fields of "
                + Shown.cut(String.join(", ", mechanisms.entries().keySet()), 200)
                + " and of fabrication, "
                + EXAMPLE.replace(
                                "shutter",
                                mechanisms.entries().isEmpty()
                                        ? "shutter"
                                        : Shown.cut(
                                                mechanisms
                                                        .entries()
                                                        .keySet()
                                                        .iterator()
                                                        .next(),
                                                60))
                        .replace("blades", "FIELD");
    }

    private Optional<SpecPath> noMechanism(Node.Mapping mechanisms) {
        Collection<String> names = mechanisms.entries().keySet();
        String name = keys.get(1);
        Optional<String> hint = Nearest.of(name, names);
        for (String each : names) {
            // The name left out: a single key that is a field, or a group with more behind it.
            Kind kind = hint.isEmpty() ? kind(mechanisms.get(each)) : null;
            Optional<String> near = kind == null ? Optional.empty() : nearest(name, kind.fields());
            if (near.isPresent()
                    && (keys.size() == 2 || kind.fields().find(near.get()).inner() != null)) {
                hint = Optional.of(each + '.' + near.get() + rest(2));
            }
        }
        return refused(
                places.get(1),
                "there is no mechanism " + Shown.quoted(name) + " in the spec",
                hint.map(h -> "did you mean " + h + "?").orElseGet(() -> varied(mechanisms)));
    }

    private String rest(int from) {
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

    private Kind kind(Node mechanism) {
        if (!(mechanism instanceof Node.Mapping map) || !(map.get("kind") instanceof Node.Scalar scalar)) {
            return null;
        }
        for (Kind kind : kinds.all()) {
            if (kind.name().equals(scalar.text())) {
                return kind;
            }
        }
        return null;
    }

    private Optional<SpecPath> fabrication() {
        if (keys.size() > 1 && Fabrication.FAMILIES.contains(keys.get(1))) {
            return walk(2, FabricationFields.ofFamily());
        }
        if (keys.size() > 1 && FabricationFields.GENERAL.find(keys.get(1)) == null) {
            return refused(
                    places.get(1),
                    "there is no family of parts " + Shown.quoted(keys.get(1)),
                    Nearest.hint(keys.get(1), Fabrication.FAMILIES));
        }
        return walk(1, FabricationFields.GENERAL);
    }

    private Optional<SpecPath> walk(int from, FieldSet fields) {
        FieldSet here = fields;
        for (int i = from; i < keys.size(); i++) {
            String key = keys.get(i);
            Field<?> field = here.find(key);
            if (field == null) {
                boolean kind = i == 2 && key.equals("kind");
                return kind
                        ? refused(
                                places.get(i),
                                "cannot vary: designs of different kinds have no figures in common",
                                "explore a spec of each; " + listed)
                        : refused(places.get(i), "there is no field " + Shown.quoted(key), hint(key, here));
            }
            boolean last = i == keys.size() - 1;
            if (last || field.isBound() && i == keys.size() - 2 && LIMITS.contains(keys.get(i + 1))) {
                return Optional.of(new SpecPath(keys, field));
            }
            if (field.inner() == null) {
                return refused(
                        places.get(i + 1),
                        Shown.quoted(key) + " has no " + Shown.quoted(keys.get(i + 1)),
                        field.isBound() ? Nearest.hint(keys.get(i + 1), LIMITS) : "it takes a value: " + key + "=…");
            }
            here = field.inner();
        }
        List<String> names = new ArrayList<>();
        here.fields().forEach(f -> names.add(f.name()));
        return refused(
                places.get(keys.size() - 1),
                "the path names no field",
                "what can vary below it: " + Shown.cut(String.join(", ", names), 600));
    }

    /** The nearest field, here or one level down. */
    private String hint(String key, FieldSet fields) {
        Optional<String> near = nearest(key, fields);
        for (Field<?> field : fields.fields()) {
            if (near.isEmpty() && field.inner() != null) {
                near = nearest(key, field.inner()).map(deeper -> field.name() + '.' + deeper);
            }
        }
        if (near.isPresent()) {
            return "did you mean " + near.get() + "? " + listed;
        }
        Set<String> names = new LinkedHashSet<>();
        for (Field<?> field : fields.fields()) {
            names.add(field.name());
        }
        return Nearest.hint(key, names);
    }

    private Optional<SpecPath> refused(Place place, String reason, String hint) {
        problems.at(place, reason, hint);
        return Optional.empty();
    }
}
