// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.machine.Feature;
import ringleaf.machine.Fit;
import ringleaf.machine.Joint;
import ringleaf.machine.Joint.Held;
import ringleaf.machine.Joint.Mover;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.body.Bought;
import ringleaf.part.Requirement;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Servo;

/** The joints of a rack: it slides by its pins in the plates' slots, and rolls on a pinion that turns between them. */
final class RackJoints {
    /** Steps in which a pitch of the travel is rolled through, and the most in all. */
    private static final int STEPS = 24;

    private static final int MOST_STEPS = 600;
    /** What arcs in place of the pinion's two flanks may take from the play or add to it, mm. */
    private static final double PLAY_SLACK = 0.003;

    private final RackLayout layout;
    private final RackSpec spec;
    private final RackPlates plates;
    private final List<Joint> all = new ArrayList<>();

    private RackJoints(RackLayout layout, RackPlates plates) {
        this.layout = layout;
        this.spec = layout.spec();
        this.plates = plates;
    }

    static Joints of(RackLayout layout, RackPlates plates, Members members) {
        RackJoints joints = new RackJoints(layout, plates);
        joints.mesh();
        joints.guide();
        joints.all.addAll(layout.spec().body().joints(RackRole.PINION, RackRole.AXLE, Placement.IDENTITY));
        joints.axle();
        joints.screws();
        layout.spec().servo().ifPresent(joints::ears);
        return new Joints(joints.all, members);
    }

    private void mesh() {
        double r = layout.pinion().referenceRadius();
        int steps = (int) Math.ceil(Math.max(1, STEPS * layout.stroke() / layout.pitch()));
        Requirement.Rolled rolled =
                new Requirement.Rolled(0, layout.stroke(), Math.min(MOST_STEPS, steps), "the whole travel");
        all.add(new Joint.Rolling(
                new Mover.Slides(RackRole.RACK, new Point(1, 0)),
                new Mover.Turns(RackRole.PINION, Point.ORIGIN),
                1 / r,
                false,
                Optional.of(new Joint.Mesh(rolled, 0, layout.backlash() / r, PLAY_SLACK))));
    }

    /** Both pins are set into the rack, and run in the slots of both plates. */
    private void guide() {
        List<Point> places = layout.pins();
        Fit set = Fit.still(spec.pinFit(), layout.pin(), layout.pinHole(), "");
        Fit slides = layout.guide();
        all.add(new Joint.Fixed(
                new Held<>(RackRole.PIN, set.pin(RackParts.PIN, places)),
                new Held<>(RackRole.RACK, set.bore("pin-hole", places)),
                set));
        for (RackRole plate : List.of(RackRole.BASE, RackRole.FRONT)) {
            all.add(new Joint.Prismatic(
                    "pin-in-slot",
                    new Held<>(RackRole.PIN, slides.pin(RackParts.PIN, places)),
                    new Held<>(plate, slides.slot("slot", plates.slots())),
                    slides,
                    spec.rooms().stop().mm()));
        }
    }

    private void axle() {
        if (spec.axle() == 0) {
            return;
        }
        List<Point> axis = List.of(Point.ORIGIN);
        Fit turns = Fit.still(FitName.RUNNING, spec.axle(), 2 * plates.axleHole(), "");
        for (RackRole plate : List.of(RackRole.BASE, RackRole.FRONT)) {
            all.add(new Joint.Revolute(
                    "pin-clearance",
                    new Held<>(RackRole.AXLE, turns.pin(RackParts.AXLE, axis)),
                    new Held<>(plate, turns.bore("axle-hole", axis)),
                    turns));
        }
    }

    private void screws() {
        double thread = spec.screw().thread();
        Fit fit = Fit.still(
                FitName.THREAD_CLEARANCE,
                thread,
                spec.screw().hole(),
                spec.screw().holeBasis());
        for (RackRole plate : List.of(RackRole.BASE, RackRole.FRONT, RackRole.SERVO_PLATE)) {
            screwed(
                    Bought.SCREW,
                    fit.pin("screw", plates.screws()),
                    plate,
                    fit.bore("screw-hole", plates.screws()),
                    fit);
        }
    }

    /** The screws of the servo's ears, in the plate that it sits on. */
    private void ears(Servo servo) {
        RackRole plate = plates.hasServoPlate() ? RackRole.SERVO_PLATE : RackRole.BASE;
        double hole = servo.holeDiameter();
        Fit fit = Fit.still(FitName.THREAD_CLEARANCE, hole, hole, "as in the ears of servo " + servo.name());
        List<Point> at = plates.outline().earHoles();
        screwed(Bought.SERVO, fit.pin("servo-screw", at), plate, fit.bore("servo-ear-hole", at), fit);
    }

    private void screwed(Bought what, Feature.Pin screws, RackRole plate, Feature.Bore holes, Fit fit) {
        all.add(new Joint.Screwed("screw-holes", new Held<>(what, screws), new Held<>(plate, holes), fit, true));
    }
}
