package ringleaf.mechanism.aperture;

/** How far the drive pin can go in its slot: the travel, and beyond it what the stops let through. */
final class PinRange {
    private static final double STEP = 1e-5;

    private PinRange() {}

    /**
     * First and last blade angle between stops that let the ring run {@code over} rad past either end, to first order
     * in {@code over}.
     */
    static double[] blade(SlotLaw law, double closed, double over) {
        return new double[] {-over / Math.abs(law.ringRate(0)), closed + over / Math.abs(law.ringRate(closed))};
    }

    /** The same, moved on until the pin has gone {@code beyond} mm further along its slot, to first order. */
    static double[] blade(ApertureDesign design, double beyond) {
        double[] ends = blade(design.law(), design.closed(), design.rim().overTravel());
        ends[0] -= beyond / speed(design.law(), ends[0]);
        ends[1] += beyond / speed(design.law(), ends[1]);
        return ends;
    }

    /** Way of the pin along its slot for a turn of the blade, mm/rad. */
    static double speed(SlotLaw law, double b) {
        return law.pinInRing(b + STEP).distance(law.pinInRing(b - STEP)) / (2 * STEP);
    }
}
