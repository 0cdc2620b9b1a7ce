// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import ringleaf.space.Pose;

/**
 * Several mechanisms, each in its place. What stands on what makes a tree; a carrier may come later than what it
 * carries.
 *
 * @param assemblies in the order of the spec
 * @param stands one for each, in the same order, without circles
 * @param apart how far they keep from one another
 * @param follows what each goes along with, in the same order; itself where it has a drive of its own
 */
public record Setup(List<Assembly> assemblies, List<Stand> stands, Apart apart, List<Follow> follows) {
    public Setup {
        assemblies = List.copyOf(assemblies);
        stands = List.copyOf(stands);
        follows = List.copyOf(follows);
        if (assemblies.size() != stands.size()) {
            throw new IllegalArgumentException("every mechanism stands somewhere");
        }
    }

    /**
     * Whose drive moves a mechanism.
     *
     * @param leader index of the mechanism whose drive it is
     * @param by share of its own travel that it has gone when the leader has gone all of its own
     */
    public record Follow(int leader, double by) {}

    /** Each with a drive of its own, and some room asked for between any two. */
    public Setup(List<Assembly> assemblies, List<Stand> stands) {
        this(assemblies, stands, Apart.SOME, alone(assemblies.size()));
    }

    /** Each moved by itself. */
    public static List<Follow> alone(int mechanisms) {
        return IntStream.range(0, mechanisms).mapToObj(i -> new Follow(i, 1)).toList();
    }

    /** What moves a mechanism. */
    public Follow follow(int mechanism) {
        return follows.get(mechanism);
    }

    /** All names of a body in a spec: of the mechanism, and of the body where it has one. */
    public List<String> names(int mechanism, int body) {
        Assembly assembly = assemblies.get(mechanism);
        List<String> names = new ArrayList<>(List.of(assembly.name()));
        assembly.bodies().forEach((name, number) -> {
            if (number == body) {
                names.add(assembly.name() + "." + name);
            }
        });
        return names;
    }

    /**
     * One body of one mechanism on the way from the ground to something.
     *
     * @param mechanism its index
     * @param body of it
     */
    public record Link(int mechanism, int body) {}

    /** From what stands on the ground to a body of a mechanism, that one last. */
    public List<Link> chain(int mechanism, int body) {
        List<Link> links = new ArrayList<>();
        links.add(new Link(mechanism, body));
        for (Stand at = stands.get(mechanism); !at.isOnGround(); at = stands.get(at.on())) {
            links.add(new Link(at.on(), at.body()));
        }
        Collections.reverse(links);
        return links;
    }

    /** From a mechanism's frame to the ground's, all mechanisms in state 0. */
    public Pose atRest(int mechanism) {
        Pose pose = stands.get(mechanism).pose();
        for (Stand at = stands.get(mechanism); !at.isOnGround(); at = stands.get(at.on())) {
            Pose moved = Pose.of(assemblies.get(at.on()).motion().pose(at.body(), 0));
            pose = pose.then(moved).then(stands.get(at.on()).pose());
        }
        return pose;
    }
}
