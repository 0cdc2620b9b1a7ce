// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import ringleaf.geom.Point;
import ringleaf.part.Words;

/**
 * From a drawing's own places to those of the mechanism, and back for messages: who looks for a place that is told looks
 * for it in the drawing.
 *
 * @param unit mm in a unit of the drawing
 * @param down whether y grows downwards in it, as in an SVG
 * @param reading where it lies in the mechanism
 */
record DrawingFrame(double unit, boolean down, OutlineFile.Reading reading) {
    /** From units of the drawing, y turned up, to mm about the mechanism's axis. */
    Affine map() {
        return Affine.turn(reading.turn())
                .after(Affine.shift(-reading.x(), -up(reading.y())))
                .after(new Affine(unit, 0, 0, unit, 0, 0));
    }

    private double up(double y) {
        return down ? -y : y;
    }

    /** A place of the mechanism as the drawing has it, with the frame that it is in. */
    String words(Point p) {
        Point own = Affine.turn(-reading.turn()).apply(p).plus(new Point(reading.x(), up(reading.y())));
        String scale = unit == 1 ? "mm" : unit == 25.4 ? "in" : "units of " + Words.number(unit, 5) + " mm";
        return Words.number(own.x() / unit, 3) + ", " + Words.number(up(own.y()) / unit, 3) + " (" + scale
                + " of the drawing, y " + (down ? "down" : "up") + ")";
    }
}
