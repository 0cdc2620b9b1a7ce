// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.function.DoubleUnaryOperator;
import ringleaf.curve.Roots;

/** Distances and offsets at which a belt has a wanted length: the exact length, turned round. */
final class CentreDistance {
    private static final int MOST = 200;

    private CentreDistance() {}

    /**
     * The distance of two pulleys at which the pitch line is {@code length} long, mm; not a number when the belt is
     * too short to go round both. Newton's method on the exact length, whose slope is 2 cos a and never 0.
     */
    static double ofOpenBelt(double r1, double r2, double length) {
        double least = Math.abs(r2 - r1);
        if (!(length > BeltPath.openLength(r1, r2, least * (1 + 1e-12) + 1e-9))) {
            return Double.NaN;
        }
        // from above: the length is concave nowhere and the slope at most 2
        double distance = Math.max(length / 2, 1.01 * least);
        for (int i = 0; i < MOST; i++) {
            double miss = BeltPath.openLength(r1, r2, distance) - length;
            double slope = 2 * Math.sqrt(Math.max(1e-12, 1 - Math.pow((r2 - r1) / distance, 2)));
            double next = distance - miss / slope;
            if (next <= least) {
                next = (distance + least) / 2;
            }
            if (Math.abs(next - distance) <= 4 * Math.ulp(distance)) {
                return next;
            }
            distance = next;
        }
        return distance;
    }

    /**
     * Where a rising length passes {@code wanted}, between {@code from} and {@code to}; not a number when it does not
     * or is not a number there.
     */
    static double solve(DoubleUnaryOperator length, double from, double to, double wanted) {
        double found = Roots.between(x -> length.applyAsDouble(x) - wanted, from, to, 0);
        return Double.isNaN(found) || !(Math.abs(length.applyAsDouble(found) - wanted) <= 1e-9 * wanted)
                ? Double.NaN
                : found;
    }
}
