// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.part.Motion;
import ringleaf.part.Saying;
import ringleaf.part.Setup;
import ringleaf.space.Pose;

/**
 * What moves two mechanisms of a setup against each other: the drives between them, and on which of them each body
 * hangs.
 */
public final class Relative {
    private final Setup setup;
    private final int first;
    private final int second;
    private final Map<Setup.Link, Course> courses = new HashMap<>();
    private final Map<Object, Integer> numbers = new HashMap<>();
    private final List<Course> drives = new ArrayList<>();
    private final List<Integer> owners = new ArrayList<>();

    public Relative(Setup setup, int first, int second) {
        this.setup = setup;
        this.first = first;
        this.second = second;
    }

    /**
     * One step of the way from a frame to a body.
     *
     * @param stand of the mechanism on what came before
     * @param course of the body
     * @param drive number of the drive that moves it, -1 where it stands still
     * @param share of the drive's setting that is the body's
     */
    public record Link(Pose stand, Course course, int drive, double share) {
        /** Where the body is, from its place at the start, at these settings of the drives; all at the start for null. */
        public Pose moved(double[] settings) {
            return settings == null || drive < 0
                    ? Pose.of(course.at(0))
                    : Pose.of(course.at(Math.min(course.last(), share * settings[drive])));
        }
    }

    /**
     * Two sets of bodies in one frame: all bodies of each mechanism, but the one that carries the other; or that one alone.
     *
     * @param firstBody of the first that carries the second, or -1
     * @param firstAlone whether only that body is meant, else all but that
     * @param secondBody of the second that carries the first, or -1
     * @param secondAlone whether only that body is meant, else all but that
     */
    public record Group(int firstBody, boolean firstAlone, int secondBody, boolean secondAlone) {
        /** Whether a body of the first mechanism is meant. */
        public boolean hasFirst(int body) {
            return firstBody < 0 || body == firstBody == firstAlone;
        }

        /** Whether a body of the second mechanism is meant. */
        public boolean hasSecond(int body) {
            return secondBody < 0 || body == secondBody == secondAlone;
        }
    }

    /** All bodies of both: where one carries the other, its carrying body has a group of its own, as it moves with it. */
    public List<Group> groups() {
        int carrying = carrier(first, second);
        int carried = carrier(second, first);
        List<Group> groups = new ArrayList<>(List.of(new Group(carrying, false, carried, false)));
        if (carrying >= 0) {
            groups.add(new Group(carrying, true, -1, false));
        } else if (carried >= 0) {
            groups.add(new Group(-1, false, carried, true));
        }
        return groups;
    }

    /** The body of one mechanism on which another stands, be it by way of others; -1 where it does not. */
    private int carrier(int mechanism, int on) {
        for (Setup.Link link : setup.chain(on, 0)) {
            if (link.mechanism() == mechanism && mechanism != on) {
                return link.body();
            }
        }
        return -1;
    }

    /** From the frame common to a group to a body of the first mechanism. */
    public List<Link> firstLinks(Group group, int body) {
        return links(setup.chain(first, body), common(group));
    }

    /** From the frame common to a group to a body of the second mechanism. */
    public List<Link> secondLinks(Group group, int body) {
        return links(setup.chain(second, body), common(group));
    }

    /** On how many bodies on the way from the ground all of a group hang. */
    private int common(Group group) {
        List<Setup.Link> a = setup.chain(first, group.firstAlone ? group.firstBody : -1);
        List<Setup.Link> b = setup.chain(second, group.secondAlone ? group.secondBody : -1);
        int n = 0;
        while (n < a.size() && n < b.size() && a.get(n).equals(b.get(n))) {
            n++;
        }
        return n;
    }

    private Course course(Setup.Link link) {
        return Course.of(setup.assemblies().get(link.mechanism()).motion(), link.body());
    }

    private List<Link> links(List<Setup.Link> chain, int from) {
        List<Link> links = new ArrayList<>();
        for (Setup.Link link : chain.subList(from, chain.size())) {
            Course course = courses.computeIfAbsent(link, this::course);
            Pose stand = setup.stands().get(link.mechanism()).pose();
            if (course.isStill()) {
                links.add(new Link(stand, course, -1, 0));
            } else {
                Setup.Follow follow = setup.follow(link.mechanism());
                int drive = drive(new Setup.Link(follow.leader(), link.body()), follow, course);
                double share = follow.by() * course.last() / drives.get(drive).last();
                links.add(new Link(stand, course, drive, share));
            }
        }
        return links;
    }

    /** One drive moves all of a mechanism; what turns without end comes by in every direction, each body by itself. */
    private int drive(Setup.Link led, Setup.Follow follow, Course own) {
        Motion motion = setup.assemblies().get(follow.leader()).motion();
        Object key = motion.isEndless() ? led : follow.leader();
        Integer known = numbers.get(key);
        if (known == null) {
            known = drives.size();
            numbers.put(key, known);
            drives.add(motion.isEndless() ? own : Course.of(motion, 0));
            owners.add(follow.leader());
        }
        return known;
    }

    /** The drives between both, as far as links were asked for. */
    public List<Course> drives() {
        return drives;
    }

    /** All settings. */
    public Saying label(double[] settings) {
        Saying all = Saying.NONE;
        for (int i = 0; i < settings.length; i++) {
            if (!owners.subList(0, i).contains(owners.get(i))) {
                String owner = setup.assemblies().get(owners.get(i)).name();
                all = Saying.of("verify.settings", all, owner, drives.get(i).label(settings[i]));
            }
        }
        return all;
    }

    /** The state of a mechanism at settings of the drives, 0 where nothing of it moves, -1 where it is none of its states. */
    public int state(int mechanism, double[] settings) {
        Setup.Follow follow = setup.follow(mechanism);
        int drive = owners.indexOf(follow.leader());
        if (drive < 0) {
            return 0;
        }
        Course course = drives.get(drive);
        if (course.state(settings[drive]) < 0) {
            return -1;
        }
        double share = follow.by() * settings[drive] / course.last();
        return (int)
                Math.rint(share * (setup.assemblies().get(mechanism).motion().states() - 1));
    }
}
