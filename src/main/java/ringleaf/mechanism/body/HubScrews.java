// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.part.Joint;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Screw;

/**
 * Screws round the axis that hold a part to a hub, a plate or another part.
 *
 * @param screw of the catalogue
 * @param count evenly spread
 * @param circle diameter on which they stand, mm
 */
public record HubScrews(Screw screw, int count, double circle) {
    /** Their clearance holes, the first between +x and the next, so that a keyway on +x stays clear of them. */
    public List<Contour> cuts() {
        return Bore.circle(count, circle / 2, screw.hole() / 2, Math.PI / count);
    }

    /** Their holes in a part, with their fit. */
    public Joint joint(String name, String part) {
        return new Joint(
                name,
                part,
                Joint.Shape.HOLE,
                FitName.THREAD_CLEARANCE.label(),
                screw.thread(),
                screw.hole(),
                count,
                screw.holeBasis());
    }

    /** Radius that holds them all. */
    public double reach() {
        return circle / 2 + screw.hole() / 2;
    }

    /** Radius inside which nothing of them is cut. */
    public double inner() {
        return circle / 2 - screw.hole() / 2;
    }
}
