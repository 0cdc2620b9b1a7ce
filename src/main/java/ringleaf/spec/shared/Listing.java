// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.List;

/**
 * An entry of a catalogue for people.
 *
 * @param name as a spec calls it
 * @param values in the order in which fields are declared
 * @param whose the tool's own, the user's, or both
 */
public record Listing(String name, List<Value> values, Whose whose) {
    /** Where an entry stands. */
    public enum Whose {
        READY(""),
        CHANGED("changed"),
        OWN("own");

        private final String label;

        Whose(String label) {
            this.label = label;
        }

        /** One word; none for what comes with the tool. */
        public String label() {
            return label;
        }
    }

    /**
     * A value.
     *
     * @param key name of its field
     * @param text with its unit
     * @param source where it comes from, in words; empty where it needs none
     */
    public record Value(String key, String text, String source) {}

    /** The value of a field, in text; empty where the entry has none. */
    public String text(String key) {
        for (Value value : values) {
            if (value.key().equals(key)) {
                return value.text();
            }
        }
        return "";
    }
}
