// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.List;
import java.util.Optional;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

/**
 * Outlines that the user gives; mm, in the mechanism's unmirrored frame.
 *
 * @param housing that the plates take in place of the round one
 * @param keepOuts that nothing may enter
 */
record Bezel(Optional<Own> housing, List<Region> keepOuts) {
    static final Bezel NONE = new Bezel(Optional.empty(), List.of());

    /**
     * The user's own housing.
     *
     * @param outline counter-clockwise
     * @param screws centres of the holes that take the housing's screws
     * @param screwHole their radius, mm
     * @param others other openings, but for the one round the view
     */
    record Own(Contour outline, List<Point> screws, double screwHole, List<Contour> others) {}
}
