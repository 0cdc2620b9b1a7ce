// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Distances;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.machine.Joint;
import ringleaf.machine.Role;

/**
 * What is cut into a round part besides its rim.
 *
 * @param bore in the middle
 * @param axle what goes through it
 * @param screws round it
 * @param lightening between hub and rim
 */
public record Body(Bore bore, AxleFit axle, Optional<HubScrews> screws, Lightening lightening) {
    /** Radius that holds bore and hub screws, mm. */
    public double hubReach() {
        double reach = bore.reach();
        return screws.isPresent() ? Math.max(reach, screws.get().reach()) : reach;
    }

    /**
     * What stands between the cuts in the middle and a toothed contour round them, mm, exact to rounding: corners of a
     * keyway or a square often look at a tooth and not at the root circle. Where they reach the root circle, by how much
     * they are beyond it, negative.
     *
     * @param root radius of the circle that all of the contour lies outside of, mm
     * @param toothed about the origin
     */
    public double web(double root, Contour toothed) {
        double radial = root - hubReach();
        boolean round = screws.isEmpty() && (bore instanceof Bore.Round || bore instanceof Bore.Seat);
        if (radial <= 0 || bore.cuts().isEmpty() && screws.isEmpty() || round) {
            return radial;
        }
        List<Contour> cuts = new ArrayList<>(bore.cuts());
        screws.ifPresent(s -> cuts.addAll(s.cuts()));
        double least = Double.POSITIVE_INFINITY;
        for (Contour cut : cuts) {
            least = Math.min(least, Distances.between(cut, toothed).distance());
        }
        return Math.max(radial, least);
    }

    /**
     * All holes about the origin.
     *
     * @param rim radius from which the part stays whole, mm
     * @param web least material between cuts, mm
     */
    public List<Contour> cuts(double rim, double web) {
        List<Contour> cuts = new ArrayList<>(bore.cuts());
        screws.ifPresent(s -> cuts.addAll(s.cuts()));
        cuts.addAll(lightening.cuts(hub(web), rim, web));
        return cuts;
    }

    /** Radius up to which the hub stays whole, mm. */
    public double hub(double web) {
        return Math.max(hubReach() + web, 2 * web);
    }

    /**
     * The joints of bore and screw holes.
     *
     * @param part that they are cut in
     * @param on its axle
     * @param home of the part's axis, in the frame in which it is drawn
     */
    public List<Joint> joints(Role part, Role on, Placement home) {
        List<Joint> joints = new ArrayList<>(BoreJoints.of(part, on, bore, axle, home));
        screws.ifPresent(s -> joints.add(s.joint("hub-screw-hole", part, home)));
        return joints;
    }
}
