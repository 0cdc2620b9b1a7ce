// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

/**
 * One {@code --set path=value}: overrides a field of the spec.
 *
 * @param source the option as it was typed
 * @param keys of the path, from the root of the spec or from the name of a mechanism
 * @param value to put there
 */
public record SetOption(SpecSource source, List<String> keys, Node value) {
    private static final int LONGEST = 2000;
    private static final int DEEPEST = 8;
    private static final String MECHANISMS = "mechanisms";

    public SetOption {
        keys = List.copyOf(keys);
    }

    /** The option from its text {@code path=value}; empty when it is misspelt, which is then among the problems. */
    public static Optional<SetOption> parse(String text, Problems problems) {
        SpecSource source = SpecSource.ofOption("--set " + Shown.cut(text, 120), text);
        Place place = source.whole();
        int equals = text.indexOf('=');
        if (equals <= 0 || text.length() > LONGEST) {
            problems.at(place, "is not of the form path=value", "e.g. --set mechanisms.shutter.blades=14");
            return Optional.empty();
        }
        List<String> keys = new ArrayList<>();
        for (String key : text.substring(0, equals).split("\\.", -1)) {
            if (key.isBlank()) {
                problems.at(place, "the path has an empty key", "e.g. --set mechanisms.shutter.blades=14");
                return Optional.empty();
            }
            keys.add(key.trim());
        }
        if (keys.size() > DEEPEST) {
            problems.at(place, "the path has " + keys.size() + " keys, and no field lies so deep");
            return Optional.empty();
        }
        Optional<Node> value = value(text.substring(equals + 1).trim(), place, problems);
        return value.map(node -> new SetOption(source, keys, node));
    }

    private static Optional<Node> value(String text, Place place, Problems problems) {
        if (text.isEmpty()) {
            problems.at(place, "has no value after the =");
            return Optional.empty();
        }
        if (text.charAt(0) == '{' || text.charAt(0) == '[') {
            SpecSource source = SpecSource.ofOption(place.source().name(), text);
            return YamlReader.read(source, problems);
        }
        return Optional.of(new Node.Scalar(place, text, true));
    }

    /** The document's root with this option laid over it. */
    public Node.Mapping over(Node.Mapping root, Problems problems) {
        return over(root, RootFields.NAMES, problems);
    }

    /**
     * The document's root with this option laid over it; unchanged when it has no place there, which is then among
     * the problems.
     *
     * @param rootKeys keys of the root
     */
    Node.Mapping over(Node.Mapping root, Collection<String> rootKeys, Problems problems) {
        List<String> path = new ArrayList<>(keys);
        Place place = source.whole();
        if (!rootKeys.contains(path.get(0))) {
            path.add(0, MECHANISMS);
        }
        boolean named = path.get(0).equals(MECHANISMS) && path.size() > 1;
        if (named && !isMechanism(root, path.get(1)) && !isNewMechanism(path)) {
            problems.at(place, unplaced(path.get(1)), hint(root, path));
            return root;
        }
        return (Node.Mapping) laid(root, path, 0, place, problems);
    }

    private static String unplaced(String name) {
        return "there is no mechanism " + Shown.quoted(name) + " in the spec";
    }

    private static boolean isMechanism(Node.Mapping root, String name) {
        return root.get(MECHANISMS) instanceof Node.Mapping mechanisms
                && mechanisms.entries().containsKey(name);
    }

    /** A new mechanism begins with its kind. */
    private boolean isNewMechanism(List<String> path) {
        if (path.size() == 3 && path.get(2).equals("kind")) {
            return true;
        }
        return path.size() == 2 && value instanceof Node.Mapping;
    }

    private String hint(Node.Mapping root, List<String> path) {
        if (!(root.get(MECHANISMS) instanceof Node.Mapping mechanisms)) {
            return "";
        }
        Collection<String> names = mechanisms.entries().keySet();
        boolean leftOut = !keys.get(0).equals(MECHANISMS);
        if (leftOut && names.size() == 1 && Nearest.of(path.get(1), names).isEmpty()) {
            return "did you mean " + names.iterator().next() + '.' + String.join(".", keys) + "?";
        }
        return Nearest.hint(path.get(1), names);
    }

    private Node laid(Node node, List<String> path, int depth, Place place, Problems problems) {
        if (depth == path.size()) {
            return value;
        }
        Node.Mapping map = null;
        if (node == null || node instanceof Node.Scalar scalar && scalar.isNothing()) {
            map = new Node.Mapping(place, java.util.Map.of());
        } else if (node instanceof Node.Mapping own) {
            map = own;
        }
        if (map == null) {
            String above = String.join(".", path.subList(0, depth));
            problems.at(
                    place,
                    Shown.quoted(above) + " is " + node.shape() + ", and has no key " + Shown.quoted(path.get(depth)));
            return node;
        }
        String key = path.get(depth);
        Node.Entry entry = map.entries().get(key);
        Node below = laid(entry == null ? null : entry.value(), path, depth + 1, place, problems);
        Place keyPlace = entry == null || depth == path.size() - 1 ? place : entry.keyPlace();
        return map.with(key, keyPlace, below);
    }
}
