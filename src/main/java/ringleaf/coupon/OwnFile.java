// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

/**
 * Puts an entry into a user's own catalogue and leaves every other line as it is. The result is read again and compared
 * with what stood there before: where it would change anything else, nothing is done.
 */
public final class OwnFile {
    /** What became of the file. */
    public enum Outcome {
        /** There was none before. */
        NEW,
        /** The entry was added to others. */
        ADDED,
        /** Values of the entry were replaced. */
        REPLACED,
        /** The entry is there, and replacing was not asked for. */
        TAKEN,
        /** The file is laid out so that it cannot be changed line by line. */
        UNCLEAR
    }

    /**
     * The file.
     *
     * @param text of it; the old one where nothing was done
     */
    public record Result(Outcome outcome, String text) {}

    private static final String HEAD = "# Values of your own machines, measured on coupons. This file lies in"
            + " shared/ beside"
            + " a spec, or in the folder given\n# with --shared, and goes over the ready values one by one."
            + " Change what you"
            + " know better.\n";

    private OwnFile() {}

    /**
     * The file with the entry.
     *
     * @param before its text, if there is one; YAML that {@link YamlReader} takes
     * @param replace whether values of an entry of that name may be replaced
     */
    public static Result with(OwnEntry entry, Optional<SpecSource> before, boolean replace) {
        if (before.isEmpty()) {
            return new Result(
                    Outcome.NEW, HEAD + "\n" + entry.topKey() + ":\n" + String.join("\n", entry.lines()) + "\n");
        }
        String text = before.get().text();
        Optional<Node> root = YamlReader.read(before.get(), new Problems());
        if (root.isEmpty()
                || !(root.get() instanceof Node.Mapping file)
                || !(file.get(entry.topKey()) instanceof Node.Mapping list)) {
            return new Result(Outcome.UNCLEAR, text);
        }
        List<String> lines = new ArrayList<>(List.of(text.split("\r\n|\r|\n", -1)));
        if (lines.get(lines.size() - 1).isEmpty()) {
            lines.remove(lines.size() - 1);
        }
        Node.Entry old = list.entries().get(entry.name());
        if (old == null) {
            lines.addAll(endOf(file, entry.topKey(), lines.size()), entry.lines());
        } else if (!replace) {
            return new Result(Outcome.TAKEN, text);
        } else if (!(old.value() instanceof Node.Mapping values) || !replaced(lines, old, values, entry)) {
            return new Result(Outcome.UNCLEAR, text);
        }
        String merged = String.join("\n", lines) + "\n";
        Outcome outcome = old == null ? Outcome.ADDED : Outcome.REPLACED;
        return isTrue(merged, file, entry) ? new Result(outcome, merged) : new Result(Outcome.UNCLEAR, text);
    }

    /** The index of the line before which the map under a key ends. */
    private static int endOf(Node.Mapping file, String key, int count) {
        int own = file.entries().get(key).keyPlace().line();
        int end = count;
        for (Node.Entry other : file.entries().values()) {
            if (other.keyPlace().line() > own) {
                end = Math.min(end, other.keyPlace().line() - 1);
            }
        }
        return end;
    }

    private static boolean replaced(List<String> lines, Node.Entry old, Node.Mapping values, OwnEntry entry) {
        int column = Integer.MAX_VALUE;
        for (Node.Entry value : values.entries().values()) {
            column = Math.min(column, value.keyPlace().column());
            if (value.keyPlace().line() <= old.keyPlace().line()) {
                return false;
            }
        }
        String indent = " ".repeat(Math.max(0, column - 1));
        List<String> added = new ArrayList<>();
        for (int i = 0; i < entry.keys().size(); i++) {
            String line = indent + entry.keys().get(i) + ": " + entry.values().get(i);
            Node.Entry value = values.entries().get(entry.keys().get(i));
            if (value == null) {
                added.add(line);
            } else {
                lines.set(value.keyPlace().line() - 1, line);
            }
        }
        // Comments of an earlier measurement are replaced as well: they stand between the name and the first value.
        int from = old.keyPlace().line();
        while (from < lines.size() && lines.get(from).trim().startsWith("#")) {
            lines.remove(from);
        }
        for (String comment : entry.comments()) {
            lines.add(from++, indent + "# " + comment);
        }
        lines.addAll(from, added);
        return true;
    }

    /** Whether a text holds the values of the entry and everything else that was there before. */
    private static boolean isTrue(String text, Node.Mapping before, OwnEntry entry) {
        Problems problems = new Problems();
        Optional<Node> root = YamlReader.read(SpecSource.of(entry.topKey() + ".yaml", text), problems);
        if (!problems.isEmpty() || root.isEmpty()) {
            return false;
        }
        Map<String, String> now = flat(root.get());
        Map<String, String> wanted = flat(before);
        String own = "/" + entry.topKey() + "/" + entry.name() + "/";
        for (int i = 0; i < entry.keys().size(); i++) {
            String key = own + entry.keys().get(i);
            wanted.keySet().removeIf(k -> k.equals(key) || k.startsWith(key + "/"));
            Node value = YamlReader.read(SpecSource.of("", entry.values().get(i)), problems)
                    .orElseThrow();
            for (Map.Entry<String, String> each : flat(value).entrySet()) {
                wanted.put(key + each.getKey(), each.getValue());
            }
        }
        return now.equals(wanted);
    }

    /** Every single value by its way from the root. */
    private static Map<String, String> flat(Node node) {
        Map<String, String> all = new LinkedHashMap<>();
        flatten("", node, all);
        return all;
    }

    private static void flatten(String at, Node node, Map<String, String> all) {
        if (node instanceof Node.Scalar scalar) {
            all.put(at, scalar.text());
        } else if (node instanceof Node.Sequence sequence) {
            for (int i = 0; i < sequence.items().size(); i++) {
                flatten(at + "/" + i, sequence.items().get(i), all);
            }
        } else if (node instanceof Node.Mapping map) {
            for (Map.Entry<String, Node.Entry> each : map.entries().entrySet()) {
                flatten(at + "/" + each.getKey(), each.getValue().value(), all);
            }
        }
    }
}
