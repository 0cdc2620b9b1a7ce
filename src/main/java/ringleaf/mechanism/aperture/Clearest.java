// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.List;
import ringleaf.leaf.Sweep;

/**
 * The least clearance at one state over the pairs that are meant to stay apart, calculated: blades and cavity
 * wall, drive pin and slot ends, and what stops the ring. What guides (rim and wall, pin and bore, the flanks of a
 * mesh) has checks of its own.
 *
 * @param distance mm
 * @param parts ids of the two
 * @param pair what of them, in words
 */
record Clearest(double distance, List<String> parts, String pair) {
    static Clearest at(ApertureDesign design, Sweep sweep, int state) {
        double wall = design.rim().cavity() - sweep.reach[state];
        double slot = SlotRoom.at(design, sweep.bladeAngle[state]);
        double stop = stop(design, Math.abs(sweep.ringAngle[state]));
        if (wall <= slot && wall <= stop) {
            return new Clearest(wall, List.of("blade", "spacer-ring"), "blade and cavity wall");
        }
        if (slot <= stop) {
            return new Clearest(slot, List.of("drive-pin", "drive-ring"), "drive pin and slot end");
        }
        String name = design.drive() instanceof HandPlan ? "arm and window" : "stop notch and tab";
        return new Clearest(stop, List.of("drive-ring", "spacer-ring"), name);
    }

    /** Way left to the stop at either end of the travel, mm. */
    static double stopAtEnd(ApertureDesign design) {
        return stop(design, 0);
    }

    /** Way left to the nearer stop, mm: straight between the two flat faces at the radius where they are nearest. */
    private static double stop(ApertureDesign design, double turned) {
        Rim rim = design.rim();
        double before = turned + rim.overTravel();
        double after = Math.abs(design.travel()) - turned + rim.overTravel();
        double angle = Math.min(before, after);
        if (design.drive() instanceof HandPlan) {
            // Between two lines at half the arm's width from the axis the gap at radius R is smallest where the wall
            // begins: R sin(angle) - h (1 - cos(angle)), h being the half width.
            double along = Math.sqrt(rim.wall() * rim.wall() - sq(halfWidth(design)));
            return along * Math.sin(angle) - halfWidth(design) * (1 - Math.cos(angle));
        }
        return rim.tabInner() * Math.sin(Math.min(angle, Math.PI / 2));
    }

    private static double halfWidth(ApertureDesign design) {
        return design.handPlan().orElseThrow().halfWidth();
    }

    private static double sq(double x) {
        return x * x;
    }
}
