// SPDX-License-Identifier: Apache-2.0
/**
 * The values everything is made of: points, lines, true arcs, closed contours, regions and placements.
 *
 * <p>Millimetres and radians, y up, counter-clockwise positive. Values are immutable and know their own measures
 * (length, area, box); what combines two of them lives in {@code ringleaf.curve}. May use: java.* only.
 */
package ringleaf.geom;
