// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

/** A choice between named ways, as it stands in design.json; {@code how} says why it was taken, or is empty. */
public record Choice(String name, String value, Dimension.Origin origin, String how) {}
