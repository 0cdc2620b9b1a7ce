// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import ringleaf.geom.Point;

/** How far the drive pin can go in its slot: the travel, and beyond it what the stops let through. */
public final class PinRange {
    private static final double STEP = 1e-5;
    private static final int SAMPLES = 200;

    private PinRange() {}

    /**
     * First and last blade angle between stops that let the ring run {@code over} rad past either end, to first order
     * in {@code over}.
     */
    public static double[] blade(SlotLaw law, double closed, double over) {
        return new double[] {-over / Math.abs(law.ringRate(0)), closed + over / Math.abs(law.ringRate(closed))};
    }

    /** Least radius of curvature of the pin's path in the ring over the travel, mm, from neighbouring tangents. */
    public static double leastRadius(SlotLaw law, double closed) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < SAMPLES; i++) {
            double b = closed * i / SAMPLES;
            double next = closed * (i + 1) / SAMPLES;
            Point from = law.slotTangent(b);
            Point to = law.slotTangent(next);
            double turn = Math.atan2(Math.abs(from.cross(to)), from.dot(to));
            double way = law.pinInRing(b).distance(law.pinInRing(next));
            least = Math.min(least, turn < 1e-12 ? Double.POSITIVE_INFINITY : way / turn);
        }
        return least;
    }

    /** Way of the pin along its slot for a turn of the blade, mm/rad. */
    public static double speed(SlotLaw law, double b) {
        return law.pinInRing(b + STEP).distance(law.pinInRing(b - STEP)) / (2 * STEP);
    }
}
