// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;
import ringleaf.part.Saying;

/** Members that share a height and do not move as one stay apart. */
final class ApartCheck extends Check {
    /** Two slabs, by index, and how near they may come. */
    private record Two(int first, int second, double least, boolean touches) {}

    private final Requirement.StaysApart required;
    private final List<Two> pairs = new ArrayList<>();
    private final Map<Integer, Saying> others = new HashMap<>();
    /** The pair that came nearest to its limit, by state. */
    private final Map<Integer, Two> nearest = new HashMap<>();

    ApartCheck(Scene scene, Requirement.StaysApart required) {
        super(scene);
        this.required = required;
        Map<Long, Requirement.Pair> own = new HashMap<>();
        for (Requirement.Pair pair : required.pairs()) {
            own.put(key(pair.first(), pair.second()), pair);
        }
        List<Slab> slabs = scene.slabs;
        for (int i = 0; i < slabs.size(); i++) {
            for (int j = i + 1; j < slabs.size(); j++) {
                Slab a = slabs.get(i);
                Slab b = slabs.get(j);
                if (a.body != b.body && a.shares(b, scene.hair)) {
                    Requirement.Pair pair = own.get(key(a.member, b.member));
                    if (pair == null) {
                        pairs.add(new Two(i, j, required.least(), false));
                    } else if (pair.least() > Double.NEGATIVE_INFINITY) {
                        pairs.add(new Two(i, j, pair.least(), pair.touches()));
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
            if (!pair.touches) {
                interest = Math.max(interest, clearance);
            }
            double gap = a.gapTo(b);
            if (gap > 0 && gap >= interest) {
                continue;
            }
            Reach reach = Reach.of(a, b, interest, scene.tolerance);
            double left = margin(pair, reach.distance());
            broken += left < -scene.tolerance ? 1 : 0;
            if (left < margin - scene.hair) {
                margin = left;
                worst = pair;
                worstReach = reach;
            }
            if (!pair.touches && reach.distance() < clearance - scene.hair) {
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
        synchronized (others) {
            nearest.put(pose.state, worst);
            if (broken > 1) {
                others.put(pose.state, Saying.of("verify.too-near-as-well", broken - 1));
            }
        }
        return new Measure(
                pose.state, margin, worstReach.distance(), worst.least, new Place(names(worst), worstReach.at()));
    }

    /** By how much a pair keeps its limit, mm; what may not touch and does misses even a limit of nought. */
    private double margin(Two pair, double distance) {
        double left = distance - pair.least;
        boolean stuck = !pair.touches && distance <= scene.tolerance;
        return stuck ? Math.min(left, -2 * scene.tolerance) : left;
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
                    .says("verify.none-apart"));
            return;
        }
        String pair = worst.place().who();
        boolean touches = nearest.get(worst.state()).touches;
        Saying message;
        if (worst.value() < 0) {
            message = Saying.of("verify.collide", pair, Words.mm(-worst.value()));
        } else if (!touches && worst.value() <= scene.tolerance) {
            message = Saying.of("verify.touch", pair);
        } else if (worst.margin() < -scene.tolerance) {
            message = Saying.of("verify.too-near", pair, Words.mm(worst.value()), Words.mm(worst.limit()));
        } else {
            message = Saying.of("verify.apart", pair, Words.mm(worst.value()), Words.mm(worst.limit()));
        }
        Saying more = others.getOrDefault(worst.state(), Saying.NONE);
        Finding.Draft draft = on(required.check(), worst);
        draft = touches
                ? draft.atLeast(worst.value(), worst.limit(), "mm")
                : draft.room(worst.value(), worst.limit(), "mm");
        findings.add(draft.says("verify.apart-judged", message, more, scene.judged()));
    }
}
