// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * What is taken from the tips of teeth beyond the involute.
 *
 * <p>Relief draws the flank back near the tip, so that teeth bent or placed a little wrong still come into mesh
 * softly; it grows with the square of the roll angle, so that the flank stays tangent-continuous (a form of common
 * practice, no source). Rounding breaks the tip's edges with an arc that touches flank and tip circle.
 *
 * @param relief how far the flank lies back at the tip, square to it, mm, at least 0
 * @param reliefDepth how far below the tip circle relief begins, mm, above 0 where there is relief
 * @param rounding radius of the tip's edges, mm, 0 for sharp ones
 */
public record TipFinish(double relief, double reliefDepth, double rounding) {
    /** Involute up to a sharp tip. */
    public static final TipFinish NONE = new TipFinish(0, 0, 0);

    public TipFinish {
        if (!(relief >= 0) || !(rounding >= 0) || relief > 0 && !(reliefDepth > relief)) {
            throw new IllegalArgumentException(
                    "no tip relief of " + relief + " over " + reliefDepth + " and rounding of " + rounding);
        }
    }
}
