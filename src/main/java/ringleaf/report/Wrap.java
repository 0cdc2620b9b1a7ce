// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

/** Lines that a terminal of 80 columns shows whole. */
public final class Wrap {
    /** Columns of the narrowest terminal that is looked after. */
    public static final int WIDTH = 80;

    private Wrap() {}

    /**
     * Words in lines of at most {@link #WIDTH} columns, a word that is longer by itself apart; ends with a newline.
     *
     * @param first stands before the first line
     * @param indent columns that further lines are set in by
     */
    public static String of(String first, String words, int indent) {
        StringBuilder out = new StringBuilder(first);
        int column = first.length();
        boolean begun = false;
        for (String word : words.trim().split(" +")) {
            int wide = word.codePointCount(0, word.length());
            if (begun && column + 1 + wide > WIDTH) {
                out.append('\n').append(" ".repeat(indent));
                column = indent;
                begun = false;
            }
            out.append(begun ? " " : "").append(word);
            column += wide + (begun ? 1 : 0);
            begun = true;
        }
        return out.append('\n').toString();
    }
}
