// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Argument;
import ringleaf.part.Figure;
import ringleaf.part.Saying;
import ringleaf.part.ShownUnit;
import ringleaf.part.Words;

/**
 * Makes sentences of sayings: the words of the key with its arguments filled in.
 *
 * <p>In words, {@code {0}} stands for the first argument, <code>{0#hole|holes}</code> for one of two ways by how many
 * it counts or how many it lists, <code>{0?yes|no}</code> by whether it is so (or anything at all), {@code {mm}} for
 * the unit of lengths. Ways may hold further marks. Any other brace stands for itself.
 */
public final class Sentences {
    private final ShownUnit unit;

    private Sentences(ShownUnit unit) {
        this.unit = unit;
    }

    /** The sentence, with its lengths in a unit. */
    public static String of(Saying saying, ShownUnit unit) {
        return new Sentences(unit).told(saying);
    }

    private String told(Saying saying) {
        if (saying.isEmpty()) {
            return "";
        }
        if (saying.key().equals(Saying.PLAIN)) {
            return unit.text(((Argument.Name) saying.arguments().get(0)).text());
        }
        return filled(WordFile.words(saying.key()), saying.arguments());
    }

    private String filled(String words, List<Argument> arguments) {
        StringBuilder out = new StringBuilder(words.length() + 32);
        int at = 0;
        for (int open = words.indexOf('{'); open >= 0; open = words.indexOf('{', at)) {
            int close = end(words, open);
            String mark = close < 0 ? "" : words.substring(open + 1, close);
            out.append(words, at, open);
            if (mark.equals("mm")) {
                out.append(unit.spelling());
            } else if (!mark.isEmpty() && Character.isDigit(mark.charAt(0))) {
                out.append(mark(mark, arguments));
            } else {
                out.append('{');
                at = open + 1;
                continue;
            }
            at = close + 1;
        }
        return out.append(words, at, words.length()).toString();
    }

    private String mark(String mark, List<Argument> arguments) {
        int split = 0;
        while (split < mark.length() && Character.isDigit(mark.charAt(split))) {
            split++;
        }
        Argument argument = arguments.get(Integer.parseInt(mark.substring(0, split)));
        if (split == mark.length()) {
            return told(argument);
        }
        int or = bar(mark);
        boolean first = mark.charAt(split) == '#' ? count(argument) == 1 : isSo(argument);
        return filled(
                first ? mark.substring(split + 1, or) : mark.substring(Math.min(or + 1, mark.length())), arguments);
    }

    private String told(Argument argument) {
        if (argument instanceof Saying saying) {
            return told(saying);
        } else if (argument instanceof Figure figure) {
            return told(figure);
        } else if (argument instanceof Argument.Name name) {
            return name.text();
        } else if (argument instanceof Argument.Count count) {
            return Long.toString(count.number());
        } else if (argument instanceof Argument.Several several) {
            List<String> each = new ArrayList<>();
            several.each().forEach(one -> each.add(told(one)));
            int last = each.size() - 1;
            return last < 1
                    ? String.join("", each)
                    : String.join(", ", each.subList(0, last)) + " and " + each.get(last);
        }
        throw new IllegalStateException("only its words can be told: " + argument);
    }

    private String told(Figure figure) {
        boolean mm = unit == ShownUnit.MM;
        double value = figure.value();
        String exact = Words.number(value, figure.decimals());
        return switch (figure.kind()) {
            case LENGTH -> mm ? exact + " mm" : unit.figure(value, "mm");
            case BARE -> mm ? exact : unit.number(value);
            case TYPED -> mm ? exact : exact + " mm";
            case AREA -> mm ? exact + " mm²" : unit.figure(value, "mm2");
            case ANGLE -> Words.degrees(value, figure.decimals());
            case NUMBER -> exact;
        };
    }

    private static long count(Argument argument) {
        if (argument instanceof Argument.Several several) {
            return several.each().size();
        }
        return ((Argument.Count) argument).number();
    }

    private static boolean isSo(Argument argument) {
        if (argument instanceof Saying saying) {
            return !saying.isEmpty();
        } else if (argument instanceof Argument.Name name) {
            return !name.text().isEmpty();
        }
        return ((Argument.Whether) argument).yes();
    }

    /** Where the brace opened at {@code open} closes, or -1. */
    private static int end(String words, int open) {
        int depth = 0;
        for (int i = open; i < words.length(); i++) {
            depth += words.charAt(i) == '{' ? 1 : words.charAt(i) == '}' ? -1 : 0;
            if (depth == 0) {
                return i;
            }
        }
        return -1;
    }

    /** Where the first of two ways ends: its bar outside any brace, or the end. */
    private static int bar(String mark) {
        int depth = 0;
        for (int i = 0; i < mark.length(); i++) {
            char c = mark.charAt(i);
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            if (c == '|' && depth == 0) {
                return i;
            }
        }
        return mark.length();
    }
}
