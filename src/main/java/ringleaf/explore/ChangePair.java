// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

/**
 * Two changes that make a failing design work together, found by solving it; neither does alone.
 *
 * @param one of them, the one that changes less
 * @param other one
 */
public record ChangePair(Change one, Change other) {
    /** How much both change. */
    double share() {
        return one.share() + other.share();
    }

    /** A line for people. */
    public String words() {
        return half(one) + " and " + half(other) + " would fit together (" + one.percent() + " and " + other.percent()
                + ")";
    }

    private static String half(Change change) {
        return change.path() + " " + change.now() + " → " + change.values().get(0)
                + change.along(change.values().get(0));
    }

    boolean isBefore(ChangePair than) {
        return share() != than.share() ? share() < than.share() : words().compareTo(than.words()) < 0;
    }
}
