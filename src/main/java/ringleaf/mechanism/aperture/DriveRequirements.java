// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.part.Member;
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
    private final List<Member> members;

    DriveRequirements(ApertureDesign design, List<Member> members) {
        this.design = design;
        this.members = members;
    }

    /** The meshes, rolled from stop to stop. */
    List<Requirement> all() {
        List<Requirement> all = new ArrayList<>();
        design.pinionPlan().ifPresent(plan -> {
            Requirement.Turning pinion = new Requirement.Turning(index("pinion"), plan.centre());
            Requirement.Turning ring = new Requirement.Turning(index("drive-ring"), Point.ORIGIN);
            double over = Math.copySign(design.rim().overTravel(), plan.travel());
            double ratio = -1 / plan.ratio();
            all.add(meshes(plan.pair(), pinion, ring, ratio, -over / ratio, (plan.travel() + over) / ratio));
            all.addAll(servo(plan));
            plan.stepUp().ifPresent(step -> {
                Requirement.Turning servo = new Requirement.Turning(index("servo-gear"), plan.servoCentre());
                Requirement.Turning wheel = new Requirement.Turning(index("step-wheel"), plan.centre());
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
        int base = index("base-plate");
        List<Requirement.Fit> corners = new ArrayList<>();
        for (int plate : ApertureRequirements.indices(members, "servo-plate")) {
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
            Requirement.Stud output = new Requirement.Stud(index("pinion"), plan.centre(), turns);
            List<Integer> plates = new ArrayList<>(ApertureRequirements.indices(members, "cover"));
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
            int pinion = index("pinion");
            // How near teeth come is told by rolling them.
            pairs.add(Requirement.Pair.touching(pinion, index("drive-ring")));
            double pocket = design.spec().clearances().pinion();
            pairs.add(new Requirement.Pair(pinion, index("spacer-ring"), pocket));
            plan.stepUp().ifPresent(step -> {
                pairs.add(Requirement.Pair.touching(index("servo-gear"), index("step-wheel")));
                for (String plate : List.of("base-plate", "cover", "retainer")) {
                    for (int member : ApertureRequirements.indices(members, plate)) {
                        pairs.add(new Requirement.Pair(index("axle"), member, step.axleRoom() / 2));
                    }
                }
            });
        });
        return pairs;
    }

    private int index(String part) {
        return ApertureRequirements.indices(members, part).get(0);
    }
}
