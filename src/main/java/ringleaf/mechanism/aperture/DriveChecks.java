package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Status;
import ringleaf.part.Words;
import ringleaf.tooth.ContactPath;
import ringleaf.tooth.SectorReach;
import ringleaf.tooth.ShiftChoice;
import ringleaf.tooth.ToothForm;

/** Checks of sector, pinion and servo by the relations of involute teeth. */
final class DriveChecks {
    /** Least contact ratio that runs on without a gap, and the one below which it is poor; common practice. */
    private static final double LEAST_RATIO = 1.0;

    static final double GOOD_RATIO = 1.2;
    private static final double HAIR = 1e-6;

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
        found.add(engaged());
        found.add(reaches());
        found.add(Finding.atMost(
                "servo-torque",
                torque.drive(),
                plan.servo().torque() / 2,
                "Nmm",
                plan.servo().name(),
                "estimate: " + torque.range() + "; lying flat, blades pressed together by weight and bending, against"
                        + " half the stall torque. A stalled servo strips teeth and bends pins: stop it in software"
                        + " before the stops"));
        teeth(found, "pinion", plan.pinion());
        teeth(found, "sector", plan.sector());
        mesh(found, "pinion and sector", plan.pair().contact());
        plan.stepUp().ifPresent(step -> {
            teeth(found, "servo gear", step.servoGear());
            teeth(found, "step wheel", step.wheel());
            mesh(found, "servo gear and step wheel", step.pair().contact());
        });
        found.add(Finding.atLeast(
                "servo-mounts",
                design.mount().orElseThrow().standoff() + HAIR,
                0,
                "mm",
                plan.servo().name(),
                "way from the base's back to the servo's ears or plate; below 0 the ears would stand in the base"));
        found.add(Finding.atLeast(
                "clearance",
                design.mount().orElseThrow().pinionBottom() - design.stack().baseTop() + HAIR,
                ApertureRequirements.APART,
                "mm",
                "base-plate and pinion",
                "room below the pinion; thinner stock for the gear, or more clearances.blade-play, makes more"));
        found.add(Finding.atLeast(
                "tip-clearance",
                Math.min(plan.pair().pinionTipClearance(), plan.pair().gearTipClearance())
                        - design.rim().play()
                        + HAIR,
                0,
                "mm",
                "pinion and sector",
                "tip to root when the ring leans against its wall"));
        double taken = 2 * design.rim().play() * Math.tan(plan.pair().workingAngle());
        found.add(Finding.atLeast(
                "backlash",
                plan.pair().backlash() + HAIR,
                taken,
                "mm",
                "pinion and sector",
                "play of the teeth, against what the ring's radial play takes up"));
        return found;
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
        return Finding.atLeast(
                "mesh-at-stops",
                spare + HAIR,
                asked,
                "1",
                "both ends of the travel",
                "tooth spaces left at each end beyond the path of contact and the pinion's tips");
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
        return Finding.atMost(
                "servo-reaches",
                Math.toDegrees(needed) - HAIR,
                Math.toDegrees(travel),
                "deg",
                plan.servo().name(),
                message);
    }

    private void mesh(List<Finding> found, String which, ContactPath contact) {
        double ratio = contact.usableRatio();
        found.add(new Finding(
                "contact-ratio",
                ratio < LEAST_RATIO ? Status.FAIL : ratio < GOOD_RATIO ? Status.WARN : Status.PASS,
                ratio,
                ratio < LEAST_RATIO ? LEAST_RATIO : GOOD_RATIO,
                "1",
                which,
                "pairs of teeth in contact on average"));
        double past = Math.max(contact.before() - contact.beforeLimit(), contact.after() - contact.afterLimit());
        found.add(new Finding(
                "interference",
                contact.isClean() ? Status.PASS : Status.WARN,
                Math.max(0, past),
                0,
                "mm",
                which,
                contact.isClean()
                        ? "tips meet the mate's involute only"
                        : "a tip reaches past the mate's involute; more teeth or profile shift clear it"));
    }

    private void teeth(List<Finding> found, String which, ToothForm form) {
        found.add(new Finding(
                "undercut",
                form.shift() + HAIR >= form.leastShift() ? Status.PASS : Status.WARN,
                form.shift(),
                form.leastShift(),
                "1",
                which,
                "profile shift against the least that keeps the root from being undercut"));
        double tip = form.tipThickness() / form.module();
        found.add(new Finding(
                "tip-thickness",
                tip >= ShiftChoice.LEAST_TIP ? Status.PASS : tip > 0 ? Status.WARN : Status.FAIL,
                tip,
                ShiftChoice.LEAST_TIP,
                "1",
                which,
                "width of a tooth's tip in modules"));
    }
}
