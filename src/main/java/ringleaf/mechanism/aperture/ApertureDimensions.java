// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.leaf.Band;
import ringleaf.leaf.DrivePin;
import ringleaf.leaf.Sweep;
import ringleaf.machine.Room;
import ringleaf.part.Choice;
import ringleaf.part.Dimension;
import ringleaf.part.Dimension.Origin;
import ringleaf.part.Words;
import ringleaf.tooth.ToothForm;

/** Choices and sizes as they stand in design.json, each with where it comes from. */
final class ApertureDimensions {
    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final Sweep sweep;
    private final List<Dimension> all = new ArrayList<>();

    ApertureDimensions(ApertureDesign design, Sweep sweep) {
        this.design = design;
        this.spec = design.spec();
        this.sweep = sweep;
    }

    List<Choice> choices(String whyLayout) {
        boolean lever = design.pin() instanceof DrivePin.Lever;
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(
                "drive-pin",
                lever ? "lever" : "far-end",
                spec.layoutGiven() ? Origin.GIVEN : Origin.SOLVED,
                spec.layoutGiven() ? "" : whyLayout));
        choices.add(choice("pin-style", spec.pinStyle().label(), "pin-style"));
        choices.add(choice("slot", spec.linearSlot() ? "linear-opening" : "radial", "slot"));
        choices.add(choice("hand", spec.mirrored() ? "right" : "left", "hand"));
        boolean hand = spec.drive() instanceof DriveSpec.Hand;
        boolean stepUp = design.pinionPlan().flatMap(PinionPlan::stepUp).isPresent();
        choices.add(choice("drive", hand ? "hand" : stepUp ? "step-up" : "pinion", "drive"));
        return choices;
    }

    private Choice choice(String name, String value, String path) {
        return new Choice(name, value, spec.given().contains(path) ? Origin.GIVEN : Origin.DEFAULT, "");
    }

    /** Every size, with the worst distance of any smooth curve's arcs from the curve, mm. */
    List<Dimension> all(double deviation) {
        sizes();
        mm("outline-deviation", deviation, Origin.SOLVED, "worst distance of any smooth curve's arcs from the curve");
        return all;
    }

    /** For comparisons: every size that needs no outline, and what is left of the housing round the clear opening. */
    List<Dimension> compared() {
        sizes();
        mm("bezel", design.rim().outer() - spec.clearRadius(), Origin.SOLVED, "from the clear opening to the outside");
        return all;
    }

    private void sizes() {
        opening();
        blades();
        housing();
        stack();
        for (Room room : spec.clearances().rooms()) {
            mm("clearances-" + room.name(), room.mm(), room.origin(), room.how());
        }
        design.pinionPlan().ifPresent(this::drive);
        design.handPlan().ifPresent(plan -> {
            mm("arm-width", 2 * plan.halfWidth(), origin("drive.arm-width"), "");
            mm("arm-reach", plan.reach(), origin("drive.arm-reach"), "");
            deg("arm-angle", spec.mirrored() ? -plan.at() : plan.at(), origin("drive.at"), "");
        });
    }

    private void opening() {
        mm("full-opening", 2 * spec.clearRadius(), Origin.GIVEN, "");
        mm("least-opening", 2 * spec.leastRadius(), Origin.GIVEN, "");
        int last = sweep.states() - 1;
        mm("opens-to", 2 * sweep.openingRadius[0], Origin.SOLVED, "widest circle between the blades, open");
        mm("closes-to", 2 * sweep.openingRadius[last], Origin.SOLVED, "widest circle between the blades, closed");
        add("blades", spec.blades(), "1", Origin.GIVEN, "");
        mm("blade-thickness", spec.thickness(), Origin.GIVEN, "");
        mm("lap", spec.lap(), origin("lap"), "");
        int thin = Sweep.leastOf(sweep.lap);
        mm("actual-lap", sweep.lap[thin], Origin.SOLVED, "least over the travel");
    }

    private void blades() {
        Band band = design.band();
        mm("pivot-radius", band.pivotRadius(), Origin.SOLVED, "clear radius, its clearance and half the blade's width");
        mm("blade-width", band.width(), solvedUnless("blade-width"), "limited by " + design.bound());
        deg("blade-span", band.span(), solvedUnless("blade-span"), "least cavity over all spans");
        mm("blade-inner-radius", band.innerRadius(), Origin.SOLVED, "");
        deg("blade-travel", design.closed(), Origin.SOLVED, "turn of a blade that leaves the least opening");
        if (design.pin() instanceof DrivePin.Lever lever) {
            mm("lever", lever.length(), solvedUnless("lever"), "its pin stands clear of the other blades");
            double angle = spec.mirrored() ? -lever.angle() : lever.angle();
            String why = design.isLinear() ? "off the radial, where a linear slot turns back" : "centred on the travel";
            deg("lever-angle", angle, solvedUnless("lever-angle"), why);
        }
        mm("pin-diameter", spec.pinDiameter(), origin("pin-diameter"), "");
        deg("ring-travel", Math.abs(design.travel()), Origin.SOLVED, "drive pins in their slots, open to closed");
        mm("slot-inner-radius", design.rim().slotInner(), Origin.SOLVED, "");
        mm("slot-outer-radius", design.rim().slotOuter(), Origin.SOLVED, "");
        mm("slot-width", 2 * SlotOutline.radius(spec), Origin.SOLVED, "pin and its clearance");
    }

    private void housing() {
        Rim rim = design.rim();
        boolean own = spec.bezel().housing().isPresent();
        mm("cavity-radius", rim.cavity(), Origin.SOLVED, "the blades' reach between the stops, and its clearance");
        mm("rim-radius", rim.rim(), Origin.SOLVED, "limited by the " + rim.binding());
        mm("wall-radius", rim.wall(), Origin.SOLVED, "rim and its play");
        mm("screw-circle-radius", rim.screws(), Origin.SOLVED, "middle of the wall");
        mm(
                "outer-diameter",
                2 * rim.outer(),
                spec.outer().isExact() && 2 * rim.outer() <= spec.outer().most() ? Origin.GIVEN : Origin.SOLVED,
                own
                        ? "what a round housing would need; the outline given takes its place"
                        : "limited by " + design.bound());
        mm(
                "envelope-width",
                own
                        ? BezelFit.width(design.housing().outline())
                        : design.drive().envelopeWidth(rim),
                own ? Origin.GIVEN : Origin.SOLVED,
                own ? "greatest width of the outline given" : "with the drive's lobe");
        deg("stop-over-travel", rim.overTravel(), Origin.SOLVED, "ring past either end before it is stopped");
    }

    private void stack() {
        Stack stack = design.stack();
        add("layers", sweep.layers, "1", Origin.SOLVED, "most blades over one point, over all states");
        mm("depth", stack.depth(), Origin.SOLVED, "cover, base, cavity, ring with play, retainer");
        mm("cavity-depth", stack.cavity(), Origin.SOLVED, "layers with flatness, and play");
        mm("base-thickness", stack.baseTop(), Origin.SOLVED, "");
        boolean open = !spec.ring().sheet() && !spec.given().contains("ring-thickness");
        mm(
                "ring-thickness",
                stack.ringThickness(),
                open ? Origin.SOLVED : origin("ring-thickness"),
                "2 mm, or what the drive pins need to stay in their slots");
        mm("plate-thickness", spec.plate().thickness(), origin("plate-thickness"), "");
        mm("ring-axial-play", stack.retainerBottom() - stack.ringTop(), Origin.SOLVED, "");
        if (spec.pinStyle() != PinStyle.BASE_POSTS) {
            mm("pivot-pin-depth", stack.pivotPinDepth(), Origin.SOLVED, "below its blade");
        }
        mm("drive-pin-height", stack.drivePinHeight(), Origin.SOLVED, "above its blade");
    }

    private void drive(PinionPlan plan) {
        ToothForm pinion = plan.pinion();
        ToothForm sector = plan.sector();
        add("module", pinion.module(), "mm", origin("drive.module"), "");
        deg("pressure-angle", pinion.rack().pressureAngle(), origin("drive.pressure-angle"), "");
        String teeth = "the least with which the servo's travel turns the ring";
        add("pinion-teeth", pinion.teeth(), "1", solvedUnless("drive.pinion-teeth"), teeth);
        add("sector-teeth-full", sector.teeth(), "1", Origin.SOLVED, "of the full circle");
        add("sector-teeth-cut", plan.spaces(), "1", Origin.SOLVED, "tooth spaces cut into the rim");
        add("pinion-profile-shift", pinion.shift(), "1", Origin.SOLVED, "no undercut, equal sliding");
        add("sector-profile-shift", sector.shift(), "1", Origin.SOLVED, "keeps the centre distance");
        mm(
                "backlash",
                plan.pair().backlash(),
                solvedUnless("drive.backlash"),
                "what the ring's play takes up and a little more, or what the processes ask for");
        mm(
                "tip-clearance",
                Math.min(plan.pair().pinionTipClearance(), plan.pair().gearTipClearance()),
                solvedUnless("drive.tip-clearance"),
                "a quarter of the module, or what the ring's play and processes ask for");
        mm("centre-distance", plan.centreDistance(), Origin.SOLVED, "half the sum of teeth times module");
        deg("pinion-angle", spec.mirrored() ? -plan.at() : plan.at(), origin("drive.at"), "");
        deg("servo-travel-used", plan.servoTravel(), Origin.SOLVED, "ring travel times the ratio of teeth");
        plan.stepUp().ifPresent(step -> {
            add("servo-gear-teeth", step.servoGear().teeth(), "1", Origin.SOLVED, "turns the axle far enough");
            add("step-wheel-teeth", step.wheel().teeth(), "1", Origin.SOLVED, "on the pinion's axle");
            mm("step-centre-distance", step.pair().centreDistance(), Origin.SOLVED, "axle to servo");
            mm("axle-diameter", step.axle(), Origin.SOLVED, "");
        });
        mm("pinion-width", design.mount().orElseThrow().pinionWidth(), Origin.SOLVED, "ring with its play, or more");
        Optional<ServoMount> mount = design.mount();
        mount.ifPresent(m -> mm(
                "servo-standoff",
                m.standoff(),
                Origin.SOLVED,
                m.hasPlate() ? "between base and servo plate" : "packing between base and ears"));
    }

    private Origin origin(String path) {
        return spec.given().contains(path) ? Origin.GIVEN : Origin.DEFAULT;
    }

    private Origin solvedUnless(String path) {
        return spec.given().contains(path) ? Origin.GIVEN : Origin.SOLVED;
    }

    private void mm(String name, double value, Origin origin, String how) {
        add(name, value, "mm", origin, how);
    }

    private void deg(String name, double angle, Origin origin, String how) {
        add(name, Math.toDegrees(angle), "deg", origin, how);
    }

    private void add(String name, double value, String unit, Origin origin, String how) {
        all.add(new Dimension(name, value, unit, origin, origin == Origin.SOLVED ? how : ""));
    }

    /** What the layout that was not taken would have come to. */
    static String whyLayout(List<ApertureDesigner.Candidate> candidates) {
        ApertureSpec spec = candidates.get(0).design().spec();
        StringBuilder why = new StringBuilder();
        for (ApertureDesigner.Candidate one : candidates) {
            why.append(why.length() == 0 ? "" : "; ")
                    .append(one.design().plan().layout().label())
                    .append(": housing Ø")
                    .append(Words.number(2 * one.design().rim().outer(), 1));
            if (one.broken() > 0) {
                why.append(", ").append(one.broken()).append(one.broken() == 1 ? " limit broken" : " limits broken");
                if (!one.design().plan().broken().isEmpty()) {
                    why.append(" (")
                            .append(one.design().plan().broken().get(0).limit().subject())
                            .append(')');
                }
            }
        }
        if (candidates.size() < spec.layouts().size()) {
            why.append("; lever: no smaller cavity");
        }
        return why.toString();
    }
}
