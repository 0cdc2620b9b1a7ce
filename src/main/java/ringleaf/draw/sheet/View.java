// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import ringleaf.curve.Scaled;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;

/**
 * From the turned part to the sheet.
 *
 * @param scale lengths on the sheet for lengths of the part
 * @param shift added after scaling, mm on the sheet
 */
record View(double scale, Point shift) {
    Point at(Point p) {
        return p.times(scale).plus(shift);
    }

    /** Back from the sheet to the part. */
    Point back(Point p) {
        return p.minus(shift).times(1 / scale);
    }

    Contour of(Contour contour) {
        return Scaled.of(contour, scale).placed(new Placement(0, shift));
    }
}
