// SPDX-License-Identifier: Apache-2.0
package ringleaf.linkage;

/**
 * Something that slides on round rods. Lengths in mm, forces in N, E in N/mm^2.
 *
 * @param spacing between the outer ends of what bears it on a rod
 * @param friction coefficient between bearing and rod
 */
public record RodGuide(double spacing, double friction) {
    /**
     * 2 mu e / L: where it reaches 1 no force pushes the slide, however great. Textbook statics of a sleeve that is
     * pushed beside its middle.
     *
     * @param offset of the pushing force from the rods
     */
    public double jamming(double offset) {
        return 2 * friction * Math.abs(offset) / spacing;
    }

    /** The offset at which it jams. */
    public double jamsBeyond() {
        return spacing / (2 * friction);
    }

    /**
     * How far a round rod bends under a force at its middle, both ends held in seats that do not turn it back: F L^3 /
     * (48 E I), I = pi d^4 / 64. Handbook beam table, simply supported; from memory.
     */
    public static double sag(double force, double span, double diameter, double modulus) {
        double inertia = Math.PI * Math.pow(diameter, 4) / 64;
        return force * span * span * span / (48 * modulus * inertia);
    }
}
