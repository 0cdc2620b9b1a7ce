package ringleaf.part;

/**
 * A joint's sizes from design to workshop, mm.
 *
 * @param joint what was designed
 * @param drawn size in the cut file, with the kerf where that is in
 * @param least that is to be expected of the process
 * @param most that is to be expected of the process
 * @param leastPlay between it and its partner at their worst, negative where they hold each other
 * @param mostPlay between it and its partner
 * @param how where the figures come from, and what to finish by hand
 */
public record FitSize(
        Joint joint, double drawn, double least, double most, double leastPlay, double mostPlay, String how) {}
