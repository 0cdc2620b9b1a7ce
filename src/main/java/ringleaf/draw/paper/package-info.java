// SPDX-License-Identifier: Apache-2.0
/**
 * Parts at true scale on paper, to hold the real thing against: several small ones a page, large ones in tiles. May use:
 * draw, part, curve, geom.
 */
package ringleaf.draw.paper;
