// SPDX-License-Identifier: Apache-2.0
/**
 * What is handed over besides outlines: design.json, tables, findings in words, and the set of files of a run. Nothing
 * here touches a disk. May use: draw, verify, part, geom.
 */
package ringleaf.report;
