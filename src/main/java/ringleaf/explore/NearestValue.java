package ringleaf.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the nearest value of one knob that works: outwards in growing steps to the first that does, then back by
 * halving on a grid of round numbers. Where works and fails change places more than once between two steps, a nearer
 * value may be missed; whole numbers are tried one by one at first.
 */
final class NearestValue {
    /** Steps outwards, as shares of the value. */
    private static final double[] UP = {0.02, 0.05, 0.1, 0.2, 0.35, 0.6, 1, 2, 4, 9, 19};

    private static final double[] DOWN = {0.02, 0.05, 0.1, 0.2, 0.35, 0.5, 0.7, 0.85, 1};
    /** Whole numbers this near are tried one by one. */
    private static final int ONE_BY_ONE = 4;
    /** Where a value is changed to see whether it matters at all. */
    private static final double LARGE = 0.35;

    private static final double SMALL = 0.05;
    private static final int MOST_SOLD = 5;
    private static final int HALVINGS = 5;
    /** A value found is rounded away from the present one to as many grid steps, where that changes little. */
    private static final int COARSEST = 1000;

    private static final double ROUNDED_BY = 0.02;
    private static final int MOST_NAMES = 6;

    private final Knob knob;
    private final Attempts attempts;
    private final String failures;

    /**
     * A search.
     *
     * @param failures of the spec as it is
     */
    NearestValue(Knob knob, Attempts attempts, String failures) {
        this.knob = knob;
        this.attempts = attempts;
        this.failures = failures;
    }

    /** Changes of this knob that work, at most one each way for a number. */
    List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        if (!knob.isNumber()) {
            List<String> names = new ArrayList<>();
            for (String name : knob.names()) {
                if (attempts.with(knob.path().keys(), name).works() && names.size() < MOST_NAMES) {
                    names.add(name);
                }
            }
            return names.isEmpty()
                    ? changes
                    : List.of(new Change(
                            knob.path().within(), String.join(" or ", names), knob.nowText(), Change.NAMED, ""));
        }
        for (int sense = -1; sense <= 1; sense += 2) {
            if (sense < 0 ? knob.down() : knob.up()) {
                (knob.sold().length > 0 ? sold(sense) : search(sense)).ifPresent(changes::add);
            }
        }
        return changes;
    }

    private Optional<Change> sold(int sense) {
        double[] all = knob.sold();
        int tried = 0;
        for (int k = 0; k < all.length && tried < MOST_SOLD; k++) {
            double value = all[sense > 0 ? k : all.length - 1 - k];
            if (sense * (value - knob.now()) > 1e-9 && inRange(value)) {
                tried++;
                Attempts.Attempt attempt = attempt(value);
                if (attempt.works()) {
                    return Optional.of(change(value, attempt));
                }
                if (tried == 2 && attempt.failures().equals(failures)) {
                    return Optional.empty();
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Change> search(int sense) {
        if (!matters(sense)) {
            return Optional.empty();
        }
        long last = 0;
        for (long steps : ladder(sense)) {
            double value = value(sense, steps);
            if (!inRange(value)) {
                break;
            }
            Attempts.Attempt attempt = attempt(value);
            if (attempt.works()) {
                return Optional.of(back(sense, last, steps));
            }
            if (!attempt.valid()) {
                return beforeInvalid(sense, last, steps);
            }
            last = steps;
        }
        return Optional.empty();
    }

    /** Looks between a value that fails and one that is no spec any more, towards the latter. */
    private Optional<Change> beforeInvalid(int sense, long fails, long invalid) {
        long last = fails;
        long end = invalid;
        for (int i = 0; i < HALVINGS && end - last > 1; i++) {
            long middle = (last + end) / 2;
            Attempts.Attempt attempt = attempt(value(sense, middle));
            if (attempt.works()) {
                return Optional.of(back(sense, last, middle));
            }
            last = attempt.valid() ? middle : last;
            end = attempt.valid() ? end : middle;
        }
        return Optional.empty();
    }

    /** Whether a large change changes what fails, or a small one where a large one is no spec. */
    private boolean matters(int sense) {
        for (double share : new double[] {LARGE, SMALL}) {
            double value = value(sense, steps(share));
            if (inRange(value)) {
                Attempts.Attempt attempt = attempt(value);
                if (attempt.valid()) {
                    return attempt.works() || !attempt.failures().equals(failures);
                }
            }
        }
        return false;
    }

    private long steps(double share) {
        return Math.max(1, (long) Math.rint(share * knob.scale() / knob.grid()));
    }

    private List<Long> ladder(int sense) {
        List<Long> ladder = new ArrayList<>();
        if (knob.numeric().whole()) {
            for (long i = 1; i <= ONE_BY_ONE; i++) {
                ladder.add(i);
            }
        }
        for (double share : sense > 0 ? UP : DOWN) {
            long steps = steps(share);
            if (ladder.isEmpty() || steps > ladder.get(ladder.size() - 1)) {
                ladder.add(steps);
            }
        }
        return ladder;
    }

    /** The nearest value between one that fails and one that works, both in steps of the grid. */
    private Change back(int sense, long fails, long works) {
        long bad = fails;
        long good = works;
        while (good - bad > 1) {
            long middle = (good + bad) / 2;
            double value = value(sense, middle);
            if (attempt(value).works()) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        for (int coarser = COARSEST; coarser > 1 && !knob.numeric().whole(); coarser /= 10) {
            long round = roundedOut(sense, good, coarser);
            if (round - good <= ROUNDED_BY * good) {
                Attempts.Attempt attempt = attempt(value(sense, round));
                if (attempt.works()) {
                    return change(value(sense, round), attempt);
                }
            }
        }
        double value = value(sense, good);
        return change(value, attempt(value));
    }

    /** Steps to the next value at or beyond that many that is a multiple of so many grid steps. */
    private long roundedOut(int sense, long steps, int coarser) {
        double at = value(sense, steps) / (knob.grid() * coarser);
        double round = sense > 0 ? Math.ceil(at - 1e-6) : Math.floor(at + 1e-6);
        return steps + Math.round(Math.abs(round - at) * coarser);
    }

    /** On the grid: as many steps from the present value, rounded away from it. */
    private double value(int sense, long steps) {
        double grid = knob.grid();
        double from = knob.now() / grid;
        double at = sense > 0 ? Math.floor(from + 1e-6) + steps : Math.ceil(from - 1e-6) - steps;
        // Dividing by a whole number gives the double nearest to the decimal.
        return grid < 1 ? at / Math.rint(1 / grid) : at * grid;
    }

    private boolean inRange(double value) {
        return value >= knob.least() - 1e-12 && value <= knob.most() + 1e-12;
    }

    private Attempts.Attempt attempt(double value) {
        return attempts.with(knob.path().keys(), knob.text(value));
    }

    private Change change(double value, Attempts.Attempt attempt) {
        double share = Math.abs(value - knob.now()) / knob.scale();
        return new Change(knob.path().within(), knob.text(value), knob.nowText(), share, attempt.note());
    }
}
