// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

/**
 * One opening measured on the finished thing.
 *
 * @param line in the file, from 1
 * @param turn of the servo from the start of the travel, rad
 * @param output measured, mm or degrees
 */
public record MeasuredPoint(int line, double turn, double output) {}
