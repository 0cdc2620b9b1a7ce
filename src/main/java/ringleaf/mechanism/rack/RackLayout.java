package ringleaf.mechanism.rack;

import ringleaf.geom.Placement;
import ringleaf.mechanism.RoomLaw;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.RackOutline;
import ringleaf.tooth.RackPair;
import ringleaf.tooth.ShiftChoice;
import ringleaf.tooth.ToothForm;

/**
 * A rack and its pinion with all sizes; mm and rad. The pinion's axis is the origin; the rack lies below it with its
 * teeth towards +y and moves towards +x while the pinion turns counter-clockwise.
 *
 * <p>Relations of the mesh: {@link RackPair}. A turn q of the pinion moves the rack by r q, r its reference radius,
 * whatever the profile shift, as the rack's pitch line is where its pitch is that of the pinion's reference circle.
 *
 * @param spec what was asked
 * @param pair pinion and rack
 * @param backlash along the rack, half of it taken from each
 * @param stroke of the rack
 * @param rackTeeth cut into the bar
 * @param length of the bar, without its eye
 * @param pin diameter of the guide pins
 * @param pinDepth of the guide pins' row below the rack's datum line
 * @param back of the bar below the datum line
 * @param eyeReach from the end of the bar to the middle of its eye, 0 without one
 */
record RackLayout(
        RackSpec spec,
        RackPair pair,
        double backlash,
        double stroke,
        int rackTeeth,
        double length,
        double pin,
        double pinDepth,
        double back,
        double eyeReach) {
    /** Fewer teeth turn a rack roughly: common practice, no source. */
    static final int LEAST_TEETH = 10;
    /** Play that is left when the guide has taken its part; common practice, no source. */
    private static final double PLAY = 0.05;

    /**
     * The layout for these teeth and pins.
     *
     * @throws IllegalArgumentException where such teeth cannot be made
     */
    static RackLayout of(RackSpec spec, double module, int teeth, double pin) {
        double backlash = spec.backlash().orElse(usualBacklash(spec));
        double shift = spec.shift().orElse(ShiftChoice.forPinion(spec.rack(), teeth));
        ToothForm form = ToothForm.of(module, teeth, shift, backlash / 2, spec.rack());
        if (spec.shift().isEmpty()) {
            form = form.withLeastTipThickness(ShiftChoice.LEAST_TIP * module);
        }
        RackPair pair = roomy(form, tipRoom(spec));
        // refuses teeth of the rack that come to a point
        RackOutline outline = outline(spec, pair, backlash);
        double margin = margin(spec, pair);
        double pitch = Math.PI * outline.module();
        double stroke = stroke(spec, form, pitch, margin);
        double most = spec.length().orElse(Double.POSITIVE_INFINITY);
        int needed = (int) Math.ceil((stroke + 2 * margin) / pitch + 0.5 - 1e-9);
        double hole = pin + spec.pinAllowance();
        double edge = hole / 2 + spec.gear().holeEdge(hole);
        // The pins' slots must not meet the hole for the servo's horn, and each pin has its own end of the bar.
        double depth = Math.max(spec.rack().dedendum() * module + edge, besideServo(spec, pair, pin));
        double leastLength = Math.max(needed * pitch, 4 * edge + pin);
        double length = spec.length().orElse(leastLength);
        int cut = (int) Math.floor(Math.min(length, most) / pitch + 1e-9);
        return new RackLayout(
                spec,
                pair,
                backlash,
                stroke,
                Math.max(1, Math.min(needed, cut)),
                length,
                pin,
                depth,
                depth + edge,
                eyeReach(spec, length));
    }

    /** Tips are lowered where roots would leave them less room than this, mm. */
    private static RackPair roomy(ToothForm full, double room) {
        RackPair pair = RackPair.of(full);
        double dedendum = full.rack().dedendum() * full.module();
        double tip = Math.min(full.tipRadius(), pair.mountingDistance() + dedendum - room);
        double addendum = Math.min(pair.rackAddendum(), pair.mountingDistance() - full.rootRadius() - room);
        return new RackPair(full.withTipRadius(tip), addendum);
    }

    /** Room at the tips that the rack's lean takes and that the processes ask for, mm. */
    private static double tipRoom(RackSpec spec) {
        double g = spec.gear().repeatability();
        return spec.rooms().slot() / 2 + RoomLaw.room(1, g, g, g, spec.plate().repeatability());
    }

    private static RackOutline outline(RackSpec spec, RackPair pair, double backlash) {
        BasicRack full = spec.rack();
        double module = pair.pinion().module();
        BasicRack cut = new BasicRack(
                full.pressureAngle(), pair.rackAddendum() / module, full.dedendum(), full.rounding());
        return new RackOutline(module, cut, backlash / 2);
    }

    /** The rack's teeth. */
    RackOutline outline() {
        return outline(spec, pair, backlash);
    }

    /**
     * Half the way along the rack in which teeth can meet, the reserve before the stop and the spare teeth: what of
     * the toothed length lies beyond the stroke at either end.
     */
    private static double margin(RackSpec spec, RackPair pair) {
        return meeting(pair) + spec.rooms().stop() + spec.spare() * Math.PI * pair.pinion().module();
    }

    /** To either side of the axis, how far along the rack its teeth can come within the pinion's tip circle, mm. */
    static double meeting(RackPair pair) {
        double tip = pair.pinion().tipRadius();
        double height = pair.mountingDistance() - pair.rackAddendum();
        return Math.sqrt(Math.max(0, (tip - height) * (tip + height)));
    }

    private static double stroke(RackSpec spec, ToothForm form, double pitch, double margin) {
        if (spec.stroke().isPresent()) {
            return spec.stroke().getAsDouble();
        }
        double reached = spec.servo().isPresent()
                ? form.referenceRadius() * spec.servo().get().travel()
                : Double.POSITIVE_INFINITY;
        double left = spec.length().isPresent()
                ? (Math.floor(spec.length().getAsDouble() / pitch + 1e-9) - 0.5) * pitch - 2 * margin
                : Double.POSITIVE_INFINITY;
        double stroke = Math.floor(10 * Math.min(reached, left) + 1e-9) / 10;
        if (!(stroke >= 0.5)) {
            throw new IllegalArgumentException("no stroke is left");
        }
        return stroke;
    }

    /** Teeth must have play when the rack leans away from its guide as far as the slots let it, and be off in size. */
    private static double usualBacklash(RackSpec spec) {
        double g = spec.gear().repeatability();
        double p = spec.plate().repeatability();
        double slant = 2 * Math.tan(spec.rack().pressureAngle());
        double leans = slant * spec.rooms().slot() / 2;
        return Math.ceil(100 * (leans + Math.max(PLAY, RoomLaw.room(1, g, g, slant * p, slant * g))) - 1e-9) / 100;
    }

    /** Depth of the row of pins below the datum line at which their slots keep clear of the servo's horn, mm. */
    private static double besideServo(RackSpec spec, RackPair pair, double pin) {
        double slot = (pin + spec.rooms().slot()) / 2;
        return hornHole(spec) + spec.plate().leastWeb() + slot - pair.mountingDistance();
    }

    /** Radius of the hole in a plate through which horn or output turn, mm. */
    static double hornHole(RackSpec spec) {
        return spec.servo().map(s -> s.hornDiameter() / 2 + ServoOutline.ROOM).orElse(0.0);
    }

    /** From the servo's own frame to its place: its body away from the rack. */
    static Placement servoPlace() {
        return Placement.turn(Math.PI / 2);
    }

    /** The eye stands outside the plates even where the rack is drawn in. */
    private static double eyeReach(RackSpec spec, double length) {
        if (spec.eye().isEmpty()) {
            return 0;
        }
        return spec.eye().getAsDouble() / 2 + spec.gear().holeEdge(spec.eye().getAsDouble());
    }

    ToothForm pinion() {
        return pair.pinion();
    }

    double module() {
        return pinion().module();
    }

    double pitch() {
        return Math.PI * module();
    }

    /** Turn of the pinion over the whole stroke, rad. */
    double travel() {
        return stroke / pinion().referenceRadius();
    }

    /** Height of the rack's datum line. */
    double datum() {
        return -pair.mountingDistance();
    }

    /** How far the rack's bar leans to either side of its guide, mm. */
    double lean() {
        return spec.rooms().slot() / 2;
    }

    double slotWidth() {
        return pin + spec.rooms().slot();
    }

    double pinHole() {
        return pin + spec.pinAllowance();
    }

    /** From the bar's middle to a guide pin. */
    double pinAt() {
        return length / 2 - pinHole() / 2 - spec.gear().holeEdge(pinHole());
    }

    /** By how much a slot's ends stand beyond where the pins come to. */
    double slotBeyond() {
        return Math.max(0, spec.rooms().stop() - spec.rooms().slot() / 2);
    }

    /** Whether each pin has a slot of its own; else both run in one. */
    boolean hasTwoSlots() {
        return 2 * pinAt() - stroke - 2 * slotBeyond() - slotWidth() >= spec.plate().leastWeb();
    }

    /** Farthest reach of a slot from the pinion's axis along the travel. */
    double slotReach() {
        return pinAt() + stroke / 2 + slotBeyond() + slotWidth() / 2;
    }

    /** Teeth at either end of the rack beyond what can meet the pinion where the stops are. */
    double spareTeeth() {
        double toothed = (rackTeeth - 0.5) * pitch() / 2;
        return (toothed - stroke / 2 - spec.rooms().stop() - meeting(pair)) / pitch();
    }

    /** Height of the bar's teeth's tips. */
    double tips() {
        return datum() + pair.rackAddendum();
    }

    /** Pressure of the teeth along the rack under the working torque, N; not a number without one. */
    double toothForce() {
        return spec.working().isPresent() ? spec.working().getAsDouble() / pinion().referenceRadius() : Double.NaN;
    }

    /** From the line on which the teeth push to that of the guide pins. */
    double arm() {
        return pair.mountingDistance() + pinDepth - pinion().referenceRadius();
    }

    /** Share by which two pins of this spacing are wedged by a push beside them, 1 where they jam: 2 mu e/L. */
    double wedging() {
        return 2 * spec.plate().friction() * arm() / (2 * pinAt());
    }

    /**
     * Force that the rack passes on, N: the teeth's along it, less the friction of the side force and of the wedging
     * pins. Statics of two guides, textbook.
     */
    double rackForce() {
        double side = spec.plate().friction() * Math.tan(spec.rack().pressureAngle());
        return toothForce() * Math.max(0, 1 - side - wedging());
    }
}
