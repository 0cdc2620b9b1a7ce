package ringleaf.tooth;

/**
 * Two pairs one after the other on a shared shaft: a first driver, a wheel and a pinion fixed to each other, and a last
 * gear. The reduction or step-up of two stages, for whoever has to reach a ratio that one stage does not.
 *
 * <p>Lengths in mm. Heights are along the axis from the lower face of the first pair; the shared pinion reaches from
 * the top of its wheel to the top of the second pair.
 *
 * @param first driver and wheel
 * @param second shared pinion and last gear
 * @param firstWidth width of the first pair's teeth
 * @param secondWidth width of the second pair's teeth
 * @param gap between the two pairs along the axis
 */
public record CompoundPair(GearPair first, GearPair second, double firstWidth, double secondWidth, double gap) {
    public CompoundPair {
        if (!(firstWidth > 0) || !(secondWidth > 0) || !(gap >= 0)) {
            throw new IllegalArgumentException(
                    "no stages of widths " + firstWidth + " and " + secondWidth + " with a gap of " + gap);
        }
    }

    /** Turns of the first driver to one of the last gear; below 1 for a step-up. */
    public double ratio() {
        double one = (double) first.gear().teeth() / first.pinion().teeth();
        return one * second.gear().teeth() / second.pinion().teeth();
    }

    /** Heights of the second pair's lower and upper face. */
    public double secondFrom() {
        return firstWidth + gap;
    }

    public double secondTo() {
        return secondFrom() + secondWidth;
    }

    /** Distance from the first axis to the last when the shared one stands at an angle, rad, between the two lines. */
    public double reach(double angle) {
        double a = first.centreDistance();
        double b = second.centreDistance();
        return Math.sqrt(a * a + b * b - 2 * a * b * Math.cos(angle));
    }

    /**
     * The angle at the shared axis, rad, with which the last axis is {@code distance} mm from the first; not a number
     * where no angle does.
     */
    public double angleFor(double distance) {
        double a = first.centreDistance();
        double b = second.centreDistance();
        return Math.acos((a * a + b * b - distance * distance) / (2 * a * b));
    }

    /**
     * The first pair that makes up the rest of a ratio before a second pair that is given, with the same rack: the
     * driver's or the wheel's teeth, whichever is fewer, are {@code least}, the ratio is reached or passed on the side
     * of more turn at the end.
     *
     * @param ratio turns of the first driver to one of the last gear, at most
     * @param module of the first pair, mm
     * @param least fewest teeth of either gear
     * @param backlash of the first pair along its line of action, mm
     * @param width of the teeth of both pairs, mm
     * @param gap between the pairs, mm
     */
    public static CompoundPair before(
            GearPair second, double ratio, double module, int least, double backlash, double width, double gap) {
        double rest = ratio * second.pinion().teeth() / second.gear().teeth();
        int driver = least;
        int wheel = (int) Math.floor(driver * rest + 1e-9);
        if (wheel < least) {
            wheel = least;
            driver = (int) Math.ceil(wheel / rest - 1e-9);
        }
        BasicRack rack = second.pinion().rack();
        double sum = Math.max(0, rack.leastShift(driver) + rack.leastShift(wheel));
        int small = Math.min(driver, wheel);
        int large = Math.max(driver, wheel);
        ShiftChoice shifts = ShiftChoice.of(rack, small, large, sum, ShiftChoice.LEAST_TIP);
        double forDriver = driver <= wheel ? shifts.pinion() : shifts.gear();
        double forWheel = driver <= wheel ? shifts.gear() : shifts.pinion();
        GearPair first = GearPair.of(
                        ToothForm.of(module, driver, forDriver, 0, rack), ToothForm.of(module, wheel, forWheel, 0, rack))
                .withTipClearance(module * rack.clearance())
                .withNormalBacklash(backlash, 0.5);
        return new CompoundPair(first, second, width, width, gap);
    }
}
