// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.Arrays;
import java.util.List;

/**
 * One combination and what came of it.
 *
 * @param index of the combination, the last axis counting fastest
 * @param status whether it works
 * @param figures in the order of the columns; not a number where there is none
 * @param ways solved choices, in their order; empty texts where there are none
 * @param limit what binds a design that works, fails one that does not, or speaks against itself in the spec
 * @param solved whether blades and sizes were solved; closed forms refuse some without
 * @param judged whether its outlines were judged too
 * @param undominated whether no other design that works is as good in all that is weighed and better in some of it
 */
public record Row(
        int index,
        Status status,
        double[] figures,
        List<String> ways,
        String limit,
        boolean solved,
        boolean judged,
        boolean undominated) {

    /** From good to bad. */
    public enum Status {
        WORKS("works"),
        FAILS("fails"),
        CONTRADICTS("inconsistent");

        private final String label;

        Status(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    public boolean works() {
        return status == Status.WORKS;
    }

    /** What it was judged by at most, in words. */
    public String judgedBy() {
        return judged ? "geometry" : solved ? "calculated" : "calculated in part";
    }

    Row marked(boolean best) {
        return new Row(index, status, figures, ways, limit, solved, judged, best);
    }

    /** The same after the judge of outlines; a failure in words, or empty. */
    Row judgedTo(String failure) {
        Status after = failure.isEmpty() ? status : Status.FAILS;
        return new Row(index, after, figures, ways, failure.isEmpty() ? limit : failure, solved, true, undominated);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Row row
                && index == row.index
                && status == row.status
                && Arrays.equals(figures, row.figures)
                && ways.equals(row.ways)
                && limit.equals(row.limit)
                && solved == row.solved
                && judged == row.judged
                && undominated == row.undominated;
    }

    @Override
    public int hashCode() {
        return index;
    }
}
