// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;

/** Puts a tree together from the events of a YAML text, and stops at the first limit it meets. */
final class NodeBuilder {
    private final SpecSource source;
    private final Problems problems;
    private final Deque<Frame> open = new ArrayDeque<>();
    private final Map<String, Anchored> anchors = new HashMap<>();
    private Node root;
    private int documents;
    private int values;
    private int aliases;
    private boolean stopped;

    NodeBuilder(SpecSource source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    private record Anchored(Node node, int weight) {}

    /** A map or a list that is not closed yet. */
    private static final class Frame {
        final boolean isMap;
        final Place place;
        final String anchor;
        final int valuesBefore;
        final Map<String, Node.Entry> entries = new LinkedHashMap<>();
        final List<Node> items = new ArrayList<>();
        boolean keyRead;
        String key;
        Place keyPlace;

        Frame(boolean isMap, Place place, String anchor, int valuesBefore) {
            this.isMap = isMap;
            this.place = place;
            this.anchor = anchor;
            this.valuesBefore = valuesBefore;
        }

        Node closed() {
            return isMap ? new Node.Mapping(place, entries) : new Node.Sequence(place, items);
        }
    }

    Optional<Node> root() {
        return stopped ? Optional.empty() : Optional.ofNullable(root);
    }

    /** Takes the next event; false when nothing more should be read. */
    boolean takes(Event event) {
        switch (event.getEventId()) {
            case DocumentStart:
                if (++documents > 1) {
                    return stop(place(event), "a second document starts here; a spec is one document", "");
                }
                return true;
            case Alias:
                return alias((AliasEvent) event);
            case Scalar:
                return scalar((ScalarEvent) event);
            case MappingStart:
            case SequenceStart:
                return opens((CollectionStartEvent) event);
            case MappingEnd:
            case SequenceEnd:
                Frame frame = open.pop();
                return add(frame.closed(), frame.anchor, values - frame.valuesBefore);
            default:
                return true;
        }
    }

    private boolean opens(CollectionStartEvent event) {
        Place place = place(event);
        refuseTag(event.getTag(), place);
        if (open.size() >= YamlReader.DEPTH_LIMIT) {
            return stop(place, "nested deeper than " + YamlReader.DEPTH_LIMIT + " levels (a spec needs five)", "");
        }
        boolean isMap = event.getEventId() == Event.ID.MappingStart;
        open.push(new Frame(isMap, place, name(event), values));
        return counts(1, place);
    }

    private boolean scalar(ScalarEvent event) {
        Place place = place(event);
        refuseTag(event.getTag(), place);
        Node node = new Node.Scalar(place, event.getValue(), event.isPlain());
        return counts(1, place) && add(node, name(event), 1);
    }

    private boolean alias(AliasEvent event) {
        Place place = place(event);
        if (++aliases > YamlReader.ALIAS_LIMIT) {
            return stop(place, "more than " + YamlReader.ALIAS_LIMIT + " aliases (a spec needs none)", "");
        }
        String name = name(event);
        Anchored anchored = anchors.get(name);
        if (anchored == null) {
            return stop(place, "the alias *" + Shown.quoted(name) + " stands for nothing that is complete here", "");
        }
        return counts(anchored.weight, place) && add(anchored.node, null, anchored.weight);
    }

    private boolean counts(int weight, Place place) {
        values += weight;
        if (values > YamlReader.VALUE_LIMIT) {
            return stop(
                    place,
                    "more than " + YamlReader.VALUE_LIMIT + " values, aliases counted (a spec has some fifty)",
                    "");
        }
        return true;
    }

    private boolean add(Node node, String anchor, int weight) {
        if (anchor != null) {
            anchors.put(anchor, new Anchored(node, weight));
        }
        if (open.isEmpty()) {
            root = node;
            return true;
        }
        Frame frame = open.peek();
        if (!frame.isMap) {
            frame.items.add(node);
        } else if (!frame.keyRead) {
            frame.keyRead = true;
            frame.keyPlace = node.place();
            frame.key = key(node);
        } else {
            entry(frame, node);
            frame.keyRead = false;
        }
        return true;
    }

    /** The text of a key; null, after it was reported, when it is not one. */
    private String key(Node node) {
        if (!(node instanceof Node.Scalar scalar)) {
            problems.at(node.place(), "a key is plain text here, and not " + node.shape(), "");
            return null;
        }
        if (scalar.isNothing()) {
            problems.at(node.place(), "a key is missing before the colon", "");
            return null;
        }
        if (scalar.plain() && isNumberOrTruth(scalar.text())) {
            problems.at(
                    node.place(),
                    "the key " + Shown.quoted(scalar.text()) + " is not a name",
                    "a decimal comma within braces ends a value: write 2.5 and not 2,5");
            return null;
        }
        return scalar.text();
    }

    private void entry(Frame frame, Node value) {
        if (frame.key == null) {
            return;
        }
        Node.Entry before = frame.entries.get(frame.key);
        if (before == null) {
            frame.entries.put(frame.key, new Node.Entry(frame.keyPlace, value));
            return;
        }
        Place first = before.keyPlace();
        String where = first.line() == 0 ? "" : " (first in line " + first.line() + ")";
        problems.at(frame.keyPlace, "the key " + Shown.quoted(frame.key) + " is given twice" + where, "keep one");
    }

    private static boolean isNumberOrTruth(String text) {
        if (text.equalsIgnoreCase("true") || text.equalsIgnoreCase("false")) {
            return true;
        }
        boolean digit = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            digit |= c >= '0' && c <= '9';
            if (!(c >= '0' && c <= '9' || c == '.' || i == 0 && (c == '-' || c == '+'))) {
                return false;
            }
        }
        return digit;
    }

    private void refuseTag(Optional<String> tag, Place place) {
        if (tag.isPresent()) {
            problems.at(place, "a tag (" + Shown.quoted(tag.get()) + ") is not read in a spec", "remove it");
        }
    }

    private boolean stop(Place place, String reason, String hint) {
        problems.at(place, reason, hint);
        stopped = true;
        return false;
    }

    private static String name(NodeEvent event) {
        Optional<Anchor> anchor = event.getAnchor();
        return anchor.isPresent() ? anchor.get().getValue() : null;
    }

    private Place place(Event event) {
        Optional<Mark> mark = event.getStartMark();
        if (mark.isEmpty()) {
            return source.whole();
        }
        return source.at(mark.get().getLine() + 1, mark.get().getColumn() + 1);
    }
}
