// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

/**
 * One row of a servo table.
 *
 * @param output in whole hundredths of a mm or a degree
 * @param turn of the servo from the start of the travel, rad
 * @param pulse width in whole tenths of a microsecond
 * @param error greatest error of the output, interpolated between this row and the next, mm or degrees; 0 in the last
 */
public record TableRow(long output, double turn, int pulse, double error) {}
