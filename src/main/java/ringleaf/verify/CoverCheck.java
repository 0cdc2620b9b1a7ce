// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.curve.Roots;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.LeafFamily;
import ringleaf.part.Requirement;
import ringleaf.part.Saying;

/** The clear area less the opening is covered by the leaves as they are, and by leaves shrunk by half the lap. */
final class CoverCheck extends Check {
    /** A leak smaller than this is none, mm²: far below what passes light, far above what rounding leaves. */
    static final double LEAST_LEAK = 1e-6;

    private final Requirement.Covered required;
    private final LeafFamily family;
    /** By how much leaves are shrunk for the lap, mm: half of it, less half the tolerance. */
    private final double by;

    private final LeafCovers whole;
    private final LeafCovers shrunk;
    private final Map<Integer, Shape> openings = new HashMap<>();
    private final Map<Integer, Shape> widerOpenings = new HashMap<>();
    private final Map<Integer, Measure> laps = new HashMap<>();
    private final Map<Integer, Double> overlaps = new HashMap<>();

    CoverCheck(Scene scene, Requirement.Covered required, LeafFamily family) {
        super(scene);
        this.required = required;
        this.family = family;
        // A slit has to be told from rounding long before it could be seen: a twentieth of the tolerance.
        double fine = scene.tolerance / 20;
        whole = new LeafCovers(scene, family, fine, 0);
        by = Math.max(0, required.lap() - scene.tolerance) / 2;
        shrunk = by > 0 ? new LeafCovers(scene, family, fine, by) : null;
    }

    @Override
    void prepare(Pose pose) {
        openings.put(pose.state, opening(pose.state, 0));
        if (shrunk != null) {
            widerOpenings.put(pose.state, opening(pose.state, by));
        }
    }

    private Shape opening(int state, double by) {
        Region region = family.opening().apply(new LeafFamily.Shrunk(state, by));
        return Shape.of(region);
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Leaves leaves = new Leaves(scene, pose, family);
        Coverage coverage = new Coverage(scene, family, pose, leaves);
        Coverage.Leak leak = coverage.leak(whole, openings.get(pose.state), scene.thorough);
        figures.leakArea = leak.area();
        double overlap = coverage.neighbourOverlap();
        figures.neighbourOverlap = overlap;
        Measure lap = null;
        if (shrunk != null) {
            lap = asMeasure(pose, leaves, coverage.leak(shrunk, widerOpenings.get(pose.state), scene.thorough));
        }
        synchronized (laps) {
            laps.put(pose.state, lap);
            overlaps.put(pose.state, overlap);
        }
        return asMeasure(pose, leaves, leak);
    }

    private Measure asMeasure(Pose pose, Leaves leaves, Coverage.Leak leak) {
        Place place = leak.area() == 0 ? Place.NONE : new Place(near(leaves, leak.at()), leak.at());
        return new Measure(pose.state, -leak.area(), leak.area(), 0, place);
    }

    /** The two leaves nearest to a point. */
    private List<String> near(Leaves leaves, Point at) {
        int first = -1;
        int second = -1;
        double d1 = Double.POSITIVE_INFINITY;
        double d2 = d1;
        for (int k = 0; k < leaves.count(); k++) {
            for (Shape shape : leaves.shapes(k)) {
                double d = shape.distanceFromOutline(at.x(), at.y());
                if (d < d1 - scene.hair) {
                    second = first;
                    d2 = d1;
                    first = k;
                    d1 = d;
                } else if (d < d2 - scene.hair && k != first) {
                    second = k;
                    d2 = d;
                }
            }
        }
        if (first < 0) {
            return List.of();
        }
        String nearest = name(family.members().get(first));
        return second < 0
                ? List.of(nearest)
                : List.of(nearest, name(family.members().get(second)));
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, LEAST_LEAK * 1e-3);
        Finding.Draft draft = worst.value() == 0 ? still(required.check(), family.name()) : on(required.check(), worst);
        draft.onOutlines(LEAST_LEAK).atMost(worst.value(), 0, "mm2");
        findings.add(
                worst.value() == 0
                        ? draft.says("verify.light-tight", family.name(), overlapWords(), scene.judged())
                        : draft.says("verify.light-leaks", Words.area(worst.value()), scene.judged()));
        if (required.lap() > 0) {
            findings.add(lapFinding(measures));
        }
    }

    private Finding lapFinding(Measure[] leaks) {
        double asked = required.lap();
        double lap = asked;
        Measure worst = null;
        for (int i = 0; i < leaks.length; i++) {
            Measure open = shrunk == null ? leaks[i] : laps.get(scene.states[i]);
            if (open.value() > 0 && (worst == null || uncovered(open.state(), lap))) {
                lap = lapAt(open.state(), lap);
                worst = open;
            }
        }
        if (worst == null) {
            return still(required.lapCheck(), family.name())
                    .unmeasured(Finding.Relation.AT_LEAST, asked, "mm", true)
                    .says("verify.lap-kept", Words.mm(asked), family.name(), scene.judged());
        }
        return on(required.lapCheck(), worst)
                .atLeast(lap, asked, "mm")
                .says(
                        "verify.lap-short",
                        family.name(),
                        Words.mm(lap),
                        Words.mm(asked),
                        Words.area(worst.value()),
                        scene.judged());
    }

    /** The greatest lap below {@code most} that is kept in a state, mm, halved down to a part in 16000. */
    private double lapAt(int state, double most) {
        return Roots.last(lap -> !uncovered(state, lap), 0, most, 14);
    }

    private boolean uncovered(int state, double lap) {
        Pose pose = scene.pose(state);
        pose.place(scene);
        Coverage coverage = new Coverage(scene, family, pose, new Leaves(scene, pose, family));
        return coverage.leaks(new LeafCovers(scene, family, scene.tolerance / 20, lap / 2), opening(state, lap / 2));
    }

    private Saying overlapWords() {
        int last = scene.states[scene.states.length - 1];
        int least = 0;
        for (int state : scene.states) {
            if (overlaps.get(state) < overlaps.get(least) - LEAST_LEAK) {
                least = state;
            }
        }
        return Saying.of("verify.neighbours-share", share(0), share(last), share(least));
    }

    private Saying share(int state) {
        return Saying.of(
                "verify.shared-area",
                Figure.area(overlaps.get(state), 1),
                scene.assembly.motion().label(state));
    }
}
