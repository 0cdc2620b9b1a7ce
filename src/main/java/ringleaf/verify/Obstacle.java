// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Saying;

/**
 * Something in the way of what is put to its place.
 *
 * @param members by name
 * @param at where; null where it is no place
 * @param depth by how much they would overlap, mm; not a number where that is no matter of depth
 * @param limit what is allowed, mm
 * @param message what is wrong, a clause
 */
record Obstacle(List<String> members, Point at, double depth, double limit, Saying message) {
    /** What cannot be, whatever the room. */
    static Obstacle plain(List<String> members, Saying message) {
        return new Obstacle(members, null, Double.NaN, Double.NaN, message);
    }

    boolean overlaps() {
        return !Double.isNaN(depth);
    }
}
