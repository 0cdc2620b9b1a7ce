// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.List;
import java.util.Optional;
import ringleaf.curve.Roots;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.machine.Fit;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.part.Finding;
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
 * @param teeth of the rack
 * @param backlash along the rack, half of it taken from each
 * @param stroke of the rack
 * @param rackTeeth cut into the bar
 * @param length of the bar, without its eye
 * @param pin diameter of the guide pins
 * @param pinDepth of the guide pins' row below the rack's datum line
 * @param back of the bar below the datum line
 * @param eyeReach from the middle of the eye to the end of the rack, 0 without one
 */
record RackLayout(
        RackSpec spec,
        RackPair pair,
        RackOutline teeth,
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
    /** Radius, in modules, below which a root of the rack counts as sharp; a choice. */
    private static final double LEAST_ROUNDING = 0.1;
    /** Steps by which the depth of roots is halved. */
    private static final int DEPTH_STEPS = 12;

    /**
     * The layout for these teeth and pins.
     *
     * @throws IllegalArgumentException where such teeth cannot be made
     */
    static RackLayout of(RackSpec spec, double module, int teeth, double pin) {
        double backlash = spec.backlashRoom().mm();
        double room = spec.rooms().tips(module, spec.rack()).mm();
        double deeper = Math.max(0, room / module - spec.rack().clearance());
        ToothForm form = pinion(spec, module, teeth, backlash, deeper);
        double dedendum = deepest(spec.rack(), deeper);
        // what roots do not allow in depth the mate's tips give up in height
        double mounting = RackPair.of(form).mountingDistance();
        form = form.withTipRadius(Math.min(form.tipRadius(), mounting + dedendum * module - room));
        double full = module * spec.rack().addendum();
        RackPair pair = new RackPair(form, Math.min(full, mounting - form.rootRadius() - room));
        RackOutline outline =
                new RackOutline(module, cut(spec.rack(), dedendum, pair.rackAddendum() / module), backlash / 2);
        double margin = margin(spec, pair);
        double pitch = Math.PI * module;
        double stroke = stroke(spec, form, pitch, margin);
        double most = spec.length().orElse(Double.POSITIVE_INFINITY);
        int needed = (int) Math.ceil((stroke + 2 * margin) / pitch + 0.5 - Finding.ROUNDING);
        double hole = pin + spec.pinAllowance();
        double edge = hole / 2 + spec.gear().holeEdge(hole);
        // The pins' slots must not meet the hole for the servo's horn, and each pin has its own end of the bar.
        double depth = Math.max(outline.rack().dedendum() * module + edge, besideServo(spec, pair, pin));
        double leastLength = Math.max(needed * pitch, 4 * edge + pin);
        double length = spec.length().orElse(leastLength);
        int cut = (int) Math.floor(Math.min(length, most) / pitch + Finding.ROUNDING);
        return new RackLayout(
                spec,
                pair,
                outline,
                backlash,
                stroke,
                Math.max(1, Math.min(needed, cut)),
                length,
                pin,
                depth,
                depth + edge,
                eyeReach(spec));
    }

    /** The pinion, its roots as much deeper as asked, or as its feet allow: found by halving. */
    private static ToothForm pinion(RackSpec spec, double module, int teeth, double backlash, double deeper) {
        ToothForm drawn = form(spec, module, teeth, backlash, 0);
        return Roots.lastMade(
                        depth -> Optional.of(form(spec, module, teeth, backlash, depth))
                                .filter(form ->
                                        form.keepsFoot(drawn, spec.gear().leastWeb())),
                        0,
                        deeper,
                        DEPTH_STEPS)
                .orElse(drawn);
    }

    private static ToothForm form(RackSpec spec, double module, int teeth, double backlash, double deeper) {
        double shift = spec.shift().orElse(ShiftChoice.forPinion(spec.rack(), teeth));
        ToothForm form =
                ToothForm.of(module, teeth, shift, backlash / 2, spec.rack().withDeeper(deeper));
        return spec.shift().isPresent() ? form : form.withLeastTipThickness(ShiftChoice.LEAST_TIP * module);
    }

    /** Dedendum of the rack, in modules: as much deeper as asked, or until its roots would be sharp. */
    private static double deepest(BasicRack full, double deeper) {
        double angle = full.pressureAngle();
        double sharp = (Math.PI / 4 - LEAST_ROUNDING * Math.tan(Math.PI / 4 - angle / 2)) / Math.tan(angle);
        return Math.max(full.dedendum(), Math.min(full.dedendum() + deeper, sharp));
    }

    /** The rack's own teeth: straight flanks down to its roots, which are as round as they can be; in modules. */
    private static BasicRack cut(BasicRack full, double dedendum, double addendum) {
        double largest = BasicRack.largestRounding(full.pressureAngle(), dedendum);
        return new BasicRack(full.pressureAngle(), addendum, dedendum, Math.min(full.rounding(), largest));
    }

    /**
     * Half the way along the rack in which teeth can meet, the reserve before the stop and the spare teeth: what of
     * the toothed length lies beyond the stroke at either end.
     */
    private static double margin(RackSpec spec, RackPair pair) {
        return meeting(pair)
                + spec.rooms().stop().mm()
                + spec.spare() * Math.PI * pair.pinion().module();
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
                ? (Math.floor(spec.length().getAsDouble() / pitch + Finding.ROUNDING) - 0.5) * pitch - 2 * margin
                : Double.POSITIVE_INFINITY;
        double stroke = Math.floor(10 * Math.min(reached, left) + Finding.ROUNDING) / 10;
        if (!(stroke >= 0.5)) {
            throw new IllegalArgumentException("no stroke is left");
        }
        return stroke;
    }

    /** Depth of the row of pins below the datum line at which their slots keep clear of the servo's horn, mm. */
    private static double besideServo(RackSpec spec, RackPair pair, double pin) {
        double slot = (pin + spec.rooms().slot().mm()) / 2;
        return hornHole(spec) + spec.plate().leastWeb() + slot - pair.mountingDistance();
    }

    /** Radius of the hole in the base through which the horn, or the output alone, turns, mm. */
    static double hornHole(RackSpec spec) {
        return spec.servo()
                .map(s -> (spec.isOnHorn() ? s.hornDiameter() : s.splineDiameter()) / 2 + ServoOutline.ROOM)
                .orElse(0.0);
    }

    /** From the servo's own frame to its place: its body away from the rack. */
    static Placement servoPlace() {
        return Placement.turn(Math.PI / 2);
    }

    /** From the middle of the eye to the end of the rack. */
    private static double eyeReach(RackSpec spec) {
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

    /** How guide pins slide in the plates' slots. */
    Fit guide() {
        return spec.rooms().guide(pin);
    }

    double slotWidth() {
        return guide().width();
    }

    /** Middles of both guide pins at the start of the travel. */
    List<Point> pins() {
        double y = datum() - pinDepth;
        return List.of(new Point(-pinAt() - stroke / 2, y), new Point(pinAt() - stroke / 2, y));
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
        return Math.max(0, spec.rooms().stop().mm() - spec.rooms().lean());
    }

    /** Whether each pin has a slot of its own; else both run in one. */
    boolean hasTwoSlots() {
        return 2 * pinAt() - stroke - 2 * slotBeyond() - slotWidth()
                >= spec.plate().leastWeb();
    }

    /** Farthest reach of a slot from the pinion's axis along the travel. */
    double slotReach() {
        return pinAt() + stroke / 2 + slotBeyond() + slotWidth() / 2;
    }

    /** Teeth at either end of the rack beyond what can meet the pinion where the stops are. */
    double spareTeeth() {
        double toothed = (rackTeeth - 0.5) * pitch() / 2;
        return (toothed - stroke / 2 - spec.rooms().stop().mm() - meeting(pair)) / pitch();
    }

    /** Depth of the rack's roots below its datum line. */
    double rootDepth() {
        return teeth.rack().dedendum() * module();
    }

    /** Room between tips and roots, the lesser of both. */
    double tipClearance() {
        double tips = pair.mountingDistance() + rootDepth() - pinion().tipRadius();
        return Math.min(tips, pair.mountingDistance() - pair.rackAddendum() - pinion().rootRadius());
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
