// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value of a YAML text with its place. */
public sealed interface Node {
    Place place();

    /** What it is, in words. */
    String shape();

    /**
     * A single value as it was written.
     *
     * @param text without quotes
     * @param plain whether it stood without quotes
     */
    record Scalar(Place place, String text, boolean plain) implements Node {
        /** Whether it is YAML's nothing: empty, {@code ~} or {@code null}. */
        public boolean isNothing() {
            return plain
                    && (text.isEmpty()
                            || text.equals("~")
                            || text.equals("null")
                            || text.equals("Null")
                            || text.equals("NULL"));
        }

        @Override
        public String shape() {
            return isNothing() ? "nothing" : "a single value";
        }
    }

    /**
     * Keys and values.
     *
     * @param entries in the order of the text
     */
    record Mapping(Place place, Map<String, Entry> entries) implements Node {
        public Mapping {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        /** The value under a key, or null. */
        public Node get(String key) {
            Entry entry = entries.get(key);
            return entry == null ? null : entry.value();
        }

        /** A copy in which the key has this value; a new key comes last. */
        public Mapping with(String key, Place keyPlace, Node value) {
            Map<String, Entry> copy = new LinkedHashMap<>(entries);
            copy.put(key, new Entry(keyPlace, value));
            return new Mapping(place, copy);
        }

        @Override
        public String shape() {
            return "a map of keys and values";
        }
    }

    /**
     * One line of a mapping.
     *
     * @param keyPlace where the key stands
     */
    record Entry(Place keyPlace, Node value) {}

    /** Values in a row. */
    record Sequence(Place place, List<Node> items) implements Node {
        public Sequence {
            items = List.copyOf(new ArrayList<>(items));
        }

        @Override
        public String shape() {
            return "a list";
        }
    }
}
