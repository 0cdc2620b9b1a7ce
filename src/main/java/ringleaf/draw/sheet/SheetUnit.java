// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import ringleaf.draw.Decimals;

/** The unit in which a dimensioned sheet gives its lengths. */
public enum SheetUnit {
    MM("mm", 1, 3),
    /** To a tenth of a thousandth, 2.5 µm. */
    INCH("in", 25.4, 4);

    private final String spelling;
    private final double mm;
    private final int decimals;

    SheetUnit(String spelling, double mm, int decimals) {
        this.spelling = spelling;
        this.mm = mm;
        this.decimals = decimals;
    }

    public String spelling() {
        return spelling;
    }

    /** A length of so many mm, without its unit. */
    public String length(double length) {
        return Decimals.of(length / mm, decimals);
    }
}
