package ringleaf.mechanism.aperture;

import ringleaf.geom.Point;

/** How far the drive pin can go in its slot: the travel, and beyond it what the stops let through. */
final class PinRange {
    private static final double STEP = 1e-5;
    private static final int SAMPLES = 200;

    private PinRange() {}

    /**
     * First and last blade angle between stops that let the ring run {@code over} rad past either end, to first order
     * in {@code over}.
     */
    static double[] blade(SlotLaw law, double closed, double over) {
        return new double[] {-over / Math.abs(law.ringRate(0)), closed + over / Math.abs(law.ringRate(closed))};
    }

    /**
     * How far a curved slot runs straight on past the pin's place in the open pose and past that in the closed one, mm:
     * what the stops let through, to first order, and the end clearance.
     */
    static double[] runOut(ApertureDesign design) {
        double[] between = blade(design.law(), design.closed(), design.rim().overTravel());
        double clearance = design.spec().clearances().slotEnd();
        return new double[] {
            -between[0] * speed(design.law(), 0) + clearance,
            (between[1] - design.closed()) * speed(design.law(), design.closed()) + clearance
        };
    }

    /** Least radius of curvature of the pin's path in the ring over the travel, mm, from neighbouring tangents. */
    static double leastRadius(SlotLaw law, double closed) {
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
    static double speed(SlotLaw law, double b) {
        return law.pinInRing(b + STEP).distance(law.pinInRing(b - STEP)) / (2 * STEP);
    }
}
