package ringleaf.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** Members that share a height and do not move as one stay apart. */
final class ApartCheck extends Check {
    /** Two slabs, by index, and how near they may come. */
    private record Two(int first, int second, double least) {}

    private final Requirement.StaysApart required;
    private final List<Two> pairs = new ArrayList<>();
    private final Map<Integer, String> others = new HashMap<>();

    ApartCheck(Scene scene, Requirement.StaysApart required) {
        super(scene);
        this.required = required;
        Map<Long, Double> own = new HashMap<>();
        for (Requirement.Pair pair : required.pairs()) {
            own.put(key(pair.first(), pair.second()), pair.least());
        }
        List<Slab> slabs = scene.slabs;
        for (int i = 0; i < slabs.size(); i++) {
            for (int j = i + 1; j < slabs.size(); j++) {
                Slab a = slabs.get(i);
                Slab b = slabs.get(j);
                if (a.body != b.body && a.shares(b, scene.hair)) {
                    Double least = own.get(key(a.member, b.member));
                    if (least == null || least > Double.NEGATIVE_INFINITY) {
                        pairs.add(new Two(i, j, least == null ? required.least() : least));
                    }
                }
            }
        }
        // Simple outlines first: what they leave of interest keeps the search among many teeth short.
        pairs.sort(Comparator.comparingInt(this::work));
    }

    private int work(Two pair) {
        return scene.slabs.get(pair.first).drawn.pieces.length * scene.slabs.get(pair.second).drawn.pieces.length;
    }

    private static long key(int first, int second) {
        return ((long) Math.min(first, second) << 32) | Math.max(first, second);
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Two worst = null;
        Reach worstReach = null;
        double margin = Double.POSITIVE_INFINITY;
        Two closest = null;
        double clearance = Double.POSITIVE_INFINITY;
        int broken = 0;
        for (Two pair : pairs) {
            Shape a = pose.shapes[pair.first];
            Shape b = pose.shapes[pair.second];
            double interest = Math.max(pair.least, margin + pair.least);
            if (pair.least > 0) {
                interest = Math.max(interest, clearance);
            }
            double gap = a.gapTo(b);
            if (gap > 0 && gap >= interest) {
                continue;
            }
            Reach reach = Reach.of(a, b, interest, scene.tolerance);
            double left = reach.distance() - pair.least;
            broken += left < -scene.tolerance ? 1 : 0;
            if (left < margin - scene.hair) {
                margin = left;
                worst = pair;
                worstReach = reach;
            }
            if (pair.least > 0 && reach.distance() < clearance - scene.hair) {
                clearance = reach.distance();
                closest = pair;
            }
        }
        if (closest != null) {
            figures.clearance = clearance;
            figures.clearanceAt = Words.and(names(closest));
        }
        if (worst == null) {
            return null;
        }
        if (broken > 1) {
            synchronized (others) {
                others.put(pose.state, "; " + (broken - 1) + (broken == 2 ? " other pair" : " other pairs")
                        + " there too near as well");
            }
        }
        return new Measure(
                pose.state, margin, worstReach.distance(), worst.least, new Place(names(worst), worstReach.at()));
    }

    private List<String> names(Two pair) {
        return both(scene.slabs.get(pair.first).member, scene.slabs.get(pair.second).member);
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        if (worst == null) {
            findings.add(still(required.check(), List.of())
                    .unmeasured(Finding.Relation.AT_LEAST, required.least(), "mm", true)
                    .says("No two members that move against each other share a height."));
            return;
        }
        String pair = worst.place().who();
        String message;
        if (worst.value() < 0) {
            message = "The " + pair + " run into each other, " + Words.mm(-worst.value()) + " deep";
        } else if (worst.margin() < -scene.tolerance) {
            message = "The " + pair + " come as near as " + Words.mm(worst.value()) + " and need "
                    + Words.mm(worst.limit());
        } else {
            message = "Nothing touches: nearest to its limit come the " + pair + " with "
                    + Words.mm(worst.value()) + " of " + Words.mm(worst.limit());
        }
        String more = others.getOrDefault(worst.state(), "");
        Finding.Draft draft = on(required.check(), worst);
        // A pair whose limit is nought is meant to touch; all others have to stay apart.
        draft = worst.limit() > 0
                ? draft.room(worst.value(), worst.limit(), "mm")
                : draft.atLeast(worst.value(), worst.limit(), "mm");
        findings.add(draft.says(message + more + scene.judged()));
    }
}
