// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Collects everything that is wrong, so that one run tells it all.
 *
 * <p>What is wrong is of two sorts. Where the nearest value that works is known, reading goes on with it
 * ({@link #nearest}), so that what depends on it can still be looked at; everything else leaves a gap ({@link #at}), and
 * what depends on it had better not be asked.
 */
public final class Problems {
    private static final int SHOWN = 50;
    private static final int KEPT = 1000;

    private final List<Problem> found = new ArrayList<>();
    private final Set<Place> settled = new HashSet<>();
    private int count;
    private int gaps;

    /** Adds a problem at a place, in whose stead nothing could be read. */
    public void at(Place place, String reason) {
        at(place, reason, "");
    }

    /** Adds a problem at a place, in whose stead nothing could be read, with what would help; the hint may be empty. */
    public void at(Place place, String reason, String hint) {
        gaps++;
        add(place, reason, hint);
    }

    /** Adds a problem of a value in whose stead reading goes on with the nearest one that works. */
    public void nearest(Place place, String reason, String hint) {
        add(place, reason, hint);
    }

    /** How often reading had to go on with nothing, so far: a count to compare with an earlier one. */
    public int gaps() {
        return gaps;
    }

    /**
     * From now on a further problem of a place that has one already is not told: it would be about the value that was
     * put there, and not about what the user wrote.
     */
    public void settle() {
        for (Problem problem : found) {
            settled.add(problem.place().named(""));
        }
    }

    private void add(Place place, String reason, String hint) {
        if (settled.contains(place.named(""))) {
            return;
        }
        count++;
        if (found.size() < KEPT) {
            Problem problem = new Problem(place, reason, hint);
            if (!found.contains(problem)) {
                found.add(problem);
            } else {
                count--;
            }
        }
    }

    /** Adds a problem of a whole source. */
    public void of(SpecSource source, String reason, String hint) {
        at(source.whole(), reason, hint);
    }

    /** All problems as {@link #list} gives them; this collection is empty afterwards. */
    public List<Problem> drain() {
        List<Problem> all = list();
        found.clear();
        settled.clear();
        count = 0;
        gaps = 0;
        return all;
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    public int count() {
        return count;
    }

    /** All problems: by source in the order the sources were met, then by line and column. */
    public List<Problem> list() {
        List<String> sources = new ArrayList<>();
        for (Problem problem : found) {
            String name = problem.place().source().name();
            if (!sources.contains(name)) {
                sources.add(name);
            }
        }
        List<Problem> sorted = new ArrayList<>(found);
        sorted.sort((a, b) -> {
            int bySource = Integer.compare(
                    sources.indexOf(a.place().source().name()),
                    sources.indexOf(b.place().source().name()));
            if (bySource != 0) {
                return bySource;
            }
            int byLine = Integer.compare(a.place().line(), b.place().line());
            return byLine != 0
                    ? byLine
                    : Integer.compare(a.place().column(), b.place().column());
        });
        return List.copyOf(sorted);
    }

    /** The text for a person, every problem with its line; at most 50 are printed and the rest counted. */
    public String text() {
        StringBuilder out = new StringBuilder();
        List<Problem> all = list();
        for (int i = 0; i < all.size() && i < SHOWN; i++) {
            out.append(all.get(i).text());
        }
        if (count > SHOWN) {
            out.append("and ").append(count - Math.min(SHOWN, all.size())).append(" more\n");
        }
        return out.toString();
    }

    /** Ends the reading when anything is wrong. */
    public void throwIfAny() {
        if (!isEmpty()) {
            throw new SpecRefused(this);
        }
    }
}
