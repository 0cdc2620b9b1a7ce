// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.OptionalDouble;

/**
 * What an aperture shall do and where it must fit: the heart of a spec.
 *
 * @param clearRadius half the full opening, mm
 * @param leastRadius half the least opening, mm, at least 0
 * @param blades number of blades
 * @param thickness of a blade, mm
 * @param lap least overlap asked for, mm
 * @param outer limit on the round housing
 * @param depth greatest depth front to back, mm
 */
public record Wanted(
        double clearRadius,
        double leastRadius,
        int blades,
        double thickness,
        double lap,
        OuterLimit outer,
        OptionalDouble depth) {}
