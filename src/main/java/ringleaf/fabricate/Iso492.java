// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

/**
 * Limits of the outer rings of ball bearings of normal class, ISO 492, for outer diameters up to 80 mm; from memory,
 * no source confirmed.
 */
final class Iso492 {
    private static final double[] UP_TO = {18, 30, 50, 80};
    private static final double[] BELOW = {0.008, 0.009, 0.011, 0.013};

    private Iso492() {}

    /** Deviations of the mean outer diameter from the nominal one, mm; the widest row beyond 80 mm. */
    static Iso286.Limits outerRing(double diameter) {
        int i = 0;
        while (i + 1 < UP_TO.length && diameter > UP_TO[i]) {
            i++;
        }
        return new Iso286.Limits(-BELOW[i], 0);
    }
}
