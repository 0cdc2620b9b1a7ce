// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringleaf.mechanism.Memo;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.spec.text.Problem;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/**
 * Solves and checks every combination of a grid through its whole travel, by closed forms and folding, and the best of
 * them by the judge of outlines too. The rows are the same whatever the number of threads: each is worked out by
 * itself, and what they share are results of pure functions.
 */
public final class Exploration {
    /** Results that are kept for others; solved blades and their sweeps take some kilobytes each. */
    private static final int REMEMBERED = 4000;
    /** Combinations that are tried to find one that can be read. */
    private static final int MOST_TRIED = 1000;
    /** Undominated designs beyond the best that are judged and shown at most. */
    private static final int MOST_FURTHER = 12;
    /** Designs that are judged for the one place to be taken when nobody wants to wait any more. */
    private static final int LAST_JUDGED = 8;

    private final Variants variants;
    private final Grid grid;
    private final int states;
    private final int threads;
    private final Memo memo = new Memo(REMEMBERED);

    /**
     * An exploration.
     *
     * @param states of the travel that every combination is checked at
     * @param threads that share the work, at least 1
     */
    public Exploration(Variants variants, Grid grid, int states, int threads) {
        this.variants = variants;
        this.grid = grid;
        this.states = states;
        this.threads = threads;
    }

    /** Is told now and then how many combinations are done. */
    @FunctionalInterface
    public interface Told {
        void done(int done, int total);
    }

    /**
     * What is asked.
     *
     * @param minimise figure to seek; empty for the one that the kind seeks by itself
     * @param keep best rows to judge and to show, at least 1
     * @param take place whose row is judged even in a hurry; 0 for none
     */
    public record Asked(Optional<String> minimise, int keep, int take) {}

    /** Whether somebody wants it to end. */
    public interface Patience {
        /** No further combination is to be looked at; what is to be shown is still judged. */
        boolean isOver();

        /** Nor is anything to be judged any more. */
        boolean isOutEvenForJudging();
    }

    /**
     * What came of it.
     *
     * @param grid of the combinations
     * @param columns of the rows
     * @param rows looked at, the best first
     * @param shown rows that work and are to be shown, the best first; all judged unless somebody could not wait
     * @param states each was checked at
     */
    public record Result(Grid grid, Columns columns, List<Row> rows, List<Row> shown, int states) {
        /** Whether every combination was looked at. */
        public boolean isWhole() {
            return rows.size() == grid.size();
        }

        /** How many of the rows that are to be shown were not judged by outlines. */
        public int unjudged() {
            int unjudged = 0;
            for (Row row : shown) {
                unjudged += row.judged() ? 0 : 1;
            }
            return unjudged;
        }

        /** The place of a row in the order, counted from 1. */
        public int rank(Row row) {
            for (int i = 0; i < rows.size(); i++) {
                if (rows.get(i).index() == row.index()) {
                    return i + 1;
                }
            }
            throw new IllegalArgumentException("no row of this result");
        }
    }

    /**
     * Runs it.
     *
     * @param told of how far it has come
     * @param patience of whoever waits; what was done until it ends is the result
     * @return empty when no combination can even be read; {@link #refusal} says why
     */
    public Optional<Result> run(Asked asked, Told told, Patience patience) {
        Optional<Columns> columns = columns(asked.minimise());
        if (columns.isEmpty()) {
            return Optional.empty();
        }
        List<Row> rows = new RowWork(variants, grid, columns.get(), states, memo).all(threads, told, patience::isOver);
        Ranking ranking = new Ranking(columns.get().weighed());
        int keep = Math.max(asked.keep(), asked.take());
        List<Row> sorted = judged(ranking, rows, keep, patience);
        sorted = judgedAt(asked.take() - 1, ranking, sorted);
        List<Row> shown = new ArrayList<>();
        for (int place : wanted(ranking, sorted, keep)) {
            shown.add(sorted.get(place));
        }
        return Optional.of(new Result(grid, columns.get(), sorted, shown, states));
    }

    private Optional<Columns> columns(Optional<String> minimise) {
        Variants.Reader reader = variants.reader();
        Optional<Variants.Variant> first = readable(reader, 0, 1);
        return first.map(variant -> {
            Variants.Variant last = grid.size() == 1
                    ? variant
                    : readable(reader, grid.size() - 1, -1).orElse(variant);
            return new Columns.Finder(grid, variant, last, states, memo).find(minimise);
        });
    }

    /** The first combination from there on that can be read. */
    private Optional<Variants.Variant> readable(Variants.Reader reader, int from, int step) {
        for (int n = 0; n < Math.min(grid.size(), MOST_TRIED); n++) {
            Variants.Variant variant = reader.read(grid.options(from + n * step));
            if (variant.isGood()) {
                return Optional.of(variant);
            }
        }
        return Optional.empty();
    }

    /** What speaks against the first combination. */
    public List<Problem> refusal() {
        return variants.reader().read(grid.options(0)).problems();
    }

    /** The rows in order, the best and the undominated judged; what the judge fails falls behind, others move up. */
    private List<Row> judged(Ranking ranking, List<Row> rows, int keep, Patience patience) {
        List<Row> sorted = ranking.marked(ranking.sorted(rows));
        Variants.Reader reader = variants.reader();
        while (!patience.isOutEvenForJudging()) {
            int next = -1;
            for (int place : wanted(ranking, sorted, keep)) {
                next = next < 0 && !sorted.get(place).judged() ? place : next;
            }
            if (next < 0) {
                break;
            }
            sorted = judgedOne(next, ranking, sorted, reader);
        }
        return sorted;
    }

    /** The rows with the one in this place judged, and others that move up to it when it fails, a few of them. */
    private List<Row> judgedAt(int place, Ranking ranking, List<Row> rows) {
        List<Row> sorted = rows;
        for (int i = 0; i < LAST_JUDGED && isUnjudged(place, sorted); i++) {
            sorted = judgedOne(place, ranking, sorted, variants.reader());
        }
        return sorted;
    }

    private static boolean isUnjudged(int place, List<Row> rows) {
        return place >= 0
                && place < rows.size()
                && rows.get(place).works()
                && !rows.get(place).judged();
    }

    private List<Row> judgedOne(int place, Ranking ranking, List<Row> sorted, Variants.Reader reader) {
        Row row = sorted.get(place);
        String failure = judge(reader.read(grid.options(row.index())));
        sorted.set(place, row.judgedTo(failure));
        return failure.isEmpty() ? sorted : ranking.marked(ranking.sorted(sorted));
    }

    /** Places of the rows that work and are to be shown: the best, and further undominated ones, one of equals. */
    private static List<Integer> wanted(Ranking ranking, List<Row> sorted, int keep) {
        List<Integer> wanted = new ArrayList<>();
        Set<List<Double>> seen = new HashSet<>();
        int further = 0;
        for (int i = 0; i < sorted.size() && sorted.get(i).works(); i++) {
            boolean best = i < keep;
            if (!best && (!sorted.get(i).undominated() || further == MOST_FURTHER)) {
                continue;
            }
            boolean fresh = seen.add(ranking.weights(sorted.get(i)));
            if (best || fresh) {
                wanted.add(i);
                further += best ? 0 : 1;
            }
        }
        return wanted;
    }

    /** Designs a combination in full and judges its outlines; what fails, in words, or nothing. */
    private String judge(Variants.Variant variant) {
        List<String> every = new ArrayList<>();
        variant.mechanisms().forEach(m -> every.add(m.name()));
        for (String name : grid.touched(every)) {
            Design design = variant.planned().get(variant.indexOf(name)).design(states);
            List<Finding> findings = new ArrayList<>(design.findings());
            findings.addAll(Judge.judge(design.assembly(), Options.DEFAULT).findings());
            Optional<Finding> worst = Limits.worst(findings);
            if (worst.isPresent()) {
                return "on the geometry: " + Limits.words(worst.get());
            }
        }
        return "";
    }
}
