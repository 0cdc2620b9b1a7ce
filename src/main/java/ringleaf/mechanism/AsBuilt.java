package ringleaf.mechanism;

import java.util.List;

/**
 * A design as it comes from the workshop: sizes that can be off, and what must still hold then. Nothing is solved
 * again: pins, slots, pivots and edges stand where they were drawn, plus what each is off.
 */
public interface AsBuilt {
    /** Every size that can be off, in a stable order. */
    List<Deviation> deviations();

    /** Names of what must hold, in a stable order; margins come in the same order. */
    List<Limit> limits();

    /** A bench on which builds are judged one after the other; one for each thread. */
    Bench bench();

    /** What is and is not modelled, in words for people. */
    List<String> assumptions();

    /** Judges builds. Not for several threads at once. */
    interface Bench {
        /**
         * The margins of one build: what is left of each limit, in the limit's unit, below 0 where it is broken.
         *
         * @param off for each deviation how far every copy is off, in the deviation's unit: {@code off[i][k]}
         */
        double[] margins(double[][] off);
    }

    /**
     * A size that can be off.
     *
     * @param name stable, lower case with hyphens
     * @param what it is, in words for people
     * @param unit mm or deg
     * @param nominal as drawn, in {@code unit}; for places, which are drawn at 0, 0
     * @param copies how many of it there are, each off by itself
     * @param within how far it may be off, either way, by what makes it, in {@code unit}
     * @param source what that comes from
     * @param most how far off it is looked at, either way, in {@code unit}
     */
    record Deviation(
            String name, String what, String unit, double nominal, int copies, double within, String source, double most) {
        public Deviation {
            if (copies < 1 || !(within >= 0) || !(most > 0)) {
                throw new IllegalArgumentException(name + ": " + copies + " copies within " + within + " up to " + most);
            }
        }
    }

    /**
     * What must hold of a finished thing.
     *
     * @param check name of the check
     * @param unit of its margin
     * @param holds what holds when the margin is 0 or more, in words for people
     */
    record Limit(String check, String unit, String holds) {}
}
