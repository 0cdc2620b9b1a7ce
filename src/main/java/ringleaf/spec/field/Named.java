// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.Optional;
import ringleaf.spec.text.Place;

/**
 * An entry of a catalogue, by its name or written out in the spec.
 *
 * @param name of the entry, when it was named
 * @param own the values, when they were written out
 * @param place for messages about it
 */
public record Named(Optional<String> name, Optional<Values> own, Place place) {}
