// SPDX-License-Identifier: Apache-2.0
/**
 * From nominal outlines to what a machine is given: kerf, tabs, expected sizes of fits, and sheets on which parts are
 * nested. May use: part, curve, geom, spec.
 */
package ringleaf.fabricate;
