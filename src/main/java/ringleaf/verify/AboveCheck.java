package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.LeafFamily;
import ringleaf.part.Requirement;

/**
 * Where members lie over one another, seen along the axis, the upper one keeps room above the lower one. What rides on
 * a leaf is looked at with the leaf on the ceiling of its room when it lies below, and on the floor when it lies above;
 * leaves themselves are told by their order and count.
 */
final class AboveCheck extends Check {
    private final Requirement.StaysAbove required;
    private final List<List<Slab>> slabs = new ArrayList<>();

    AboveCheck(Scene scene, Requirement.StaysAbove required) {
        super(scene);
        this.required = required;
        for (int i = 0; i < scene.assembly.members().size(); i++) {
            slabs.add(new ArrayList<>());
        }
        for (Slab slab : scene.slabs) {
            if (!slab.leafy) {
                slabs.get(slab.member).add(slab);
            }
        }
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Measure worst = null;
        for (Requirement.Above pair : required.pairs()) {
            double drop = drop(pair.upper());
            double rise = rise(pair.lower());
            for (Slab upper : slabs.get(pair.upper())) {
                for (Slab lower : slabs.get(pair.lower())) {
                    double gap = upper.zFrom - drop - lower.zTo - rise;
                    double margin = gap > scene.tolerance ? gap - pair.least() : Math.min(gap, -scene.tolerance);
                    boolean matters = worst == null || margin < worst.margin() - scene.hair;
                    Point at = matters ? shared(pose, upper, lower) : null;
                    if (at != null) {
                        Place place = new Place(both(pair.upper(), pair.lower()), at);
                        worst = new Measure(pose.state, margin, gap, pair.least(), place);
                    }
                }
            }
        }
        return worst;
    }

    /** A point that both lie over; null when there is none. */
    private Point shared(Pose pose, Slab upper, Slab lower) {
        Shape a = pose.shapes[scene.slabs.indexOf(upper)];
        Shape b = pose.shapes[scene.slabs.indexOf(lower)];
        if (SharedArea.of(a, b, scene.hair) < scene.tolerance * scene.tolerance) {
            return null;
        }
        return new Point((a.minX + a.maxX) / 2, (a.minY + a.maxY) / 2);
    }

    /** How far a member may go down with the leaf on which it rides, mm. */
    private double drop(int member) {
        Slab leaf = leaf(member);
        return leaf == null ? 0 : leaf.zFrom - family().zFrom();
    }

    /** How far a member may go up likewise, mm. */
    private double rise(int member) {
        Slab leaf = leaf(member);
        return leaf == null ? 0 : family().zTo() - leaf.zTo;
    }

    private LeafFamily family() {
        return scene.assembly.leaves().orElseThrow();
    }

    /** The leaf on whose body a member rides; null when it rides on none. */
    private Slab leaf(int member) {
        int body = scene.assembly.members().get(member).body();
        for (Slab slab : scene.slabs) {
            if (slab.leafy && slab.body == body) {
                return slab;
            }
        }
        return null;
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        if (worst == null) {
            findings.add(still(required.check(), List.of())
                    .unmeasured(Finding.Relation.AT_LEAST, Double.NaN, "mm", true)
                    .says("Nothing lies over one another that has to keep room."));
            return;
        }
        String upper = worst.place().members().get(0);
        String lower = worst.place().members().get(1);
        String message = worst.value() < -scene.tolerance
                ? "The " + upper + " stands " + Words.mm(-worst.value()) + " deep in the " + lower
                : "The " + upper + " keeps " + Words.mm(Math.max(0, worst.value())) + " above the " + lower
                        + " where they are nearest to their limit, and needs " + Words.mm(worst.limit());
        findings.add(on(required.check(), worst)
                .room(worst.value(), worst.limit(), "mm")
                .says(message + scene.judged()));
    }
}
