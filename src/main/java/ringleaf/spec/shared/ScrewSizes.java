// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.List;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Problems;

/** Holds the sizes of a screw against each other: holes it does not pass, or that its head falls through, hold nothing. */
final class ScrewSizes {
    private final Values values;
    private final Problems problems;
    private final int before;

    ScrewSizes(Entry entry, Problems problems) {
        this.values = entry.values();
        this.problems = problems;
        this.before = problems.count();
    }

    /** Whether they agree; what does not is reported. */
    boolean areSound() {
        double thread = values.require(Screw.THREAD);
        if (values.require(Screw.TAP_DRILL) >= thread) {
            problems.at(values.where(Screw.TAP_DRILL), "is not below the thread, so that no thread could be cut in it");
        } else if (values.require(Screw.TAP_DRILL) < thread / 2) {
            problems.at(
                    values.where(Screw.TAP_DRILL),
                    mm(Screw.TAP_DRILL) + " is below half of the thread of " + mm(Screw.THREAD)
                            + ", which no metric thread is cut so deep for",
                    "by ISO 2306 it is the thread less its pitch");
        }
        above(Screw.FINE, Screw.THREAD, "the screw would not pass");
        notBelow(Screw.MEDIUM, Screw.FINE);
        notBelow(Screw.COARSE, Screw.MEDIUM);
        above(Screw.HEAD_DIAMETER, Screw.COARSE, "the head would fall through its own hole");
        above(Screw.NUT_ACROSS, Screw.COARSE, "the nut would fall through the hole it sits on");
        spacer();
        return problems.count() == before;
    }

    private void spacer() {
        List<Field<?>> all = List.of(Screw.SPACER_BORE, Screw.SPACER_OUTSIDE, Screw.SPACER_LENGTHS);
        List<Field<?>> given = all.stream().filter(values::isGiven).toList();
        if (given.size() < all.size()) {
            for (Field<?> open : given.isEmpty() ? List.<Field<?>>of() : all) {
                if (!values.isGiven(open)) {
                    problems.at(
                            values.where(given.get(0)),
                            "stands without " + open.name() + ", so that no spacer is known by it",
                            "give spacer-bore, spacer-outside and spacer-lengths, or none of them");
                }
            }
            return;
        }
        above(Screw.SPACER_BORE, Screw.THREAD, "the screw would not pass");
        above(Screw.SPACER_OUTSIDE, Screw.SPACER_BORE, "the spacer would have no wall");
    }

    private void above(Field<Double> field, Field<Double> other, String then) {
        if (values.require(field) <= values.require(other)) {
            problems.at(
                    values.where(field),
                    mm(field) + " is not above the " + other.name() + " of " + mm(other) + ": " + then,
                    "one of the two is wrong; see the standard's table");
        }
    }

    private void notBelow(Field<Double> field, Field<Double> other) {
        if (values.require(field) < values.require(other)) {
            problems.at(
                    values.where(field),
                    mm(field) + " is below the " + other.name() + " of " + mm(other),
                    "fine, medium and coarse holes of ISO 273 grow in this order");
        }
    }

    private String mm(Field<Double> field) {
        return Decimal.of(values.require(field), 3) + " mm";
    }
}
