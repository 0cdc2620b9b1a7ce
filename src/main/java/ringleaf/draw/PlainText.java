// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

/** Text from outside made harmless for a line of a file: what cannot be shown is dropped. */
public final class PlainText {
    private PlainText() {}

    /**
     * The text on one line: breaks and tabs become spaces; control characters, lone surrogates, characters that turn
     * the direction of reading and code points that XML 1.0 section 2.2 does not allow are dropped.
     */
    public static String line(String text) {
        StringBuilder out = null;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            int next = i + Character.charCount(c);
            boolean space = c == '\t' || c == '\n' || c == '\r' || c == 0x85 || c == 0x2028 || c == 0x2029;
            if (space || !shows(c)) {
                if (out == null) {
                    out = new StringBuilder(text.length()).append(text, 0, i);
                }
                if (space) {
                    out.append(' ');
                }
            } else if (out != null) {
                out.appendCodePoint(c);
            }
            i = next;
        }
        return out == null ? text : out.toString();
    }

    private static boolean shows(int c) {
        if (c < 0x20 || c >= 0x7F && c < 0xA0) {
            return false;
        }
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        boolean noCharacter = (c & 0xFFFE) == 0xFFFE || c >= 0xFDD0 && c <= 0xFDEF;
        boolean turnsDirection = c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069 || c == 0x200E || c == 0x200F;
        return !surrogate && !noCharacter && !turnsDirection && c != 0xFEFF;
    }
}
