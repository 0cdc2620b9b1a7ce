// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

/**
 * How far a result may stray, passed in and never global.
 *
 * @param length the greatest deviation that is accepted, mm, above 0
 */
public record Tolerance(double length) {
    /** 0.5 µm: every smooth curve that is turned into arcs stays this near to the true one. */
    public static final Tolerance CURVE = new Tolerance(0.0005);
    /** 2 µm: chords by which outlines are flattened for a judge. */
    public static final Tolerance JUDGE = new Tolerance(0.002);

    public Tolerance {
        if (!(length > 0)) {
            throw new IllegalArgumentException("a tolerance is above 0, not " + length);
        }
    }

    /** What double arithmetic can lose on coordinates of this size: 64 units in the last place, mm. */
    public static double rounding(Box box) {
        double size = Math.max(
                Math.max(Math.abs(box.minX()), Math.abs(box.maxX())),
                Math.max(Math.abs(box.minY()), Math.abs(box.maxY())));
        return 64 * Math.ulp(Math.max(size, 1e-3));
    }
}
