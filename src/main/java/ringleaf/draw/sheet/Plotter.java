// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.List;
import ringleaf.curve.Lettering;
import ringleaf.draw.page.Pen;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** Draws on a sheet and takes the room at once, so that nothing is drawn that the next text does not know of. */
final class Plotter {
    /** Height of dimensions, mm (ISO 3098-1, from memory: 1.8, 2.5, 3.5, 5). */
    static final double TEXT = 2.5;
    /** From a line of text to the next, mm. */
    static final double STEP = 4.2;

    private static final double ARROW = 2.5;
    /** Half the width of an arrowhead of 15 degrees to a side (ISO 129-1, from memory). */
    private static final double BARB = ARROW * Math.tan(Math.toRadians(10));

    private static final double DASH = 7;
    private static final double HOLE = 1;
    private static final double DOT = 0.6;

    private final Pen pen = new Pen();
    private final Room room;

    Plotter(Room room) {
        this.room = room;
    }

    Pen pen() {
        return pen;
    }

    Room room() {
        return room;
    }

    void contour(Contour contour) {
        pen.contour(Pen.OUTLINE, contour);
        for (Segment segment : contour.segments()) {
            room.add(segment);
        }
    }

    void wide(Segment segment) {
        pen.path(Pen.OUTLINE, Path.of(segment));
        room.add(segment);
    }

    void thin(Segment segment) {
        pen.path(Pen.THIN, Path.of(segment));
        room.add(segment);
    }

    /** A thin line that later leaders had better not cross. */
    void leader(Point from, Point to) {
        Line line = new Line(from, to);
        pen.path(Pen.THIN, Path.of(line));
        room.leader(line);
    }

    /** A filled arrowhead with its tip there, pointing along the direction. */
    void arrow(Point tip, Point direction) {
        Point along = direction.unit();
        Point back = tip.minus(along.times(ARROW));
        Point left = back.plus(along.left().times(BARB));
        Point right = back.minus(along.left().times(BARB));
        Path shape = Path.of(new Line(tip, left), new Line(left, right), new Line(right, tip), new Line(tip, back));
        pen.path(Pen.THIN, shape);
        room.add(new Line(tip, left));
        room.add(new Line(tip, right));
    }

    /** A level line of text. */
    void text(String text, Point corner, double height) {
        pen.text(text, corner, height);
        room.text(Room.textBox(text, corner, height));
    }

    /** A line of text that reads upwards, from its lower right corner. */
    void upright(String text, Point corner, double height) {
        pen.text(text, corner, height, Math.PI / 2);
        room.text(uprightBox(text, corner, height));
    }

    static Box uprightBox(String text, Point corner, double height) {
        return new Box(
                corner.x() - height, corner.y(), corner.x() + height / 3, corner.y() + Lettering.width(text, height));
    }

    /** A centre line: long dashes and dots (ISO 128-2 line 04.1, from memory), beginning and ending on a dash. */
    void centreLine(Segment along) {
        room.add(along);
        double length = along.length();
        double period = DASH + 2 * HOLE + DOT;
        int count = (int) Math.floor((length - DASH) / period);
        if (count < 1) {
            pen.path(Pen.THIN, Path.of(along));
            return;
        }
        // The first and the last dash take what is left over.
        double rest = (length - DASH - count * period) / 2;
        double at = 0;
        for (int i = 0; i <= count; i++) {
            double end = i == count ? length : at + DASH + (i == 0 ? rest : 0);
            pen.path(Pen.THIN, Path.of(along.part(at / length, Math.min(1, end / length))));
            if (i < count) {
                double dot = end + HOLE;
                pen.path(Pen.THIN, Path.of(along.part(dot / length, (dot + DOT) / length)));
                at = dot + DOT + HOLE;
            }
        }
    }

    void centreCircle(Point centre, double radius) {
        for (Arc half : List.of(Arc.of(centre, radius, 0, Math.PI), Arc.of(centre, radius, Math.PI, Math.PI))) {
            centreLine(half);
        }
    }
}
