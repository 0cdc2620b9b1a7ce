package ringleaf.explore;

import ringleaf.part.Words;

/**
 * A single change that makes a failing design work, found by solving it.
 *
 * @param path of the field within its mechanism
 * @param value that works, as it can stand in a spec; the nearest one tried
 * @param now what holds at present
 * @param share how much it changes: a number by its share of itself (of 1 mm, 10 degrees or 1 where it is 0), a
 *     named way always by a half
 * @param note what comes along with it, or empty
 */
public record Change(String path, String value, String now, double share, String note) {
    /** How much another named way counts. */
    static final double NAMED = 0.5;

    /** A line for people. */
    public String words(boolean measured) {
        String by = measured ? "; " + Words.number(100 * share, 1) + " %" : "";
        return path + ": " + value + " would fit" + (note.isEmpty() ? "" : " " + note) + " (now " + now + by + ")";
    }

    boolean isBefore(Change other) {
        if (share != other.share) {
            return share < other.share;
        }
        int byPath = path.compareTo(other.path);
        return byPath != 0 ? byPath < 0 : value.compareTo(other.value) < 0;
    }
}
