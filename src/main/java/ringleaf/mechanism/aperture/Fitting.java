// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

/**
 * The fits by name.
 *
 * @param pivotBore of the pivot pins in what they turn in
 * @param slot of the drive pins in the ring's slots
 * @param pinHole of the pins in the holes they are set into
 * @param pinAllowance added to the diameter of those holes, mm
 */
public record Fitting(String pivotBore, String slot, String pinHole, double pinAllowance) {}
