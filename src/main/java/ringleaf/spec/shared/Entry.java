package ringleaf.spec.shared;

import java.util.Map;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;

/**
 * An entry of a catalogue: its values, and where each comes from.
 *
 * @param name in the catalogue
 * @param values read by the catalogue's fields
 * @param sources of the values, in words, by the name of the field
 */
public record Entry(String name, Values values, Map<String, String> sources) {
    /** Where a value comes from, in words; a value without a source is the user's own. */
    public String source(Field<?> field) {
        return sources.getOrDefault(field.name(), "given by the user");
    }
}
