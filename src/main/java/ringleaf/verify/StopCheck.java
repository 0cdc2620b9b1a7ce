// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.FreeTurn;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Requirement;

/** A member is stopped a little past either end of its travel; how far it turns on from there is exact. */
final class StopCheck extends Check {
    /** Turns of more than this count as free, rad. */
    private static final double LOOK = Math.toRadians(30);

    private final Requirement.Stops required;
    private final FreeTurn[] ways = new FreeTurn[2];

    StopCheck(Scene scene, Requirement.Stops required) {
        super(scene);
        this.required = required;
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        boolean end = pose.state == scene.assembly.motion().states() - 1;
        if (pose.state == 0 || end) {
            List<Segment> moving = pieces(pose, required.member(), required.stop());
            List<Segment> still = pieces(pose, required.stop(), required.member());
            ways[end ? 1 : 0] = FreeTurn.of(moving, required.axis(), still, end == required.forward(), 0, LOOK);
        }
        return null;
    }

    /** Outlines of a member in the layers that share a height with the other. */
    private List<Segment> pieces(Pose pose, int member, int other) {
        Member one = scene.assembly.members().get(member);
        Placement place = pose.members[member];
        List<Segment> pieces = new ArrayList<>();
        for (Layer layer : one.part().layers()) {
            boolean meets = false;
            for (Layer a : scene.assembly.members().get(other).part().layers()) {
                meets |= Math.min(a.zTo(), layer.zTo()) - Math.max(a.zFrom(), layer.zFrom()) > scene.hair;
            }
            for (Region region : meets ? layer.regions() : List.<Region>of()) {
                for (Contour contour : region.contours()) {
                    pieces.addAll(contour.placed(place).segments());
                }
            }
        }
        return pieces;
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        int worst = ways[1].angle() > ways[0].angle() ? 1 : 0;
        FreeTurn way = ways[worst];
        int state = worst * (scene.assembly.motion().states() - 1);
        Finding.Place place = Finding.Place.state(state, scene.assembly.motion().label(state));
        List<String> both = both(required.member(), required.stop());
        double most = Math.toDegrees(required.most());
        if (!way.meets()) {
            findings.add(still(required.check(), both)
                    .at(place)
                    .unmeasured(Finding.Relation.AT_MOST, most, "deg", false)
                    .says("verify.no-stop", both.get(0), both.get(1)));
            return;
        }
        double reach = way.at().distance(required.axis());
        findings.add(still(required.check(), both)
                .onOutlines(Math.toDegrees(scene.tolerance / reach))
                .at(place.withPoint(way.at()))
                .atMost(Math.toDegrees(way.angle()), most, "deg")
                .says("verify.stop", both.get(0), Words.degrees(way.angle()), both.get(1)));
    }
}
