// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

/**
 * A figure that a {@link Saying} tells, with what it is and how finely it is told.
 *
 * @param kind what it is
 * @param value lengths in mm, areas in mm², angles in rad
 * @param decimals at most so many, where it is told in millimetres or degrees
 */
public record Figure(Kind kind, double value, int decimals) implements Argument {
    private static final int USUAL = 2;

    /** What a figure may be. */
    public enum Kind {
        /** Told with its unit, in that of the spec. */
        LENGTH,
        /** A length whose unit stands farther on, behind the last of several. */
        BARE,
        /** A length as it is typed into a spec. */
        TYPED,
        AREA,
        ANGLE,
        /** Without a unit, or with one that stays what it is. */
        NUMBER
    }

    /** A length, to the usual hundredth. */
    public static Figure mm(double length) {
        return mm(length, USUAL);
    }

    /** A length. */
    public static Figure mm(double length, int decimals) {
        return new Figure(Kind.LENGTH, length, decimals);
    }

    /** A length to be typed into the spec. */
    public static Figure typed(double length, int decimals) {
        return new Figure(Kind.TYPED, length, decimals);
    }

    /** An area in mm². */
    public static Figure area(double area, int decimals) {
        return new Figure(Kind.AREA, area, decimals);
    }

    /** An angle in rad, told in degrees. */
    public static Figure degrees(double angle, int decimals) {
        return new Figure(Kind.ANGLE, angle, decimals);
    }

    /** A number without a unit. */
    public static Figure number(double value, int decimals) {
        return new Figure(Kind.NUMBER, value, decimals);
    }
}
