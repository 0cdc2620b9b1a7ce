// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import ringleaf.draw.Decimals;

/**
 * How sizes are written: lengths in the sheet's unit, degrees with at most 3 decimals.
 *
 * @param unit of lengths
 */
record Sizes(SheetUnit unit) {
    static final String DIAMETER = "\u2300";
    private static final int DECIMALS = 3;

    String length(double value) {
        return unit.length(value);
    }

    String diameter(double radius) {
        return DIAMETER + length(2 * radius);
    }

    String radius(double radius) {
        return "R" + length(radius);
    }

    static String degrees(double angle) {
        return Decimals.of(Math.toDegrees(angle), DECIMALS) + "\u00B0";
    }

    /** A count in front of what is there so often; none for one. */
    static String times(int count) {
        return count == 1 ? "" : count + "x ";
    }
}
