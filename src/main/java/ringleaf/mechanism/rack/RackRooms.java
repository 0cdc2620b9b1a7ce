package ringleaf.mechanism.rack;

import ringleaf.mechanism.Material;
import ringleaf.mechanism.RoomLaw;
import ringleaf.mechanism.SizesOff;
import ringleaf.part.Words;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;

/**
 * Clearances of a rack: as given, else the usual ones (common practice, no source), else what {@link RoomLaw} asks for
 * where the processes are coarser. Lengths in mm.
 *
 * @param stop way beyond either end of the travel to the end of a slot
 * @param axial play between the plates
 * @param slot by how much a slot is wider than its pin
 * @param stopHow where it comes from, empty where it was given
 * @param axialHow likewise
 * @param slotHow likewise
 */
record RackRooms(double stop, double axial, double slot, String stopHow, String axialHow, String slotHow) {
    private static final double STOP = 0.5;
    private static final double AXIAL = 0.15;
    /** Kept beside rack and pinion by what they do not touch; common practice, no source. */
    static final double BESIDE = 0.8;

    static RackRooms of(Values own, Material gear, Material plate, Material spacer, double width) {
        double g = gear.repeatability();
        double p = plate.repeatability();
        double[] stops = {g, p, p};
        double[] heights = {SizesOff.heightWithin(spacer, width), SizesOff.heightWithin(gear, width)};
        // Both pins in both plates: each plate's slots lie apart by themselves.
        double[] slots = {p, SizesOff.WIRE, p, g};
        Chosen stop = choose(own, RackFields.STOP, STOP, 4, stops);
        Chosen axial = choose(own, RackFields.AXIAL, AXIAL, 1, heights);
        Chosen slot = choose(own, RackFields.SLOT, plate.slotClearance(), 4, slots);
        return new RackRooms(stop.value, axial.value, slot.value, stop.how, axial.how, slot.how);
    }

    private record Chosen(double value, String how) {}

    private static Chosen choose(Values own, Field<Double> field, double usual, int copies, double... within) {
        if (own.isGiven(field)) {
            return new Chosen(own.require(field), "");
        }
        double asked = RoomLaw.room(copies, within);
        return asked > usual
                ? new Chosen(asked, RoomLaw.words(copies, within))
                : new Chosen(usual, "usual: processes ask for " + Words.mm(asked));
    }
}
