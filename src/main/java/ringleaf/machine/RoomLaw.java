// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import ringleaf.part.Words;

/**
 * The room that two parts need so that they still have some when both are off. Independent deviations add as the root
 * of the sum of their squares; the room is as many standard deviations of that sum as let one build in two hundred
 * go wrong by this joint, all its copies together. Lengths in mm.
 *
 * <p>The law of propagation is that of JCGM 100:2008, 5.1.2 (from memory); the share is a choice: with the ten joints or so of
 * a mechanism it leaves more than nine builds of ten without a fault.
 */
public final class RoomLaw {
    /** What a process keeps a size within, in standard deviations: JCGM 100:2008, 6.3.3, from memory. */
    public static final double COVERAGE = 2;
    /** Share of builds that one joint may spoil. */
    static final double SPOILT = 0.005;
    /** Defaults are whole hundredths of a millimetre. */
    private static final double PER_MM = 100;

    private RoomLaw() {}

    /**
     * The room, rounded up to 0.01 mm.
     *
     * @param copies joints of this sort in one mechanism, each off by itself, at least 1
     * @param within how far each size that counts may be off, either way, by what makes it
     */
    public static double room(int copies, double... within) {
        double squares = 0;
        for (double each : within) {
            squares += each * each;
        }
        return Math.ceil(times(copies) * Math.sqrt(squares) * PER_MM - 1e-9) / PER_MM;
    }

    /** By what the root-sum-square is multiplied. */
    static double times(int copies) {
        return quantile(SPOILT / copies) / COVERAGE;
    }

    /**
     * The deviate that a standard normal variable exceeds with the probability {@code tail}, in (0, 0.5]; off by less
     * than 4.5e-4: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.23 (from memory).
     */
    static double quantile(double tail) {
        double t = Math.sqrt(-2 * Math.log(tail));
        return t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
    }

    /** The law's figures in words. */
    public static String words(int copies, double... within) {
        StringBuilder words = new StringBuilder("processes keep ");
        for (int i = 0; i < within.length; i++) {
            words.append(i == 0 ? "" : i == within.length - 1 ? " and " : ", ").append(Words.number(within[i], 3));
        }
        words.append(" mm: ").append(Words.number(times(copies), 2)).append(" times their root-sum-square");
        return copies == 1
                ? words.toString()
                : words.append(" for ").append(copies).append(" of them").toString();
    }
}
