// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.Trial;
import ringleaf.part.Choice;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.spec.shared.Catalogues;

/**
 * What came of one mechanism in one combination.
 *
 * @param failed the check that fails worst
 * @param values by the names of columns
 * @param ways choices by name
 * @param bound what keeps it from being smaller
 * @param solved whether it was solved
 */
record Outcome(
        Optional<Finding> failed, Map<String, Double> values, Map<String, String> ways, String bound, boolean solved) {

    /**
     * Tries it.
     *
     * @param names of dimensions to keep, and of figures of the parts
     */
    static Outcome of(Kind.Planned planned, List<String> names, int states, Memo memo, Catalogues catalogues) {
        Optional<Finding> refused = planned.refusal();
        if (refused.isPresent()) {
            return new Outcome(refused, Map.of(), Map.of(), "", false);
        }
        Trial trial = planned.trial(states, memo);
        Map<String, Double> values = new LinkedHashMap<>();
        Cut cut = null;
        for (String name : names) {
            if (Column.WORK.contains(name)) {
                cut = cut == null ? Cut.of(trial.parts(), catalogues) : cut;
                values.put(
                        name,
                        name.equals(Column.PARTS)
                                ? cut.pieces()
                                : name.equals(Column.LENGTH) ? cut.length() : cut.time());
            }
        }
        for (Dimension dimension : trial.dimensions()) {
            if (names.contains(dimension.name())) {
                values.put(dimension.name(), dimension.value());
            }
        }
        Map<String, String> ways = new LinkedHashMap<>();
        for (Choice choice : trial.choices()) {
            ways.put(choice.name(), choice.value());
        }
        return new Outcome(Limits.worst(trial.findings()), values, ways, Limits.binding(trial), true);
    }
}
