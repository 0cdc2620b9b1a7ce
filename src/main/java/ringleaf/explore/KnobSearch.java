// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for the nearest value of one knob that works, one way, farther and farther out as it is told. Whole numbers of
 * a narrow range, names and sizes that are sold are tried one by one, so that a value which works alone among its
 * neighbours is found. Others go outwards in growing steps to the first that works, then back by halving on a grid of
 * round numbers; where works and fails change places more than once between two steps, a nearer value may be missed.
 */
final class KnobSearch {
    /** Steps outwards, as shares of the value. */
    private static final double[] UP = {0.02, 0.05, 0.1, 0.2, 0.35, 0.6, 1, 2, 4, 9, 19};

    private static final double[] DOWN = {0.02, 0.05, 0.1, 0.2, 0.35, 0.5, 0.7, 0.85, 1};
    /** Whole numbers of a wide range are tried one by one so near. */
    private static final int ONE_BY_ONE = 4;
    /** Where a value is changed to see whether it matters at all. */
    private static final double LARGE = 0.35;

    private static final double SMALL = 0.05;
    private static final int HALVINGS = 5;
    /** Doublings beyond the last of the steps upwards; the field's range ends them sooner. */
    private static final int FURTHER = 8;
    /** A value found is rounded away from the present one to as many grid steps, where that changes little. */
    private static final int COARSEST = 1000;

    private static final double ROUNDED_BY = 0.02;
    private static final int MOST_NAMES = 6;

    private final Knob knob;
    private final int sense;
    private final String failures;
    /** What to try one by one; empty for steps and halving. */
    private final List<Double> each;

    private final List<Long> ladder;
    private int next;
    private long last;
    private boolean begun;
    private boolean ended;
    private Change found;
    private Best best = new Best("", 0, Double.POSITIVE_INFINITY, new Attempts.Attempt(false, false, "", Map.of(), ""));

    /**
     * A search.
     *
     * @param sense 1 for larger values, -1 for smaller, 0 for names
     * @param failures of the spec as it is
     */
    KnobSearch(Knob knob, int sense, String failures) {
        this.knob = knob;
        this.sense = sense;
        this.failures = failures;
        this.each = each(knob, sense);
        this.ladder = sense == 0 || isEach() ? List.of() : ladder(knob, sense);
    }

    /** The change found so far. */
    Optional<Change> found() {
        return Optional.ofNullable(found);
    }

    Knob knob() {
        return knob;
    }

    int sense() {
        return sense;
    }

    /**
     * What comes nearest to working by itself.
     *
     * @param text of the value
     * @param steps on the knob's grid; 0 for names and for sizes beside it
     * @param share that it changes
     * @param attempt what came of it
     */
    record Best(String text, long steps, double share, Attempts.Attempt attempt) {}

    Best best() {
        return best;
    }

    /** Whether nothing is left to try. */
    boolean isOver() {
        return ended;
    }

    /** Goes on until something works or the change comes to more than this share. */
    void within(double share, Attempts attempts) {
        if (ended) {
            return;
        }
        if (sense == 0) {
            names(share, attempts);
        } else if (isEach()) {
            oneByOne(share, attempts);
        } else {
            outwards(share, attempts);
        }
    }

    private boolean isEach() {
        return knob.sold().length > 0 || knob.isFew();
    }

    private static List<Double> each(Knob knob, int sense) {
        List<Double> values = new ArrayList<>();
        double[] sold = knob.sold();
        for (int k = 0; k < sold.length; k++) {
            double value = sold[sense > 0 ? k : sold.length - 1 - k];
            if (sense * (value - knob.now()) > 1e-9 && knob.isInRange(value)) {
                values.add(value);
            }
        }
        for (long k = 1; sold.length == 0 && knob.isFew() && knob.isInRange(knob.value(sense, k)); k++) {
            values.add(knob.value(sense, k));
        }
        return values;
    }

    private void names(double share, Attempts attempts) {
        if (Change.NAMED > share) {
            return;
        }
        List<String> names = new ArrayList<>();
        for (String name : knob.names()) {
            if (attempt(name, 0, Change.NAMED, attempts).works() && names.size() < MOST_NAMES) {
                names.add(name);
            }
        }
        if (!names.isEmpty()) {
            found = new Change(knob, names, Change.NAMED);
        }
        ended = true;
    }

    private void oneByOne(double share, Attempts attempts) {
        while (next < each.size() && knob.share(each.get(next)) <= share) {
            double value = each.get(next++);
            Attempts.Attempt attempt = attempt(value, attempts);
            if (attempt.works()) {
                found = change(value, attempt);
                ended = true;
                return;
            }
        }
        ended = next == each.size();
    }

    private void outwards(double share, Attempts attempts) {
        if (!begun) {
            begun = true;
            if (isGoal(share, attempts)) {
                return;
            }
            ended = !matters(attempts);
        }
        while (!ended && next < ladder.size()) {
            long steps = ladder.get(next);
            double value = knob.value(sense, steps);
            if (!knob.isInRange(value)) {
                ended = true;
            } else if (knob.share(value) > share) {
                return;
            } else {
                next++;
                Attempts.Attempt attempt = attempt(value, attempts);
                found = attempt.works()
                        ? back(last, steps, attempts)
                        : attempt.valid() ? null : beforeInvalid(last, steps, attempts);
                ended = !attempt.valid() || found != null;
                last = steps;
            }
        }
        ended |= next == ladder.size();
    }

    /** What the design came to is what its limit would have to be; the grid's next value beyond it works, none nearer. */
    private boolean isGoal(double share, Attempts attempts) {
        if (Double.isNaN(knob.goal()) || sense * (knob.goal() - knob.now()) <= 0) {
            return false;
        }
        long steps = Math.max(1, (long) Math.ceil(Math.abs(knob.goal() - knob.value(sense, 0)) / knob.grid() - 1e-6));
        double value = knob.value(sense, steps);
        if (knob.share(value) > share
                || !knob.isInRange(value)
                || !attempt(value, attempts).works()) {
            return false;
        }
        boolean nearest =
                steps == 1 || !attempt(knob.value(sense, steps - 1), attempts).works();
        found = nearest ? rounded(steps, attempts) : back(0, steps - 1, attempts);
        ended = true;
        return true;
    }

    /** Looks between a value that fails and one that is no spec any more, towards the latter. */
    private Change beforeInvalid(long fails, long invalid, Attempts attempts) {
        long bad = fails;
        long end = invalid;
        for (int i = 0; i < HALVINGS && end - bad > 1; i++) {
            long middle = (bad + end) / 2;
            Attempts.Attempt attempt = attempt(knob.value(sense, middle), attempts);
            if (attempt.works()) {
                return back(bad, middle, attempts);
            }
            bad = attempt.valid() ? middle : bad;
            end = attempt.valid() ? end : middle;
        }
        return null;
    }

    /** Whether a large change changes what fails, or a small one where a large one is no spec. */
    private boolean matters(Attempts attempts) {
        for (double share : new double[] {LARGE, SMALL}) {
            double value = knob.value(sense, knob.steps(share));
            if (knob.isInRange(value)) {
                Attempts.Attempt attempt = attempt(value, attempts);
                if (attempt.valid()) {
                    return attempt.works() || !attempt.failures().equals(failures);
                }
            }
        }
        return false;
    }

    private static List<Long> ladder(Knob knob, int sense) {
        List<Long> ladder = new ArrayList<>();
        if (knob.numeric().whole()) {
            for (long i = 1; i <= ONE_BY_ONE; i++) {
                ladder.add(i);
            }
        }
        for (double share : sense > 0 ? UP : DOWN) {
            long steps = knob.steps(share);
            if (ladder.isEmpty() || steps > ladder.get(ladder.size() - 1)) {
                ladder.add(steps);
            }
        }
        // From nothing, or from next to nothing, it can be far to where it works.
        for (int i = 0; i < FURTHER && sense > 0; i++) {
            ladder.add(2 * ladder.get(ladder.size() - 1));
        }
        return ladder;
    }

    /** The nearest value between one that fails and one that works, both in steps of the grid. */
    private Change back(long fails, long works, Attempts attempts) {
        long bad = fails;
        long good = works;
        while (good - bad > 1) {
            long middle = (good + bad) / 2;
            if (attempt(knob.value(sense, middle), attempts).works()) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return rounded(good, attempts);
    }

    private Change rounded(long good, Attempts attempts) {
        for (int coarser = COARSEST; coarser > 1 && !knob.numeric().whole(); coarser /= 10) {
            long round = roundedOut(good, coarser);
            if (round - good <= ROUNDED_BY * good) {
                Attempts.Attempt attempt = attempt(knob.value(sense, round), attempts);
                if (attempt.works()) {
                    return change(knob.value(sense, round), attempt);
                }
            }
        }
        double value = knob.value(sense, good);
        return change(value, attempt(value, attempts));
    }

    /** Steps to the next value at or beyond that many that is a multiple of so many grid steps. */
    private long roundedOut(long steps, int coarser) {
        double at = knob.value(sense, steps) / (knob.grid() * coarser);
        double round = sense > 0 ? Math.ceil(at - 1e-6) : Math.floor(at + 1e-6);
        return steps + Math.round(Math.abs(round - at) * coarser);
    }

    private Attempts.Attempt attempt(double value, Attempts attempts) {
        long steps = Math.round(Math.abs(value - knob.value(sense, 0)) / knob.grid());
        boolean onGrid = steps > 0 && knob.text(knob.value(sense, steps)).equals(knob.text(value));
        return attempt(knob.text(value), onGrid ? steps : 0, knob.share(value), attempts);
    }

    private Attempts.Attempt attempt(String text, long steps, double share, Attempts attempts) {
        Attempts.Attempt attempt = attempts.with(knob.set(text));
        if (attempt.valid() && attempt.miss() < best.attempt().miss()) {
            best = new Best(text, steps, share, attempt);
        }
        return attempt;
    }

    private Change change(double value, Attempts.Attempt attempt) {
        return new Change(knob, List.of(knob.text(value)), knob.share(value));
    }
}
