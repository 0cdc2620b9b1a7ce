// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

/**
 * A rigid motion of the plane: a turn about the origin, then a shift.
 *
 * @param angle of the turn, rad, counter-clockwise positive
 * @param shift added after the turn, mm
 */
public record Placement(double angle, Point shift) {
    public static final Placement IDENTITY = new Placement(0, Point.ORIGIN);

    /** Equal turns and equal shifts; written out like that of {@link Point}, for the sake of a quick start. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Placement p && angle == p.angle && shift.equals(p.shift);
    }

    @Override
    public int hashCode() {
        // adding 0 makes -0 a 0
        return 31 * Double.hashCode(angle + 0.0) + shift.hashCode();
    }

    public static Placement turn(double angle) {
        return new Placement(angle, Point.ORIGIN);
    }

    public static Placement shift(double dx, double dy) {
        return new Placement(0, new Point(dx, dy));
    }

    /** The turn by {@code angle} that leaves {@code pivot} where it is. */
    public static Placement turnAbout(Point pivot, double angle) {
        return new Placement(angle, pivot.minus(pivot.turned(angle)));
    }

    public Point apply(Point p) {
        return angle == 0 ? p.plus(shift) : p.turned(angle).plus(shift);
    }

    /** First {@code this}, then {@code next}. */
    public Placement then(Placement next) {
        return new Placement(angle + next.angle, next.apply(shift));
    }

    public Placement inverse() {
        return new Placement(-angle, shift.turned(-angle).times(-1));
    }
}
