// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ringleaf.curve.Lettering;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * What is taken on a sheet: a grid of cells that lines and texts cover, and the texts and leaders themselves. A place
 * that is found free is free for certain; a tight one may be missed.
 */
final class Room {
    /** Side of a cell, mm. */
    private static final double CELL = 0.5;
    /** Least room between text and the next line or text, mm. */
    static final double CLEAR = 0.7;

    private final Box area;
    private final int columns;
    private final int rows;
    private final boolean[] taken;
    /** Sums over all cells below and left, made anew when something was added. */
    private final int[] sums;

    private boolean stale = true;
    private final boolean[] material;
    private final List<Box> texts = new ArrayList<>();
    private final List<Line> leaders = new ArrayList<>();

    /** A sheet on which nothing is taken; outside of {@code area} nothing is free. */
    Room(Box area) {
        this.area = area;
        columns = (int) Math.floor(area.width() / CELL);
        rows = (int) Math.floor(area.height() / CELL);
        taken = new boolean[columns * rows];
        material = new boolean[columns * rows];
        sums = new int[(columns + 1) * (rows + 1)];
    }

    Box area() {
        return area;
    }

    /** Takes the cells that a line runs through. */
    void add(Segment segment) {
        int steps = (int) Math.ceil(segment.length() / (CELL / 2)) + 1;
        for (int i = 0; i <= steps; i++) {
            take(segment.pointAt((double) i / steps));
        }
        stale = true;
    }

    private void take(Point p) {
        int column = (int) Math.floor((p.x() - area.minX()) / CELL);
        int row = (int) Math.floor((p.y() - area.minY()) / CELL);
        if (column >= 0 && column < columns && row >= 0 && row < rows) {
            taken[row * columns + column] = true;
        }
    }

    /** Takes a box, with no text in it that leaders must not cross. */
    void add(Box box) {
        int c0 = Math.max(0, (int) Math.floor((box.minX() - area.minX()) / CELL));
        int c1 = Math.min(columns - 1, (int) Math.floor((box.maxX() - area.minX()) / CELL));
        int r0 = Math.max(0, (int) Math.floor((box.minY() - area.minY()) / CELL));
        int r1 = Math.min(rows - 1, (int) Math.floor((box.maxY() - area.minY()) / CELL));
        for (int row = r0; row <= r1; row++) {
            if (c0 <= c1) {
                Arrays.fill(taken, row * columns + c0, row * columns + c1 + 1, true);
            }
        }
        stale = true;
    }

    /** Takes the box of a text. */
    void text(Box box) {
        add(box);
        texts.add(box);
    }

    /** Takes a leader or a dimension line, which later leaders had better not cross. */
    void leader(Line line) {
        add(line);
        leaders.add(line);
    }

    /** Whether the box with its clearance is on the sheet and covers nothing. */
    boolean isFree(Box box) {
        Box wide = box.grown(CLEAR);
        if (wide.minX() < area.minX() || wide.minY() < area.minY()) {
            return false;
        }
        int c0 = (int) Math.floor((wide.minX() - area.minX()) / CELL);
        int c1 = (int) Math.floor((wide.maxX() - area.minX()) / CELL) + 1;
        int r0 = (int) Math.floor((wide.minY() - area.minY()) / CELL);
        int r1 = (int) Math.floor((wide.maxY() - area.minY()) / CELL) + 1;
        if (c1 > columns || r1 > rows) {
            return false;
        }
        if (stale) {
            sum();
        }
        int w = columns + 1;
        return sums[r1 * w + c1] - sums[r0 * w + c1] - sums[r1 * w + c0] + sums[r0 * w + c0] == 0;
    }

    private void sum() {
        int w = columns + 1;
        for (int row = 0; row < rows; row++) {
            int run = 0;
            for (int column = 0; column < columns; column++) {
                run += taken[row * columns + column] ? 1 : 0;
                sums[(row + 1) * w + column + 1] = sums[row * w + column + 1] + run;
            }
        }
        stale = false;
    }

    /** Notes where material is: inside an odd number of these contours. */
    void material(List<Contour> contours) {
        for (Contour contour : contours) {
            for (Segment segment : contour.segments()) {
                int steps = (int) Math.ceil(segment.length() / CELL) + 1;
                Point from = segment.start();
                for (int i = 1; i <= steps; i++) {
                    Point to = segment.pointAt((double) i / steps);
                    toggle(from, to);
                    from = to;
                }
            }
        }
    }

    /** Turns over everything right of a short chord, row by row. */
    private void toggle(Point from, Point to) {
        double low = Math.min(from.y(), to.y());
        double high = Math.max(from.y(), to.y());
        int first = (int) Math.ceil((low - area.minY()) / CELL - 0.5);
        for (int row = Math.max(0, first); row < rows; row++) {
            double y = area.minY() + (row + 0.5) * CELL;
            if (y < low || y >= high) {
                if (y >= high) {
                    return;
                }
                continue;
            }
            double x = from.x() + (y - from.y()) / (to.y() - from.y()) * (to.x() - from.x());
            int column = (int) Math.ceil((x - area.minX()) / CELL - 0.5);
            for (int c = Math.max(0, column); c < columns; c++) {
                material[row * columns + c] ^= true;
            }
        }
    }

    boolean isMaterial(Point p) {
        int column = (int) Math.floor((p.x() - area.minX()) / CELL);
        int row = (int) Math.floor((p.y() - area.minY()) / CELL);
        return column >= 0 && column < columns && row >= 0 && row < rows && material[row * columns + column];
    }

    /** Whether the line runs through a text. */
    boolean crossesText(Line line) {
        for (Box text : texts) {
            if (crosses(line, text.grown(0.3))) {
                return true;
            }
        }
        return false;
    }

    /** How many leaders and dimension lines the line crosses. */
    int crossed(Line line) {
        int count = 0;
        for (Line other : leaders) {
            count += cross(line, other) ? 1 : 0;
        }
        return count;
    }

    /** How many cells with lines the line runs over, its last millimetre left out. */
    int linesUnder(Line line) {
        int count = 0;
        double length = line.length();
        for (double at = 0; at < length - 1; at += CELL) {
            Point p = line.pointAt(at / length);
            int column = (int) Math.floor((p.x() - area.minX()) / CELL);
            int row = (int) Math.floor((p.y() - area.minY()) / CELL);
            count += column >= 0 && column < columns && row >= 0 && row < rows && taken[row * columns + column] ? 1 : 0;
        }
        return count;
    }

    private static boolean cross(Line a, Line b) {
        Point u = a.end().minus(a.start());
        Point v = b.end().minus(b.start());
        double first = u.cross(b.start().minus(a.start()));
        double second = u.cross(b.end().minus(a.start()));
        double third = v.cross(a.start().minus(b.start()));
        double fourth = v.cross(a.end().minus(b.start()));
        return first > 0 != second > 0 && third > 0 != fourth > 0;
    }

    /** Whether a line meets a box (parameters of the line between each pair of sides). */
    static boolean crosses(Line line, Box box) {
        double from = 0;
        double to = 1;
        double[] starts = {line.start().x(), line.start().y()};
        double[] steps = {
            line.end().x() - line.start().x(), line.end().y() - line.start().y()
        };
        double[] lows = {box.minX(), box.minY()};
        double[] highs = {box.maxX(), box.maxY()};
        for (int i = 0; i < 2; i++) {
            if (steps[i] == 0) {
                if (starts[i] < lows[i] || starts[i] > highs[i]) {
                    return false;
                }
                continue;
            }
            double a = (lows[i] - starts[i]) / steps[i];
            double b = (highs[i] - starts[i]) / steps[i];
            from = Math.max(from, Math.min(a, b));
            to = Math.min(to, Math.max(a, b));
        }
        return from <= to;
    }

    /** The box of a line of text from its lower left corner, tails and accents included. */
    static Box textBox(String text, Point corner, double height) {
        return new Box(
                corner.x(), corner.y() - height / 3, corner.x() + Lettering.width(text, height), corner.y() + height);
    }
}
