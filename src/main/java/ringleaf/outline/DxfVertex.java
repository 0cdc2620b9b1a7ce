// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import ringleaf.geom.Point;

/**
 * A corner of a polyline.
 *
 * @param bulge of the piece to the next corner, 0 for a line
 */
record DxfVertex(Point point, double bulge) {}
