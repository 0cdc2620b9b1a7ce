// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.Optional;

/**
 * A joint's sizes from design to workshop, mm.
 *
 * @param joint what was designed
 * @param drawn size in the cut file, with the kerf where that is in
 * @param least that is to be expected of the process
 * @param most that is to be expected of the process
 * @param leastPlay between it and its partner at their worst, negative where they hold each other
 * @param mostPlay between it and its partner
 * @param isoClass the class of ISO 286 that gives the fit, where the process keeps the size within its limits
 * @param how where the figures come from, what will happen, and what to finish by hand
 */
public record FitSize(
        FitRow joint,
        double drawn,
        double least,
        double most,
        double leastPlay,
        double mostPlay,
        Optional<IsoClass> isoClass,
        String how) {
    /**
     * A class of ISO 286 with its limits of size, mm.
     *
     * @param name e.g. {@code F8}
     */
    public record IsoClass(String name, double least, double most) {}
}
