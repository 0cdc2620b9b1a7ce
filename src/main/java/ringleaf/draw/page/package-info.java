// SPDX-License-Identifier: Apache-2.0
/**
 * Pages of paper: their size, the drawings on them, and a pen that fills a drawing's layers. May use: draw, curve,
 * geom.
 */
package ringleaf.draw.page;
