// SPDX-License-Identifier: Apache-2.0
package ringleaf.space;

import ringleaf.geom.Placement;

/**
 * A rigid motion of space: a turn about the origin, then a shift.
 *
 * @param turn first
 * @param shift added after the turn, mm
 */
public record Pose(Turn turn, Vector shift) {
    public static final Pose NONE = new Pose(Turn.NONE, Vector.ZERO);

    /** A motion of the plane as one of space, which leaves heights as they are. */
    public static Pose of(Placement placement) {
        Vector shift = new Vector(placement.shift().x(), placement.shift().y(), 0);
        return new Pose(placement.angle() == 0 ? Turn.NONE : Turn.about(Vector.Z, placement.angle()), shift);
    }

    public Vector apply(Vector v) {
        return turn.apply(v).plus(shift);
    }

    /** First {@code this}, then {@code next}. */
    public Pose then(Pose next) {
        return new Pose(turn.then(next.turn), next.apply(shift));
    }

    public Pose inverse() {
        Turn back = turn.inverse();
        return new Pose(back, back.apply(shift).times(-1));
    }

    /** The plane in which a frame so placed draws. */
    public Plane plane() {
        return new Plane(shift, turn.apply(Vector.Z));
    }
}
