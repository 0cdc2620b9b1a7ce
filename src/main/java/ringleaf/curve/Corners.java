// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** How two pieces meet in a corner. */
final class Corners {
    private static final double FOLDED = 1e-9;

    private Corners() {}

    /**
     * The turn of direction from {@code before} to {@code after}, rad in [-pi, pi], left positive. Where the way runs
     * back on itself the curvatures tell a tip (pi, material on the left in the fold) from a cleft (-pi).
     */
    static double turn(Segment before, Segment after) {
        Point in = before.tangentAt(1);
        Point out = after.tangentAt(0);
        double cross = in.cross(out);
        double dot = in.dot(out);
        if (dot < 0 && Math.abs(cross) < FOLDED) {
            boolean tip = -before.curvature() > after.curvature();
            double sharp = Math.abs(Math.atan2(cross, dot));
            return tip ? sharp : -sharp;
        }
        return Math.atan2(cross, dot);
    }
}
