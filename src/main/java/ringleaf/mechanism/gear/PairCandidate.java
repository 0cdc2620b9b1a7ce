// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import ringleaf.tooth.TeethRatio;

/**
 * Teeth and module that could make a pair.
 *
 * @param teeth of both gears
 * @param module mm
 * @param distance centre distance, mm: the one asked for, or that of unshifted teeth
 * @param length over both gears, mm
 */
record PairCandidate(TeethRatio teeth, double module, double distance, double length) {}
