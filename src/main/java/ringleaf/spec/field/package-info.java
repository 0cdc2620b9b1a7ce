// SPDX-License-Identifier: Apache-2.0
/**
 * Fields of a spec, each declared once, and the values read by them.
 *
 * <p>From one declaration come the reading of values, the messages about wrong ones, the JSON Schema, the help and the
 * page of defaults. A kind of mechanism declares its fields like this:
 *
 * <pre>{@code
 * static final Field<Integer> BLADES = Field.count("blades")
 *         .help("number of blades")
 *         .atLeast(3, "two blades cannot close a round opening")
 *         .atMost(64, "more than 64 blades make a stack that no bezel holds")
 *         .required()
 *         .example("14");
 * static final Field<Bound> OUTER = Field.length("outer-diameter").help("round housing").bound()
 *         .byDefaultWords("solved: the smallest that works");
 * static final Field<String> BY = Field.choice("by").help("what turns the ring")
 *         .option("pinion", "a pinion on a servo").option("hand", "an arm on the ring").byDefault("pinion");
 * static final Field<Values> DRIVE = Field.group("drive", FieldSet.of(BY, AT)).help("how the ring is turned");
 * static final FieldSet FIELDS = FieldSet.of(BLADES, OUTER, DRIVE);
 *
 * int blades = values.require(BLADES);
 * Optional<Bound> outer = values.given(OUTER);
 * if (contradiction) {
 *     problems.at(values.where(BLADES), "16 blades of this width do not fit", "take 14");
 * }
 * }</pre>
 *
 * <p>Lengths come out in millimetres, angles in radians, torques in newton millimetres; ranges are declared in
 * millimetres, degrees and newton millimetres. May use: spec.text, java.*.
 */
package ringleaf.spec.field;
