// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.Arrays;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;
import ringleaf.part.Saying;

/** A round rim turns in a round wall: where arcs of both circles face each other, in all and between. */
final class RimCheck extends Check {
    /** Angles that are asked for come in whole degrees; a millionth of a radian is rounding, deg. */
    private static final double SLACK = Math.toDegrees(1e-6);

    private final Requirement.GuidedRim required;
    private final Measure[] gaps;

    RimCheck(Scene scene, Requirement.GuidedRim required) {
        super(scene);
        this.required = required;
        this.gaps = new Measure[scene.states.length];
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        double[] rim = arcs(pose, required.rimMember(), required.wallMember(), required.rimRadius());
        double[] wall = arcs(pose, required.wallMember(), required.rimMember(), required.wallRadius());
        double[] cuts = cuts(rim, wall);
        double total = 0;
        double gap = 0;
        double gapEnd = 0;
        double widest = 0;
        double widestEnd = 0;
        // Twice round, so that a gap over the first cut is seen whole.
        for (int i = 0; i < 2 * cuts.length; i++) {
            double from = cuts[i % cuts.length];
            double to = i % cuts.length + 1 < cuts.length ? cuts[i % cuts.length + 1] : cuts[0] + Angles.TURN;
            boolean meets = holds(rim, (from + to) / 2) && holds(wall, (from + to) / 2);
            gap = meets ? 0 : Math.min(gap + to - from, Angles.TURN);
            gapEnd = to;
            total += meets && i < cuts.length ? to - from : 0;
            if (gap > widest) {
                widest = gap;
                widestEnd = gapEnd;
            }
        }
        String who = name(required.rimMember());
        Point amid = required.centre().plus(Point.polar(required.rimRadius(), widestEnd - widest / 2));
        gaps[Arrays.binarySearch(scene.states, pose.state)] =
                new Measure(pose.state, required.mostGap() - widest, widest, required.mostGap(), Place.of(who, amid));
        double limit = required.leastTotal();
        return new Measure(pose.state, total - limit, total, limit, Place.of(who, null));
    }

    /** Start and length of every arc of a member on the circle, in layers that share a height with the other. */
    private double[] arcs(Pose pose, int member, int other, double radius) {
        double[] found = new double[16];
        int n = 0;
        Point centre = required.centre();
        for (int i = 0; i < pose.shapes.length; i++) {
            if (scene.slabs.get(i).member != member || !faces(scene.slabs.get(i), other)) {
                continue;
            }
            for (Piece p : pose.shapes[i].pieces) {
                if (p.isLine()
                        || Math.abs(p.r - radius) > scene.tolerance
                        || Math.hypot(p.cx - centre.x(), p.cy - centre.y()) > scene.tolerance) {
                    continue;
                }
                found = n + 2 > found.length ? Arrays.copyOf(found, 2 * n) : found;
                double start = Math.atan2(p.y0 - p.cy, p.x0 - p.cx);
                double length = p.sweep();
                found[n++] = Angles.positive(p.turn > 0 ? start : start - length);
                found[n++] = length;
            }
        }
        return Arrays.copyOf(found, n);
    }

    private boolean faces(Slab slab, int other) {
        for (Slab s : scene.slabs) {
            if (s.member == other && Math.min(s.zTo, slab.zTo) - Math.max(s.zFrom, slab.zFrom) > scene.hair) {
                return true;
            }
        }
        return false;
    }

    private static double[] cuts(double[] rim, double[] wall) {
        double[] cuts = new double[rim.length + wall.length + 1];
        int n = 1;
        for (double[] arcs : new double[][] {rim, wall}) {
            for (int i = 0; i < arcs.length; i += 2) {
                cuts[n++] = arcs[i];
                cuts[n++] = Angles.positive(arcs[i] + arcs[i + 1]);
            }
        }
        Arrays.sort(cuts);
        return cuts;
    }

    private static boolean holds(double[] arcs, double angle) {
        for (int i = 0; i < arcs.length; i += 2) {
            if (Angles.positive(angle - arcs[i]) < arcs[i + 1]) {
                return true;
            }
        }
        return false;
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure total = Measure.worst(measures, scene.hair);
        Measure gap = Measure.worst(gaps, scene.hair);
        Saying what = Saying.of("verify.guided", name(required.rimMember()), name(required.wallMember()));
        findings.add(on(required.check(), total)
                .onOutlines(SLACK)
                .atLeast(Math.toDegrees(total.value()), Math.toDegrees(total.limit()), "deg")
                .says(
                        "verify.guided-over",
                        what,
                        Words.degrees(total.value()),
                        Words.degrees(total.limit()),
                        scene.judged()));
        findings.add(on(required.gapCheck(), gap)
                .onOutlines(SLACK)
                .atMost(Math.toDegrees(gap.value()), Math.toDegrees(gap.limit()), "deg")
                .says(
                        "verify.guided-gap",
                        what,
                        Words.degrees(gap.value()),
                        Words.degrees(gap.limit()),
                        scene.judged()));
    }
}
