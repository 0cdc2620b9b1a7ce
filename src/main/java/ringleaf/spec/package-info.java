// SPDX-License-Identifier: Apache-2.0
/**
 * The spec as a document: title, units, fabrication and mechanisms, read against the kinds that are registered.
 *
 * <p>{@code spec.text} knows where things stand, {@code spec.field} declares and reads fields, {@code spec.shared}
 * holds the catalogues; this package knows what a whole document holds, lays options over it and writes its JSON
 * Schema. It knows no concrete kind of mechanism. May use: geom and its own sub-packages.
 */
package ringleaf.spec;
