// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.List;
import ringleaf.part.Words;

/**
 * A change of one field that makes a failing design work, found by solving it.
 *
 * @param knob that is changed
 * @param values that work, as they can stand in a spec; of numbers the nearest one found, of names all that were tried
 * @param share how much it changes: a number by its share of itself (of 1 mm, 10 degrees or 1 where it is 0), a
 *     named way always by a half
 */
public record Change(Knob knob, List<String> values, double share) {
    /** How much another named way counts. */
    static final double NAMED = 0.5;

    public Change {
        values = List.copyOf(values);
    }

    /** The path of the field within its mechanism. */
    public String path() {
        return knob.path().within();
    }

    /** The value, or several named ways with "or" between them. */
    public String value() {
        return String.join(" or ", values);
    }

    /** What holds at present. */
    public String now() {
        return knob.nowText();
    }

    /** A line for people. */
    public String words(boolean measured) {
        String by = measured ? "; " + percent() : "";
        return path() + ": " + value() + " would fit" + along(values.get(0)) + " (now " + now() + by + ")";
    }

    /** The options of the command line that try it. */
    public String typed() {
        Attempts.Setting setting = setting();
        return typed(setting) + setting.along().map(also -> " " + typed(also)).orElse("");
    }

    private static String typed(Attempts.Setting setting) {
        int from = setting.keys().get(0).equals(SpecPath.MECHANISMS) ? 1 : 0;
        String path =
                String.join(".", setting.keys().subList(from, setting.keys().size()));
        return "--set " + path + "=" + setting.text().replace(" ", "");
    }

    /** What has to change with it, in words, or nothing. */
    String along(String value) {
        return knob.set(value)
                .along()
                .map(also -> " with " + also.keys().get(also.keys().size() - 1) + ": " + also.text())
                .orElse("");
    }

    String percent() {
        return Words.number(100 * share, 1) + " %";
    }

    /** The change to its first value. */
    Attempts.Setting setting() {
        return knob.set(values.get(0));
    }

    boolean isBefore(Change other) {
        if (share != other.share) {
            return share < other.share;
        }
        int byPath = path().compareTo(other.path());
        return byPath != 0 ? byPath < 0 : value().compareTo(other.value()) < 0;
    }

    /** The same with fewer values. */
    Change withValues(List<String> fewer) {
        return new Change(knob, fewer, share);
    }
}
