// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.List;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Numeric;

/**
 * A field of a spec by its path.
 *
 * @param keys from the root of the spec
 * @param field at the end of them, or the one whose limit the last key is
 */
public record SpecPath(List<String> keys, Field<?> field) {
    static final String MECHANISMS = "mechanisms";

    public SpecPath {
        keys = List.copyOf(keys);
    }

    /** As people write it, without the leading {@code mechanisms}. */
    public String shown() {
        return String.join(".", isOfMechanism() ? keys.subList(1, keys.size()) : keys);
    }

    /** The path within its mechanism; the whole one of what belongs to none. */
    public String within() {
        return String.join(".", isOfMechanism() ? keys.subList(2, keys.size()) : keys);
    }

    public boolean isOfMechanism() {
        return keys.get(0).equals(MECHANISMS);
    }

    /** The mechanism it belongs to; empty for what all share. */
    public String mechanism() {
        return isOfMechanism() ? keys.get(1) : "";
    }

    /** What kind of number stands there, or null. */
    public Numeric numeric() {
        return field.numeric();
    }
}
