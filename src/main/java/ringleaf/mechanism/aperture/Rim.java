// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

/**
 * The radii of ring and housing about the axis, mm.
 *
 * @param opening of base, ring and retainer
 * @param cavity inner radius of the ledge, outside everything the blades reach
 * @param slotInner inner end of a radial slot, its round end included
 * @param slotOuter outer end likewise
 * @param floor of the tooth spaces and of the stop notch; equals {@code rim} for a ring turned by hand
 * @param rim of the ring; the teeth's tips end on it
 * @param wall in which the rim turns
 * @param screws radius of the circle of the housing's screws
 * @param outer of the round housing
 * @param overTravel how far the stops let the ring run past either end of its travel, rad
 * @param binding what decided the rim: {@code slots}, {@code ledge} or {@code pinion}
 */
record Rim(
        double opening,
        double cavity,
        double slotInner,
        double slotOuter,
        double floor,
        double rim,
        double wall,
        double screws,
        double outer,
        double overTravel,
        String binding) {

    /** The stops never let the ring run further past its end than this, rad. */
    static final double MOST_OVER_TRAVEL = Math.toRadians(1.5);

    /** Wall of the housing: a screw's hole and the least web on both of its sides. */
    static double wallWidth(ApertureSpec spec) {
        return spec.screw().hole() + 2 * housingWeb(spec);
    }

    static double housingWeb(ApertureSpec spec) {
        return Math.max(spec.plate().leastWeb(), spec.spacer().leastWeb());
    }

    /** Least rim radius for the slots and the ledge, without teeth. */
    static double leastPlainRim(ApertureSpec spec, double cavity, double slotOuter) {
        return Math.max(slotOuter + spec.ring().leastWeb(), cavity + spec.ledge());
    }

    double play() {
        return wall - rim;
    }

    double tabInner() {
        return floor + Math.max(2 * play(), 0.3);
    }
}
