// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import ringleaf.geom.Point;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Saying;
import ringleaf.part.Setup;
import ringleaf.part.Stand;
import ringleaf.space.Plane;
import ringleaf.space.Pose;
import ringleaf.space.Vector;

/**
 * Judges the mechanisms of one spec against each other where they stand, each moving through its whole travel whatever
 * the others do. Two whose planes are parallel are judged on their outlines and heights; of others it is told that they
 * were not.
 *
 * <p>What is bought by its name alone has no outline and is not looked at. Leaves are taken to lie anywhere in their
 * room.
 */
public final class SetupJudge {
    private static final String CHECK = "mechanisms-apart";
    /** Times two outlines are compared for one pair of mechanisms, and when thorough. */
    private static final int LOOKS = 20_000;

    private static final int THOROUGH_LOOKS = 400_000;
    /** Room that a proposed place leaves, mm. */
    private static final double PROPOSED_ROOM = 1;

    private final Setup setup;
    private final Options options;
    private final double tolerance;
    private final List<Scene> scenes = new ArrayList<>();
    private final Map<Setup.Link, Course> courses = new HashMap<>();

    private SetupJudge(Setup setup, Options options) {
        this.setup = setup;
        this.options = options;
        this.tolerance = options.tolerance().length();
        for (var assembly : setup.assemblies()) {
            scenes.add(new Scene(assembly, Options.DEFAULT));
        }
    }

    /** Findings for each mechanism, on itself and those before it, in the order of the setup. */
    public static List<List<Finding>> judge(Setup setup, Options options) {
        List<List<Finding>> all = new ArrayList<>();
        if (setup.assemblies().size() < 2) {
            return Collections.nCopies(setup.assemblies().size(), List.of());
        }
        SetupJudge judge = new SetupJudge(setup, options);
        for (int second = 0; second < setup.assemblies().size(); second++) {
            List<Finding> own = new ArrayList<>();
            for (int first = 0; first < second; first++) {
                own.add(judge.pair(first, second));
            }
            all.add(own);
        }
        return all;
    }

    private Finding pair(int first, int second) {
        if (!areParallel(first, second)) {
            return Finding.of(CHECK)
                    .onOutlines(tolerance)
                    .about(name(first), name(second))
                    .orWarn()
                    .plain(false)
                    .says("verify.unjudged", name(first), name(second));
        }
        Facing facing = new Facing(first, second);
        Neighbours.Nearest nearest = facing.search();
        return nearest == null ? still(first, second) : finding(facing, nearest);
    }

    /** Whether two stand in parallel planes, and go on doing so whatever moves. */
    private boolean areParallel(int first, int second) {
        Plane plane = setup.atRest(first).plane();
        if (!plane.isParallelTo(setup.atRest(second).plane())) {
            return false;
        }
        List<Setup.Link> a = setup.chain(first, 0);
        List<Setup.Link> b = setup.chain(second, 0);
        int common = common(a, b);
        List<Setup.Link> between = new ArrayList<>(a.subList(common, a.size()));
        between.addAll(b.subList(common, b.size()));
        for (Setup.Link link : between) {
            boolean tilted = !plane.isParallelTo(setup.atRest(link.mechanism()).plane());
            if (tilted && !course(link).isStill()) {
                return false;
            }
        }
        return true;
    }

    private static int common(List<Setup.Link> a, List<Setup.Link> b) {
        int n = 0;
        while (n < a.size() && n < b.size() && a.get(n).equals(b.get(n))) {
            n++;
        }
        return n;
    }

    private Course course(Setup.Link link) {
        return courses.computeIfAbsent(
                link, l -> Course.of(setup.assemblies().get(l.mechanism()).motion(), l.body()));
    }

    private String name(int mechanism) {
        return setup.assemblies().get(mechanism).name();
    }

    private Finding still(int first, int second) {
        return Finding.of(CHECK)
                .onOutlines(tolerance)
                .about(name(first), name(second))
                .unmeasured(Finding.Relation.AT_LEAST, 0, "mm", true)
                .says("verify.setup-still", name(second), name(first));
    }

    private Finding finding(Facing facing, Neighbours.Nearest nearest) {
        Rider own = nearest.second();
        String mine = name(own.mechanism) + "'s " + own.name;
        String other = name(nearest.first().mechanism) + "'s " + nearest.first().name;
        Saying when = facing.label(nearest.settings());
        boolean contact = nearest.distance() <= tolerance;
        boolean proved = nearest.bound() >= tolerance;
        Saying both = Saying.of("verify.both", mine, other);
        Saying message;
        if (nearest.distance() < -tolerance) {
            message = Saying.of("verify.setup-collide", both, facing.areJoined(nearest), Words.mm(-nearest.distance()));
        } else if (contact) {
            message = Saying.of("verify.touch", both);
        } else if (proved) {
            message = Saying.of("verify.setup-clear", both, Words.mm(nearest.distance()), Words.mm(nearest.bound()));
        } else {
            message = Saying.of("verify.setup-unproved", both, Words.mm(nearest.distance()));
        }
        Saying mend = contact ? facing.mend() : Saying.NONE;
        Finding.Draft draft = Finding.of(CHECK)
                .onOutlines(tolerance)
                .about(own.name, name(nearest.first().mechanism) + "'s " + nearest.first().name)
                .at(Finding.Place.state(facing.state(own.mechanism, nearest.settings()), when)
                        .withPoint(own.own(nearest.at(), nearest.settings())));
        draft = proved || contact
                ? draft.room(nearest.distance(), 0, "mm")
                : draft.unmeasured(Finding.Relation.AT_LEAST, 0, "mm", false);
        return draft.says("verify.setup-judged", message, mend);
    }

    /** Two mechanisms in one common plane. */
    private final class Facing {
        private final int first;
        private final int second;
        private final Map<Object, Integer> numbers = new LinkedHashMap<>();
        private final List<Course> drives = new ArrayList<>();
        private final Map<Integer, Integer> driveOf = new HashMap<>();
        private final List<String> owners = new ArrayList<>();
        private final List<List<Rider>> firsts = new ArrayList<>();
        private final List<List<Rider>> seconds = new ArrayList<>();
        private double[] direction;

        Facing(int first, int second) {
            this.first = first;
            this.second = second;
            int carried = carriedBody(first, second);
            int carrying = carriedBody(second, first);
            add(carried, false, carrying, false);
            if (carried >= 0) {
                add(carried, true, -1, false);
            } else if (carrying >= 0) {
                add(-1, false, carrying, true);
            }
        }

        /** The body of one mechanism on which the other stands, be it by way of others; -1 where it does not. */
        private int carriedBody(int carrier, int on) {
            for (Setup.Link link : setup.chain(on, 0)) {
                if (link.mechanism() == carrier) {
                    return link.body();
                }
            }
            return -1;
        }

        /**
         * Adds the outlines of both, in a frame common to them.
         *
         * @param firstBody of the first that carries the second, or -1
         * @param firstOnly whether only that body is meant, else all but that
         * @param secondBody of the second that carries the first, or -1
         * @param secondOnly the same of it
         */
        private void add(int firstBody, boolean firstOnly, int secondBody, boolean secondOnly) {
            List<Setup.Link> a = setup.chain(first, firstOnly ? firstBody : -1);
            List<Setup.Link> b = setup.chain(second, secondOnly ? secondBody : -1);
            int common = common(a, b);
            Pose toPlane = common == a.size() ? Pose.NONE : rest(a, common).inverse();
            firsts.add(riders(first, a, common, firstBody, firstOnly, toPlane));
            seconds.add(riders(second, b, common, secondBody, secondOnly, toPlane));
            if (direction == null && a.size() == common + 1 && b.size() == common + 1) {
                Vector x = toPlane.turn().apply(Vector.X);
                direction = new double[] {x.x(), x.y(), x.z()};
            }
        }

        /** From the last mechanism's frame to that in which the links from {@code from} on begin. */
        private Pose rest(List<Setup.Link> links, int from) {
            Pose pose = Pose.NONE;
            for (int i = links.size() - 1; i >= from; i--) {
                pose = pose.then(setup.stands().get(links.get(i).mechanism()).pose());
            }
            return pose;
        }

        private List<Rider> riders(
                int mechanism, List<Setup.Link> chain, int common, int body, boolean only, Pose toPlane) {
            List<Rider> riders = new ArrayList<>();
            Scene scene = scenes.get(mechanism);
            for (Slab slab : scene.slabs) {
                if (body >= 0 && (slab.body == body) != only) {
                    continue;
                }
                List<Rider.Link> links = new ArrayList<>();
                for (int i = common; i < chain.size(); i++) {
                    Setup.Link link = chain.get(i);
                    boolean last = i == chain.size() - 1;
                    links.add(link(last ? new Setup.Link(mechanism, slab.body) : link));
                }
                double[] leeway = scene.leeway(slab.member);
                double[] heights = {slab.zFrom - leeway[0], slab.zTo + leeway[1]};
                riders.add(new Rider(setup, mechanism, slab, heights, toPlane, links));
            }
            return riders;
        }

        private Rider.Link link(Setup.Link link) {
            Course course = course(link);
            Stand stand = setup.stands().get(link.mechanism());
            return new Rider.Link(stand.pose(), course, course.isStill() ? -1 : drive(link, course));
        }

        /** One drive moves all of a mechanism; what turns without end comes by in every direction, each by itself. */
        private int drive(Setup.Link link, Course course) {
            Object key = setup.assemblies().get(link.mechanism()).motion().isEndless() ? link : link.mechanism();
            Integer known = numbers.get(key);
            if (known == null) {
                known = drives.size();
                numbers.put(key, known);
                drives.add(course);
                owners.add(name(link.mechanism()));
                driveOf.putIfAbsent(link.mechanism(), known);
            }
            return known;
        }

        Neighbours.Nearest search() {
            int looks = options.thorough() ? THOROUGH_LOOKS : LOOKS;
            Neighbours neighbours = new Neighbours(drives, 0, tolerance, looks);
            for (int i = 0; i < firsts.size(); i++) {
                neighbours.add(firsts.get(i), seconds.get(i));
            }
            return neighbours.search();
        }

        boolean areJoined(Neighbours.Nearest nearest) {
            return nearest.first().isStill() && nearest.second().isStill();
        }

        /** Both settings. */
        Saying label(double[] settings) {
            Saying all = Saying.NONE;
            for (int i = 0; i < settings.length; i++) {
                if (!owners.subList(0, i).contains(owners.get(i))) {
                    all = Saying.of(
                            "verify.settings", all, owners.get(i), drives.get(i).label(settings[i]));
                }
            }
            return all;
        }

        int state(int mechanism, double[] settings) {
            Integer drive = driveOf.get(mechanism);
            return drive == null ? 0 : drives.get(drive).state(settings[drive]);
        }

        /** A place of the second that surely keeps clear of the first, where both stand on the same thing. */
        Saying mend() {
            OptionalDouble by = shift();
            if (by.isEmpty()) {
                return Saying.NONE;
            }
            double x = Math.ceil(setup.stands().get(second).pose().shift().x() + by.getAsDouble());
            return Saying.of("verify.setup-mend", Figure.number(x, 0), name(second), name(first));
        }

        private OptionalDouble shift() {
            if (direction == null || firsts.size() > 1 || Math.abs(direction[2]) > tolerance) {
                return OptionalDouble.empty();
            }
            Point along = new Point(direction[0], direction[1]);
            double end = Double.NEGATIVE_INFINITY;
            for (Rider rider : firsts.get(0)) {
                end = Math.max(end, rider.reach(along));
            }
            double begin = Double.POSITIVE_INFINITY;
            for (Rider rider : seconds.get(0)) {
                begin = Math.min(begin, -rider.reach(along.times(-1)));
            }
            return OptionalDouble.of(end - begin + PROPOSED_ROOM);
        }
    }
}
