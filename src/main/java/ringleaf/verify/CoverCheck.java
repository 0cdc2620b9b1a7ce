package ringleaf.verify;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Finding;
import ringleaf.part.LeafFamily;
import ringleaf.part.Requirement;

/** The clear area less the opening is covered by the leaves as they are, and by leaves shrunk by half the lap. */
final class CoverCheck extends Check {
    /** A leak smaller than this is none, mm²: far below what passes light, far above what rounding leaves. */
    static final double LEAST_LEAK = 1e-6;

    private final Requirement.Covered required;
    private final LeafFamily family;
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
        shrunk = required.lap() > 0 ? new LeafCovers(scene, family, fine, required.lap() / 2) : null;
    }

    @Override
    void prepare(Pose pose) {
        openings.put(pose.state, opening(pose.state, 0));
        if (shrunk != null) {
            widerOpenings.put(pose.state, opening(pose.state, required.lap() / 2));
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
        String place = leak.area() == 0 ? "" : near(leaves, leak.at()) + Words.at(leak.at());
        return new Measure(pose.state, -leak.area(), leak.area(), 0, place);
    }

    /** The two leaves nearest to a point. */
    private String near(Leaves leaves, Point at) {
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
            return "";
        }
        String names = name(family.members().get(first));
        return (second < 0 ? names : names + " and " + name(family.members().get(second))) + ", ";
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, LEAST_LEAK * 1e-3);
        String covered = worst.value() == 0
                ? "Light-tight: leaves cover everything outside the opening" + overlapWords()
                : "Light passes beside the opening through " + Words.area(worst.value()) + " in all";
        findings.add(leakFinding(required.check(), worst, covered));
        if (shrunk == null) {
            return;
        }
        Measure[] byState = new Measure[measures.length];
        for (int i = 0; i < byState.length; i++) {
            byState[i] = laps.get(scene.states[i]);
        }
        Measure lap = Measure.worst(byState, LEAST_LEAK * 1e-3);
        String half = Words.number(required.lap() / 2, 4) + " mm";
        String message = lap.value() == 0
                ? "A lap of " + Words.mm(required.lap()) + " is kept: still covered with every leaf shrunk by "
                        + half + " all round"
                : "A lap of " + Words.mm(required.lap()) + " is not kept: with every leaf shrunk by " + half
                        + " all round " + Words.area(lap.value()) + " is uncovered";
        findings.add(leakFinding(required.lapCheck(), lap, message));
    }

    private Finding leakFinding(String check, Measure worst, String message) {
        Finding.Status status = worst.value() == 0 ? Finding.Status.PASS : Finding.Status.FAIL;
        String where = worst.value() == 0 ? "" : where(worst);
        return new Finding(check, status, worst.value(), 0, "mm2", where, message + scene.judged());
    }

    private String overlapWords() {
        int last = scene.states[scene.states.length - 1];
        int least = 0;
        for (int state : scene.states) {
            if (overlaps.get(state) < overlaps.get(least) - LEAST_LEAK) {
                least = state;
            }
        }
        return "; neighbours share " + share(0) + ", " + share(last) + ", least " + share(least);
    }

    private String share(int state) {
        return Words.number(overlaps.get(state), 1) + " mm² " + scene.assembly.motion().label(state);
    }
}
