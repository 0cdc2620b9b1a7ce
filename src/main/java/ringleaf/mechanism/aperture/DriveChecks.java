// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Place;
import ringleaf.part.Words;
import ringleaf.tooth.ContactPath;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.SectorReach;
import ringleaf.tooth.ShiftChoice;
import ringleaf.tooth.ToothForm;

/** Checks of sector, pinion and servo calculated by the relations of involute teeth. */
final class DriveChecks {
    /** Least contact ratio that runs on without a gap, and the one below which it is poor; common practice. */
    private static final double LEAST_RATIO = 1.0;

    static final double GOOD_RATIO = 1.2;
    private static final String SERVO = "servo";
    private static final String RING = "drive-ring";
    private static final List<String> PINION_AND_RING = List.of("pinion", RING);

    private final ApertureDesign design;
    private final PinionPlan plan;
    private final ServoTorque torque;

    DriveChecks(ApertureDesign design, PinionPlan plan, ServoTorque torque) {
        this.design = design;
        this.plan = plan;
        this.torque = torque;
    }

    List<Finding> all() {
        List<Finding> found = new ArrayList<>();
        String servo = plan.servo().name();
        found.add(engaged());
        found.add(reaches());
        found.add(Finding.of("servo-torque")
                .about(SERVO)
                .at(Place.NONE.withDetail(servo))
                .atMost(torque.drive(), plan.servo().torque() / 2, "Nmm")
                .inWords("estimate: " + torque.range() + "; lying flat, blades pressed together by weight and bending,"
                        + " against half the stall torque. A stalled servo strips teeth and bends pins: stop it in"
                        + " software before the stops"));
        teeth(found, "pinion", plan.pinion());
        teeth(found, RING, plan.sector());
        mesh(found, PINION_AND_RING, plan.pair().contact());
        plan.stepUp().ifPresent(step -> {
            List<String> both = List.of("servo-gear", "step-wheel");
            teeth(found, both.get(0), step.servoGear());
            teeth(found, both.get(1), step.wheel());
            mesh(found, both, step.pair().contact());
            // Axles do not lean as a ring does: any room at tips and flanks will do.
            found.add(tips(both, step.pair(), 0));
            found.add(backlash(both, step.pair(), 0));
        });
        ServoMount mount = design.mount().orElseThrow();
        found.add(Finding.of("servo-mounts")
                .about(SERVO, "base-plate")
                .at(Place.NONE.withDetail(servo))
                .atLeast(mount.standoff(), 0, "mm")
                .inWords("way from the base's back to the " + (mount.hasPlate() ? "servo plate" : "servo's ears")
                        + ", which standoffs or packing fill; below 0 the servo would stand in the base"));
        if (mount.horn() && !mount.hasPlate() && plan.stepUp().isEmpty()) {
            found.add(earsBesideHorn(mount));
        }
        found.add(
                Finding.of("clearance")
                        .about("pinion", "base-plate")
                        .room(mount.pinionBottom() - design.stack().baseTop(), ApertureRequirements.APART, "mm")
                        .inWords(
                                "room below the pinion; thinner stock for the gear, or more clearances.blade-play, makes more"));
        double play = design.rim().play();
        found.add(tips(PINION_AND_RING, plan.pair(), play));
        found.add(backlash(
                PINION_AND_RING, plan.pair(), 2 * play * Math.tan(plan.pair().workingAngle())));
        return found;
    }

    /** Room from tips to roots, against how far one of the two can lean into the other. */
    private static Finding tips(List<String> both, GearPair pair, double lean) {
        return Finding.of("tip-clearance")
                .about(both)
                .room(Math.min(pair.pinionTipClearance(), pair.gearTipClearance()), lean, "mm")
                .inWords("room from the tips of the teeth to the roots of the other"
                        + (lean > 0 ? ", against what the ring can lean towards the pinion" : ""));
    }

    private static Finding backlash(List<String> both, GearPair pair, double taken) {
        return Finding.of("backlash")
                .about(both)
                .room(pair.backlash(), taken, "mm")
                .inWords("play of the teeth" + (taken > 0 ? ", against what the ring's radial play takes up" : ""));
    }

    /** What is left of the base between the hole in which a horn turns and the screws of ears that sit on the base. */
    private Finding earsBesideHorn(ServoMount mount) {
        double apart = Double.POSITIVE_INFINITY;
        for (Point ear : plan.servoOutline().earHoles()) {
            apart = Math.min(apart, ear.minus(plan.centre()).norm());
        }
        double web = apart - plan.servo().holeDiameter() / 2 - mount.throughRadius();
        return Finding.of("minimum-web")
                .about("base-plate")
                .at(Place.NONE.withDetail("beside the servo's horn"))
                .atLeast(web, design.spec().plate().leastWeb(), "mm")
                .inWords(
                        "base left between the hole in which the horn turns and the screws of the servo's ears; a thinner"
                                + " base or plate leaves room for a servo plate behind it");
    }

    private Finding engaged() {
        double pitch = plan.sector().pitchAngle();
        ContactPath contact = plan.pair().contact();
        // The pinion's tips reach further round than the path of contact, so the larger of the two decides.
        double mesh = Math.max(
                SectorReach.of(plan.pair(), design.rim().rim()).halfAngle(),
                Math.max(contact.gearAngleBefore(), contact.gearAngleAfter()));
        double used = Math.abs(plan.travel()) + 2 * design.rim().overTravel() + 2 * mesh;
        double spare = (plan.spaces() + 1 - used / pitch) / 2;
        int asked = ((DriveSpec.Pinion) design.spec().drive()).spareTeeth();
        return Finding.of("mesh-at-stops")
                .about(PINION_AND_RING)
                .at(Place.state(-1, "ring against either stop"))
                .atLeast(spare, asked, "1")
                .inWords("tooth spaces left at each end beyond the path of contact and the pinion's tips");
    }

    private Finding reaches() {
        double needed = plan.servoTravel();
        double travel = plan.servo().travel();
        String message = "turn of the servo from open to closed against the servo's travel";
        if (needed > travel) {
            int teeth = (int) Math.ceil(Math.abs(plan.travel()) * plan.sector().teeth() / travel);
            message += "; a servo of " + Words.degrees(needed, 0) + ", a pinion of " + teeth
                    + " teeth, by: step-up, or drive-pin: lever would reach";
        }
        return Finding.of("servo-reaches")
                .about(SERVO)
                .at(Place.NONE.withDetail(plan.servo().name()))
                .atMost(Math.toDegrees(needed), Math.toDegrees(travel), "deg")
                .inWords(message);
    }

    private static void mesh(List<Finding> found, List<String> both, ContactPath contact) {
        found.add(Finding.of("contact-ratio")
                .about(both)
                .atLeast(contact.usableRatio(), LEAST_RATIO, GOOD_RATIO, "1")
                .inWords("pairs of teeth in contact on average"));
        double past = Math.max(contact.before() - contact.beforeLimit(), contact.after() - contact.afterLimit());
        found.add(Finding.of("interference")
                .about(both)
                .orWarn()
                .atMost(past, 0, "mm")
                .inWords(
                        contact.isClean()
                                ? "tips meet the mate's involute only; what is below 0 is left of it on the line of action"
                                : "a tip reaches past the mate's involute; more teeth or profile shift clear it"));
    }

    private static void teeth(List<Finding> found, String which, ToothForm form) {
        found.add(Finding.of("undercut")
                .about(which)
                .orWarn()
                .atLeast(form.shift(), form.leastShift(), "1")
                .inWords("profile shift of the " + form.teeth()
                        + " teeth; with less than the limit the rack would undercut" + " their roots"));
        found.add(Finding.of("tip-thickness")
                .about(which)
                .atLeast(form.tipThickness() / form.module(), 0, ShiftChoice.LEAST_TIP, "1")
                .inWords("width of a tooth's tip in modules"));
    }
}
