// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import ringleaf.curve.Distances;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;

/**
 * The ring's least web and where it is, from radii alone.
 *
 * @param least mm
 * @param place in words
 */
record RingWebs(double least, String place) {
    static RingWebs of(ApertureDesign design) {
        Rim rim = design.rim();
        double slot = SlotOutline.radius(design.spec());
        double toRim = rim.floor() - rim.slotOuter();
        double toBore = rim.slotInner() - rim.opening();
        // Neighbouring slots are nearest at the centre of their inner round ends.
        double inner = rim.slotInner() + slot;
        double between = design.isLinear()
                ? betweenCurved(design)
                : 2 * inner * Math.sin(design.spec().pitch() / 2) - 2 * slot;
        if (between <= toRim && between <= toBore) {
            return new RingWebs(between, "between neighbouring slots");
        }
        return toRim <= toBore
                ? new RingWebs(toRim, "slot to rim")
                : new RingWebs(toBore, "slot to the ring's opening");
    }

    /** Curved slots can lie alongside one another anywhere, so their outlines are measured; 0 when they meet. */
    private static double betweenCurved(ApertureDesign design) {
        Contour slot = SlotOutline.of(design).contour();
        Contour next = slot.placed(Placement.turn(design.spec().pitch()));
        return Distances.between(slot, next).distance();
    }
}
