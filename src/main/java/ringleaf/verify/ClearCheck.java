// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** No member reaches into an area. */
final class ClearCheck extends Check {
    private final Requirement.KeepsClear required;
    private final Shape area;

    ClearCheck(Scene scene, Requirement.KeepsClear required) {
        super(scene);
        this.required = required;
        this.area = Shape.of(required.area());
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        if (!required.states().isEmpty() && !required.states().contains(pose.state)) {
            return null;
        }
        double least = Double.POSITIVE_INFINITY;
        Slab nearest = null;
        Point at = Point.ORIGIN;
        for (int i = 0; i < pose.shapes.length; i++) {
            Shape shape = pose.shapes[i];
            double gap = area.gapTo(shape);
            if (gap > 0 && gap >= least) {
                continue;
            }
            Reach reach = area.isDisc() ? fromDisc(shape) : Reach.of(area, shape, least, scene.tolerance);
            if (reach.distance() < least - scene.hair) {
                least = reach.distance();
                nearest = scene.slabs.get(i);
                at = reach.at();
            }
        }
        if (nearest == null) {
            return null;
        }
        return new Measure(pose.state, least, least, 0, Place.of(name(nearest.member), at));
    }

    /** Exact: the nearest point of a shape to the centre of a round area, less the radius. */
    private Reach fromDisc(Shape shape) {
        Piece circle = area.pieces[0];
        Point at = shape.nearestTo(circle.cx, circle.cy);
        if (shape.contains(circle.cx, circle.cy)) {
            return new Reach(-circle.r, new Point(circle.cx, circle.cy));
        }
        return new Reach(Math.hypot(at.x() - circle.cx, at.y() - circle.cy) - circle.r, at);
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        if (worst == null) {
            findings.add(still(required.check(), List.of())
                    .unmeasured(Finding.Relation.AT_LEAST, 0, "mm", true)
                    .says("verify.none-clear"));
            return;
        }
        String who = worst.place().who();
        boolean in = worst.margin() < -scene.tolerance;
        findings.add(on(required.check(), worst)
                .atLeast(worst.value(), worst.limit(), "mm")
                .says(
                        "verify.clear",
                        in,
                        who,
                        Words.mm(in ? -worst.value() : Math.max(0, worst.value())),
                        scene.judged()));
    }
}
