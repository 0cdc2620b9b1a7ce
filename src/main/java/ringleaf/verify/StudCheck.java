// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** Round studs stand clear of what passes by them at any height; exact on lines and arcs. */
final class StudCheck extends Check {
    private final Requirement.StudsClear required;

    StudCheck(Scene scene, Requirement.StudsClear required) {
        super(scene);
        this.required = required;
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Measure worst = null;
        for (Requirement.Stud stud : required.studs()) {
            int body = body(stud.member());
            Point at = pose.bodies[body].apply(stud.at());
            for (int i = 0; i < pose.shapes.length; i++) {
                int member = scene.slabs.get(i).member;
                if (body(member) == body || !required.members().contains(member)) {
                    continue;
                }
                Shape shape = pose.shapes[i];
                double edge = shape.distanceFromOutline(at.x(), at.y());
                double room = (shape.contains(at.x(), at.y()) ? -edge : edge) - stud.radius();
                double margin = room - required.clearance();
                if (worst == null || margin < worst.margin() - scene.hair) {
                    Place place = new Place(both(stud.member(), member), at);
                    worst = new Measure(pose.state, margin, room, required.clearance(), place);
                }
            }
        }
        return worst;
    }

    private int body(int member) {
        return scene.assembly.members().get(member).body();
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        if (worst == null) {
            findings.add(still(required.check(), List.of())
                    .unmeasured(Finding.Relation.AT_LEAST, required.clearance(), "mm", true)
                    .says("verify.none-studs"));
            return;
        }
        boolean under = worst.value() < -scene.tolerance;
        findings.add(on(required.check(), worst)
                .room(worst.value(), worst.limit(), "mm")
                .says(
                        "verify.stud-room",
                        required.studs().size(),
                        under,
                        Words.mm(under ? -worst.value() : Math.max(0, worst.value())),
                        Words.mm(worst.limit()),
                        scene.judged()));
    }
}
