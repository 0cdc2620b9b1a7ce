// SPDX-License-Identifier: Apache-2.0
/**
 * PDF from pages: true scale, arcs as Bézier curves within a stated bound, text as strokes with unseen letters over
 * them to search and copy. Reads drawings and nothing else. May use: draw, geom, PDFBox.
 */
package ringleaf.draw.pdf;
