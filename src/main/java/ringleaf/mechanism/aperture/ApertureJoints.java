// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.machine.Feature;
import ringleaf.machine.Fit;
import ringleaf.machine.Joint;
import ringleaf.machine.Joint.Held;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.machine.Role;
import ringleaf.spec.shared.FitName;

/** The joints of an aperture: pivots, drive pins in their slots, pins in the blades, screws, and the servo's output. */
final class ApertureJoints {
    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final Clearances fits;
    private final int copies;
    private final List<Joint> all = new ArrayList<>();

    /** @param copies blades that there are, from the first on: all, or those of a trial piece */
    ApertureJoints(ApertureDesign design, int copies) {
        this.design = design;
        this.spec = design.spec();
        this.fits = spec.clearances();
        this.copies = copies;
    }

    /** All of the whole mechanism. */
    static Joints of(ApertureDesign design, Members members) {
        ApertureJoints all = new ApertureJoints(design, design.spec().blades());
        all.blades(Piece.BASE, Piece.RING);
        all.screws();
        return new Joints(all.all, members);
    }

    /** Those of a trial piece, whose base and ring are pieces of the real ones. */
    static Joints ofTrial(ApertureDesign design, Members members, int blades, Role base, Role ring) {
        ApertureJoints all = new ApertureJoints(design, blades);
        all.blades(base, ring);
        return new Joints(all.all, members);
    }

    private void blades(Role base, Role ring) {
        Held<Feature.Pin> drivePin = held(Piece.DRIVE_PIN, fits.set().pin("drive-pin", List.of(design.drivePoint())));
        switch (spec.pinStyle()) {
            case ONE_GLUED -> pivot(held(Piece.BLADE, pivotPin(onBlade())), held(base, bores()));
            case TWO_HOLES -> {
                Held<Feature.Pin> pin = held(Piece.PIVOT_PIN, pivotPin(onBlade()));
                pivot(pin, held(base, bores()));
                set(pin, held(Piece.BLADE, bladeBore()));
            }
            case BASE_POSTS -> {
                // Posts stand still in the base. As members they ride with their blades, so the judge takes the base's.
                Fit glued = Fit.still(FitName.GLUE, spec.pinDiameter(), spec.pinDiameter(), "");
                pivot(held(base, pivotPin(pivots())), held(Piece.BLADE, bladeBore()));
                all.add(new Joint.Fixed(held(Piece.PIVOT_PIN, pivotPin(onBlade())), held(base, bores()), glued));
            }
        }
        set(drivePin, held(Piece.BLADE, driveHole()));
        all.add(new Joint.PinInSlot("pin-in-slot", drivePin, held(ring, slots()), fits.drive(), fits.slotEnd()));
    }

    private void pivot(Held<Feature.Pin> pin, Held<Feature.Bore> bore) {
        all.add(new Joint.Revolute("pin-clearance", pin, bore, fits.pivot()));
    }

    private void set(Held<Feature.Pin> pin, Held<Feature.Bore> hole) {
        all.add(new Joint.Fixed(pin, hole, fits.set()));
    }

    /** Pins or posts, which are as thick. */
    private Feature.Pin pivotPin(List<Point> places) {
        return fits.pivot().pin("pivot-pin", places);
    }

    private List<Point> onBlade() {
        return List.of(design.pivot());
    }

    private List<Point> pivots() {
        List<Point> pivots = new ArrayList<>();
        for (int i = 0; i < copies; i++) {
            pivots.add(Point.polar(design.band().pivotRadius(), i * spec.pitch()));
        }
        return pivots;
    }

    /** Those of the base: running room for pins that turn, none for posts that are fixed. */
    Feature.Bore bores() {
        boolean fixed = spec.pinStyle() == PinStyle.BASE_POSTS;
        return fixed
                ? new Feature.Bore("pivot-bore", spec.pinDiameter(), pivots())
                : fits.pivot().bore("pivot-bore", pivots());
    }

    /** The hole of a blade on its pivot: it turns there on a post, or a pin is set into it. */
    Feature.Bore bladeBore() {
        return spec.pinStyle() == PinStyle.BASE_POSTS
                ? fits.pivot().bore("pivot-bore", onBlade())
                : fits.set().bore("pivot-pin-hole", onBlade());
    }

    Feature.Bore driveHole() {
        return fits.set().bore("drive-pin-hole", List.of(design.drivePoint()));
    }

    /** Those of the ring. */
    Feature.Slot slots() {
        Contour first = SlotOutline.of(design).contour();
        List<Contour> slots = new ArrayList<>();
        for (int i = 0; i < copies; i++) {
            slots.add(first.placed(Placement.turn(i * spec.pitch())));
        }
        return fits.drive().slot("slot", slots);
    }

    private void screws() {
        Housing housing = design.housing();
        double thread = spec.screw().thread();
        Fit fit = Fit.still(
                FitName.THREAD_CLEARANCE,
                thread,
                2 * housing.screwHole(),
                spec.screw().holeBasis());
        for (Piece plate :
                List.of(Piece.COVER, Piece.BASE, Piece.SPACER, Piece.SHIM, Piece.RETAINER, Piece.SERVO_PLATE)) {
            List<Point> at = plate == Piece.SERVO_PLATE ? housing.servoScrews() : housing.screws();
            Held<Feature.Pin> screws = held(Piece.BASE, fit.pin("screw", at));
            Held<Feature.Bore> holes = held(plate, fit.bore("screw-hole", at));
            all.add(new Joint.Screwed("screw-holes", screws, holes, fit, !housing.own()));
        }
        design.mount().filter(mount -> !mount.horn()).ifPresent(mount -> output());
    }

    /** The spline belongs to the servo, which is no member: the pinion's bore is told, and nothing is judged. */
    private void output() {
        PinionPlan plan = design.pinionPlan().orElseThrow();
        double spline = plan.servo().splineDiameter();
        Fit fit = Fit.still(FitName.PRESS, spline, spline, Clearances.AS_WIDE);
        List<Point> axis = List.of(plan.servoCentre());
        Role turned = plan.stepUp().isPresent() ? Piece.SERVO_GEAR : Piece.PINION;
        all.add(new Joint.Fixed(
                held(Piece.SERVO, fit.pin("output", axis)), held(turned, fit.bore("output-bore", axis)), fit));
    }

    private static <F extends Feature> Held<F> held(Role role, F feature) {
        return new Held<>(role, feature);
    }
}
