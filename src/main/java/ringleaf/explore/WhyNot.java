// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.Trial;

/**
 * Why a design does not work, told by what would make it work: every field that the spec gives or that has a default
 * is changed by itself, each way, to the nearest value with which every check of the kind holds, and where none does,
 * two of the most promising together. Whatever is told was designed in full and judged by its outlines. The changes
 * stand in the order of how little they change. All fields are followed out to the same share before any goes further,
 * so that whoever wants only the nearest few need not wait for the rest.
 */
public final class WhyNot {
    private static final int REMEMBERED = 6000;
    /** States that are enough to look for changes; what is found is proved at all that are asked for. */
    private static final int SEARCHED = 31;
    /** How far all are followed before any goes further. */
    private static final double[] ROUNDS = {0.1, 0.35, 1, 4, Double.POSITIVE_INFINITY};
    /** Pairs that are tried: those that come nearest if each of both mends what it mends alone. */
    private static final int MOST_PAIRS = 12;
    /** A change helps another when it takes this share of what the other leaves missed. */
    private static final double HELPS = 0.01;

    private final Variants variants;
    private final int states;
    private final int threads;

    /**
     * A search for changes.
     *
     * @param states of the travel that each change found is checked at
     * @param threads that share the work
     */
    public WhyNot(Variants variants, int states, int threads) {
        this.variants = variants;
        this.states = states;
        this.threads = threads;
    }

    /**
     * How much is wanted.
     *
     * @param changes that are enough, the nearest ones
     * @param attempts after which it ends as soon as there is any change at all
     * @param pairs whether pairs are tried where no single change works
     */
    public record Effort(int changes, int attempts, boolean pairs) {
        /** Everything. */
        public static final Effort FULL = new Effort(Integer.MAX_VALUE, Integer.MAX_VALUE, true);
    }

    /**
     * What was found.
     *
     * @param single changes that make it work, those that change least first
     * @param pairs of changes, where no single one works, likewise
     */
    public record Found(List<Change> single, List<ChangePair> pairs) {
        static final Found NOTHING = new Found(List.of(), List.of());

        public Found {
            single = List.copyOf(single);
            pairs = List.copyOf(pairs);
        }
    }

    /**
     * The changes that make one mechanism work; none when it works, or when nothing helps.
     *
     * @param mechanism its name
     * @param told of how many ways to change a field were followed
     * @param stopped whether somebody wants it to end
     */
    public Found changes(String mechanism, Effort effort, Exploration.Told told, BooleanSupplier stopped) {
        Search search = new Search(mechanism, told, stopped);
        return search.begin() ? search.run(effort) : Found.NOTHING;
    }

    /** The search for one mechanism. */
    private final class Search {
        private final String mechanism;
        private final Exploration.Told told;
        private final BooleanSupplier stopped;
        private final Memo memo = new Memo(REMEMBERED);
        private final AtomicInteger asked = new AtomicInteger();
        private final List<KnobSearch> searches = new ArrayList<>();

        Search(String mechanism, Exploration.Told told, BooleanSupplier stopped) {
            this.mechanism = mechanism;
            this.told = told;
            this.stopped = stopped;
        }

        /** Lists what can be changed; not when it is no spec, or works. */
        boolean begin() {
            Variants.Reader reader = variants.reader();
            Attempts attempts = new Attempts(reader, mechanism, Math.min(SEARCHED, states), memo);
            Attempts.Attempt now = attempts.with();
            if (!now.valid() || now.works()) {
                return false;
            }
            Variants.Variant variant = reader.read(List.of());
            Trial trial = variant.planned().get(variant.indexOf(mechanism)).trial(Math.min(SEARCHED, states), memo);
            List<String> harmless = new ArrayList<>();
            for (String group : Knobs.leftOut(variant.mechanisms().get(variant.indexOf(mechanism)))) {
                Attempts.Attempt empty =
                        attempts.with(new Attempts.Setting(List.of("mechanisms", mechanism, group), "{}"));
                if (empty.valid() && empty.failures().equals(now.failures())) {
                    harmless.add(group);
                }
            }
            for (Knob knob : new Knobs(variant, mechanism, trial, reader, harmless).all()) {
                for (int sense = -1; sense <= 1; sense++) {
                    if (sense == 0 ? !knob.isNumber() : knob.isNumber() && (sense < 0 ? knob.down() : knob.up())) {
                        searches.add(new KnobSearch(knob, sense, now.failures()));
                    }
                }
            }
            return true;
        }

        Found run(Effort effort) {
            List<Change> holding = new ArrayList<>();
            Set<KnobSearch> seen = new HashSet<>();
            for (double share : ROUNDS) {
                follow(share);
                List<Change> fresh = new ArrayList<>();
                for (KnobSearch search : searches) {
                    if (search.found().isPresent() && seen.add(search)) {
                        fresh.add(search.found().get());
                    }
                }
                // Before anybody is content with it: the judge of outlines can find fault with what formulas pass.
                holding.addAll(proved(fresh));
                boolean enough =
                        holding.size() >= effort.changes() || !holding.isEmpty() && asked.get() > effort.attempts();
                if (enough || stopped.getAsBoolean()) {
                    break;
                }
            }
            List<Change> nearest = sorted(holding, Change::isBefore);
            nearest = nearest.subList(0, Math.min(effort.changes(), nearest.size()));
            boolean pairs = nearest.isEmpty() && effort.pairs() && !stopped.getAsBoolean();
            return new Found(nearest, pairs ? pairs() : List.of());
        }

        /** Follows every way out to that share. */
        private void follow(double share) {
            List<KnobSearch> open = new ArrayList<>();
            for (KnobSearch search : searches) {
                if (!search.isOver()) {
                    open.add(search);
                }
            }
            work(open, stopped, (search, attempts) -> {
                search.within(share, attempts);
                return search;
            });
        }

        /** The changes with those values alone that hold in a full design, judged by its outlines. */
        private List<Change> proved(List<Change> changes) {
            // Also when it was stopped: what is told holds.
            return work(changes, () -> false, (change, attempts) -> {
                List<String> values = new ArrayList<>();
                for (String value : change.values()) {
                    if (attempts.holds(states, change.knob().set(value))) {
                        values.add(value);
                    }
                }
                return values.isEmpty() ? null : change.withValues(values);
            });
        }

        private List<ChangePair> pairs() {
            List<List<KnobSearch>> both = new ArrayList<>();
            for (int i = 0; i < searches.size(); i++) {
                for (int k = i + 1; k < searches.size(); k++) {
                    KnobSearch one = searches.get(i);
                    KnobSearch other = searches.get(k);
                    if (one.knob() != other.knob() && isPromising(one, other)) {
                        both.add(List.of(one, other));
                    }
                }
            }
            both = sorted(both, WhyNot::isMorePromising);
            both = both.subList(0, Math.min(MOST_PAIRS, both.size()));
            List<ChangePair> found =
                    work(both, stopped, (pair, attempts) -> new PairSearch(pair.get(0), pair.get(1), attempts)
                            .find()
                            .filter(p -> attempts.holds(
                                    states, p.one().setting(), p.other().setting()))
                            .orElse(null));
            return sorted(found, ChangePair::isBefore);
        }

        /** Does it to all of them on several threads, in their order; what comes to null is left out. */
        private <T, R> List<R> work(List<T> pieces, BooleanSupplier until, Work<T, R> work) {
            List<Optional<R>> results = new ArrayList<>();
            for (int i = 0; i < pieces.size(); i++) {
                results.add(Optional.empty());
            }
            new Workers(threads, told, until).all(pieces.size(), 1, () -> {
                Attempts own = new Attempts(variants.reader(), mechanism, Math.min(SEARCHED, states), memo);
                return i -> {
                    int before = own.asked();
                    Optional<R> result = Optional.ofNullable(work.done(pieces.get(i), own));
                    asked.addAndGet(own.asked() - before);
                    synchronized (results) {
                        results.set(i, result);
                    }
                };
            });
            List<R> all = new ArrayList<>();
            for (Optional<R> result : results) {
                result.ifPresent(all::add);
            }
            return all;
        }
    }

    /** Whether both together can be expected to come nearer than either alone. */
    private static boolean isPromising(KnobSearch one, KnobSearch other) {
        double alone =
                Math.min(one.best().attempt().miss(), other.best().attempt().miss());
        return alone < Double.POSITIVE_INFINITY && PairSearch.expected(one, other) < alone * (1 - HELPS);
    }

    private static boolean isMorePromising(List<KnobSearch> pair, List<KnobSearch> than) {
        double one = PairSearch.expected(pair.get(0), pair.get(1));
        double other = PairSearch.expected(than.get(0), than.get(1));
        double share = pair.get(0).best().share() + pair.get(1).best().share();
        return one != other
                ? one < other
                : share < than.get(0).best().share() + than.get(1).best().share();
    }

    /** A piece of work. */
    @FunctionalInterface
    private interface Work<T, R> {
        R done(T piece, Attempts attempts);
    }

    /** Which of two comes first. */
    @FunctionalInterface
    private interface Before<T> {
        boolean is(T one, T other);
    }

    /** In order; equals stay as they are. */
    private static <T> List<T> sorted(List<T> found, Before<T> before) {
        List<T> sorted = new ArrayList<>();
        for (T each : found) {
            int i = sorted.size();
            while (i > 0 && before.is(each, sorted.get(i - 1))) {
                i--;
            }
            sorted.add(i, each);
        }
        return sorted;
    }
}
