// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

/**
 * What the solver must find blades for. Lengths in mm, angles in rad; a value that is left open is not a number.
 *
 * @param clearRadius radius that must be clear when open and covered outside the opening ever after
 * @param leastRadius inscribed radius of the opening when closed, in [0, clearRadius)
 * @param blades N
 * @param lap overlap asked for at every state
 * @param opensBy how far the blades' inner edge stands outside the clear radius in the open pose
 * @param endClearance between the blades' greatest reach and the cavity's wall
 * @param pins what pins, holes and slots need
 * @param play what the joints leave free
 * @param given what the user has fixed
 * @param linear whether the slots shall make the opening fall evenly with the ring's turn
 * @param cavityAtMost largest cavity radius allowed, or open
 */
public record BladeNeeds(
        double clearRadius,
        double leastRadius,
        int blades,
        double lap,
        double opensBy,
        double endClearance,
        PinNeeds pins,
        Play play,
        Given given,
        boolean linear,
        double cavityAtMost) {

    public BladeNeeds {
        if (!(clearRadius > 0) || !(leastRadius >= 0) || !(leastRadius < clearRadius) || blades < 3) {
            throw new IllegalArgumentException(
                    "no aperture of " + blades + " blades from radius " + clearRadius + " to " + leastRadius);
        }
        if (!(lap >= 0) || !(opensBy >= 0) || !(endClearance >= 0)) {
            throw new IllegalArgumentException("lap and clearances are not below 0");
        }
    }

    /** The same needs with other values fixed by the user. */
    public BladeNeeds withGiven(Given other) {
        return new BladeNeeds(
                clearRadius, leastRadius, blades, lap, opensBy, endClearance, pins, play, other, linear, cavityAtMost);
    }

    /** Least width of a band that holds a pin's hole with its edges, and the plate's bore beside its opening. */
    double widthForHole() {
        return Math.max(pins.hole() + 2 * pins.edge(), pins.bore() + 2 * pins.plateWeb());
    }

    /**
     * What pins, holes and slots need, mm.
     *
     * @param diameter of both pins
     * @param hole in the blade, diameter of the larger
     * @param edge least from a hole to the blade's edge and to the next hole
     * @param bore diameter of the pivots' bores in the plate
     * @param slotWidth of the ring's slots
     * @param slotEnd free length of the slot beyond the pin at either end of the travel
     * @param web least material between slots and openings of the ring
     * @param plateWeb least material between bores and the opening of the plate that has them
     * @param ringOpening radius of the ring's own opening
     * @param pressure limit of the slot's pressure angle that is sought, rad
     * @param pressureAtMost limit that is taken when the first cannot be held, rad
     */
    public record PinNeeds(
            double diameter,
            double hole,
            double edge,
            double bore,
            double slotWidth,
            double slotEnd,
            double web,
            double plateWeb,
            double ringOpening,
            double pressure,
            double pressureAtMost) {}

    /**
     * What the user has fixed; not a number where it is open.
     *
     * @param width of the blade, mm
     * @param span rad
     * @param lever length, mm
     * @param leverAngle to the outward radial when open, rad
     */
    public record Given(double width, double span, double lever, double leverAngle) {
        /** Whether anything of a lever is fixed. */
        public boolean hasLever() {
            return !Double.isNaN(lever) || !Double.isNaN(leverAngle);
        }
    }
}
