// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.spec.SetOption;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.TextEdit;
import ringleaf.spec.text.YamlReader;

/** A spec with other values, its own comments and order kept; read again to be sure that it says what is meant. */
public final class TakenSpec {
    private static final List<String> ROOT = List.of("mechanisms", "fabrication", "title", "units");

    private TakenSpec() {}

    /**
     * The text.
     *
     * @param source of the spec
     * @param options laid over it, in order
     * @param meant the root that must come out
     * @return empty when it cannot be written into this text, as where aliases repeat a value
     */
    public static Optional<String> of(SpecSource source, List<SetOption> options, Node.Mapping meant) {
        String text = source.text();
        for (SetOption option : options) {
            List<String> keys = new ArrayList<>(option.keys());
            if (!ROOT.contains(keys.get(0))) {
                keys.add(0, ROOT.get(0));
            }
            Optional<String> next = TextEdit.with(text, keys, written(option.value()));
            if (next.isEmpty()) {
                return Optional.empty();
            }
            text = next.get();
        }
        Problems problems = new Problems();
        Optional<Node> read = YamlReader.read(SpecSource.of(source.name(), text), problems);
        boolean good = read.isPresent() && problems.isEmpty() && isSame(read.get(), meant);
        return good ? Optional.of(text) : Optional.empty();
    }

    private static String written(Node value) {
        if (value instanceof Node.Scalar scalar) {
            String escaped = scalar.text().replace("\\", "\\\\").replace("\"", "\\\"");
            return scalar.plain() ? scalar.text() : '"' + escaped + '"';
        }
        List<String> parts = new ArrayList<>();
        if (value instanceof Node.Mapping map) {
            for (Map.Entry<String, Node.Entry> each : map.entries().entrySet()) {
                parts.add(each.getKey() + ": " + written(each.getValue().value()));
            }
            return '{' + String.join(", ", parts) + '}';
        }
        for (Node each : ((Node.Sequence) value).items()) {
            parts.add(written(each));
        }
        return '[' + String.join(", ", parts) + ']';
    }

    /** Whether two trees hold the same values under the same keys, wherever they stand. */
    private static boolean isSame(Node one, Node other) {
        if (one instanceof Node.Scalar a && other instanceof Node.Scalar b) {
            return a.text().equals(b.text()) && a.plain() == b.plain();
        }
        if (one instanceof Node.Sequence a && other instanceof Node.Sequence b) {
            boolean same = a.items().size() == b.items().size();
            for (int i = 0; same && i < a.items().size(); i++) {
                same = isSame(a.items().get(i), b.items().get(i));
            }
            return same;
        }
        if (!(one instanceof Node.Mapping a && other instanceof Node.Mapping b)) {
            return false;
        }
        boolean same = a.entries().keySet().equals(b.entries().keySet());
        for (String key : same ? a.entries().keySet() : List.<String>of()) {
            same &= isSame(a.get(key), b.get(key));
        }
        return same;
    }
}
