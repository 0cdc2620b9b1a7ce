// SPDX-License-Identifier: Apache-2.0
/**
 * Outlines that a user drew elsewhere: texts of DXF and SVG read strictly into lines and true arcs in mm, joined into
 * closed contours. May use geom, curve, spec and the platform's XML reader; what it does not know it refuses with its
 * place. Reads texts, never files.
 */
package ringleaf.outline;
