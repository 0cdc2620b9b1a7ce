// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.List;
import ringleaf.spec.Cutting;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;

/**
 * All sheets of one stock.
 *
 * @param process that cuts them
 * @param stock they are of
 * @param cutting what was asked for
 * @param size of a sheet
 * @param nested what lies where
 * @param boxArea area that upright boxes in rows would use, mm², to compare with
 * @param kerf mm that are in all outlines; 0 for nominal ones
 * @param tabWidth mm, 0 for none
 */
public record SheetSet(
        MakingProcess process,
        Stock stock,
        Cutting cutting,
        Cutting.SheetSize size,
        Nested nested,
        double boxArea,
        double kerf,
        double tabWidth) {
    /** Room round etched sheets for the frame and its tooling holes, mm (common practice, no source). */
    public static final double FRAME = 8;
    /** Diameter of tooling holes, mm (common practice, no source). */
    public static final double TOOLING_HOLE = 3;

    /** Whether sheets have a frame with tooling holes, as etched ones need for lining up both masks. */
    public boolean isFramed() {
        return isEtched(process);
    }

    /** Whether the stock is metal, which is rolled and leaves burrs. */
    public boolean isMetal() {
        return Fits.isMetal(stock);
    }

    /** Whether the sheet is a printer's bed. */
    public boolean isPrinted() {
        return process.makesLayers();
    }

    static boolean isEtched(MakingProcess process) {
        return process.name().equals("photo-etch");
    }

    /** Share of the sheets that upright boxes in rows would turn into parts. */
    public double boxUtilisation() {
        return nested.area() / boxArea;
    }

    public double utilisation() {
        return nested.utilisation(size.width(), size.height());
    }

    /** Copies on all sheets. */
    public int pieces() {
        int sum = 0;
        for (List<Nested.Laid> sheet : nested.sheets()) {
            sum += sheet.size();
        }
        return sum;
    }
}
