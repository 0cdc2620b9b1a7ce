// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.dxf;

import ringleaf.draw.LayerStyle;

/** Widths of lines in the terms of DXF, which knows a fixed row of them. */
final class DxfStyle {
    /** Line weights that AC1015 knows, in 1/100 mm. */
    private static final int[] WEIGHTS = {
        0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211
    };

    private DxfStyle() {}

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
