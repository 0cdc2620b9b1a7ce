// SPDX-License-Identifier: Apache-2.0
/**
 * report.html: one self-contained page of a run, with the mechanism to look at and to move, what was found, sizes,
 * charts, parts, build order and cautions. Nothing here touches a disk. May use: report, draw, part, geom.
 */
package ringleaf.report.page;
