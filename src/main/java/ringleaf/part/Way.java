// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;
import ringleaf.geom.Point;

/** How something comes to its place while a mechanism is put together. */
public sealed interface Way {
    /** Straight down from above. */
    Way DOWN = new Straight(true);
    /** Straight up from below. */
    Way UP = new Straight(false);
    /** Along the plane, to or by what stands across it. */
    Way ACROSS = new Across();
    /** Under what lies over it already, its tips lifted. */
    Way UNDER = new Threaded();

    /** Along the axis, from above or from below. */
    record Straight(boolean fromAbove) implements Way {}

    /** A leaf that is slipped under leaves which lie there already and must come to lie over it; these are lifted. */
    record Threaded() implements Way {}

    /** Straight down beside its place, then sideways into it; {@code from} is where it comes down less its place, mm. */
    record Aside(Point from) implements Way {}

    /** From above with slack, round or over members that are there already: a belt round its pulleys. */
    record Slack(List<Integer> over) implements Way {
        public Slack {
            over = List.copyOf(over);
        }
    }

    /**
     * Along the mechanism's plane, to or by what stands across it: a rod through its plates, a tab in its slot. Whether
     * the way is free is not seen along the axis, and is not judged there.
     */
    record Across() implements Way {}
}
