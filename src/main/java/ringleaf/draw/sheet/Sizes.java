package ringleaf.draw.sheet;

import ringleaf.draw.Decimals;

/** How sizes are written: mm and degrees with at most 3 decimals. */
final class Sizes {
    static final String DIAMETER = "\u2300";
    private static final int DECIMALS = 3;

    private Sizes() {}

    static String mm(double value) {
        return Decimals.of(value, DECIMALS);
    }

    static String diameter(double radius) {
        return DIAMETER + mm(2 * radius);
    }

    static String radius(double radius) {
        return "R" + mm(radius);
    }

    static String degrees(double angle) {
        return Decimals.of(Math.toDegrees(angle), DECIMALS) + "\u00B0";
    }

    /** A count in front of what is there so often; none for one. */
    static String times(int count) {
        return count == 1 ? "" : count + "x ";
    }
}
