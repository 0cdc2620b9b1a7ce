// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.ArrayList;
import java.util.List;
import ringleaf.machine.Room;
import ringleaf.part.Words;

/**
 * A design as it comes from the workshop: sizes that can be off, and what must still hold then. Nothing is solved
 * again: pins, slots, pivots and edges stand where they were drawn, plus what each is off.
 */
public interface AsBuilt {
    /** A margin that is below 0 by no more than this is one of 0: what rounding leaves of it, in its unit. */
    double ROUNDING = 1e-9;

    /** Every size that can be off, in a stable order. */
    List<Deviation> deviations();

    /** Names of what must hold, in a stable order; margins come in the same order. */
    List<Limit> limits();

    /** A bench on which builds are judged one after the other; one for each thread. */
    Bench bench();

    /** What is and is not modelled, in words for people. */
    List<String> assumptions();

    /** Families of parts whose processes matter, as they stand under {@code fabrication}. */
    default List<String> families() {
        return List.of();
    }

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
            String name,
            String what,
            String unit,
            double nominal,
            int copies,
            double within,
            String source,
            double most) {
        public Deviation {
            if (copies < 1 || !(within >= 0) || !(most > 0)) {
                throw new IllegalArgumentException(
                        name + ": " + copies + " copies within " + within + " up to " + most);
            }
        }
    }

    /**
     * What must hold of a finished thing.
     *
     * @param check name of the check
     * @param unit of its margin
     * @param holds what holds when the margin is 0 or more, in words for people
     * @param room what the design leaves for it and by which rule, likewise; empty where there is no such rule
     * @param reliefs changes of the spec that give it more, the nearest first
     */
    record Limit(String check, String unit, String holds, String room, List<Relief> reliefs) {
        public Limit {
            reliefs = List.copyOf(reliefs);
        }

        /** Without a rule for its room. */
        public Limit(String check, String unit, String holds) {
            this(check, unit, holds, "", List.of());
        }

        /** Of a clearance of the design. */
        public static Limit of(String check, String unit, String holds, Room room, List<Relief> reliefs) {
            return new Limit(check, unit, holds, room.words(), reliefs);
        }
    }

    /**
     * A field of the mechanism and values to try, as they would be typed, the nearest first.
     *
     * @param field its path within the mechanism
     * @param values of it
     */
    record Relief(String field, List<String> values) {
        private static final double[] GROWN = {1.15, 1.3, 1.5, 1.75, 2, 2.5, 3};
        private static final double[] ADDED = {0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.6};

        public Relief {
            values = List.copyOf(values);
        }

        /** A length that grows from what it is, in steps of a hundredth of a millimetre, up to {@code most}. */
        public static Relief larger(String field, double mm, double most) {
            List<String> values = new ArrayList<>();
            double last = mm;
            for (int i = 0; i < GROWN.length; i++) {
                double value = Math.ceil(100 * Math.max(mm * GROWN[i], mm + ADDED[i]) - 1e-6) / 100;
                if (value > last + 1e-9 && value <= most + 1e-9) {
                    values.add(Words.number(value, 2) + "mm");
                    last = value;
                }
            }
            return new Relief(field, values);
        }
    }
}
