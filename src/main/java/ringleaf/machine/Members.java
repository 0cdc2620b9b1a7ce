// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringleaf.geom.Placement;
import ringleaf.part.Member;
import ringleaf.part.Part;
import ringleaf.space.Pose;

/** The members of an assembly, known by the roles they play. */
public final class Members {
    private final List<Member> all = new ArrayList<>();
    /** For each role its copies, and for each copy the member's number. */
    private final Map<Role, TreeMap<Integer, Integer>> played = new LinkedHashMap<>();

    /** Adds the only one that plays a role. */
    public void add(Role role, Part part, int body) {
        put(role, 0, new Member(part.name(), part, body, Placement.IDENTITY));
    }

    /** Adds one of several: its copy counts from 0, whatever the order in which they are added. */
    public void add(Role role, int copy, Part part, int body, Placement home) {
        put(role, copy, new Member(part.name() + " " + (copy + 1), part, body, home));
    }

    /** Adds one of several, or the only one as copy 0, that is stood up across the mechanism's plane. */
    public void stand(Role role, int copy, Part part, int body, Pose pose) {
        String name = part.quantity() > 1 ? part.name() + " " + (copy + 1) : part.name();
        put(role, copy, Member.standing(name, part, body, pose));
    }

    /** Adds one of several that is placed and named already. */
    public void add(Role role, int copy, Member member) {
        put(role, copy, member);
    }

    private void put(Role role, int copy, Member member) {
        played.computeIfAbsent(role, r -> new TreeMap<>()).put(copy, all.size());
        all.add(member);
    }

    public List<Member> all() {
        return List.copyOf(all);
    }

    public boolean has(Role role) {
        return played.containsKey(role);
    }

    /** Numbers of the members that play a role, in the order of their copies; none where nothing does. */
    public List<Integer> of(Role role) {
        return has(role) ? List.copyOf(played.get(role).values()) : List.of();
    }

    /** Number of the member that plays a role, the first where several do. */
    public int one(Role role) {
        return played.get(role).firstEntry().getValue();
    }

    /** Roles that are played, in the order of their first members. */
    List<Role> roles() {
        return List.copyOf(played.keySet());
    }
}
