// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.nio.charset.StandardCharsets;
import ringleaf.draw.PlainText;

/**
 * A table as comma-separated values with the quoting of RFC 4180, section 2; lines end with a line feed. Words that a
 * spreadsheet would take for a formula get an apostrophe in front.
 */
final class Csv {
    private final StringBuilder out = new StringBuilder(4096);
    private boolean begun;

    /** Adds a cell of words. */
    Csv words(String text) {
        String line = PlainText.line(text);
        boolean formula = !line.isEmpty() && "=+-@".indexOf(line.charAt(0)) >= 0;
        return cell(formula ? "'" + line : line);
    }

    /** Adds a number; an empty cell for what is no finite number. */
    Csv number(double value) {
        return cell(Figures.full(value, ""));
    }

    /** Ends the row. */
    void end() {
        out.append('\n');
        begun = false;
    }

    byte[] toBytes() {
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private Csv cell(String text) {
        if (begun) {
            out.append(',');
        }
        begun = true;
        if (text.indexOf(',') < 0 && text.indexOf('"') < 0) {
            out.append(text);
            return this;
        }
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            out.append(c == '"' ? "\"\"" : String.valueOf(c));
        }
        out.append('"');
        return this;
    }
}
