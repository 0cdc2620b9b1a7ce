package ringleaf.report.page;

import ringleaf.draw.Decimals;
import ringleaf.draw.PlainText;

/**
 * Text from outside made harmless for the places of a page. In markup and in quoted attributes {@code & < > " '} become
 * character references (HTML, section "Escaping a string"); in the page's data {@code <} and the separators U+2028 and
 * U+2029 are written by number, so that nothing can end the script element that holds it.
 */
final class PageText {
    private PageText() {}

    /** Appends text for markup or for an attribute in double quotes. */
    static StringBuilder html(StringBuilder out, String text) {
        String line = PlainText.line(text);
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(c);
            }
        }
        return out;
    }

    /** Appends a JSON string with its quotes. */
    static StringBuilder json(StringBuilder out, String text) {
        String line = PlainText.line(text);
        out.append('"');
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < 0x20 || c == '<' || c == '>' || c == '&' || c == 0x2028 || c == 0x2029) {
                out.append("\\u");
                for (int shift = 12; shift >= 0; shift -= 4) {
                    out.append(Character.forDigit(c >> shift & 0xF, 16));
                }
            } else {
                out.append(c);
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
