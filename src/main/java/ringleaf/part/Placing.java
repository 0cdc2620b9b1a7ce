// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;

/**
 * Something comes to its place. What was joined to it before comes along, and it is joined to what it comes to.
 *
 * @param members that come together, indices into the assembly's members
 * @param onto a member of what they come to, or {@link #NOTHING} where they are laid down first
 * @param way by which they come
 * @param press by how much what is to be held may be larger than its hole, mm
 */
public record Placing(List<Integer> members, int onto, Way way, double press) {
    /** Laid on the table. */
    public static final int NOTHING = -1;

    public Placing {
        members = List.copyOf(members);
    }

    /** One that has its hole to itself. */
    public static Placing of(int member, int onto, Way way) {
        return new Placing(List.of(member), onto, way, 0);
    }

    /** Several at once. */
    public static Placing of(List<Integer> members, int onto, Way way) {
        return new Placing(members, onto, way, 0);
    }
}
