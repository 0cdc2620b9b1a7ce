// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

/**
 * One thing on a coupon that is measured or tried.
 *
 * @param name as engraved beside it, e.g. {@code H3}
 * @param kind what it is
 * @param drawn size in the file, mm, above 0
 */
public record Feature(String name, Kind kind, double drawn) {

    /** What a feature is, and what is asked of it. */
    public enum Kind {
        /** Width of material between two edges, measured from outside. */
        PIN("pins", 'P'),
        /** The whole piece along x and along y, measured from outside. */
        BAR("bars", 'B'),
        /** A round hole, measured from inside. */
        HOLE("holes", 'H'),
        /** A slot, measured from inside across its width. */
        SLOT("slots", 'S'),
        /** An open slot in which the tongue and a pin are tried. */
        COMB("comb", 'C'),
        /** A round hole in which a pin is tried. */
        FIT("fits", 'F'),
        /** A narrow web that comes out whole or does not. */
        WEB("webs", 'W'),
        /** A small hole that comes out open or does not. */
        DOT("dots", 'D');

        private final String group;
        private final char letter;

        Kind(String group, char letter) {
            this.group = group;
            this.letter = letter;
        }

        /** The key of the sheet under which features of this kind stand. */
        public String group() {
            return group;
        }

        /** The letter with which names of this kind begin. */
        public char letter() {
            return letter;
        }

        /** Whether its size is measured; else it is tried or looked at. */
        public boolean isMeasured() {
            return this == PIN || this == BAR || this == HOLE || this == SLOT;
        }

        /** Whether it is measured between the outside jaws. */
        public boolean isOutside() {
            return this == PIN || this == BAR;
        }
    }

    /** The name of the bar along x. */
    public static final String BAR_X = "BX";
    /** The name of the bar along y. */
    public static final String BAR_Y = "BY";

    /** Whether its size lies along y; all others lie along x or, as holes do, along both. */
    public boolean isAlongY() {
        return name.equals(BAR_Y);
    }
}
