// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import ringleaf.leaf.PinRange;

/** Room between a drive pin and the ends of its slot. */
final class SlotRoom {
    private SlotRoom() {}

    /** Least distance from the pin's edge to the nearer end of the slot at a blade angle, mm, along the slot. */
    static double at(ApertureDesign design, double b) {
        double pin = design.spec().pinDiameter() / 2;
        if (design.isLinear()) {
            double[] runOut = SlotOutline.runOut(design);
            double toNear = along(design, 0, b) + runOut[0];
            double toFar = along(design, b, design.closed()) + runOut[1];
            return Math.min(toNear, toFar) + SlotOutline.radius(design.spec()) - pin;
        }
        double radius = design.band().pinRadius(design.pin(), b);
        return Math.min(radius - pin - design.rim().slotInner(), design.rim().slotOuter() - pin - radius);
    }

    /** Length of the pin's path in the ring between two blade angles, by Simpson's rule on 16 pieces, mm. */
    private static double along(ApertureDesign design, double from, double to) {
        int pieces = 16;
        double h = (to - from) / pieces;
        double sum = 0;
        for (int i = 0; i <= pieces; i++) {
            double weight = i == 0 || i == pieces ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * PinRange.speed(design.law(), from + i * h);
        }
        return sum * h / 3;
    }
}
