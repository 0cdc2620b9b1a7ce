// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import ringleaf.geom.Point;

/**
 * Something a belt runs round, as the belt's pitch line sees it.
 *
 * @param name for people, e.g. {@code driver}
 * @param centre mm
 * @param radius at which the pitch line runs round the centre, mm
 * @param inside whether it lies inside the loop, so that the belt turns counter-clockwise about it with its toothed
 *     side; else it presses on the back and turns clockwise
 * @param teeth 0 for a smooth roller
 */
record Wheel(String name, Point centre, double radius, boolean inside, int teeth) {
    /** The sense in which it turns when the belt runs counter-clockwise: 1 or -1. */
    int sense() {
        return inside ? 1 : -1;
    }

    Wheel at(Point other) {
        return new Wheel(name, other, radius, inside, teeth);
    }
}
