// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Part;
import ringleaf.part.Requirement;
import ringleaf.part.Saying;

/** Enough material stands between the contours of a part, and at its necks; needs no motion. */
final class WebCheck extends Check {
    private final Requirement.LeastWeb required;
    private Web least;

    WebCheck(Scene scene, Requirement.LeastWeb required) {
        super(scene);
        this.required = required;
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        return null;
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Part part = part();
        if (part == null) {
            findings.add(still(required.check(), required.part())
                    .unmeasured(Finding.Relation.AT_LEAST, required.web(), "mm", false)
                    .says("verify.no-part", required.part()));
        } else {
            report(part, least, findings);
        }
    }

    @Override
    void still() {
        Part part = part();
        if (part == null) {
            return;
        }
        least = new Web(Double.POSITIVE_INFINITY, Point.ORIGIN, Saying.NONE);
        int level = 0;
        for (Layer layer : part.layers()) {
            level++;
            for (Region region : layer.regions()) {
                Web web = between(region);
                Web neck = Necks.narrowest(region, required.web(), scene.tolerance);
                web = neck != null && neck.width() < web.width() ? neck : web;
                if (web.width() < least.width() - scene.hair) {
                    Saying what = Saying.of("verify.web-place", part.layers().size() > 1, level, web.what());
                    least = new Web(web.width(), web.at(), what);
                }
            }
        }
    }

    private void report(Part part, Web least, List<Finding> findings) {
        if (Double.isInfinite(least.width())) {
            findings.add(still(required.check(), part.name())
                    .unmeasured(Finding.Relation.AT_LEAST, required.web(), "mm", true)
                    .says("verify.no-neck", part.name(), Words.mm(required.web())));
            return;
        }
        findings.add(still(required.check(), part.name())
                .at(Finding.Place.NONE.withDetail(least.what()).withPoint(least.at()))
                .room(least.width(), required.web(), "mm")
                .says("verify.web", least.width() < 0, part.name(), Words.mm(least.width()), Words.mm(required.web())));
    }

    /** The thinnest place between two contours of a region; infinite when there is only one. */
    private Web between(Region region) {
        Shape shape = Shape.of(region);
        Web least = new Web(Double.POSITIVE_INFINITY, Point.ORIGIN, Saying.NONE);
        for (int i = 0; i < shape.contours(); i++) {
            Shape first = shape.filled(i);
            for (int j = i + 1; j < shape.contours(); j++) {
                Shape second = shape.filled(j);
                Nearest nearest = new Nearest(least.width());
                nearest.between(first, second);
                Piece p = second.pieces[0];
                Piece q = first.pieces[0];
                boolean misplaced = i == 0
                        ? !first.encloses(0, p.x0, p.y0)
                        : first.encloses(0, p.x0, p.y0) || second.encloses(0, q.x0, q.y0);
                if (misplaced && nearest.distance > scene.hair) {
                    return new Web(-1, new Point(p.x0, p.y0), Saying.of("verify.hole", j));
                }
                if (nearest.distance < least.width()) {
                    Saying what = Saying.of("verify.between-holes", i == 0, i, j);
                    least = new Web(nearest.distance, nearest.middle(), what);
                }
            }
        }
        return least;
    }

    private Part part() {
        for (Member member : scene.assembly.members()) {
            if (member.part().name().equals(required.part())) {
                return member.part();
            }
        }
        return null;
    }
}
