// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.Collection;
import java.util.OptionalDouble;
import ringleaf.spec.text.Decimal;

/** Sizes in which a thing is sold, and which of them to take. */
public final class Sold {
    /** What double arithmetic may add to a size that was designed to one that is sold, mm. */
    private static final double ROUNDING = 1e-6;

    private Sold() {}

    /** The least size that is no smaller than {@code need}, mm; empty when even the largest is. */
    public static OptionalDouble nextUp(Collection<Double> sizes, double need) {
        double found = Double.POSITIVE_INFINITY;
        for (double size : sizes) {
            if (size >= need - ROUNDING) {
                found = Math.min(found, size);
            }
        }
        return found < Double.POSITIVE_INFINITY ? OptionalDouble.of(found) : OptionalDouble.empty();
    }

    /** The greatest size that is no larger than {@code room}, mm; empty when even the smallest is. */
    public static OptionalDouble nextDown(Collection<Double> sizes, double room) {
        double found = Double.NEGATIVE_INFINITY;
        for (double size : sizes) {
            if (size <= room + ROUNDING) {
                found = Math.max(found, size);
            }
        }
        return found > Double.NEGATIVE_INFINITY ? OptionalDouble.of(found) : OptionalDouble.empty();
    }

    /** Whether one of the sizes is this one, mm. */
    public static boolean has(Collection<Double> sizes, double size) {
        OptionalDouble up = nextUp(sizes, size);
        return up.isPresent() && up.getAsDouble() <= size + ROUNDING;
    }

    /** The sizes on either side of one that is not sold, for people, e.g. {@code 6 and 8 mm}. */
    public static String beside(Collection<Double> sizes, double size) {
        OptionalDouble down = nextDown(sizes, size);
        OptionalDouble up = nextUp(sizes, size);
        if (down.isPresent() && up.isPresent()) {
            return Decimal.of(down.getAsDouble()) + " and " + Decimal.of(up.getAsDouble()) + " mm";
        }
        OptionalDouble one = down.isPresent() ? down : up;
        return one.isPresent() ? Decimal.of(one.getAsDouble()) + " mm" : "none";
    }
}
