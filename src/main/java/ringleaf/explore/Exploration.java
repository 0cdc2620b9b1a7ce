package ringleaf.explore;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
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
     * What came of it.
     *
     * @param grid of the combinations
     * @param columns of the rows
     * @param rows looked at, the best first
     * @param shown rows that work and are to be shown, the best first; judged unless the run was stopped
     * @param states each was checked at
     */
    public record Result(Grid grid, Columns columns, List<Row> rows, List<Row> shown, int states) {
        /** Whether every combination was looked at. */
        public boolean isWhole() {
            return rows.size() == grid.size();
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
     * @param minimise figure to seek; empty for the one that the kind seeks by itself
     * @param keep best rows to judge and to show, at least 1
     * @param told of how far it has come
     * @param stopped whether somebody wants it to end; what was done until then is the result
     * @return empty when no combination can even be read; {@link #refusal} says why
     */
    public Optional<Result> run(Optional<String> minimise, int keep, Told told, BooleanSupplier stopped) {
        Optional<Columns> columns = columns(minimise);
        if (columns.isEmpty()) {
            return Optional.empty();
        }
        List<Row> rows = new RowWork(variants, grid, columns.get(), states, memo).all(threads, told, stopped);
        Ranking ranking = new Ranking(columns.get().weighed());
        List<Row> sorted = judged(ranking, rows, keep, stopped);
        List<Row> shown = new ArrayList<>();
        for (int place : wanted(ranking, sorted, keep)) {
            shown.add(sorted.get(place));
        }
        return Optional.of(new Result(grid, columns.get(), sorted, shown, states));
    }

    private Optional<Columns> columns(Optional<String> minimise) {
        Variants.Reader reader = variants.reader();
        for (int i = 0; i < Math.min(grid.size(), MOST_TRIED); i++) {
            Variants.Variant variant = reader.read(grid.options(i));
            if (variant.isGood()) {
                return Optional.of(new Columns.Finder(grid, variant, states, memo).find(minimise));
            }
        }
        return Optional.empty();
    }

    /** What speaks against the first combination. */
    public List<Problem> refusal() {
        return variants.reader().read(grid.options(0)).problems();
    }

    /** The rows in order, the best and the undominated judged; what the judge fails falls behind, and others move up. */
    private List<Row> judged(Ranking ranking, List<Row> rows, int keep, BooleanSupplier stopped) {
        List<Row> sorted = ranking.marked(ranking.sorted(rows));
        Variants.Reader reader = variants.reader();
        while (!stopped.getAsBoolean()) {
            int next = -1;
            for (int place : wanted(ranking, sorted, keep)) {
                next = next < 0 && !sorted.get(place).judged() ? place : next;
            }
            if (next < 0) {
                break;
            }
            Row row = sorted.get(next);
            String failure = judge(reader.read(grid.options(row.index())));
            sorted.set(next, row.judgedTo(failure));
            if (!failure.isEmpty()) {
                sorted = ranking.marked(ranking.sorted(sorted));
            }
        }
        return sorted;
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
                return "outlines: " + Limits.words(worst.get());
            }
        }
        return "";
    }
}
