// SPDX-License-Identifier: Apache-2.0
package ringleaf.linkage;

/**
 * A horn turns about the origin and pushes something along a line parallel to x by a rod. Angles in rad,
 * counter-clockwise from x; lengths in mm.
 *
 * @param crank from the horn's axis to its pin, above 0
 * @param rod from pin to pin, above 0
 * @param offset how far the line lies above the horn's axis
 */
public record SliderCrank(double crank, double rod, double offset) {
    /**
     * How far along the line the rod's far pin stands: r cos q + sqrt(l^2 - (r sin q - e)^2), the root away from the
     * horn. Not a number where the rod cannot reach. Source: textbook kinematics of the offset slider-crank.
     */
    public double position(double angle) {
        double across = across(angle);
        return crank * Math.cos(angle) + Math.sqrt(rod * rod - across * across);
    }

    /** Change of the position per turn of the horn, mm per rad; the lever arm of the torque by virtual work. */
    public double speed(double angle) {
        double across = across(angle);
        double along = Math.sqrt(rod * rod - across * across);
        return -crank * Math.sin(angle) - across * crank * Math.cos(angle) / along;
    }

    /** Between the rod and the line, rad, 0 when parallel; what presses the slide sideways is its tangent. */
    public double slant(double angle) {
        return Math.asin(across(angle) / rod);
    }

    private double across(double angle) {
        return crank * Math.sin(angle) - offset;
    }
}
