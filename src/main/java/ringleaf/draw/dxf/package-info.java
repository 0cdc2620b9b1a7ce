// SPDX-License-Identifier: Apache-2.0
/**
 * DXF files, by an own writer: AC1015 whole, and R12 for old readers. May use: draw, part, curve, geom.
 */
package ringleaf.draw.dxf;
