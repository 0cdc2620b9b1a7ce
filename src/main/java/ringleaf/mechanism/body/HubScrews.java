// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.machine.Fit;
import ringleaf.machine.Joint;
import ringleaf.machine.Joint.Held;
import ringleaf.machine.Role;
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

    /** They in their holes in a part whose axis is at home there. */
    public Joint joint(String name, Role part, Placement home) {
        Fit fit = Fit.still(FitName.THREAD_CLEARANCE, screw.thread(), screw.hole(), screw.holeBasis());
        List<Point> at = Bore.places(count, circle / 2, Math.PI / count).stream()
                .map(home::apply)
                .toList();
        return new Joint.Screwed(
                "screw-holes",
                new Held<>(Bought.SCREW, fit.pin("screw", at)),
                new Held<>(part, fit.bore(name, at)),
                fit,
                true);
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
