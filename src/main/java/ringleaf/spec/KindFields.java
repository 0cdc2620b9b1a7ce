// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.function.Supplier;
import ringleaf.spec.field.FieldSet;

/**
 * What a kind of mechanism takes in a spec.
 *
 * @param name as in {@code kind:}, e.g. {@code leaf-aperture}
 * @param summary one line
 * @param declared its own, without {@code kind}; asked for when a spec names the kind, since declaring takes time
 */
public record KindFields(String name, String summary, Supplier<FieldSet> declared) {
    /** Its own fields. */
    public FieldSet fields() {
        return declared.get();
    }
}
