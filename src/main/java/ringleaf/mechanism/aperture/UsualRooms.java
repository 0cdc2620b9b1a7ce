// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.machine.Fit;
import ringleaf.machine.Room;
import ringleaf.machine.RoomLaw;
import ringleaf.machine.Size;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.SizesOff;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.FitName;

/**
 * The clearances: those of the spec, else the usual ones (common practice, no source), else, where the processes of the
 * parts that meet are coarser, what {@link RoomLaw} asks for. The sizes that count are those that are off in the
 * study of yield. Lengths in mm.
 */
final class UsualRooms {
    static final double OPENING = 0.15;
    static final double BLADE = 0.3;
    static final double SLOT_END = 0.3;
    static final double RING_RADIAL = 0.15;
    static final double RING_AXIAL = 0.15;
    static final double BLADE_PLAY = 0.3;
    static final double PINION = 0.5;
    static final double PINION_AXIAL = 0.15;
    static final double PIN_END = 0.1;
    static final double STOP = 0.4;
    /** A fit asked for by name, and what the process adds for it, mm. */
    record Listed(FitName name, double mm) {}

    /** The fits of pivots and slots, and that of pins in the holes that they are set into. */
    record Asked(Listed pivot, Listed slot, Fit set) {}

    /** Base and retainer. */
    private static final int PLATES = 2;

    /** Tilt of a pin in its bore is allowed for in steps, so that designs of like thickness keep their blades. */
    private static final double TILT_STEP = 0.05;
    /** Most blades over one point as a share of all; found on designs of 5 to 40 blades to be at most about this. */
    private static final double LAYERS = 0.6;

    private final Values own;
    private final int blades;
    private final double thickness;
    private final double pin;
    private final double clearRadius;
    private final PinStyle style;
    private final Material blade;
    private final Material plate;
    private final Material ring;
    private final Material spacer;
    private final Material gear;
    private final List<Room> rooms = new ArrayList<>();

    /**
     * @param own clearances of the spec, or null
     * @param thickness of a blade
     * @param pin diameter
     */
    UsualRooms(
            Values own,
            int blades,
            double thickness,
            double pin,
            double clearRadius,
            PinStyle style,
            Material blade,
            Material plate,
            Material ring,
            Material spacer,
            Material gear) {
        this.own = own;
        this.blades = blades;
        this.thickness = thickness;
        this.pin = pin;
        this.clearRadius = clearRadius;
        this.style = style;
        this.blade = blade;
        this.plate = plate;
        this.ring = ring;
        this.spacer = spacer;
        this.gear = gear;
    }

    /**
     * All of them.
     *
     * @param asked the fits by name
     */
    Clearances all(Asked asked) {
        Size bore = plate.width("pivot-bore-diameter", "diameter of the pivot bore", blades);
        Size slot = ring.width("slot-width", "width of the slot", blades);
        double b = blade.repeatability();
        double p = plate.repeatability();
        double r = ring.repeatability();
        double s = spacer.repeatability();
        double wall = height(spacer, wall());
        return new Clearances(
                opening(b, p, r),
                room(ApertureFields.BLADE_ROOM, BLADE, blades, b, p, s),
                room(ApertureFields.SLOT_END, SLOT_END, 2 * blades, b, p, r),
                room(ApertureFields.RING_RADIAL, RING_RADIAL, 1, s, r),
                room(ApertureFields.RING_AXIAL, RING_AXIAL, 1, wall, height(ring, ring.thickness())),
                room(
                        ApertureFields.BLADE_PLAY,
                        BLADE_PLAY,
                        1,
                        height(spacer, cavity()),
                        layers() * height(blade, thickness)),
                room(ApertureFields.PINION_ROOM, PINION, 1, s, gear.repeatability(), p),
                room(ApertureFields.PINION_AXIAL, PINION_AXIAL, 1, wall, height(gear, gear.thickness())),
                room(ApertureFields.PIVOT_END, PIN_END, 1, SizesOff.FILED),
                room(ApertureFields.DRIVE_END, PIN_END, 1, SizesOff.FILED, wall),
                room(ApertureFields.STOP, STOP, blades, b, p, r),
                moving(asked.pivot(), ApertureFields.BORE, tilt(), bore, pivotPin()),
                moving(asked.slot(), ApertureFields.SLOT_ROOM, 0, slot, wire("drive-pin-diameter", "drive pins")),
                asked.set(),
                rooms);
    }

    /** Of blades on their pivots, or of base and retainer, or of the ring, whichever asks for most. */
    private double opening(double blade, double plate, double ring) {
        double[] alike = {blade, plate};
        int copies = blades;
        if (RoomLaw.room(PLATES, plate) > RoomLaw.room(copies, alike)) {
            alike = new double[] {plate};
            copies = PLATES;
        }
        if (RoomLaw.room(1, ring) > RoomLaw.room(copies, alike)) {
            alike = new double[] {ring};
            copies = 1;
        }
        return room(ApertureFields.OPENING_ROOM, OPENING, copies, alike);
    }

    /** Height of the cavity, as near as it is known before blades are solved: whole sheets, or what they ask for. */
    private double cavity() {
        double need = layers() * (thickness + blade.burr()) + BLADE_PLAY;
        return spacer.sheet() ? sheets(need) : need;
    }

    /** Height of the wall round the ring likewise; a printed ring grows with the cavity that its pins reach through. */
    private double wall() {
        double hold = Math.min(pin, plate.thickness()) / 2 + PIN_END;
        double high = ring.sheet() ? ring.thickness() : Math.max(ring.thickness(), cavity() + hold);
        return spacer.sheet() ? sheets(high + RING_AXIAL) : high;
    }

    private double sheets(double need) {
        return Math.ceil(need / spacer.thickness() - 1e-9) * spacer.thickness();
    }

    private double room(Field<Double> field, double usual, int copies, double... within) {
        Room room = Room.of(field.name(), given(field), usual, copies, within);
        rooms.add(room);
        return room.mm();
    }

    private Fit moving(Listed fit, Field<Double> field, double extra, Size hole, Size of) {
        Fit moving = Fit.moving(
                fit.name(), pin, field.name(), given(field), fit.mm(), extra, "for the pin's tilt", hole, of);
        rooms.add(moving.room());
        return moving;
    }

    private Optional<Double> given(Field<Double> field) {
        return own == null ? Optional.empty() : own.given(field);
    }

    private static double height(Material made, double nominal) {
        return SizesOff.heightWithin(made, nominal);
    }

    private double layers() {
        return Math.ceil(LAYERS * blades);
    }

    private Size pivotPin() {
        String name = "pivot-pin-diameter";
        String what = "pivot pins";
        return switch (style) {
            case ONE_GLUED -> blade.width(name, what, blades);
            case BASE_POSTS -> plate.width(name, what, blades);
            case TWO_HOLES -> wire(name, what);
        };
    }

    private static Size wire(String name, String what) {
        return new Size(name, what, 1, SizesOff.WIRE, "drawn wire, common practice");
    }

    /** Upper bound of what a pivot pin needs in its bore as it leans with its blade. */
    private double tilt() {
        double each = thickness + blade.burr();
        double length = Math.min(pin, plate.thickness()) + layers() * each;
        if (style == PinStyle.BASE_POSTS) {
            length = thickness;
        } else if (plate.sheet()) {
            length = Math.min(length, plate.thickness());
        }
        double needed = length * blades * each / (2 * Math.PI * clearRadius);
        return Math.ceil(needed / TILT_STEP - 1e-9) * TILT_STEP;
    }
}
