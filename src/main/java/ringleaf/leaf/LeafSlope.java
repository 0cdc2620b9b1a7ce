// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

/**
 * How steeply blades of real thickness lie where they close round a small opening, and how hard that bends them.
 *
 * <p>Model: once round the opening's edge the spiral stair climbs N thicknesses, evenly with the angle about the axis.
 * A blade's edge touches the opening's circle of radius r and runs on along the tangent; at the distance x from
 * the touch the angle is atan(x/r), so the edge lies at the height k atan(x/r), k = N t/(2 pi). Its slope is
 * k r/(x² + r²), greatest k/r at the touch; its curvature 2 k x r/(x² + r²)² is greatest at x = r/sqrt(3): (3 sqrt(3)/8) k/r². The
 * outer fibre of a sheet of thickness t bent so is strained by t/2 times the curvature.
 *
 * <p>Assumed: blades free of play between each other, edges straight near the touch, bending along the edge only, and
 * one evenly rising stair; real steps are sharper where an edge ends, softer where there is play. Good for comparing
 * with a limit of common practice, not as proof of strength. Derived for this project.
 */
public final class LeafSlope {
    private LeafSlope() {}

    /** Slope of the blades at the edge of an opening of this radius (mm, above 0), rad. */
    public static double slope(int blades, double thickness, double radius) {
        return Math.atan(blades * thickness / (2 * Math.PI * radius));
    }

    /** Greatest bending strain of a blade there, 1. */
    public static double strain(int blades, double thickness, double radius) {
        double climb = blades * thickness / (2 * Math.PI);
        return thickness / 2 * 3 * Math.sqrt(3) / 8 * climb / (radius * radius);
    }

    /** Least radius of the opening at which the slope stays at or below {@code limit} rad, mm. */
    public static double leastRadiusForSlope(int blades, double thickness, double limit) {
        return blades * thickness / (2 * Math.PI * Math.tan(limit));
    }
}
