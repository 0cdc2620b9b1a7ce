// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that a mistyped one most likely stands for. */
public final class Nearest {
    private Nearest() {}

    /**
     * The known name with the fewest changed, left out, added or exchanged letters; the first of equals.
     *
     * @return empty when every name differs by more than a third of its letters and more than two
     */
    public static Optional<String> of(String typed, Collection<String> known) {
        String word = fold(typed);
        if (word.length() > 60) {
            return Optional.empty();
        }
        String best = null;
        int least = Integer.MAX_VALUE;
        for (String name : known) {
            int distance = distance(word, fold(name));
            if (distance < least) {
                least = distance;
                best = name;
            }
        }
        if (best == null) {
            return Optional.empty();
        }
        int allowed = Math.max(word.length() <= 3 ? 1 : 2, Math.min(word.length(), best.length()) / 3);
        return least <= allowed ? Optional.of(best) : Optional.empty();
    }

    /** A hint for a message: the likely name, or the list of all when none is near. */
    public static String hint(String typed, Collection<String> known) {
        Optional<String> nearest = of(typed, known);
        if (nearest.isPresent()) {
            return "did you mean " + nearest.get() + "?";
        }
        if (known.isEmpty()) {
            return "";
        }
        return "known: " + Shown.cut(String.join(", ", known), 600);
    }

    private static String fold(String text) {
        return text.trim().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    /** Optimal string alignment distance: edits and exchanges of neighbours. */
    static int distance(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int cost = Math.min(last[j - 1] + change, Math.min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost = Math.min(cost, beforeLast[j - 2] + 1);
                }
                row[j] = cost;
            }
            int[] reused = beforeLast;
            beforeLast = last;
            last = row;
            row = reused;
        }
        return last[b.length()];
    }
}
