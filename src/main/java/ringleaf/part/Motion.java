// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;
import ringleaf.geom.Placement;

/** Where every body is at every state of the travel. State 0 is the pose in which the parts are drawn (open). */
public interface Motion {
    /** Number of states, at least 2; the last one is the other end of the travel. */
    int states();

    /**
     * How body {@code body} has moved from its pose in state 0. A body is a set of members that move as one; body 0
     * stands still.
     */
    Placement pose(int body, int state);

    /** Name of a state for people, e.g. {@code open}, {@code closed} or {@code state 37}; from start to end where not said. */
    default String label(int state) {
        int last = states() - 1;
        if (state == 0) {
            return "start";
        }
        return state == last ? "end" : "state " + state;
    }

    /** States at which something is extreme, so that a sampling judge must look at them; in order, without doubles. */
    default List<Integer> notable() {
        return List.of();
    }

    /**
     * Whether what turns goes on turning past the last state, again and again: then the states show a stretch of it, and
     * every body comes by in every direction.
     */
    default boolean isEndless() {
        return false;
    }
}
