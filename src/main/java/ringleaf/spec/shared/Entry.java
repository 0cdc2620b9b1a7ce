// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.Map;
import java.util.Set;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;

/**
 * An entry of a catalogue: its values, and where each comes from.
 *
 * @param name in the catalogue
 * @param values read by the catalogue's fields
 * @param sources of the values, in words, by the name of the field
 * @param within how far values that were measured may lie from the true ones (95 %), by the name of the field
 * @param own names of the fields whose values stand in a user's own file
 */
public record Entry(
        String name, Values values, Map<String, String> sources, Map<String, Double> within, Set<String> own) {
    /** An entry of which nothing was measured. */
    public Entry(String name, Values values, Map<String, String> sources) {
        this(name, values, sources, Map.of(), Set.of());
    }

    /** How far a measured value may lie from the true one (95 %), in the unit of the catalogue; 0 where none is said. */
    public double within(Field<?> field) {
        return within.getOrDefault(field.name(), 0.0);
    }

    /** Whether a value stands in a user's own file, so that nothing usual may take its place. */
    public boolean isOwn(Field<?> field) {
        return own.contains(field.name());
    }

    /** Where a value comes from, in words; a value without a source is the user's own. */
    public String source(Field<?> field) {
        return sources.getOrDefault(field.name(), "given by the user");
    }
}
