// SPDX-License-Identifier: Apache-2.0
package ringleaf.report.page;

import ringleaf.draw.Decimals;
import ringleaf.draw.PlainText;

/**
 * Text from outside made harmless for the places of a page, and pure ASCII, which is quick to write. In markup and in
 * quoted attributes {@code & < > " '} and all that is not ASCII become numeric character references (HTML, section
 * "Character references"); in the page's data they become JSON's escapes by number (RFC 8259, section 7), so that
 * nothing can end the script element that holds them.
 */
final class PageText {
    /** ASCII that means nothing to HTML nor JSON: most texts hold nothing else and go through as they are. */
    private static final boolean[] PLAIN = plain();

    private PageText() {}

    private static boolean[] plain() {
        boolean[] plain = new boolean[0x7F];
        for (int c = 0x20; c < plain.length; c++) {
            plain[c] = "&<>\"'\\".indexOf(c) < 0;
        }
        return plain;
    }

    private static boolean isPlain(String text) {
        // An array, as each call of charAt costs more than all else here while nothing is compiled yet.
        char[] chars = text.toCharArray();
        for (char c : chars) {
            if (c >= PLAIN.length || !PLAIN[c]) {
                return false;
            }
        }
        return true;
    }

    /** Appends text for markup or for an attribute in double quotes. */
    static StringBuilder html(StringBuilder out, String text) {
        if (isPlain(text)) {
            return out.append(text);
        }
        String line = PlainText.line(text);
        for (int i = 0; i < line.length(); ) {
            int c = line.codePointAt(i);
            if (c < PLAIN.length && (PLAIN[c] || c == '\\')) {
                out.append((char) c);
            } else {
                out.append("&#").append(c).append(';');
            }
            i += Character.charCount(c);
        }
        return out;
    }

    /** Appends a JSON string with its quotes. */
    static StringBuilder json(StringBuilder out, String text) {
        out.append('"');
        if (isPlain(text)) {
            return out.append(text).append('"');
        }
        String line = PlainText.line(text);
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c < PLAIN.length && (PLAIN[c] || c == '\'')) {
                out.append(c);
                continue;
            }
            out.append("\\u");
            for (int shift = 12; shift >= 0; shift -= 4) {
                out.append(Character.forDigit(c >> shift & 0xF, 16));
            }
        }
        return out.append('"');
    }

    /** Appends a number with at most so many decimals; {@code null} for what is no finite number. */
    static StringBuilder number(StringBuilder out, double value, int decimals) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return out.append("null");
        }
        Decimals.append(out, value, decimals);
        return out;
    }
}
