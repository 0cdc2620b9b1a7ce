// SPDX-License-Identifier: Apache-2.0
/**
 * SVG files: path data with true arcs, a small frame over Batik's DOM, and the writer of cut files. May use: draw,
 * part, curve, geom.
 */
package ringleaf.draw.svg;
