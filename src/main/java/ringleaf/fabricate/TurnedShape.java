// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import ringleaf.geom.Box;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

/** A piece at one angle, on the grid whose cell 0 begins at the lower left corner of its box. */
final class TurnedShape {
    final Placement turn;
    final Point corner;
    final double width;
    final double height;
    /** Height of the centre of its area above the lower edge of its box, mm. */
    final double middle;
    /** Cells that the piece touches. */
    final Raster own;
    /** Cells that others must keep off: the piece grown by the gap. */
    final Raster grown;

    private int[] steps;
    private int stride;

    private TurnedShape(Placement turn, Box box, double middle, Raster own, Raster grown) {
        this.turn = turn;
        this.corner = new Point(box.minX(), box.minY());
        this.width = box.width();
        this.height = box.height();
        this.middle = middle;
        this.own = own;
        this.grown = grown;
    }

    static TurnedShape of(Region outline, Region wide, double angle, double cell) {
        Placement turn = Placement.turn(angle);
        Region turned = outline.placed(turn);
        Box box = turned.box();
        Point corner = new Point(box.minX(), box.minY());
        return new TurnedShape(
                turn,
                box,
                turned.centroid().y() - corner.y(),
                Raster.of(turned, corner, cell),
                Raster.of(wide.placed(turn), corner, cell));
    }

    int[] steps(int rowLength) {
        if (steps == null || stride != rowLength) {
            steps = own.edgeSteps(rowLength);
            stride = rowLength;
        }
        return steps;
    }

    boolean looksLike(TurnedShape other) {
        return own.equals(other.own) && grown.equals(other.grown);
    }
}
