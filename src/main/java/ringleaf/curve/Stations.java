// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** Where along a piece a point lies that is known to be on its carrier. */
final class Stations {
    private Stations() {}

    /**
     * The share of the length at which the foot of {@code p} lies: 0 at the start, 1 at the end, negative before the
     * start; off an arc it is counted from the nearer end.
     */
    static double share(Segment segment, Point p) {
        if (segment instanceof Arc arc) {
            double share = arc.shareOf(p.minus(arc.centre()).angle());
            double turn = Angles.TURN / Math.abs(arc.sweep());
            // the gap between the ends is split in its middle
            return share > (1 + turn) / 2 ? share - turn : share;
        }
        Point along = segment.end().minus(segment.start());
        return p.minus(segment.start()).dot(along) / along.dot(along);
    }

    /** Whether the foot of {@code p} lies on the piece, up to {@code tolerance} mm beyond its ends. */
    static boolean within(Segment segment, Point p, double tolerance) {
        double share = share(segment, p);
        double slack = tolerance / segment.length();
        return share >= -slack && share <= 1 + slack;
    }
}
