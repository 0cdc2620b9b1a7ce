// SPDX-License-Identifier: Apache-2.0
package ringleaf.linkage;

import ringleaf.space.Vector;

/**
 * A rod with ball ends from a point that goes where it is led to a pin on a servo's horn.
 *
 * @param centre of the horn's axis, at the height of its pin along that axis, mm
 * @param zero direction of length 1 from the axis to the pin at angle 0
 * @param quarter direction of length 1, perpendicular to {@code zero}, to the pin a quarter turn later
 * @param horn from the axis to the pin, mm, above 0
 * @param length between the ball centres, mm, above 0
 * @param side which of the two places of the pin: 1 or -1
 */
public record PushRod(Vector centre, Vector zero, Vector quarter, double horn, double length, int side) {
    /**
     * The horn's angle, rad, when the rod's other end stands at a point; not a number where the rod does not reach.
     * Closed form of one side of an RSSR loop: |P - C - r (u cos q + v sin q)| = l.
     */
    public double angle(Vector end) {
        Vector from = end.minus(centre);
        double k = (from.dot(from) + horn * horn - length * length) / (2 * horn);
        return Circling.root(from.dot(zero), from.dot(quarter), k, side);
    }

    /** The same on the side on which a known place of the horn lies. */
    public PushRod onSideOf(Vector end, double angle) {
        Vector from = end.minus(centre);
        return new PushRod(
                centre, zero, quarter, horn, length, Circling.side(from.dot(zero), from.dot(quarter), angle));
    }

    /** The middle of the ball at the horn. */
    public Vector pin(double angle) {
        return centre.plus(zero.times(horn * Math.cos(angle))).plus(quarter.times(horn * Math.sin(angle)));
    }

    /** Direction of length 1 in which the pin goes when the angle grows. */
    public Vector path(double angle) {
        return zero.times(-Math.sin(angle)).plus(quarter.times(Math.cos(angle)));
    }

    /** Between the rod and the pin's path, rad, from 0 to pi / 2: near pi / 2 the horn pushes across the rod. */
    public double slantAtHorn(Vector end, double angle) {
        Vector rod = end.minus(pin(angle));
        return Math.acos(Math.min(1, Math.abs(rod.dot(path(angle))) / rod.length()));
    }

    /**
     * Turn of the horn per movement of the other end, rad per mm, as a vector: its product with a movement of the end
     * is the turn. Not finite where the horn stands in line with the rod.
     */
    public Vector turnPerMove(Vector end, double angle) {
        Vector rod = end.minus(pin(angle));
        return rod.times(1 / (horn * rod.dot(path(angle))));
    }
}
