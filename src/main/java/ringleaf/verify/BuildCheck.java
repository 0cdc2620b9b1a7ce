// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringleaf.geom.Point;
import ringleaf.part.BuildStep;
import ringleaf.part.Built;
import ringleaf.part.Finding;
import ringleaf.part.Placing;
import ringleaf.part.Requirement;
import ringleaf.part.Saying;
import ringleaf.part.Way;

/**
 * Everything that is put together comes to its place past what is there already, in the pose of state 0.
 *
 * <p>What comes straight along the axis needs the room over its outline, from its place on; so a level is in the way
 * when it reaches beyond the lower face of what comes down and the two share an area seen from above. Members of
 * different bodies that share a height at their places are told apart there by the check on nearness, and the way
 * along the axis shows nothing more of them; so here only what does not share a height, and what moves as one, is
 * looked at. Leaves meet each other by their order ({@link LeafRule}).
 */
final class BuildCheck extends Check {
    private static final String NAME = "build-order";

    private final List<BuildStep> steps;
    private final int[] from;
    private final boolean apartJudged;
    private final List<Finding> found = new ArrayList<>();
    private Pose home;
    private Shape[] shapes;
    private LeafRule rule;
    private BuildRoom room;
    /** Leaves that go under others, and by how much those have to be lifted at most, mm. */
    private int threaded;

    private double lift;
    private int placings;

    BuildCheck(Scene scene) {
        super(scene);
        this.steps = scene.assembly.steps();
        this.from = new int[scene.assembly.members().size() + 1];
        for (Slab slab : scene.slabs) {
            from[slab.member + 1]++;
        }
        for (int i = 1; i < from.length; i++) {
            from[i] += from[i - 1];
        }
        boolean apart = false;
        for (Requirement requirement : scene.assembly.requirements()) {
            apart |= requirement instanceof Requirement.StaysApart;
        }
        this.apartJudged = apart;
    }

    /** Whether there is anything to judge. */
    static boolean isAsked(Scene scene) {
        for (BuildStep step : scene.assembly.steps()) {
            if (!step.placings().isEmpty()) {
                return true;
            }
        }
        return false;
    }

    @Override
    void prepare(Pose pose) {
        if (pose.state == 0) {
            home = pose;
        }
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        return null;
    }

    @Override
    void still() {
        shapes = new Shape[scene.slabs.size()];
        rule = scene.assembly
                .leaves()
                .map(family -> new LeafRule(scene, family, this::shape, from))
                .orElse(null);
        room = new BuildRoom(scene, this::shape, apartJudged);
        Built built = new Built(scene.assembly.members().size());
        for (int i = 0; i < steps.size(); i++) {
            Obstacle first = null;
            int more = -1;
            for (Placing placing : steps.get(i).placings()) {
                Obstacle obstacle = obstacle(placing, built);
                first = first == null ? obstacle : first;
                more += obstacle == null ? 0 : 1;
                built.join(placing);
                placings++;
            }
            if (first != null) {
                found.add(blocked(i + 1, first, more));
            }
        }
    }

    private Finding blocked(int step, Obstacle first, int more) {
        Finding.Draft draft =
                still(NAME, first.members()).at(Finding.Place.step(step).withPoint(first.at()));
        draft = first.overlaps() ? draft.atMost(first.depth(), first.limit(), "mm") : draft.plain(false);
        return draft.says("verify.no-room", step, first.message(), more > 0, more);
    }

    private Obstacle obstacle(Placing placing, Built built) {
        List<Integer> moving = built.moving(placing);
        List<Integer> present = built.present(placing);
        if (present.isEmpty()) {
            return null;
        }
        if (!Collections.disjoint(moving, present)) {
            String name = name(placing.members().get(0));
            return Obstacle.plain(List.of(name), Saying.of("verify.there-already", name));
        }
        if (placing.way() instanceof Way.Across) {
            return null;
        }
        Set<Integer> passed = new HashSet<>();
        for (int member : moving) {
            if (rule != null && rule.isLeaf(member)) {
                Obstacle order = under(member, moving, present, placing.way(), built, passed);
                if (order != null) {
                    return order;
                }
            }
        }
        Way way = placing.way();
        if (way instanceof Way.Slack slack) {
            passed.addAll(slack.over());
        }
        List<Slab> comes = slabs(moving, Set.of());
        List<Slab> there = slabs(present, passed);
        if (way instanceof Way.Aside aside) {
            Obstacle beside = room.straight(comes, there, true, aside.from(), placing.press());
            return beside != null ? beside : room.sideways(comes, there, aside.from());
        }
        boolean above = !(way instanceof Way.Straight straight) || straight.fromAbove();
        return room.straight(comes, there, above, Point.ORIGIN, placing.press());
    }

    /** What hinders a leaf from going under those that are to lie over it; these and their pins are then passed. */
    private Obstacle under(
            int leaf, List<Integer> moving, List<Integer> present, Way way, Built built, Set<Integer> passed) {
        List<Integer> over = rule.over(leaf, present);
        if (over.isEmpty()) {
            return null;
        }
        if (!(way instanceof Way.Threaded)) {
            List<String> who = both(leaf, over.get(0));
            return Obstacle.plain(
                    who,
                    Saying.of("verify.leaf-under", name(leaf), name(over.get(0)), over.size() > 1, over.size() - 1));
        }
        for (int other : over) {
            passed.add(other);
            for (int rides : present) {
                if (scene.assembly.members().get(rides).body()
                        == scene.assembly.members().get(other).body()) {
                    passed.add(rides);
                }
            }
        }
        threaded++;
        lift = Math.max(lift, rule.lift(leaf, slabs(moving, Set.of())));
        return rule.obstacle(leaf, over, slabs(moving, Set.of()), slabs(present, Set.of()));
    }

    private List<Slab> slabs(List<Integer> members, Set<Integer> without) {
        List<Slab> all = new ArrayList<>();
        for (int member : members) {
            if (!without.contains(member)) {
                all.addAll(scene.slabs.subList(from[member], from[member + 1]));
            }
        }
        return all;
    }

    /** A slab in its place in state 0. */
    private Shape shape(Slab slab) {
        int index = from[slab.member];
        while (scene.slabs.get(index) != slab) {
            index++;
        }
        if (shapes[index] == null) {
            shapes[index] = slab.drawn.placed(home.members[slab.member]);
        }
        return shapes[index];
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        if (found.isEmpty()) {
            Saying blades = threaded == 0
                    ? Saying.NONE
                    : Saying.of(
                            "verify.leaves-threaded",
                            threaded,
                            scene.assembly.leaves().orElseThrow().name(),
                            Words.mm(lift));
            findings.add(still(NAME, List.of()).plain(true).says("verify.built", placings, blades));
        }
        findings.addAll(found);
    }
}
