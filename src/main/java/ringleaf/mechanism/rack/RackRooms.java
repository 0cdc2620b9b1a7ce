// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.Optional;
import ringleaf.machine.Fit;
import ringleaf.machine.Room;
import ringleaf.machine.Size;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.SizesOff;
import ringleaf.mechanism.TipRoom;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.FitName;
import ringleaf.tooth.BasicRack;

/**
 * Clearances of a rack by the law that all kinds follow; the sizes that count are those of {@link RackBuilt}. Lengths in
 * mm.
 *
 * @param stop way beyond either end of the travel to the end of a slot
 * @param axial play between the plates
 * @param slot by how much a slot is wider than its pin
 * @param gear what rack and pinion are made of
 * @param plate what places axis and slots
 */
record RackRooms(Room stop, Room axial, Room slot, Material gear, Material plate) {
    private static final double STOP = 0.5;
    private static final double AXIAL = 0.15;
    /** Play that is left when the guide has taken its part; common practice, no source. */
    private static final double PLAY = 0.05;
    /** Kept beside rack and pinion by what they do not touch; common practice, no source. */
    static final double BESIDE = 0.8;
    /** Each pin in the slot of each plate. */
    private static final int SLIDES = 4;

    private static final int PLATES = 2;
    private static final int PINS = 2;

    static RackRooms of(Values own, Material gear, Material plate, Material spacer, double width) {
        double g = gear.repeatability();
        double p = plate.repeatability();
        double between = SizesOff.heightWithin(spacer, width);
        double thick = SizesOff.heightWithin(gear, width);
        return new RackRooms(
                Room.of("stop", own.given(RackFields.STOP), STOP, SLIDES, g, p, p),
                Room.of("axial", own.given(RackFields.AXIAL), AXIAL, 1, between, thick),
                Room.of("slot", own.given(RackFields.SLOT), plate.slotClearance(), SLIDES, p, SizesOff.WIRE, p, g),
                gear,
                plate);
    }

    /** How a guide pin of a diameter slides in its slots. */
    Fit guide(double pin) {
        Size slots = plate.width("slot-width", "width of the slots", PLATES);
        Size pins =
                new Size("pin-diameter", "diameter of the guide pins", PINS, SizesOff.WIRE, "drawn, common practice");
        return new Fit(FitName.SLIDING, pin, slot, Optional.of(slots), Optional.of(pins), slot.how());
    }

    /** How far the rack leans to either side of its guide. */
    double lean() {
        return slot.mm() / 2;
    }

    /** Play along the rack: its lean takes 2 e tan a of it, and teeth, axis and pins are off in size and place. */
    Room backlash(Optional<Double> given, BasicRack rack) {
        double slant = 2 * Math.tan(rack.pressureAngle());
        double leans = slant * lean();
        double g = gear.repeatability();
        return Room.of(
                "backlash",
                given,
                leans + PLAY,
                leans,
                "that the guide's play takes",
                1,
                g,
                g,
                slant * plate.repeatability(),
                slant * g);
    }

    /** From tips to roots: a quarter of the module, or more where the rack leans and tips, roots and places are off. */
    Room tips(double module, BasicRack rack) {
        double g = gear.repeatability();
        return Room.of(
                "tip-clearance",
                Optional.empty(),
                module * rack.clearance(),
                lean(),
                "that the guide's play takes",
                TipRoom.TIPS,
                g,
                g,
                g,
                plate.repeatability());
    }
}
