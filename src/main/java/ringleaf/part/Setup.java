// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import ringleaf.space.Pose;

/**
 * Several mechanisms, each in its place. What stands on what makes a tree; a carrier may come later than what it
 * carries.
 *
 * @param assemblies in the order of the spec
 * @param stands one for each, in the same order, without circles
 */
public record Setup(List<Assembly> assemblies, List<Stand> stands) {
    public Setup {
        assemblies = List.copyOf(assemblies);
        stands = List.copyOf(stands);
        if (assemblies.size() != stands.size()) {
            throw new IllegalArgumentException("every mechanism stands somewhere");
        }
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
