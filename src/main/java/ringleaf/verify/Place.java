// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Point;

/** Names of members, and a point where there is one; the list may be empty and the point null. */
record Place(List<String> members, Point at) {
    static final Place NONE = new Place(List.of(), null);

    static Place of(String member, Point at) {
        return new Place(List.of(member), at);
    }

    /** The members as they stand in a sentence. */
    String who() {
        return Words.and(members);
    }
}
