// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.machine.Feature;
import ringleaf.machine.Fit;
import ringleaf.machine.Joint;
import ringleaf.machine.Joint.Held;
import ringleaf.machine.Joint.Mover;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.machine.Role;
import ringleaf.mechanism.body.Bought;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Servo;

/** The joints of a belt drive: wheels roll on the belt and sit on axles or the servo, axles and screws in the plates. */
final class DriveJoints {
    private final DrivePlan plan;
    private final DriveSpec spec;
    private final DrivePlates plates;
    private final List<Joint> all = new ArrayList<>();
    /** Axles and bearings, which are told and have no outline. */
    private final List<Role> bought = new ArrayList<>();

    private DriveJoints(DrivePlan plan, DrivePlates plates) {
        this.plan = plan;
        this.spec = plan.spec();
        this.plates = plates;
    }

    static Joints of(DrivePlan plan, DrivePlates plates, Members members) {
        DriveJoints joints = new DriveJoints(plan, plates);
        List<DrivePart> drilled = List.of(DrivePart.BASE, DrivePart.FRONT)
                .subList(0, Math.min(2, plan.spec().plates()));
        drilled.forEach(joints::screws);
        if (!drilled.isEmpty()) {
            plan.spec().axles().seat().ifPresent(seat -> joints.bearing(seat, drilled));
            plan.spec().servo().ifPresent(joints::ears);
        }
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            joints.wheel(i, drilled);
        }
        return new Joints(joints.all, members, joints.bought);
    }

    /** The belt on a wheel, the wheel on its axle, the axle in the plates. */
    private void wheel(int i, List<DrivePart> drilled) {
        Wheel wheel = plan.path().wheels().get(i);
        boolean axled = DriveFasteners.axled(plan).contains(i);
        Role axle = axled ? DrivePart.axle(wheel, i) : Bought.AXLE;
        Optional<PulleySpec> pulley = plan.pulley(i);
        DrivePart rolls;
        if (pulley.isPresent()) {
            rolls = DrivePart.rim(pulley.get(), i);
            Placement home = new Placement(plan.phase(i), wheel.centre());
            all.addAll(plan.stack(pulley.get()).joints(i, axle, home));
        } else {
            rolls = DrivePart.roller(wheel, i);
            double on = plan.roller(wheel.name()).axle();
            Fit fit =
                    Fit.still(FitName.RUNNING, on, on + spec.driver().material().runningClearance(), "");
            turning(axle, rolls, "bore", fit, wheel.centre());
        }
        double perMm = (wheel.inside() ? 1 : -1) / wheel.radius();
        all.add(new Joint.Rolling(
                new Mover.Runs(DrivePart.BELT), new Mover.Turns(rolls, wheel.centre()), perMm, true, Optional.empty()));
        boolean seated = i == plan.layout().driven() && spec.axles().seat().isPresent();
        if (axled) {
            bought.add(axle);
            drilled.stream().filter(plate -> !seated).forEach(plate -> axle(i, axle, plate));
        }
    }

    private void axle(int i, Role axle, DrivePart plate) {
        Wheel wheel = plan.path().wheels().get(i);
        double diameter = plates.axle(i);
        Fit fit = Fit.still(spec.axles().fit(), diameter, 2 * spec.axles().hole(diameter), "");
        String hole = wheel.name() + "-axle-hole";
        if (i == plan.slot().wheel()) {
            List<Contour> slot = List.of(plates.hole(i, false).outer());
            all.add(new Joint.PinInSlot(
                    "pin-in-slot",
                    new Held<>(axle, fit.pin(axle.label(), List.of(wheel.centre()))),
                    new Held<>(plate, fit.slot(hole, slot)),
                    fit,
                    0));
        } else {
            turning(axle, plate, hole, fit, wheel.centre());
        }
    }

    /** An axle in a bore: it turns there where it has running room, and else is held. */
    private void turning(Role axle, Role part, String hole, Fit fit, Point at) {
        Held<Feature.Pin> pin = new Held<>(axle, fit.pin(axle.label(), List.of(at)));
        Held<Feature.Bore> bore = new Held<>(part, fit.bore(hole, List.of(at)));
        all.add(
                fit.name() == FitName.RUNNING
                        ? new Joint.Revolute("pin-clearance", pin, bore, fit)
                        : new Joint.Fixed(pin, bore, fit));
    }

    private void bearing(Axles.Seat seat, List<DrivePart> drilled) {
        double outside = seat.bearing().outside();
        Fit fit = Fit.still(seat.fit(), outside, seat.diameter(), "");
        List<Point> at =
                List.of(plan.path().wheels().get(plan.layout().driven()).centre());
        bought.add(DrivePart.BEARING);
        for (DrivePart plate : drilled) {
            all.add(new Joint.Fixed(
                    new Held<>(DrivePart.BEARING, new Feature.Ring(DriveFasteners.BEARING, outside, at)),
                    new Held<>(plate, new Feature.Seat("bearing-seat", seat.diameter(), at)),
                    fit));
        }
    }

    private void screws(DrivePart plate) {
        Fit fit = Fit.still(
                FitName.THREAD_CLEARANCE,
                spec.screw().thread(),
                spec.screw().hole(),
                spec.screw().holeBasis());
        screwed(Bought.SCREW, fit.pin("screw", plates.screws()), plate, fit.bore("screw-hole", plates.screws()), fit);
    }

    /** In slots where the servo moves along with the driver. */
    private void ears(Servo servo) {
        double hole = servo.holeDiameter();
        Fit fit = Fit.still(FitName.THREAD_CLEARANCE, hole, hole, "as in the ears of servo " + servo.name());
        List<Contour> cuts = ServoPlace.of(spec, plan.slot()).orElseThrow().earCuts().stream()
                .map(Region::outer)
                .toList();
        List<Point> at = cuts.stream().map(Contour::centroid).toList();
        Feature.Hole ears =
                plan.slot().wheel() == 0 ? fit.slot("servo-ear-hole", cuts) : fit.bore("servo-ear-hole", at);
        screwed(Bought.SERVO, fit.pin("servo-screw", at), DrivePart.BASE, ears, fit);
    }

    private void screwed(Role what, Feature.Pin screws, Role plate, Feature.Hole holes, Fit fit) {
        all.add(new Joint.Screwed("screw-holes", new Held<>(what, screws), new Held<>(plate, holes), fit, true));
    }
}
