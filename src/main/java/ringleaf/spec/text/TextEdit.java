// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Puts a value into a YAML text and leaves every other character, comments included, as it is. */
public final class TextEdit {
    private TextEdit() {}

    /**
     * The text with this value under these keys; keys that are missing are added after the last of their map.
     *
     * @param value as it would stand in the text
     * @return empty when it has no place there: no map stands above it, or the text is not YAML
     */
    public static Optional<String> with(String text, List<String> keys, String value) {
        try {
            Optional<org.snakeyaml.engine.v2.nodes.Node> root =
                    new Compose(LoadSettings.builder().setUseMarks(true).build()).composeString(text);
            if (root.isPresent() && root.get() instanceof MappingNode map) {
                return within(text, map, keys, 0, value);
            }
        } catch (YamlEngineException e) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    private static Optional<String> within(String text, MappingNode map, List<String> keys, int depth, String value) {
        for (NodeTuple tuple : map.getValue()) {
            boolean found = tuple.getKeyNode() instanceof ScalarNode key
                    && key.getValue().equals(keys.get(depth));
            if (!found) {
                continue;
            }
            org.snakeyaml.engine.v2.nodes.Node below = tuple.getValueNode();
            if (depth == keys.size() - 1) {
                return Optional.of(replaced(text, start(text, below), end(text, below), value));
            }
            if (below instanceof MappingNode inner) {
                return within(text, inner, keys, depth + 1, value);
            }
            boolean nothing =
                    below instanceof ScalarNode scalar && scalar.getValue().isEmpty();
            return nothing
                    ? Optional.of(replaced(text, start(text, below), end(text, below), nested(keys, depth + 1, value)))
                    : Optional.empty();
        }
        String line = keys.get(depth) + ": " + nested(keys, depth + 1, value);
        if (map.getFlowStyle() == FlowStyle.FLOW) {
            int brace = index(text, map.getEndMark()) - 1;
            int last = brace;
            while (last > 0 && Character.isWhitespace(text.charAt(last - 1))) {
                last--;
            }
            String comma = map.getValue().isEmpty() || text.charAt(last - 1) == ',' ? "" : ", ";
            return Optional.of(replaced(text, last, last, comma + line));
        }
        int end = end(text, map);
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        int column = map.getStartMark().orElseThrow().getColumn();
        return Optional.of(replaced(text, end, end, "\n" + " ".repeat(column) + line));
    }

    /** A value below keys that are all new, as a map on one line. */
    private static String nested(List<String> keys, int from, String value) {
        StringBuilder out = new StringBuilder();
        for (String key : keys.subList(from, keys.size())) {
            out.append('{').append(key).append(": ");
        }
        return out.append(value).append("}".repeat(keys.size() - from)).toString();
    }

    private static String replaced(String text, int from, int to, String by) {
        // An empty value stands right behind its colon.
        boolean tight = from > 0 && text.charAt(from - 1) == ':';
        return text.substring(0, from) + (tight ? " " : "") + by + text.substring(to);
    }

    private static int start(String text, org.snakeyaml.engine.v2.nodes.Node node) {
        return index(text, node.getStartMark());
    }

    /** Where what is written of a node ends; that of a block ends with its last value and not where the next begins. */
    private static int end(String text, org.snakeyaml.engine.v2.nodes.Node node) {
        if (node instanceof MappingNode map && map.getFlowStyle() != FlowStyle.FLOW) {
            return end(text, map.getValue().get(map.getValue().size() - 1).getValueNode());
        }
        if (node instanceof SequenceNode list && list.getFlowStyle() != FlowStyle.FLOW) {
            return end(text, list.getValue().get(list.getValue().size() - 1));
        }
        return index(text, node.getEndMark());
    }

    /** Marks count code points. */
    private static int index(String text, Optional<Mark> mark) {
        return text.offsetByCodePoints(0, mark.orElseThrow().getIndex());
    }
}
