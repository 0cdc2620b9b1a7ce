// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import ringleaf.geom.Point;

/**
 * A whole circle, as a place that an outline must enclose.
 *
 * @param centre in mm
 * @param radius mm, above 0
 */
public record Circle(Point centre, double radius) {
    public Circle {
        if (!(radius > 0)) {
            throw new IllegalArgumentException("no circle of radius " + radius);
        }
    }

    /** Whether {@code other} lies in this disc, touching allowed. */
    boolean holds(Circle other) {
        return centre.distance(other.centre) + other.radius <= radius * (1 + 1e-15);
    }
}
