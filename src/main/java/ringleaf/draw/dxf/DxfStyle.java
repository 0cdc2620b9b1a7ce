package ringleaf.draw.dxf;

import ringleaf.draw.LayerStyle;

/** Layer styles in the terms of DXF: a colour number and a line weight out of fixed rows. */
final class DxfStyle {
    /** The basic colours by number from 1: red, yellow, green, cyan, blue, magenta, black or white, two greys. */
    private static final int[] COLOURS = {
        0xFF0000, 0xFFFF00, 0x00FF00, 0x00FFFF, 0x0000FF, 0xFF00FF, 0x000000, 0x808080, 0xC0C0C0
    };
    /** Line weights that AC1015 knows, in 1/100 mm. */
    private static final int[] WEIGHTS = {
        0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211
    };

    private DxfStyle() {}

    /** The number of the nearest basic colour; white counts as black, which is shown against the background. */
    static int colour(LayerStyle style) {
        int best = 7;
        int least = style.rgb() == 0xFFFFFF ? -1 : Integer.MAX_VALUE;
        for (int i = 0; i < COLOURS.length; i++) {
            int distance = 0;
            for (int shift = 0; shift <= 16; shift += 8) {
                int d = (style.rgb() >> shift & 0xFF) - (COLOURS[i] >> shift & 0xFF);
                distance += d * d;
            }
            if (distance < least) {
                least = distance;
                best = i + 1;
            }
        }
        return best;
    }

    /** The nearest line weight, 1/100 mm. */
    static int weight(LayerStyle style) {
        int best = 0;
        for (int weight : WEIGHTS) {
            if (Math.abs(weight - 100 * style.width()) < Math.abs(best - 100 * style.width())) {
                best = weight;
            }
        }
        return best;
    }
}
