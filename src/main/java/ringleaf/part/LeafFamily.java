// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;
import java.util.function.Function;
import ringleaf.geom.Region;

/**
 * Members that lie over one another like the steps of a spiral stair: none has a height of its own, so they are
 * judged by order and count and never by z. All are copies of one part, each turned by 2 pi / count against the one
 * before about the origin.
 *
 * @param name of one of them for people, e.g. {@code blade}
 * @param members indices into the assembly's members, in laying order
 * @param zFrom floor of the room they share, mm
 * @param zTo its ceiling, mm
 * @param clear the disc that is to be covered once the opening is taken from it
 * @param opening the opening as designed at a state, the leaves shrunk all round by so many mm (0 for as made)
 */
public record LeafFamily(
        String name, List<Integer> members, double zFrom, double zTo, Region clear, Function<Shrunk, Region> opening) {

    /** A state and by how much the leaves are shrunk all round, mm. */
    public record Shrunk(int state, double by) {}

    public LeafFamily {
        members = List.copyOf(members);
    }
}
