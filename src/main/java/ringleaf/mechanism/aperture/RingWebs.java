package ringleaf.mechanism.aperture;

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
        double between = 2 * inner * Math.sin(design.spec().pitch() / 2) - 2 * slot;
        if (between <= toRim && between <= toBore) {
            return new RingWebs(between, "between neighbouring slots");
        }
        return toRim <= toBore
                ? new RingWebs(toRim, "slot to rim")
                : new RingWebs(toBore, "slot to the ring's opening");
    }
}
