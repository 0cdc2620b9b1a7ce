// SPDX-License-Identifier: Apache-2.0
/**
 * The kind {@code rack}: a straight rack between two plates, guided by two pins in slots and moved by a pinion. May use:
 * mechanism and its bodies of round parts, part, tooth, curve, geom, spec.
 */
package ringleaf.mechanism.rack;
