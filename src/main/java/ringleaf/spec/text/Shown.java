// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

/** Makes text from outside fit to be shown in a terminal: nothing in it can move the cursor or hide. */
public final class Shown {
    private Shown() {}

    /** The code point itself, or a visible one that stands for it. */
    public static int visible(int codePoint) {
        if (codePoint < 0x20) {
            return 0x2400 + codePoint;
        }
        if (codePoint == 0x7F) {
            return 0x2421;
        }
        return isHidden(codePoint) ? 0xFFFD : codePoint;
    }

    /** Whether it is a control character, a mark that turns the writing direction, or another that is not seen. */
    public static boolean isHidden(int codePoint) {
        if (codePoint < 0x7F) {
            return codePoint < 0x20;
        }
        switch (Character.getType(codePoint)) {
            case Character.CONTROL:
            case Character.FORMAT:
            case Character.SURROGATE:
            case Character.LINE_SEPARATOR:
            case Character.PARAGRAPH_SEPARATOR:
                return true;
            default:
                return false;
        }
    }

    /** The text with nothing hidden in it, cut to at most {@code most} code points. */
    public static String cut(String text, int most) {
        StringBuilder out = new StringBuilder();
        int count = 0;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (++count > most) {
                return out.append('…').toString();
            }
            out.appendCodePoint(visible(c));
            i += Character.charCount(c);
        }
        return out.toString();
    }

    /** The text as it is quoted within a message; an empty one as a pair of quotes, as it would not be seen. */
    public static String quoted(String text) {
        return text.isEmpty() ? "\"\"" : cut(text, 60);
    }
}
