// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.w3c.dom.Element;
import ringleaf.draw.svg.PathData;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.part.Callout;

/**
 * Callouts of a view laid out: dimension lines on the body, their text in a column on each side of it, one under the
 * other, joined by leaders. So no text lies on another, on the body or off the sheet.
 */
final class Notes {
    /** Directions of diameters in turn, degrees, so that several about one centre do not lie on each other. */
    private static final double[] DIRECTIONS = {38, 128, 12, 160, 62, 106};

    private static final int LONGEST = 60;
    /** Circles smaller than this, in units, are pointed at from outside. */
    private static final double SMALL_CIRCLE = 7;

    /** Circles that take up this share of the body's width get their dimension line under it. */
    private static final double WIDE = 0.7;

    /** What stands so near to the middle, as a share of the body's width, goes to the side that has fewer texts yet. */
    private static final double MIDDLE = 0.05;

    private static final double FOOT_ROW = 5.5;
    private static final double COLUMN_GAP = 5;
    private static final double ROW = 1.75;

    /** One callout: where its leader starts, which way it leaves, and its row. */
    private static final class Note {
        private final Callout callout;
        private final String text;
        private final Point anchor;
        private final Point far;
        private final boolean right;
        private final double wish;
        private double row;

        Note(Callout callout, Point anchor, Point far, boolean right, double wish) {
            this.callout = callout;
            this.text = Sheet.cut(callout.text(), LONGEST);
            this.anchor = anchor;
            this.far = far;
            this.right = right;
            this.wish = wish;
        }
    }

    private final Box body;
    private final double unit;
    private final double textSize;
    private final List<Note> notes = new ArrayList<>();
    private final List<Callout> wide = new ArrayList<>();

    Notes(List<Callout> callouts, String view, Box body, double unit, double textSize) {
        this.body = body;
        this.unit = unit;
        this.textSize = textSize;
        int diameters = 0;
        for (Callout callout : callouts) {
            if (!callout.view().equals(view)) {
                continue;
            }
            if (isWide(callout)) {
                wide.add(callout);
            } else {
                diameters += callout.form() == Callout.Form.DIAMETER ? 1 : 0;
                notes.add(note(callout, diameters));
            }
        }
        column(true);
        column(false);
        // The widest lies lowest, so that its ends do not cross the lines of the others.
        wide.sort(Comparator.comparingDouble(c -> c.from().distance(c.to())));
    }

    private boolean isWide(Callout callout) {
        double diameter = 2 * callout.from().distance(callout.to());
        return callout.form() == Callout.Form.DIAMETER && diameter > WIDE * body.width();
    }

    /** The height that the rows reach, mm; more than the body's where there are very many. */
    double top() {
        double top = body.maxY();
        for (Note note : notes) {
            top = Math.max(top, note.row + textSize);
        }
        return top;
    }

    /** Room that dimension lines need under the body, mm. */
    double foot() {
        return wide.isEmpty() ? 0 : (FOOT_ROW * wide.size() + 2) * unit;
    }

    /** Room that the column on one side needs beside the body, mm. */
    double margin(boolean right) {
        double widest = 0;
        for (Note note : notes) {
            if (note.right == right) {
                widest = Math.max(widest, Sheet.width(note.text, textSize) + (COLUMN_GAP + 2) * unit);
            }
        }
        return widest;
    }

    private Note note(Callout callout, int diameters) {
        Point anchor = callout.to();
        Point far = callout.from();
        double wish = anchor.y();
        if (callout.form() == Callout.Form.DIAMETER) {
            double radius = callout.from().distance(callout.to());
            double angle = Math.toRadians(DIRECTIONS[(diameters - 1) % DIRECTIONS.length]);
            anchor = callout.from().plus(Point.polar(radius, angle));
            far = callout.from().minus(Point.polar(radius, angle));
            // Straight on, out to the edge of the body.
            wish = callout.from().y() + Math.tan(angle) * body.width() / 2 * Math.signum(Math.cos(angle));
            wish = Math.max(body.minY(), Math.min(body.maxY(), wish));
        } else if (callout.form() == Callout.Form.DISTANCE) {
            anchor = callout.from().towards(callout.to(), 0.5);
            wish = anchor.y();
        }
        boolean right = anchor.x() >= body.centre().x();
        if (Math.abs(anchor.x() - body.centre().x()) < MIDDLE * body.width()) {
            int more = 0;
            for (Note note : notes) {
                more += note.right ? 1 : -1;
            }
            right = more <= 0;
        }
        return new Note(callout, anchor, far, right, wish);
    }

    /** Gives each note of a side a row near to where it would like to be. */
    private void column(boolean right) {
        List<Note> side = new ArrayList<>();
        for (Note note : notes) {
            if (note.right == right) {
                side.add(note);
            }
        }
        side.sort(Comparator.comparingDouble(n -> -n.wish));
        double step = ROW * textSize;
        double next = body.maxY();
        for (Note note : side) {
            note.row = Math.min(note.wish, next);
            next = note.row - step;
        }
        double lowest = body.minY();
        for (int i = side.size() - 1; i >= 0; i--) {
            side.get(i).row = Math.max(side.get(i).row, lowest);
            lowest = side.get(i).row + step;
        }
    }

    void paint(Sheet sheet) {
        Element group = sheet.group(sheet.root(), "callouts");
        for (Note note : notes) {
            dimension(sheet, group, note);
        }
        for (Note note : notes) {
            leader(sheet, group, note);
        }
        for (int i = 0; i < wide.size(); i++) {
            under(sheet, group, wide.get(i), body.minY() - FOOT_ROW * (i + 1) * unit);
        }
    }

    /** A dimension line under the body, its text in the middle. */
    private void under(Sheet sheet, Element group, Callout callout, double y) {
        double radius = callout.from().distance(callout.to());
        String text = Sheet.cut(callout.text(), LONGEST);
        double half = Sheet.width(text, textSize) / 2 + unit;
        for (int way = -1; way <= 1; way += 2) {
            Point side = callout.from().plus(new Point(way * radius, 0));
            Point end = new Point(side.x(), y);
            sheet.line(group, side.minus(new Point(0, unit)), end.minus(new Point(0, unit)), Palette.QUIET_INK, 0.12);
            sheet.line(group, new Point(callout.from().x() + way * half, y), end, Palette.INK, 0.2);
            arrow(sheet, group, end, new Point(way, 0));
        }
        Point middle = new Point(callout.from().x(), y - 0.35 * textSize);
        sheet.text(group, text, middle, textSize, Palette.INK, "middle");
    }

    private void dimension(Sheet sheet, Element group, Note note) {
        Callout.Form form = note.callout.form();
        double size = note.anchor.distance(note.far);
        if (form == Callout.Form.LABEL || size == 0) {
            String radius = Sheet.number(0.6 * unit);
            String x = Sheet.number(note.anchor.x());
            String y = Sheet.number(-note.anchor.y());
            sheet.add(
                    group,
                    "circle",
                    "cx",
                    x,
                    "cy",
                    y,
                    "r",
                    radius,
                    "fill",
                    Palette.INK,
                    "stroke",
                    Palette.PAPER,
                    "stroke-width",
                    Sheet.number(0.2 * unit));
            return;
        }
        if (form == Callout.Form.DIAMETER && size < 2 * SMALL_CIRCLE * unit) {
            Point out = note.anchor.minus(note.far).unit();
            arrow(sheet, group, note.anchor, out.times(-1));
            return;
        }
        Point end = form == Callout.Form.DISTANCE ? note.callout.to() : note.anchor;
        Point start = note.far;
        Point along = end.minus(start).unit();
        haloed(sheet, group, start, end);
        arrow(sheet, group, end, along);
        if (form != Callout.Form.RADIUS) {
            arrow(sheet, group, start, along.times(-1));
        }
    }

    private void leader(Sheet sheet, Element group, Note note) {
        double edge = note.right ? body.maxX() : body.minX();
        double way = note.right ? 1 : -1;
        Point end = new Point(edge + way * COLUMN_GAP * unit, note.row);
        Point knee = new Point(edge + way * (COLUMN_GAP - 2) * unit, note.row);
        haloed(sheet, group, note.anchor, knee);
        sheet.line(group, knee, end, Palette.INK, 0.2);
        Point text = new Point(end.x() + way * 0.8 * unit, note.row - 0.35 * textSize);
        sheet.text(group, note.text, text, textSize, Palette.INK, note.right ? "start" : "end");
    }

    private static void haloed(Sheet sheet, Element group, Point a, Point b) {
        Sheet.set(sheet.line(group, a, b, Palette.PAPER, 0.9), "stroke-opacity", "0.75");
        sheet.line(group, a, b, Palette.INK, 0.2);
    }

    private void arrow(Sheet sheet, Element group, Point tip, Point along) {
        Point back = tip.minus(along.times(2.2 * unit));
        Point side = along.left().times(0.55 * unit);
        Contour head = Contour.polygon(List.of(tip, back.plus(side), back.minus(side)));
        sheet.path(group, new PathData(Sheet.DECIMALS).add(head).toString(), Palette.INK, "none", 0);
    }
}
