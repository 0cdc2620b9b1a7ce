// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.pdf;

/** Widths of the letters of Helvetica, a font every reader of PDF has, in thousandths of its size. */
final class HelveticaWidths {
    /** From the space to the tilde, after the font's published metrics (AFM). */
    private static final int[] ASCII = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
        556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667,
        556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556,
        556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722,
        500, 500, 500, 334, 260, 334, 584
    };
    /** Others are close to a capital's; the strokes show where the letters are, this only spreads them. */
    private static final int OTHER = 600;

    private HelveticaWidths() {}

    /** The width of a line of text in WinAnsi encoding. */
    static double of(byte[] text) {
        double sum = 0;
        for (byte b : text) {
            int i = (b & 0xFF) - ' ';
            sum += i >= 0 && i < ASCII.length ? ASCII[i] : OTHER;
        }
        return sum;
    }
}
