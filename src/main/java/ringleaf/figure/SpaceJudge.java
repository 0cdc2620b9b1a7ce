// SPDX-License-Identifier: Apache-2.0
package ringleaf.figure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import ringleaf.part.Assembly;
import ringleaf.part.Member;
import ringleaf.part.Saying;
import ringleaf.part.Setup;
import ringleaf.solid.Ask;
import ringleaf.solid.DrivenPose;
import ringleaf.solid.LeastDistance;
import ringleaf.solid.Near;
import ringleaf.solid.Nearness;
import ringleaf.solid.Outcome;
import ringleaf.solid.Solid;
import ringleaf.solid.Watch;
import ringleaf.space.Pose;
import ringleaf.space.Vector;
import ringleaf.verify.Clearance;
import ringleaf.verify.Options;
import ringleaf.verify.Relative;
import ringleaf.verify.SetupJudge;

/**
 * Judges two mechanisms whose planes are not parallel, on the solids of their bodies over all settings of the drives
 * between them. Chords stand for arcs, and by how much they leave them is taken off every distance; so what is proved
 * holds for the true surfaces, and where nothing else is asked, {@value #SOME} mm of room are.
 *
 * <p>What never moves against the other is judged where it stands. There touching cannot be told from taking the same
 * room, so it must keep the same distance.
 */
public final class SpaceJudge implements SetupJudge.Tilted {
    /** Room that is asked for where no other is, mm. */
    static final double SOME = 0.01;
    /** Poses that two bodies may take, and when thorough. */
    private static final int POSES = 20_000;

    private static final int THOROUGH_POSES = 400_000;
    /** Poses for a bound that comes near to what was found, and the share of it that is sought. */
    private static final int NEAR_POSES = 3000;

    private static final double NEAR = 0.9;
    /** What surely stands so far beyond what is asked is not looked at closer, mm. */
    private static final double FAR = 5;
    /** Poses in which two may be looked at before all else, to prove that they stay far apart. */
    private static final int GLANCES = 400;

    private final Setup setup;
    private final double slack;
    private final int poses;
    private final Map<Setup.Link, Optional<Solid>> solids = new HashMap<>();

    public SpaceJudge(Setup setup, Options options) {
        this.setup = setup;
        this.slack = options.tolerance().length();
        this.poses = options.thorough() ? THOROUGH_POSES : POSES;
    }

    private record Two(int firstBody, int secondBody, Carried first, Carried second) {}

    /** The nearest so far of two mechanisms. */
    private record Best(Two two, double asked, double found, double[] settings, Vector at) {}

    @Override
    public Clearance judge(int first, int second) {
        return new Search(first, second).clearance();
    }

    private Optional<Solid> solid(int mechanism, int body) {
        return solids.computeIfAbsent(
                new Setup.Link(mechanism, body),
                l -> BodySolids.of(setup.assemblies().get(mechanism), body));
    }

    private TreeSet<Integer> bodies(int mechanism) {
        TreeSet<Integer> bodies = new TreeSet<>();
        for (Member member : setup.assemblies().get(mechanism).members()) {
            if (member.part().isDrawn()) {
                bodies.add(member.body());
            }
        }
        return bodies;
    }

    /** The name that a spec has for a body, else that of the first thing on it. */
    private String piece(int mechanism, int body) {
        Assembly assembly = setup.assemblies().get(mechanism);
        List<String> names = setup.names(mechanism, body);
        if (names.size() > 1) {
            return names.get(1).substring(assembly.name().length() + 1);
        }
        return assembly.members().stream()
                .filter(m -> m.body() == body && m.part().isDrawn())
                .map(Member::name)
                .findFirst()
                .orElse("");
    }

    /** All bodies of one mechanism against all of another. */
    private final class Search {
        private final int first;
        private final int second;
        private final Relative relative;
        private final List<Two> pairs = new ArrayList<>();
        private boolean unbounded;
        private double bound = Double.POSITIVE_INFINITY;
        private boolean open;
        private Best best;

        Search(int first, int second) {
            this.first = first;
            this.second = second;
            this.relative = new Relative(setup, first, second);
            for (Relative.Group group : relative.groups()) {
                add(group);
            }
        }

        private void add(Relative.Group group) {
            Map<Integer, Carried> seconds = new HashMap<>();
            for (int b : bodies(second)) {
                Optional<Solid> solid = solid(second, b);
                unbounded |= solid.isEmpty();
                if (group.hasSecond(b) && solid.isPresent()) {
                    seconds.put(b, new Carried(relative.secondLinks(group, b), solid.get()));
                }
            }
            for (int a : bodies(first)) {
                Optional<Solid> solid = solid(first, a);
                unbounded |= solid.isEmpty();
                if (group.hasFirst(a) && solid.isPresent()) {
                    Carried carried = new Carried(relative.firstLinks(group, a), solid.get());
                    seconds.forEach((b, other) -> pairs.add(new Two(a, b, carried, other)));
                }
            }
        }

        Clearance clearance() {
            // What is near somewhere is found first, so that all else need only be proved to be farther.
            pairs.forEach(this::glance);
            pairs.forEach(this::look);
            if (best.found > slack) {
                settle(best.two);
            }
            Best nearest = best;
            double asked = nearest.asked;
            Clearance.State state = Clearance.State.PROVED;
            if (nearest.found <= slack) {
                state = Clearance.State.TOUCHING;
            } else if (nearest.found < asked - slack) {
                state = Clearance.State.NEARER;
            } else if (open || unbounded) {
                state = Clearance.State.OPEN;
            }
            return new Clearance(
                    second,
                    new Clearance.Body(setup.assemblies().get(first).name(), piece(first, nearest.two.firstBody)),
                    new Clearance.Body(setup.assemblies().get(second).name(), piece(second, nearest.two.secondBody)),
                    asked,
                    nearest.found,
                    unbounded ? 0 : Math.min(bound, nearest.found),
                    state,
                    nearest.two.first.isStill() && nearest.two.second.isStill(),
                    relative.label(nearest.settings),
                    Optional.of(nearest.two.second.own(nearest.at, nearest.settings)),
                    relative.state(second, nearest.settings),
                    Saying.NONE);
        }

        private double asked(Two two) {
            return Math.max(
                    SOME,
                    setup.apart().between(setup.names(first, two.firstBody), setup.names(second, two.secondBody)));
        }

        /** Start, middle and end of all drives at once. */
        private void glance(Two two) {
            Driven driven = new Driven(two);
            Nearness nearness = new Nearness(two.first.solid(), two.second.solid());
            double asked = asked(two);
            for (int i = 0; i <= 2; i++) {
                double[] at = ends(two);
                for (int k = 0; k < at.length; k++) {
                    at[k] *= i / 2.0;
                }
                double limit = best == null ? Double.POSITIVE_INFINITY : best.found - best.asked + asked;
                Optional<Near> near = nearness.surfaces(driven.secondInFirst(at), limit + nearness.chords());
                near.ifPresent(n -> keep(two, asked, Math.max(0, n.distance() - nearness.chords()), n, at));
            }
        }

        private void keep(Two two, double asked, double found, Near near, double[] settings) {
            if (best == null || found - asked < best.found - best.asked) {
                Vector middle = near.onFirst().plus(near.onSecond()).times(0.5);
                best = new Best(
                        two, asked, found, settings, two.first.at(settings).apply(middle));
            }
        }

        /** The greatest settings of the drives that move either. */
        private double[] ends(Two two) {
            double[] to = new double[relative.drives().size()];
            for (int i = 0; i < to.length; i++) {
                boolean moves = two.first.isMovedBy(i) || two.second.isMovedBy(i);
                to[i] = moves ? relative.drives().get(i).last() : 0;
            }
            return to;
        }

        private void look(Two two) {
            if (best.found <= slack) {
                bound = 0;
                return;
            }
            Nearness nearness = new Nearness(two.first.solid(), two.second.solid());
            double asked = asked(two);
            double[] to = ends(two);
            double[] from = new double[to.length];
            Driven driven = new Driven(two);
            double room = Math.min(NEAR * (best.found - best.asked), FAR);
            if (room > 0 && isOut(nearness, driven, from, to, asked + room)) {
                bound = Math.min(bound, asked + room);
                return;
            }
            Outcome outcome = find(nearness, driven, from, to, asked, poses);
            double proved = outcome.bound();
            open |= outcome.state() == Outcome.State.OPEN;
            if (outcome.state() == Outcome.State.PROVED && NEAR * outcome.least() > asked) {
                Outcome nearer = find(nearness, driven, from, to, NEAR * outcome.least(), NEAR_POSES);
                proved = Math.max(proved, nearer.bound());
            }
            bound = Math.min(bound, proved);
            keep(two, asked, outcome.least(), outcome.near(), outcome.setting());
        }

        /** Finds the least distance of the nearest two more exactly. */
        private void settle(Two two) {
            double[] to = ends(two);
            Nearness nearness = new Nearness(two.first.solid(), two.second.solid());
            Outcome outcome = find(nearness, new Driven(two), new double[to.length], to, asked(two), poses);
            keep(two, asked(two), outcome.least(), outcome.near(), outcome.setting());
        }

        private Outcome find(Nearness nearness, Driven driven, double[] from, double[] to, double least, int budget) {
            Ask ask = new Ask(least, slack, Math.max(slack, SOME), budget);
            return new LeastDistance(nearness, driven, from, to, ask, Watch.NONE).find();
        }

        /** Whether two surely stay farther apart than this, by some looks at the middles of ever smaller boxes of settings. */
        private boolean isOut(Nearness nearness, Driven driven, double[] from, double[] to, double distance) {
            Deque<double[][]> boxes = new ArrayDeque<>();
            boxes.push(new double[][] {from, to});
            for (int looks = 0; !boxes.isEmpty() && looks < GLANCES; looks++) {
                double[][] box = boxes.pop();
                double[] middle = new double[to.length];
                double move = 0;
                double most = 0;
                int widest = -1;
                for (int i = 0; i < to.length; i++) {
                    middle[i] = (box[0][i] + box[1][i]) / 2;
                    double own = driven.reach(i, box[0], box[1]) * (box[1][i] - box[0][i]) / 2;
                    move += own;
                    widest = own > most ? i : widest;
                    most = Math.max(most, own);
                }
                Pose pose = driven.secondInFirst(middle);
                if (!nearness.isFarther(pose, distance + move + nearness.chords())) {
                    if (widest < 0 || !nearness.isFarther(pose, distance + nearness.chords())) {
                        return false;
                    }
                    double[] low = box[1].clone();
                    double[] high = box[0].clone();
                    low[widest] = middle[widest];
                    high[widest] = middle[widest];
                    boxes.push(new double[][] {box[0], low});
                    boxes.push(new double[][] {high, box[1]});
                }
            }
            return boxes.isEmpty();
        }
    }

    /** Two bodies as the drives between them move them. */
    private record Driven(Two two) implements DrivenPose {
        @Override
        public Pose secondInFirst(double[] setting) {
            return two.second.at(setting).then(two.first.at(setting).inverse());
        }

        @Override
        public double reach(int drive, double[] from, double[] to) {
            return two.first.reach(drive, from[drive], to[drive]) + two.second.reach(drive, from[drive], to[drive]);
        }
    }
}
