// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Placement;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** Members reach over no more than a width along a direction as they are drawn; exact on lines and arcs. */
final class WidthCheck extends Check {
    private final Requirement.FitsWidth required;

    WidthCheck(Scene scene, Requirement.FitsWidth required) {
        super(scene);
        this.required = required;
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        if (pose.state != 0) {
            return null;
        }
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        String low = "";
        String high = "";
        Placement along = Placement.turn(-required.direction().angle());
        for (int i = 0; i < pose.shapes.length; i++) {
            int member = scene.slabs.get(i).member;
            if (!required.members().contains(member)) {
                continue;
            }
            Shape turned = pose.shapes[i].placed(along);
            if (turned.minX < least - scene.hair) {
                least = turned.minX;
                low = name(member);
            }
            if (turned.maxX > most + scene.hair) {
                most = turned.maxX;
                high = name(member);
            }
        }
        if (least > most) {
            return null;
        }
        List<String> ends = new ArrayList<>(List.of(low));
        if (!high.equals(low)) {
            ends.add(high);
        }
        double width = most - least;
        return new Measure(0, required.width() - width, width, required.width(), new Place(ends, null));
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure found = Measure.worst(measures, scene.hair);
        if (found == null) {
            findings.add(still(required.check(), List.of())
                    .unmeasured(Finding.Relation.AT_MOST, required.width(), "mm", true)
                    .says("verify.none-wide"));
            return;
        }
        findings.add(on(required.check(), found)
                .atMost(found.value(), found.limit(), "mm")
                .says(
                        "verify.width",
                        Words.degrees(required.direction().angle()),
                        Words.mm(found.value()),
                        Words.mm(found.limit())));
    }
}
