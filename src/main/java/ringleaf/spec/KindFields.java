package ringleaf.spec;

import ringleaf.spec.field.FieldSet;

/**
 * What a kind of mechanism takes in a spec.
 *
 * @param name as in {@code kind:}, e.g. {@code leaf-aperture}
 * @param summary one line
 * @param fields its own, without {@code kind}
 */
public record KindFields(String name, String summary, FieldSet fields) {}
