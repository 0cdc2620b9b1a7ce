// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

/**
 * Limits of ISO 286 for diameters over 1 to 50 mm, in mm from the nominal size.
 *
 * <p>Tolerance grades IT6 to IT8 and h6 as in a published table of shaft tolerances, m6 up to 30 mm from a quoted
 * ISO 286 table; f7, g6, n6 and p6 from memory, no source confirmed. Holes mirror the shafts of the same letter: F and G
 * start where the shaft ends, N and P are moved by the difference of the grades (ISO 286-1, rule for holes, from memory).
 */
public final class Iso286 {
    private static final double[] UP_TO = {3, 6, 10, 18, 30, 50};
    private static final int[] IT6 = {6, 8, 9, 11, 13, 16};
    private static final int[] IT7 = {10, 12, 15, 18, 21, 25};
    private static final int[] IT8 = {14, 18, 22, 27, 33, 39};
    /** Fundamental deviations, in micrometres: upper of f and g, lower of m, n and p. */
    private static final int[] F = {-6, -10, -13, -16, -20, -25};

    private static final int[] G = {-2, -4, -5, -6, -7, -9};
    private static final int[] M = {2, 4, 6, 7, 8, 9};
    private static final int[] N = {4, 8, 10, 12, 15, 17};
    private static final int[] P = {6, 12, 15, 18, 22, 26};

    /** Deviations from the nominal size, mm, the lower one first. */
    public record Limits(double lower, double upper) {
        private static Limits micrometres(int lower, int upper) {
            return new Limits(lower / 1000.0, upper / 1000.0);
        }
    }

    private Iso286() {}

    /** Whether the table holds this nominal diameter, mm. */
    public static boolean covers(double nominal) {
        return nominal >= 1 && nominal <= UP_TO[UP_TO.length - 1];
    }

    /**
     * The limits of a class.
     *
     * @param name H7, H8, F8, G7, N7, P7 for holes; h6, g6, f7, m6, p6 for shafts
     * @throws IllegalArgumentException for other classes and for diameters outside of 1 to 50 mm
     */
    public static Limits of(String name, double nominal) {
        if (!covers(nominal)) {
            throw new IllegalArgumentException("no limits for a diameter of " + nominal + " mm");
        }
        int i = 0;
        while (nominal > UP_TO[i]) {
            i++;
        }
        return switch (name) {
            case "H7" -> Limits.micrometres(0, IT7[i]);
            case "H8" -> Limits.micrometres(0, IT8[i]);
            case "F8" -> Limits.micrometres(-F[i], -F[i] + IT8[i]);
            case "G7" -> Limits.micrometres(-G[i], -G[i] + IT7[i]);
            case "N7" -> hole7(N, i);
            case "P7" -> hole7(P, i);
            case "h6" -> Limits.micrometres(-IT6[i], 0);
            case "g6" -> Limits.micrometres(G[i] - IT6[i], G[i]);
            case "f7" -> Limits.micrometres(F[i] - IT7[i], F[i]);
            case "m6" -> Limits.micrometres(M[i], M[i] + IT6[i]);
            case "p6" -> Limits.micrometres(P[i], P[i] + IT6[i]);
            default -> throw new IllegalArgumentException("no limits of the class " + name);
        };
    }

    private static Limits hole7(int[] shaft, int i) {
        // up to 3 mm the rule's difference of grades is left out
        int shift = i == 0 ? 0 : IT7[i] - IT6[i];
        int upper = -shaft[i] + shift;
        return Limits.micrometres(upper - IT7[i], upper);
    }
}
