// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.page;

import ringleaf.geom.Box;

/** Sizes of paper, upright: ISO 216 A4, and the letter size of ANSI Y14.1 (A), 8.5 by 11 inches. */
public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** The sheet in mm from its lower left corner, upright or lying. */
    public Box sheet(boolean lying) {
        return lying ? new Box(0, 0, height, width) : new Box(0, 0, width, height);
    }
}
