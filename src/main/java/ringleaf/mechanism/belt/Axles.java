// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.Optional;
import ringleaf.spec.shared.Bearing;
import ringleaf.spec.shared.FitName;

/**
 * How axles sit in the plates.
 *
 * @param fit of an axle in its hole, by name
 * @param play added to its diameter for that, mm
 * @param seat of the ball bearings in which the driven pulley's axle turns, where there are any
 */
record Axles(FitName fit, double play, Optional<Seat> seat) {
    /**
     * A bearing in each plate.
     *
     * @param fit of the bearing in the plate
     * @param diameter of the hole for it, mm
     */
    record Seat(Bearing bearing, FitName fit, double diameter) {}

    /** Radius of the hole in a plate for an axle of this diameter, mm. */
    double hole(double axle) {
        return (axle + play) / 2;
    }

    /** The same for the driven pulley's axle, or its bearing. */
    double drivenHole(double axle) {
        return seat.isPresent() ? seat.get().diameter() / 2 : hole(axle);
    }
}
