// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/**
 * Pins reach into their holes far enough, wherever the leaf lies on which they ride. Where a pin stands down from its
 * leaf no other leaf can lie under it, so all that lie over that place lie above, and keep the leaf from rising by their
 * heights; a pin that stands up keeps all of them below.
 */
final class EngagedCheck extends Check {
    private final Requirement.Engages required;

    EngagedCheck(Scene scene, Requirement.Engages required) {
        super(scene);
        this.required = required;
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Measure worst = null;
        for (Requirement.Engaged pair : required.pairs()) {
            Measure one = measure(pose, pair);
            worst = worst == null || one.margin() < worst.margin() - scene.hair ? one : worst;
        }
        return worst;
    }

    private Measure measure(Pose pose, Requirement.Engaged pair) {
        double[] leeway = scene.leeway(pair.pin());
        Slab leaf = scene.leafUnder(pair.pin());
        double stood = 0;
        Point at = null;
        for (Slab pin : scene.solid(pair.pin())) {
            Shape shape = pose.shapes[scene.slabs.indexOf(pin)];
            at = new Point((shape.minX + shape.maxX) / 2, (shape.minY + shape.maxY) / 2);
            double others = leaf == null ? 0 : othersOver(pose, pin, at);
            for (Slab hole : scene.solid(pair.hole())) {
                boolean below = leaf != null && hole.zTo <= leaf.zFrom + scene.hair;
                double up = Math.max(0, leeway[1] - others);
                // The others lie under a leaf whose pin stands up, so it cannot come down to the floor.
                double down = leeway[0] - others;
                stood = Math.max(stood, shared(pin, hole, below ? up : -down));
            }
        }
        double margin = stood - pair.least();
        return new Measure(pose.state, margin, stood, pair.least(), new Place(both(pair.pin(), pair.hole()), at));
    }

    /** Height that two slabs share when the first is moved up. */
    private static double shared(Slab a, Slab b, double up) {
        return Math.max(0, Math.min(a.zTo + up, b.zTo) - Math.max(a.zFrom + up, b.zFrom));
    }

    /** Heights of the leaves over a pin, be it a part of it, but for that on which it rides, mm. */
    private double othersOver(Pose pose, Slab pin, Point at) {
        Shape round = pose.shapes[scene.slabs.indexOf(pin)];
        double radius = (round.maxX - round.minX) / 2;
        double height = 0;
        for (int i = 0; i < pose.shapes.length; i++) {
            Slab slab = scene.slabs.get(i);
            if (slab.leafy && slab.body != pin.body) {
                Shape leaf = pose.shapes[i];
                boolean over = leaf.contains(at.x(), at.y()) || leaf.isNearer(at.x(), at.y(), radius);
                height += over ? slab.zTo - slab.zFrom : 0;
            }
        }
        return height;
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        if (worst == null) {
            return;
        }
        String pin = worst.place().members().get(0);
        String hole = worst.place().members().get(1);
        findings.add(on(required.check(), worst)
                .room(worst.value(), worst.limit(), "mm")
                .says("verify.engaged", pin, Words.mm(worst.value()), hole, Words.mm(worst.limit()), scene.judged()));
    }
}
