// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** Members stay within a circle about the origin, all round or but for a lobe; exact on lines and arcs. */
final class RoundCheck extends Check {
    private final Requirement.FitsRound required;

    RoundCheck(Scene scene, Requirement.FitsRound required) {
        super(scene);
        this.required = required;
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        double most = -1;
        Place place = Place.NONE;
        for (int i = 0; i < pose.shapes.length; i++) {
            int member = scene.slabs.get(i).member;
            if (!required.members().contains(member)) {
                continue;
            }
            Point far = farthest(pose.shapes[i]);
            if (far != null && far.norm() > most + scene.hair) {
                most = far.norm();
                place = Place.of(name(member), far);
            }
        }
        if (most < 0) {
            return null;
        }
        return new Measure(pose.state, required.diameter() - 2 * most, 2 * most, required.diameter(), place);
    }

    /** The farthest point that counts; null when there is none. */
    private Point farthest(Shape shape) {
        if (required.lobe().isEmpty()) {
            return shape.farthestFrom(0, 0);
        }
        Requirement.Lobe lobe = required.lobe().get();
        return shape.farthestWithin(lobe.direction() + Math.PI, Math.PI - lobe.half());
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        if (worst == null) {
            findings.add(still(required.check(), List.of())
                    .unmeasured(Finding.Relation.AT_MOST, required.diameter(), "mm", true)
                    .says("verify.none-round"));
            return;
        }
        findings.add(on(required.check(), worst)
                .atMost(worst.value(), worst.limit(), "mm")
                .says(
                        "verify.round",
                        worst.place().who(),
                        Words.mm(worst.value()),
                        Words.mm(worst.limit()),
                        required.lobe().isPresent(),
                        scene.judged()));
    }
}
