// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** The greatest circle about a centre that meets no leaf has the diameter asked for. */
final class OpensCheck extends Check {
    private final Requirement.OpensTo required;

    OpensCheck(Scene scene, Requirement.OpensTo required) {
        super(scene);
        this.required = required;
    }

    /** The nearest point of any leaf to the centre, or the centre when a leaf lies over it; null without leaves. */
    static Measure nearestLeaf(Scene scene, Pose pose, Point centre) {
        double least = Double.POSITIVE_INFINITY;
        Place place = Place.NONE;
        for (int i = 0; i < pose.shapes.length; i++) {
            Slab slab = scene.slabs.get(i);
            if (!slab.leafy) {
                continue;
            }
            Shape shape = pose.shapes[i];
            Point at = shape.contains(centre.x(), centre.y()) ? centre : shape.nearestTo(centre.x(), centre.y());
            if (at.distance(centre) < least - scene.hair) {
                least = at.distance(centre);
                place = Place.of(scene.assembly.members().get(slab.member).name(), at);
            }
        }
        return place == Place.NONE ? null : new Measure(pose.state, 0, 2 * least, 0, place);
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Measure found = nearestLeaf(scene, pose, required.centre());
        if (found == null) {
            return null;
        }
        figures.inscribed = found.value();
        if (pose.state != required.state()) {
            return null;
        }
        double margin = required.tolerance() - Math.abs(found.value() - required.diameter());
        return new Measure(pose.state, margin, found.value(), required.diameter(), found.place());
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        if (worst == null) {
            findings.add(still(required.check(), List.of())
                    .unmeasured(Finding.Relation.ABOUT, required.diameter(), "mm", false)
                    .says("verify.none-opens"));
            return;
        }
        findings.add(on(required.check(), worst)
                .about(worst.value(), worst.limit(), required.tolerance(), "mm")
                .says(
                        "verify.opens",
                        Words.mm(worst.value()),
                        Words.mm(worst.limit()),
                        Words.mm(required.tolerance()),
                        scene.judged()));
    }
}
