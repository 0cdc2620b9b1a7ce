// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import ringleaf.geom.Point;

/**
 * The least distance between two outlines, and a place where it is.
 *
 * @param distance mm, 0 where they touch or cross
 * @param onFirst the place on the first outline
 * @param onSecond the place on the second outline
 */
public record Gap(double distance, Point onFirst, Point onSecond) {
    static final Gap NONE = new Gap(Double.POSITIVE_INFINITY, Point.ORIGIN, Point.ORIGIN);

    static Gap between(Point a, Point b) {
        return new Gap(a.distance(b), a, b);
    }

    Gap swapped() {
        return new Gap(distance, onSecond, onFirst);
    }

    Gap orNearer(Gap other) {
        return other.distance < distance ? other : this;
    }
}
