// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for the smallest two changes that work together: both knobs go outwards by the same shares until the design
 * works, then each goes back as far as the other lets it, once this one first and once the other.
 */
final class PairSearch {
    private static final double[] SHARES = {0.05, 0.1, 0.2, 0.35, 0.6, 1, 2, 4};

    private final KnobSearch one;
    private final KnobSearch other;
    private final Attempts attempts;

    PairSearch(KnobSearch one, KnobSearch other, Attempts attempts) {
        this.one = one;
        this.other = other;
        this.attempts = attempts;
    }

    /** By how much all checks would be missed together if each way mended by itself what it mends alone. */
    static double expected(KnobSearch one, KnobSearch other) {
        double all = 0;
        for (Map.Entry<String, Double> miss : one.best().attempt().misses().entrySet()) {
            all += Math.min(miss.getValue(), other.best().attempt().misses().getOrDefault(miss.getKey(), 0.0));
        }
        return all;
    }

    /** A value of a knob: so many steps of its grid, or, with 0 of them, the best that was tried by itself. */
    private record Move(KnobSearch of, long steps) {
        String text() {
            return steps == 0 ? of.best().text() : of.knob().text(value());
        }

        double value() {
            return of.knob().value(of.sense(), steps);
        }

        Change change() {
            double share = steps == 0 ? of.best().share() : of.knob().share(value());
            return new Change(of.knob(), List.of(text()), share);
        }
    }

    /** The pair, when there is one on the way: what is best by itself first, then outwards. */
    Optional<ChangePair> find() {
        Move a = new Move(one, one.best().steps());
        Move b = new Move(other, other.best().steps());
        for (int i = 0; i <= SHARES.length; i++) {
            if (attempt(a, b).works()) {
                ChangePair first = pair(a, b, true);
                ChangePair second = pair(a, b, false);
                return Optional.of(second.isBefore(first) ? second : first);
            }
            if (i < SHARES.length) {
                a = out(a, SHARES[i]);
                b = out(b, SHARES[i]);
            }
        }
        return Optional.empty();
    }

    /** Out to that share, or not at all where the field's range ends before. */
    private static Move out(Move from, double share) {
        if (from.steps() == 0) {
            return from;
        }
        Move to = new Move(from.of(), from.of().knob().steps(share));
        return from.of().knob().isInRange(to.value()) ? to : from;
    }

    private ChangePair pair(Move a, Move b, boolean oneFirst) {
        Move least = oneFirst ? back(a, b) : a;
        Move otherLeast = back(b, least);
        least = oneFirst ? least : back(a, otherLeast);
        Change first = least.change();
        Change second = otherLeast.change();
        return first.share() <= second.share() ? new ChangePair(first, second) : new ChangePair(second, first);
    }

    /** The first of two that work together as near as it gets while the second stays; without it nothing works. */
    private Move back(Move moved, Move stays) {
        if (moved.steps() == 0) {
            return moved;
        }
        long bad = 0;
        long good = moved.steps();
        while (good - bad > 1) {
            long middle = (good + bad) / 2;
            if (attempt(new Move(moved.of(), middle), stays).works()) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return new Move(moved.of(), good);
    }

    /** Asked in the order of the knobs, so that each is known whichever of both moves. */
    private Attempts.Attempt attempt(Move moved, Move stays) {
        Move a = moved.of() == one ? moved : stays;
        Move b = moved.of() == one ? stays : moved;
        return attempts.with(one.knob().set(a.text()), other.knob().set(b.text()));
    }
}
