package ringleaf.mechanism.aperture;

import java.util.OptionalDouble;

/**
 * What an aperture shall do and where it must fit: the part of a spec that a remedy may touch.
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
        OptionalDouble depth) {

    Wanted withLeastRadius(double other) {
        return new Wanted(clearRadius, other, blades, thickness, lap, outer, depth);
    }

    Wanted withBlades(int other) {
        return new Wanted(clearRadius, leastRadius, other, thickness, lap, outer, depth);
    }

    Wanted withThickness(double other) {
        return new Wanted(clearRadius, leastRadius, blades, other, lap, outer, depth);
    }

    Wanted withOuter(OuterLimit other) {
        return new Wanted(clearRadius, leastRadius, blades, thickness, lap, other, depth);
    }

    Wanted withDepth(OptionalDouble other) {
        return new Wanted(clearRadius, leastRadius, blades, thickness, lap, outer, other);
    }
}
