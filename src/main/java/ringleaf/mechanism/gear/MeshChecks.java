// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import ringleaf.machine.Room;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Draft;
import ringleaf.part.Finding.Place;
import ringleaf.part.Saying;
import ringleaf.part.Words;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.tooth.ContactPath;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.InternalForm;
import ringleaf.tooth.InternalPair;
import ringleaf.tooth.ToothForm;

/** Checks of one mesh: contact, interference, clearance, backlash. */
final class MeshChecks {
    /** Least contact ratio that runs on without a gap, and the one below which it is poor; common practice. */
    private static final double LEAST_RATIO = 1.0;

    static final double GOOD_RATIO = 1.2;
    /** Least tip clearance in modules; common practice, no source. */
    private static final double TIP_CLEARANCE = 0.15;

    /** Teeth more than which no ring needs to clear its gear. */
    private static final int MORE = 60;

    private final Stage stage;
    private final Mesh mesh;
    private final TrainSpec spec;
    private final String[] both;
    private final Place place;
    private final List<Finding> found = new ArrayList<>();

    MeshChecks(Stage stage, TrainSpec spec) {
        this.stage = stage;
        this.mesh = stage.mesh();
        this.spec = spec;
        this.both = new String[] {TrainParts.name(spec, stage.number() - 1), TrainParts.name(spec, stage.number())};
        this.place = spec.isPair() ? Place.NONE : Place.NONE.withDetail(Saying.of("gear.stage", stage.number()));
    }

    /** Whether a mesh carries on from tooth to tooth and its tips run into nothing; what fails else is told by name. */
    static boolean runs(Mesh mesh) {
        boolean clean = mesh instanceof Mesh.Outer outer
                ? outer.pair().contact().isClean()
                : ((Mesh.Inner) mesh).pair().isClean()
                        && ((Mesh.Inner) mesh).pair().trochoidMargin() >= 0;
        return clean && mesh.contactRatio() >= LEAST_RATIO && mesh.tipClearance() >= 0;
    }

    List<Finding> all() {
        found.add(on("contact-ratio")
                .atLeast(mesh.contactRatio(), LEAST_RATIO, GOOD_RATIO, "1")
                .says("gear.contact-ratio"));
        printed();
        if (mesh instanceof Mesh.Outer outer) {
            interference(outer.pair());
        } else if (mesh instanceof Mesh.Inner inner) {
            involute(inner.pair());
            trochoid(inner.pair());
            trimming(inner.pair());
        }
        Room tips = stage.spec().ask().room().tips(mesh);
        found.add(on("tip-clearance")
                .atLeast(mesh.tipClearance(), 0, Math.max(TIP_CLEARANCE * mesh.module(), tips.asked()), "mm")
                .says("gear.tip-clearance", Saying.plain(tips.how())));
        backlash();
        return found;
    }

    /** Fine teeth lose their tips to the width of what is laid; what is left has to carry on. */
    private void printed() {
        PrintedTeeth teeth = PrintedTeeth.of(spec.material());
        if (!teeth.matters()) {
            return;
        }
        double ratio = teeth.contactRatio(mesh);
        found.add(on("contact-ratio-as-made")
                .atLeast(ratio, LEAST_RATIO, "1")
                .says(
                        "gear.contact-ratio-as-made",
                        Figure.mm(teeth.bead()),
                        spec.material().process(),
                        ratio >= LEAST_RATIO ? Saying.NONE : coarser()));
    }

    /** The next module of the series that is coarse enough. */
    private Saying coarser() {
        for (double module : TeethSearch.MODULES) {
            Saying found = module > mesh.module()
                    ? advice("module: " + Words.number(module, 4), v -> v.with(GearFields.MODULE, module))
                    : Saying.NONE;
            if (!found.isEmpty()) {
                return found;
            }
        }
        return Saying.NONE;
    }

    private Draft on(String check) {
        return Finding.of(check).about(both).at(place);
    }

    private void interference(GearPair pair) {
        ContactPath contact = pair.contact();
        double past = Math.max(contact.before() - contact.beforeLimit(), contact.after() - contact.afterLimit());
        boolean tangent = contact.gearTipPastTangent() <= Mesh.SAME && contact.pinionTipPastTangent() <= Mesh.SAME;
        found.add(on("interference")
                .atMost(past, 0, "mm")
                .says(
                        contact.isClean()
                                ? Saying.of("gear.tips-clean")
                                : Saying.of("gear.tip-past-involute", tangent, shortened())));
    }

    /** The first of the three internal conditions, told for teeth of full height as handbooks do. */
    private void involute(InternalPair pair) {
        double margin = MeshSolver.fullHeightMargin(pair);
        boolean shortened = pair.isClean();
        double shift = Math.ceil(1e4 * MeshSolver.clearingShift(pair)) / 1e4;
        Saying advice = margin >= 0 || Double.isNaN(shift)
                ? Saying.NONE
                : advice("driven.profile-shift: " + Words.number(shift, 4), driven(GearFields.PROFILE_SHIFT, shift));
        Saying message;
        if (margin >= 0) {
            message = Saying.of("gear.ring-tips-clean");
        } else if (shortened) {
            message =
                    Saying.of("gear.ring-tips-shortened", Figure.mm(pair.ring().tipRadius() - fullTip(pair)), advice);
        } else {
            message = Saying.of("gear.ring-tips-past-involute", advice, shortened());
        }
        Draft told = on("involute-interference");
        found.add((shortened ? told.orWarn() : told).atLeast(margin, 0, "1").says(message));
        if (!shortened) {
            double past = Math.max(
                    pair.ringTipLimit() - pair.ring().tipRadius(), pair.pinion().tipRadius() - pair.pinionTipLimit());
            found.add(on("interference").atMost(past, 0, "mm").says("gear.tip-off-involute", shortened()));
        }
    }

    private static double fullTip(InternalPair pair) {
        double module = pair.ring().module();
        return module
                * (pair.ring().teeth() / 2.0
                        - pair.ring().rack().addendum()
                        + pair.ring().shift());
    }

    private void trochoid(InternalPair pair) {
        double margin = pair.trochoidMargin();
        if (Double.isInfinite(margin)) {
            found.add(on("trochoid-interference").plain(true).says("gear.tips-never-near"));
            return;
        }
        found.add(on("trochoid-interference")
                .atLeast(Math.toDegrees(margin), 0, "deg")
                .says("gear.tips-on-way-out", margin >= 0 ? Saying.NONE : clearing(pair)));
    }

    /** Fewest teeth of a ring, the rest as it is, whose tips clear the gear's on their way out; none within reach. */
    private Saying clearing(InternalPair pair) {
        InternalForm ring = pair.ring();
        for (int teeth = ring.teeth() + 1; teeth < ring.teeth() + MORE; teeth++) {
            InternalForm larger = InternalForm.of(
                    ring.module(), teeth, ring.shift(), 0, ring.rack().withDeeper(0));
            ToothForm pinion = pair.pinion().withThinning(0).withRack(larger.rack());
            if (InternalPair.of(pinion, larger).withCleanTips().trochoidMargin() >= 0) {
                Saying found = advice("driven.teeth: " + teeth, driven(GearFields.TEETH, teeth));
                if (!found.isEmpty()) {
                    return found;
                }
            }
        }
        return Saying.NONE;
    }

    private void trimming(InternalPair pair) {
        double margin = pair.trimmingMargin();
        found.add(on("trimming")
                .orWarn()
                .atLeast(Math.toDegrees(margin), 0, "deg")
                .says("gear.trimming", margin >= 0));
    }

    private void backlash() {
        double taken = 2 * spec.material().repeatability();
        found.add(on("backlash")
                .atLeast(mesh.backlash(), 0, taken, "mm")
                .says("gear.backlash", spec.material().process(), Figure.degrees(mesh.drivenPlay(), 2)));
    }

    private <T> UnaryOperator<Values> driven(Field<T> field, T value) {
        return Tryout.of(stage, spec.isPair(), GearFields.DRIVEN, field, value);
    }

    /** What clears it, where trying it shows that it does; else nothing. */
    private Saying advice(String typed, UnaryOperator<Values> change) {
        return spec.tryout().passes(change) ? Saying.of("gear.clears", typed) : Saying.NONE;
    }

    private Saying shortened() {
        return advice("tips: shortened", v -> v.with(GearFields.TIPS, "shortened"));
    }
}
