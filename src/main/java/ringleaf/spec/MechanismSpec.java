// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import ringleaf.spec.field.Values;
import ringleaf.spec.text.Place;

/**
 * One mechanism as the user asked for it.
 *
 * @param name lower-case letters, digits and hyphens
 * @param kind what it is, with the fields the values were read by
 * @param values its fields
 * @param standing where it stands in space
 * @param place of its name
 */
public record MechanismSpec(String name, KindFields kind, Values values, PlaceSpec standing, Place place) {}
