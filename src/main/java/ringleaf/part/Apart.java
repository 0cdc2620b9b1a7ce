// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;

/**
 * How far things that do not touch by design shall keep apart.
 *
 * @param least between any two, mm; 0 asks for some room only
 * @param pairs with a figure of their own, which goes before
 */
public record Apart(double least, List<Pair> pairs) {
    /** Some room between any two. */
    public static final Apart SOME = new Apart(0, List.of());

    public Apart {
        pairs = List.copyOf(pairs);
    }

    /**
     * Two things by name, whichever first: a mechanism or a thing of one piece as a whole, or one body of a mechanism.
     *
     * @param least mm
     */
    public record Pair(String one, String other, double least) {
        private boolean isOf(List<String> first, List<String> second) {
            return first.contains(one) && second.contains(other) || first.contains(other) && second.contains(one);
        }
    }

    /**
     * What is asked between two bodies.
     *
     * @param first all names of one of them
     * @param second all names of the other
     */
    public double between(List<String> first, List<String> second) {
        for (Pair pair : pairs) {
            if (pair.isOf(first, second)) {
                return pair.least();
            }
        }
        return least;
    }
}
