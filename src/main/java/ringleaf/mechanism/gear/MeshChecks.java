package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Status;
import ringleaf.part.Words;
import ringleaf.tooth.ContactPath;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.InternalForm;
import ringleaf.tooth.InternalPair;
import ringleaf.tooth.ToothForm;

/** Checks of one mesh: contact, interference, clearance, backlash. */
final class MeshChecks {
    /** Least contact ratio that runs on without a gap, and the one below which it is poor; common practice. */
    private static final double LEAST_RATIO = 1.0;

    private static final double GOOD_RATIO = 1.2;
    /** Least tip clearance in modules; common practice, no source. */
    private static final double TIP_CLEARANCE = 0.15;

    private static final double HAIR = 1e-6;
    /** Teeth more than which no ring needs to clear its gear. */
    private static final int MORE = 60;

    private final Stage stage;
    private final Mesh mesh;
    private final String where;
    private final TrainSpec spec;
    private final List<Finding> found = new ArrayList<>();

    MeshChecks(Stage stage, String prefix, TrainSpec spec) {
        this.stage = stage;
        this.mesh = stage.mesh();
        this.where = prefix + "mesh";
        this.spec = spec;
    }

    /** Whether a mesh carries on from tooth to tooth and its tips run into nothing; what fails else is told by name. */
    static boolean runs(Mesh mesh) {
        boolean clean = mesh instanceof Mesh.Outer outer
                ? outer.pair().contact().isClean()
                : ((Mesh.Inner) mesh).pair().isClean() && ((Mesh.Inner) mesh).pair().trochoidMargin() >= 0;
        return clean && mesh.contactRatio() >= LEAST_RATIO && mesh.tipClearance() >= 0;
    }

    List<Finding> all() {
        double ratio = mesh.contactRatio();
        found.add(new Finding(
                "contact-ratio",
                ratio < LEAST_RATIO ? Status.FAIL : ratio < GOOD_RATIO ? Status.WARN : Status.PASS,
                ratio,
                ratio < LEAST_RATIO ? LEAST_RATIO : GOOD_RATIO,
                "1",
                where,
                "pairs of teeth in contact on average"));
        if (mesh instanceof Mesh.Outer outer) {
            interference(outer.pair());
        } else if (mesh instanceof Mesh.Inner inner) {
            involute(inner.pair());
            trochoid(inner.pair());
            trimming(inner.pair());
        }
        double clearance = mesh.tipClearance() / mesh.module();
        found.add(new Finding(
                "tip-clearance",
                clearance + HAIR >= TIP_CLEARANCE ? Status.PASS : clearance >= 0 ? Status.WARN : Status.FAIL,
                clearance,
                clearance >= 0 ? TIP_CLEARANCE : 0,
                "1",
                where,
                "tip to root in modules, the lesser of both gears"));
        backlash();
        return found;
    }

    private void interference(GearPair pair) {
        ContactPath contact = pair.contact();
        double past = Math.max(contact.before() - contact.beforeLimit(), contact.after() - contact.afterLimit());
        boolean tangent = contact.gearTipPastTangent() <= HAIR && contact.pinionTipPastTangent() <= HAIR;
        found.add(new Finding(
                "interference",
                contact.isClean() ? Status.PASS : Status.FAIL,
                Math.max(0, past),
                0,
                "mm",
                where,
                contact.isClean()
                        ? "tips meet the mate's involute only"
                        : "a tip reaches past the mate's involute"
                                + (tangent ? " into its root curve" : " and past the base tangent point")
                                + "; tips: shortened, more teeth or profile shift clear it"));
    }

    /** The first of the three internal conditions, told for teeth of full height as handbooks do. */
    private void involute(InternalPair pair) {
        double margin = MeshSolver.fullHeightMargin(pair);
        double now = pair.involuteMargin();
        double shift = MeshSolver.clearingShift(pair);
        String advice = Double.isNaN(shift)
                ? ""
                : "; a profile shift of the ring of " + Words.number(Math.ceil(1e4 * shift) / 1e4, 4) + " clears it";
        boolean shortened = pair.isClean();
        String message;
        if (margin >= 0) {
            message = "the ring's tips meet the gear outside its base circle";
        } else if (shortened) {
            message = "at full height the ring's tips would miss the involute of the gear; they are shortened by "
                    + Words.mm(pair.ring().tipRadius() - fullTip(pair)) + " and so clear it" + advice;
        } else {
            message = "the ring's tips reach past the involute of the gear" + advice + ", and so does tips: shortened";
        }
        found.add(new Finding(
                "involute-interference",
                now >= 0 && margin >= 0 ? Status.PASS : shortened ? Status.WARN : Status.FAIL,
                margin,
                0,
                "1",
                where,
                message));
        if (!shortened) {
            found.add(new Finding(
                    "interference",
                    Status.FAIL,
                    Math.max(
                            pair.ringTipLimit() - pair.ring().tipRadius(),
                            pair.pinion().tipRadius() - pair.pinionTipLimit()),
                    0,
                    "mm",
                    where,
                    "a tip meets the mate where it is no involute any more; tips: shortened clears it"));
        }
    }

    private static double fullTip(InternalPair pair) {
        double module = pair.ring().module();
        return module * (pair.ring().teeth() / 2.0 - pair.ring().rack().addendum() + pair.ring().shift());
    }

    private void trochoid(InternalPair pair) {
        double margin = pair.trochoidMargin();
        boolean never = Double.isInfinite(margin);
        found.add(new Finding(
                "trochoid-interference",
                margin >= 0 ? Status.PASS : Status.FAIL,
                never ? 0 : Math.toDegrees(margin),
                0,
                "deg",
                where,
                never
                        ? "the tips never come near each other on their way out"
                        : "room between the tips on their way out of mesh"
                                + (margin >= 0 ? "" : "; a ring of " + clearing(pair) + " teeth clears them")));
    }

    /** Fewest teeth of a ring, the rest as it is, whose tips clear the gear's on their way out. */
    private static int clearing(InternalPair pair) {
        InternalForm ring = pair.ring();
        for (int teeth = ring.teeth() + 1; teeth < ring.teeth() + MORE; teeth++) {
            InternalForm larger = InternalForm.of(ring.module(), teeth, ring.shift(), 0, ring.rack());
            ToothForm pinion = pair.pinion().withThinning(0);
            if (InternalPair.of(pinion, larger).withCleanTips().trochoidMargin() >= 0) {
                return teeth;
            }
        }
        return ring.teeth() + MORE;
    }

    private void trimming(InternalPair pair) {
        double margin = pair.trimmingMargin();
        boolean never = Double.isInfinite(margin);
        found.add(new Finding(
                "trimming",
                margin >= 0 ? Status.PASS : Status.WARN,
                never ? 0 : Math.toDegrees(margin),
                0,
                "deg",
                where,
                margin >= 0
                        ? "the gear can be put into the ring from the side"
                        : "the gear goes into the ring along the axis only, not from the side"));
    }

    private void backlash() {
        double taken = 2 * spec.material().repeatability();
        double backlash = mesh.backlash();
        found.add(new Finding(
                "backlash",
                backlash < -HAIR ? Status.FAIL : backlash + HAIR < taken ? Status.WARN : Status.PASS,
                backlash,
                taken,
                "mm",
                where,
                "play along the rolling circles, against what " + spec.material().process()
                        + " may misplace the edges of both gears by; the last gear turns "
                        + Words.degrees(mesh.drivenPlay(), 2) + " in it"));
    }

}
