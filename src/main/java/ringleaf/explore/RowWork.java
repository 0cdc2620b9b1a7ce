// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import ringleaf.mechanism.Memo;
import ringleaf.part.Finding;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.text.Problem;

/** Works the rows of a grid out, each by itself, on several threads. */
final class RowWork {
    /** Neighbours in the grid have most in common, so each thread takes a few of them at a time. */
    private static final int MOST_AT_ONCE = 16;

    private final Variants variants;
    private final Grid grid;
    private final Columns columns;
    private final int states;
    private final Memo memo;

    RowWork(Variants variants, Grid grid, Columns columns, int states, Memo memo) {
        this.variants = variants;
        this.grid = grid;
        this.columns = columns;
        this.states = states;
        this.memo = memo;
    }

    /** All rows in the order of the grid, or those that were done when somebody stopped it. */
    List<Row> all(int threads, Exploration.Told told, BooleanSupplier stopped) {
        int total = grid.size();
        Row[] rows = new Row[total];
        int atOnce = Math.max(1, Math.min(MOST_AT_ONCE, total / (4 * threads)));
        new Workers(threads, told, stopped).all(total, atOnce, () -> {
            Variants.Reader reader = variants.reader();
            return i -> rows[i] = row(reader, i);
        });
        List<Row> all = new ArrayList<>(total);
        for (Row row : rows) {
            if (row != null) {
                all.add(row);
            }
        }
        return all;
    }

    /** One row. */
    Row row(Variants.Reader reader, int index) {
        Variants.Variant variant = reader.read(grid.options(index));
        double[] figures = new double[columns.all().size()];
        Arrays.fill(figures, Double.NaN);
        if (!variant.isGood()) {
            return new Row(index, Row.Status.CONTRADICTS, figures, noWays(), words(variant), false, false, false);
        }
        Catalogues catalogues = variant.document().orElseThrow().catalogues();
        List<Outcome> outcomes = new ArrayList<>();
        for (String name : columns.mechanisms()) {
            int place = variant.indexOf(name);
            List<String> names = columns.names(name);
            Memo own = memo;
            outcomes.add(
                    columns.mechanisms().size() == 1
                            ? Outcome.of(variant.planned().get(place), names, states, own, catalogues)
                            : memo.get(
                                    List.of("outcome", name, grid.part(index, name)),
                                    () -> Outcome.of(variant.planned().get(place), names, states, own, catalogues)));
        }
        return row(index, figures, outcomes);
    }

    private Row row(int index, double[] figures, List<Outcome> outcomes) {
        boolean solved = true;
        Finding worst = null;
        StringBuilder bound = new StringBuilder();
        for (int m = 0; m < outcomes.size(); m++) {
            Outcome outcome = outcomes.get(m);
            solved &= outcome.solved();
            if (outcome.failed().isPresent()
                    && (worst == null || Limits.miss(outcome.failed().get()) > Limits.miss(worst))) {
                worst = outcome.failed().get();
            }
            String name = outcomes.size() == 1 ? "" : columns.mechanisms().get(m) + ": ";
            bound.append(bound.length() == 0 || outcome.bound().isEmpty() ? "" : "; ");
            bound.append(outcome.bound().isEmpty() ? "" : name + outcome.bound());
        }
        for (int c = 0; c < figures.length; c++) {
            figures[c] = figure(columns.all().get(c), outcomes);
        }
        List<String> ways = new ArrayList<>();
        for (Column way : columns.ways()) {
            int m = way.mechanism().isEmpty() ? 0 : columns.mechanisms().indexOf(way.mechanism());
            ways.add(outcomes.get(m).ways().getOrDefault(way.name(), ""));
        }
        Row.Status status = worst == null ? Row.Status.WORKS : Row.Status.FAILS;
        String limit = worst == null ? bound.toString() : Limits.words(worst);
        return new Row(index, status, figures, ways, limit, solved, false, false);
    }

    /** The figure of its mechanism; over several, what is work is added up and of sizes the largest counts. */
    private double figure(Column column, List<Outcome> outcomes) {
        if (!column.mechanism().isEmpty()) {
            Outcome own = outcomes.get(columns.mechanisms().indexOf(column.mechanism()));
            return own.values().getOrDefault(column.name(), Double.NaN);
        }
        double all = Double.NaN;
        for (Outcome outcome : outcomes) {
            Double own = outcome.values().get(column.name());
            if (own != null) {
                all = Double.isNaN(all) ? own : column.isWork() ? all + own : Math.max(all, own);
            }
        }
        return all;
    }

    private List<String> noWays() {
        List<String> ways = new ArrayList<>();
        for (int i = 0; i < columns.ways().size(); i++) {
            ways.add("");
        }
        return ways;
    }

    private static String words(Variants.Variant variant) {
        Problem first = variant.problems().get(0);
        String path = first.place().path().isEmpty() ? "" : first.place().path() + ": ";
        return path + first.reason();
    }
}
