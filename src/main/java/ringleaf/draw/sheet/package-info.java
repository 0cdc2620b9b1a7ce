// SPDX-License-Identifier: Apache-2.0
/**
 * Dimensioned drawings of parts. Features are found on the outlines (circles, patterns, slots, radii, teeth) with no
 * knowledge of mechanisms; what a mechanism states comes as tables. Text is placed where it overlaps nothing. May use:
 * draw, part, curve, geom.
 */
package ringleaf.draw.sheet;
