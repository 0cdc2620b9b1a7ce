// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** Members lie on one another in state 0: there are faces that meet, over an area that both have. */
final class RestsCheck extends Check {
    private final Requirement.Rests required;

    RestsCheck(Scene scene, Requirement.Rests required) {
        super(scene);
        this.required = required;
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Measure worst = null;
        for (Requirement.Resting pair : pose.state == 0 ? required.pairs() : List.<Requirement.Resting>of()) {
            Measure one = measure(pose, pair);
            worst = worst == null || one.margin() < worst.margin() ? one : worst;
        }
        return worst;
    }

    /** The faces of the two that are nearest to meeting. */
    private Measure measure(Pose pose, Requirement.Resting pair) {
        double least = Double.NaN;
        double area = 0;
        Point where = null;
        for (Slab upper : scene.solid(pair.upper())) {
            for (Slab lower : scene.solid(pair.lower())) {
                double gap = upper.zFrom - lower.zTo;
                boolean farther = Math.abs(gap) > Math.abs(least) + scene.hair;
                double shared = farther ? 0 : pose.shared(scene, upper, lower);
                if (shared > 0) {
                    area = Math.abs(gap - least) <= scene.hair ? area + shared : shared;
                    least = gap;
                    where = pose.nearBoth(scene, upper, lower);
                }
            }
        }
        Place place = new Place(both(pair.upper(), pair.lower()), where);
        return area < pair.area()
                ? new Measure(0, Double.NEGATIVE_INFINITY, area, pair.area(), place)
                : new Measure(0, -Math.abs(least), least, 0, place);
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        if (worst == null) {
            return;
        }
        String upper = worst.place().members().get(0);
        String lower = worst.place().members().get(1);
        Finding.Draft draft = still(required.check(), worst.place().members())
                .at(Finding.Place.NONE.withPoint(worst.place().at()));
        if (worst.margin() == Double.NEGATIVE_INFINITY) {
            findings.add(draft.atLeast(worst.value(), worst.limit(), "mm2")
                    .says("verify.barely-rests", upper, Words.area(worst.value()), lower));
            return;
        }
        draft.about(worst.value(), 0, 0, "mm");
        findings.add(
                Math.abs(worst.value()) <= scene.tolerance
                        ? draft.says("verify.rests", upper, lower)
                        : draft.says(
                                "verify.rests-not",
                                upper,
                                worst.value() > 0,
                                Words.mm(Math.abs(worst.value())),
                                lower));
    }
}
