// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/** Where a point lies with respect to an outline. */
public enum Containment {
    INSIDE,
    ON,
    OUTSIDE;

    /**
     * Inside or outside of what the contour encloses, in either direction of run; {@link #ON} within
     * {@code tolerance} mm of the contour itself.
     */
    public static Containment of(Contour contour, Point p, double tolerance) {
        if (near(contour, p, tolerance)) {
            return ON;
        }
        return Winding.of(contour, p) != 0 ? INSIDE : OUTSIDE;
    }

    /** In the region, outside of it or in one of its holes; {@link #ON} within {@code tolerance} mm of a contour. */
    public static Containment of(Region region, Point p, double tolerance) {
        if (near(region.outer(), p, tolerance)) {
            return ON;
        }
        for (Contour hole : region.holes()) {
            if (near(hole, p, tolerance)) {
                return ON;
            }
        }
        return Winding.of(region, p) > 0 ? INSIDE : OUTSIDE;
    }

    private static boolean near(Contour contour, Point p, double tolerance) {
        for (Segment segment : contour.segments()) {
            if (Distances.distance(segment, p) <= tolerance) {
                return true;
            }
        }
        return false;
    }
}
