// SPDX-License-Identifier: Apache-2.0
/**
 * Tables for the firmware of a servo: spacing, text as CSV and as a C header, and their fit to what was measured on the
 * finished thing. May use: mechanism, spec, part, draw, geom, Commons Math.
 */
package ringleaf.firmware;
