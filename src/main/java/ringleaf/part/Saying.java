// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.ArrayList;
import java.util.List;

/**
 * What is to be told to people, as data: a key and its arguments. The words of a key stand in {@code words.properties}
 * beside the package that says it; only the report reads them and fills them in.
 *
 * @param key name of the package below {@code ringleaf} (a kind's below {@code mechanism}), a point, and the name of
 *     the words: {@code verify.thin-web}; empty for nothing at all
 * @param arguments what the words leave open, in the order of their numbers
 */
public record Saying(String key, List<Argument> arguments) implements Argument {
    /** Nothing to tell. */
    public static final Saying NONE = new Saying("", List.of());

    /** Key of a sentence that is words already: its only argument. */
    public static final String PLAIN = "plain";

    public Saying {
        arguments = List.copyOf(arguments);
    }

    /**
     * What a key says.
     *
     * @param arguments of {@link Argument}, or a text, a whole number, a yes or no, or a list of such
     */
    public static Saying of(String key, Object... arguments) {
        return new Saying(key, typed(List.of(arguments)));
    }

    /** A sentence that is words already. */
    public static Saying plain(String words) {
        return words.isEmpty() ? NONE : of(PLAIN, words);
    }

    /** Whether there is nothing to tell. */
    public boolean isEmpty() {
        return key.isEmpty();
    }

    private static List<Argument> typed(List<?> values) {
        List<Argument> typed = new ArrayList<>(values.size());
        for (Object value : values) {
            typed.add(typed(value));
        }
        return typed;
    }

    private static Argument typed(Object value) {
        if (value instanceof Argument argument) {
            return argument;
        } else if (value instanceof String text) {
            return new Argument.Name(text);
        } else if (value instanceof Integer || value instanceof Long) {
            return new Argument.Count(((Number) value).longValue());
        } else if (value instanceof Boolean yes) {
            return new Argument.Whether(yes);
        } else if (value instanceof List<?> several) {
            return new Argument.Several(typed(several));
        }
        throw new IllegalArgumentException("cannot be told: " + value);
    }
}
