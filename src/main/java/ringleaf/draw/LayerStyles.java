// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

/**
 * The usual lines of cut files. Every layer of a file has a colour of its own, in SVG by its value and in DXF by its
 * number among the 255 of that format: 1 red, 2 yellow, 3 green, 4 cyan, 5 blue, 6 magenta, 7 black or white, 8 grey; then
 * from 10 on rows of ten for hues 15 degrees apart, the even ones of a row ever darker.
 */
public final class LayerStyles {
    /** Width of lines, mm. */
    public static final double WIDTH = 0.1;

    public static final LayerStyle CUT = new LayerStyle(0x101010, 7, WIDTH);
    public static final LayerStyle MARK = new LayerStyle(0x1F5FA8, 5, WIDTH);
    public static final LayerStyle GUIDE = new LayerStyle(0x8C8C8C, 8, WIDTH);

    /** What processes cut, in the order of the ready catalogue: dark enough to be seen on paper. */
    private static final LayerStyle[] PROCESSES = {
        new LayerStyle(0xB00020, 1, WIDTH),
        new LayerStyle(0xD06000, 30, WIDTH),
        new LayerStyle(0x5B3A8C, 200, WIDTH),
        new LayerStyle(0x007C9C, 4, WIDTH),
        new LayerStyle(0x101010, 7, WIDTH),
        new LayerStyle(0x7A6A00, 2, WIDTH),
        new LayerStyle(0xA8007A, 6, WIDTH),
        new LayerStyle(0x2E7D00, 3, WIDTH)
    };

    private static final int HUES = 24;
    /** Hues of neighbours lie as far apart as may be, and all come once before one comes again. */
    private static final int STRIDE = 11;
    /** Colours of a row: at two thirds and at half of the full light. */
    private static final int TWO_THIRDS = 2;

    private static final int HALF = 4;

    private LayerStyles() {}

    /** The line of a level, counted from 1 at the bed; the first 24 are all different. */
    public static LayerStyle level(int n) {
        return hue((n - 1) * STRIDE % HUES, HALF);
    }

    /** The line of what a process cuts, by its place in the catalogue from 0; the first 32 are all different. */
    public static LayerStyle process(int place) {
        return place < PROCESSES.length
                ? PROCESSES[place]
                : hue((place - PROCESSES.length) * STRIDE % HUES, TWO_THIRDS);
    }

    private static LayerStyle hue(int row, int column) {
        double light = column == HALF ? 0.5 : 0.65;
        int rgb = 0;
        for (int channel = 0; channel < 3; channel++) {
            // full up to 60 degrees from the channel's own hue, none from 120 degrees on
            double away = Math.abs(Math.IEEEremainder(15.0 * row - 120.0 * channel, 360));
            double share = Math.max(0, Math.min(1, (120 - away) / 60));
            rgb = rgb << 8 | (int) (255 * light * share);
        }
        return new LayerStyle(rgb, 10 * (row + 1) + column, WIDTH);
    }
}
