// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.machine.Members;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.part.Requirement;
import ringleaf.spec.shared.Servo;
import ringleaf.tooth.GearPair;

/** What pinion, sector and step-up must hold to on their outlines; nothing where the ring is turned by hand. */
final class DriveRequirements {
    /** Steps in which a pitch of the driver is rolled through. */
    private static final int STEPS = 12;
    /** Steps in which a whole travel is rolled through, at most. */
    private static final int MOST_STEPS = 300;
    /**
     * What arcs in place of four flanks may take from a play or add to it, mm: four times half a micrometre, and what a
     * slanted line of action makes of it.
     */
    private static final double PLAY_SLACK = 0.003;

    private final ApertureDesign design;
    private final Members members;

    DriveRequirements(ApertureDesign design, Members members) {
        this.design = design;
        this.members = members;
    }

    /** The meshes, rolled from stop to stop. */
    List<Requirement> all() {
        List<Requirement> all = new ArrayList<>();
        design.pinionPlan().ifPresent(plan -> {
            Requirement.Turning pinion = new Requirement.Turning(members.one(Piece.PINION), plan.centre());
            Requirement.Turning ring = new Requirement.Turning(members.one(Piece.RING), Point.ORIGIN);
            double over = Math.copySign(design.rim().overTravel(), plan.travel());
            double ratio = -1 / plan.ratio();
            all.add(meshes(plan.pair(), pinion, ring, ratio, -over / ratio, (plan.travel() + over) / ratio));
            all.addAll(servo(plan));
            plan.stepUp().ifPresent(step -> {
                Requirement.Turning servo = new Requirement.Turning(members.one(Piece.SERVO_GEAR), plan.servoCentre());
                Requirement.Turning wheel = new Requirement.Turning(members.one(Piece.STEP_WHEEL), plan.centre());
                double turned = plan.servoRatio();
                all.add(meshes(
                        step.pair(), servo, wheel, -step.ratio(), -over * turned, (plan.travel() + over) * turned));
            });
        });
        return all;
    }

    /** The servo's body in its window, and what turns on its output through base and cover. */
    private List<Requirement> servo(PinionPlan plan) {
        List<Requirement> all = new ArrayList<>();
        ServoMount mount = design.mount().orElseThrow();
        Servo servo = plan.servo();
        int base = members.one(Piece.BASE);
        List<Requirement.Fit> corners = new ArrayList<>();
        for (int plate : members.of(Piece.SERVO_PLATE)) {
            Contour window =
                    plan.servoOutline().seat(design.spec().plate().leastWeb()).get(0);
            for (Point corner : plan.servoOutline().bodyCorners()) {
                corners.add(new Requirement.Fit(base, corner, 0, plate, window));
            }
        }
        if (!corners.isEmpty()) {
            all.add(new Requirement.PinInHole("servo-fits", corners, 0));
        }
        if (plan.stepUp().isEmpty()) {
            double turns = (mount.horn() ? servo.hornDiameter() : servo.splineDiameter()) / 2;
            Requirement.Stud output = new Requirement.Stud(members.one(Piece.PINION), plan.centre(), turns);
            List<Integer> plates = new ArrayList<>(members.of(Piece.COVER));
            plates.add(base);
            all.add(new Requirement.StudsClear("servo-fits", List.of(output), plates, ServoOutline.ROOM));
        }
        return all;
    }

    /** A mesh whose driver turns from one angle to the other, rad from its place in the open pose. */
    private static Requirement meshes(
            GearPair pair,
            Requirement.Turning driver,
            Requirement.Turning driven,
            double ratio,
            double from,
            double to) {
        int steps = (int) Math.ceil(STEPS * Math.abs(to - from) / pair.pinion().pitchAngle());
        double tips = Math.min(pair.pinionTipClearance(), pair.gearTipClearance());
        return new Requirement.Meshes(
                driver,
                driven,
                ratio,
                new Requirement.Rolled(
                        from, to, Math.max(1, Math.min(MOST_STEPS, steps)), "the whole travel, stop to stop"),
                Math.max(0, Math.min(pair.normalBacklash() / 2, tips)),
                pair.gearPlay(),
                PLAY_SLACK);
    }

    /** Pairs of the drive that mesh, or that run with a clearance of their own. */
    List<Requirement.Pair> pairs() {
        List<Requirement.Pair> pairs = new ArrayList<>();
        design.pinionPlan().ifPresent(plan -> {
            int pinion = members.one(Piece.PINION);
            // How near teeth come is told by rolling them.
            pairs.add(Requirement.Pair.touching(pinion, members.one(Piece.RING)));
            double pocket = design.spec().clearances().pinion();
            pairs.add(new Requirement.Pair(pinion, members.one(Piece.SPACER), pocket));
            plan.stepUp().ifPresent(step -> {
                pairs.add(Requirement.Pair.touching(members.one(Piece.SERVO_GEAR), members.one(Piece.STEP_WHEEL)));
                for (Piece plate : List.of(Piece.BASE, Piece.COVER, Piece.RETAINER)) {
                    for (int member : members.of(plate)) {
                        pairs.add(new Requirement.Pair(members.one(Piece.AXLE), member, step.axleRoom() / 2));
                    }
                }
            });
        });
        return pairs;
    }
}
