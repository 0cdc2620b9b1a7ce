// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.Locale;
import ringleaf.spec.text.Shown;

/** Recognises spellings of numbers that one program or another accepts and that would mislead here. */
final class NumberSpelling {
    private NumberSpelling() {}

    /** Says how a number is misspelt. */
    static final class Misspelt extends Exception {
        private final String hint;
        private final int offset;

        Misspelt(String reason, String hint, int offset) {
            super(reason, null, false, false);
            this.hint = hint;
            this.offset = offset;
        }

        String hint() {
            return hint;
        }

        int offset() {
            return offset;
        }
    }

    /** Passes when nothing misleading stands in the text. */
    static void check(String text, Quantity quantity, int longest) throws Misspelt {
        if (text.isBlank()) {
            throw new Misspelt("is empty where " + quantity.words() + " is wanted", sample(quantity), 0);
        }
        if (text.length() > longest) {
            throw new Misspelt(
                    Shown.cut(text, 24) + " is longer than any number needs (" + longest + " characters)", "", 0);
        }
        String word = text.trim().toLowerCase(Locale.ROOT);
        if (isNotFinite(word)) {
            throw new Misspelt(Shown.quoted(text) + " is not a finite number", "write " + quantity.words() + " out", 0);
        }
        comma(text);
        int underscore = text.indexOf('_');
        if (underscore > 0) {
            throw new Misspelt(
                    Shown.quoted(text) + " holds an underscore, which numbers here do not",
                    "write " + Shown.quoted(text.replace("_", "")),
                    underscore);
        }
        int colon = text.indexOf(':');
        if (colon > 0) {
            throw new Misspelt(
                    Shown.quoted(text) + " holds a colon, which old YAML reads as base 60",
                    "write a decimal number",
                    colon);
        }
        if (word.startsWith("0x") || word.startsWith("0o") || word.startsWith("0b")) {
            String reason = " is a hexadecimal, octal or binary number; only decimal ones are read";
            throw new Misspelt(Shown.quoted(text) + reason, "", 0);
        }
        characters(text);
    }

    private static String sample(Quantity quantity) {
        return "write it like " + quantity.samples();
    }

    private static boolean isNotFinite(String word) {
        String bare = word.startsWith("-") || word.startsWith("+") ? word.substring(1) : word;
        bare = bare.startsWith(".") ? bare.substring(1) : bare;
        return bare.equals("nan") || bare.equals("inf") || bare.equals("infinity");
    }

    private static void comma(String text) throws Misspelt {
        int comma = text.indexOf(',');
        if (comma < 0) {
            return;
        }
        boolean single = text.indexOf(',', comma + 1) < 0 && text.indexOf('.') < 0;
        String asPoint = Shown.quoted(text.replace(',', '.'));
        String reason = Shown.quoted(text) + " holds a comma; decimals take a point, and thousands no separator";
        throw new Misspelt(reason, single ? "write " + asPoint : "", text.codePointCount(0, comma));
    }

    private static void characters(String text) throws Misspelt {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            String instead = instead(c);
            if (instead != null) {
                throw new Misspelt(
                        "the character " + Shown.quoted(String.valueOf(c)) + " is not read in numbers",
                        "write " + instead,
                        i);
            }
            if (c == '\t' || c == '\n' || c == '\u00A0') {
                throw new Misspelt("a tab, a line break or a hard space stands in the number", "write a space", i);
            }
        }
    }

    private static String instead(char c) {
        switch (c) {
            case '\u2212':
            case '\u2013':
            case '\u2014':
                return "the plain minus -";
            case '½':
                return "1/2";
            case '¼':
                return "1/4";
            case '¾':
                return "3/4";
            case '\u2033':
            case '\u201C':
            case '\u201D':
                return "in or the plain \"";
            case '\'':
            case '\u2032':
            case '\u2019':
                return "inches (1 foot is 12in)";
            default:
                return null;
        }
    }
}
