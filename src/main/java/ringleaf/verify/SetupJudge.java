// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.geom.Point;
import ringleaf.part.Assembly;
import ringleaf.part.Figure;
import ringleaf.part.Saying;
import ringleaf.part.Setup;
import ringleaf.space.Plane;
import ringleaf.space.Pose;
import ringleaf.space.Vector;

/**
 * Judges the mechanisms of one spec against each other where they stand, each moving through its whole travel whatever
 * the others do. Two whose planes are parallel are judged here on their outlines and heights; others are left to a judge
 * of solids.
 *
 * <p>What is bought by its name alone has no outline and is not looked at. Leaves are taken to lie anywhere in their
 * room.
 */
public final class SetupJudge {
    /** Times two outlines are compared for one pair of mechanisms, and when thorough. */
    private static final int LOOKS = 20_000;

    private static final int THOROUGH_LOOKS = 400_000;
    /** Room that a proposed place leaves, mm. */
    private static final double PROPOSED_ROOM = 1;

    private final Setup setup;
    private final Options options;
    private final double tolerance;
    private final List<Scene> scenes = new ArrayList<>();

    private SetupJudge(Setup setup, Options options) {
        this.setup = setup;
        this.options = options;
        this.tolerance = options.tolerance().length();
        for (Assembly assembly : setup.assemblies()) {
            scenes.add(new Scene(assembly, Options.DEFAULT));
        }
    }

    /** Judges two of a setup that no common plane holds. */
    @FunctionalInterface
    public interface Tilted {
        /** How near they come. */
        Clearance judge(int first, int second);
    }

    /** Every two of a setup, by the later one, then by the earlier. */
    public static List<Clearance> judge(Setup setup, Options options, Tilted tilted) {
        List<Clearance> all = new ArrayList<>();
        SetupJudge judge = new SetupJudge(setup, options);
        for (int second = 0; second < setup.assemblies().size(); second++) {
            for (int first = 0; first < second; first++) {
                all.add(judge.areParallel(first, second) ? judge.pair(first, second) : tilted.judge(first, second));
            }
        }
        return all;
    }

    /** By how much each member may go down and up with the leaf on whose body it rides, mm; 0 where it rides on none. */
    public static List<double[]> leeways(Assembly assembly) {
        Scene scene = new Scene(assembly, Options.DEFAULT);
        List<double[]> all = new ArrayList<>();
        for (int i = 0; i < assembly.members().size(); i++) {
            all.add(scene.leeway(i));
        }
        return all;
    }

    /** Whether two stand in parallel planes, and go on doing so whatever moves. */
    private boolean areParallel(int first, int second) {
        Plane plane = setup.atRest(first).plane();
        if (!plane.isParallelTo(setup.atRest(second).plane())
                || setup.assemblies().get(first).members().isEmpty()
                || setup.assemblies().get(second).members().isEmpty()) {
            return false;
        }
        List<Setup.Link> between = new ArrayList<>(setup.chain(first, 0));
        between.addAll(setup.chain(second, 0));
        List<Setup.Link> both = new ArrayList<>(setup.chain(first, 0));
        both.retainAll(setup.chain(second, 0));
        between.removeAll(both);
        for (Setup.Link link : between) {
            boolean tilted = !plane.isParallelTo(setup.atRest(link.mechanism()).plane());
            if (tilted
                    && !Course.of(setup.assemblies().get(link.mechanism()).motion(), link.body())
                            .isStill()) {
                return false;
            }
        }
        return true;
    }

    private Clearance pair(int first, int second) {
        Facing facing = new Facing(first, second);
        Neighbours.Nearest nearest = facing.search();
        if (nearest == null) {
            return new Clearance(
                    second,
                    body(first, null),
                    body(second, null),
                    0,
                    Double.NaN,
                    Double.NaN,
                    Clearance.State.PROVED,
                    true,
                    Saying.NONE,
                    Optional.empty(),
                    -1,
                    Saying.NONE);
        }
        Clearance.State state = state(nearest);
        boolean mends = state == Clearance.State.TOUCHING || state == Clearance.State.NEARER;
        return new Clearance(
                second,
                body(first, nearest.first()),
                body(second, nearest.second()),
                nearest.least(),
                nearest.distance(),
                nearest.bound(),
                state,
                nearest.first().isStill() && nearest.second().isStill(),
                facing.relative.label(nearest.settings()),
                Optional.of(nearest.second().own(nearest.at(), nearest.settings())),
                facing.relative.state(second, nearest.settings()),
                mends ? facing.mend(nearest.least()) : Saying.NONE);
    }

    private Clearance.State state(Neighbours.Nearest nearest) {
        if (nearest.distance() <= tolerance) {
            return Clearance.State.TOUCHING;
        }
        double enough = nearest.least() > 0 ? nearest.least() - tolerance : tolerance;
        if (nearest.distance() < enough) {
            return Clearance.State.NEARER;
        }
        return nearest.bound() >= enough ? Clearance.State.PROVED : Clearance.State.OPEN;
    }

    private Clearance.Body body(int mechanism, Rider rider) {
        Assembly assembly = setup.assemblies().get(mechanism);
        return new Clearance.Body(assembly.name(), rider == null ? "" : rider.name);
    }

    /** Two mechanisms in one common plane. */
    private final class Facing {
        private final int first;
        private final int second;
        private final Relative relative;
        private final List<List<Rider>> firsts = new ArrayList<>();
        private final List<List<Rider>> seconds = new ArrayList<>();
        /** Of the common carrier's x axis, where both stand on it. */
        private Optional<Vector> direction = Optional.empty();

        Facing(int first, int second) {
            this.first = first;
            this.second = second;
            this.relative = new Relative(setup, first, second);
            for (Relative.Group group : relative.groups()) {
                List<Relative.Link> a = relative.firstLinks(group, Math.max(0, group.firstBody()));
                List<Relative.Link> b = relative.secondLinks(group, Math.max(0, group.secondBody()));
                Pose toPlane = rest(a).inverse();
                firsts.add(riders(first, group, toPlane));
                seconds.add(riders(second, group, toPlane));
                if (a.size() == 1 && b.size() == 1) {
                    direction = Optional.of(toPlane.turn().apply(Vector.X));
                }
            }
        }

        /** From the last mechanism's frame to that in which the links begin, nothing moved. */
        private static Pose rest(List<Relative.Link> links) {
            Pose pose = Pose.NONE;
            for (int i = links.size() - 1; i >= 0; i--) {
                pose = pose.then(links.get(i).stand());
            }
            return pose;
        }

        private List<Rider> riders(int mechanism, Relative.Group group, Pose toPlane) {
            List<Rider> riders = new ArrayList<>();
            Scene scene = scenes.get(mechanism);
            for (Slab slab : scene.slabs) {
                boolean meant = mechanism == first ? group.hasFirst(slab.body) : group.hasSecond(slab.body);
                if (meant) {
                    double[] leeway = scene.leeway(slab.member);
                    double[] heights = {slab.zFrom - leeway[0], slab.zTo + leeway[1]};
                    List<Relative.Link> links = mechanism == first
                            ? relative.firstLinks(group, slab.body)
                            : relative.secondLinks(group, slab.body);
                    riders.add(new Rider(setup, mechanism, slab, heights, toPlane, links));
                }
            }
            return riders;
        }

        Neighbours.Nearest search() {
            int looks = options.thorough() ? THOROUGH_LOOKS : LOOKS;
            Neighbours neighbours = new Neighbours(relative.drives(), this::asked, tolerance, looks);
            for (int i = 0; i < firsts.size(); i++) {
                neighbours.add(firsts.get(i), seconds.get(i));
            }
            return neighbours.search();
        }

        private double asked(Rider a, Rider b) {
            return setup.apart().between(setup.names(a.mechanism, a.body), setup.names(b.mechanism, b.body));
        }

        /** A place of the second that surely keeps clear of the first, where both stand on the same thing. */
        Saying mend(double least) {
            OptionalDouble by = shift();
            if (by.isEmpty()) {
                return Saying.NONE;
            }
            double room = Math.max(PROPOSED_ROOM, least);
            double x = Math.ceil(setup.stands().get(second).pose().shift().x() + by.getAsDouble() + room);
            String own = setup.assemblies().get(second).name();
            String other = setup.assemblies().get(first).name();
            return Saying.of("verify.setup-mend", Figure.number(x, 0), own, other);
        }

        private OptionalDouble shift() {
            if (direction.isEmpty()
                    || firsts.size() > 1
                    || Math.abs(direction.get().z()) > tolerance) {
                return OptionalDouble.empty();
            }
            Point along = new Point(direction.get().x(), direction.get().y());
            double end = Double.NEGATIVE_INFINITY;
            for (Rider rider : firsts.get(0)) {
                end = Math.max(end, rider.reach(along));
            }
            double begin = Double.POSITIVE_INFINITY;
            for (Rider rider : seconds.get(0)) {
                begin = Math.min(begin, -rider.reach(along.times(-1)));
            }
            return OptionalDouble.of(end - begin);
        }
    }
}
