// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/**
 * Where members lie over one another, seen along the axis, the upper one keeps room above the lower one. What rides on
 * a leaf is looked at with the leaf on the ceiling of its room when it lies below, and on the floor when it lies above;
 * leaves themselves are told by their order and count.
 */
final class AboveCheck extends Check {
    private final Requirement.StaysAbove required;

    AboveCheck(Scene scene, Requirement.StaysAbove required) {
        super(scene);
        this.required = required;
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Measure worst = null;
        for (Requirement.Above pair : required.pairs()) {
            Measure one = measure(pose, pair);
            if (one != null && (worst == null || one.margin() < worst.margin() - scene.hair)) {
                worst = one;
            }
        }
        return worst;
    }

    private Measure measure(Pose pose, Requirement.Above pair) {
        double leeway = scene.leeway(pair.upper())[0] + scene.leeway(pair.lower())[1];
        Measure worst = null;
        double covered = 0;
        for (Slab upper : scene.solid(pair.upper())) {
            for (Slab lower : scene.solid(pair.lower())) {
                double shared = pose.shared(scene, upper, lower);
                if (shared == 0) {
                    continue;
                }
                covered += shared;
                double gap = upper.zFrom - lower.zTo - leeway;
                double margin = gap > scene.tolerance ? gap - pair.least() : Math.min(gap, -scene.tolerance);
                if (worst == null || margin < worst.margin()) {
                    Place place = new Place(both(pair.upper(), pair.lower()), pose.nearBoth(scene, upper, lower));
                    worst = new Measure(pose.state, margin, gap, pair.least(), place);
                }
            }
        }
        if (covered < pair.area()) {
            Place place = new Place(both(pair.upper(), pair.lower()), null);
            return new Measure(pose.state, Double.NEGATIVE_INFINITY, covered, pair.area(), place);
        }
        return worst;
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        if (worst == null) {
            findings.add(still(required.check(), List.of())
                    .unmeasured(Finding.Relation.AT_LEAST, Double.NaN, "mm", true)
                    .says("verify.none-over"));
            return;
        }
        String upper = worst.place().members().get(0);
        String lower = worst.place().members().get(1);
        Finding.Draft draft = on(required.check(), worst);
        if (worst.margin() == Double.NEGATIVE_INFINITY) {
            findings.add(draft.atLeast(worst.value(), worst.limit(), "mm2")
                    .says("verify.barely-over", upper, Words.area(worst.value()), lower));
            return;
        }
        boolean deep = worst.value() < -scene.tolerance;
        findings.add(draft.room(worst.value(), worst.limit(), "mm")
                .says(
                        "verify.above",
                        deep,
                        upper,
                        lower,
                        Words.mm(deep ? -worst.value() : Math.max(0, worst.value())),
                        Words.mm(worst.limit()),
                        scene.judged()));
    }
}
