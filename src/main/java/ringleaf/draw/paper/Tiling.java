// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.paper;

import java.util.List;
import java.util.Optional;
import ringleaf.curve.Lettering;
import ringleaf.curve.Scaled;
import ringleaf.draw.page.Page;
import ringleaf.draw.page.Paper;
import ringleaf.draw.page.Pen;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * A part over several pages. Neighbouring tiles share a strip; in its middle runs a dashed line with crosses that lie at
 * the same place of the part on both pages, so that they are laid one on the other. Tiles on which nothing of the part
 * lies are left out.
 */
final class Tiling {
    /** What neighbours share, mm. */
    static final double OVERLAP = 15;

    private static final double MAP = 26;
    private static final double TEXT = 2.5;
    private static final double SMALL = 1.8;
    /** A label on the map that is lower cannot be read, mm. */
    private static final double LEAST_LABEL = 0.8;

    private static final double CROSS = 4;
    private static final double DASH = 3;
    /** Longest piece by which it is judged whether a tile shows anything, mm. */
    private static final double PIECE = 4;

    private final PaperItem item;
    private final Box sheet;
    /** Where the part shows on each page. */
    private final Box window;

    private final double turn;
    private final int columns;
    private final int rows;
    /** Box of all tiles in the turned part's coordinates. */
    private final Box whole;

    private final boolean[] shown;

    private Tiling(PaperItem item, Box sheet, double turn) {
        this.item = item;
        this.sheet = sheet;
        Box area = PaperFrame.area(sheet);
        this.window = new Box(area.minX(), area.minY(), area.maxX(), area.maxY() - MAP);
        this.turn = turn;
        Box box = item.box(Placement.turn(turn)).grown(1);
        columns = count(box.width(), window.width());
        rows = count(box.height(), window.height());
        double width = columns * stepX() + OVERLAP;
        double height = rows * stepY() + OVERLAP;
        Point corner = box.centre().minus(new Point(width / 2, height / 2));
        whole = new Box(corner.x(), corner.y(), corner.x() + width, corner.y() + height);
        shown = shown();
    }

    private static int count(double length, double window) {
        return Math.max(1, (int) Math.ceil((length - OVERLAP) / (window - OVERLAP) - 1e-9));
    }

    /** The tiling with the fewest pages: sheets upright or lying, the part as drawn or turned. */
    static Tiling of(PaperItem item, Paper paper) {
        Tiling best = null;
        for (boolean lying : new boolean[] {false, true}) {
            for (double turn : new double[] {0, Math.PI / 2}) {
                Tiling tiling = new Tiling(item, paper.sheet(lying), turn);
                if (best == null || tiling.tiles() < best.tiles()) {
                    best = tiling;
                }
            }
        }
        return best;
    }

    private double stepX() {
        return window.width() - OVERLAP;
    }

    private double stepY() {
        return window.height() - OVERLAP;
    }

    String name() {
        return item.name();
    }

    /** Pages that show something. */
    int tiles() {
        int count = 0;
        for (boolean each : shown) {
            count += each ? 1 : 0;
        }
        return count;
    }

    private boolean[] shown() {
        boolean[] any = new boolean[columns * rows];
        for (Contour contour : item.contours()) {
            for (Segment segment : contour.placed(Placement.turn(turn)).segments()) {
                int pieces = (int) Math.ceil(segment.length() / PIECE);
                for (int i = 0; i < pieces; i++) {
                    Box box = segment.part((double) i / pieces, (i + 1.0) / pieces)
                            .box();
                    mark(any, box);
                }
            }
        }
        return any;
    }

    private void mark(boolean[] any, Box box) {
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                any[row * columns + column] |= tile(column, row).meets(box);
            }
        }
    }

    /** A tile in the turned part's coordinates; rows count from the top. */
    private Box tile(int column, int row) {
        double x = whole.minX() + column * stepX();
        double y = whole.maxY() - row * stepY();
        return new Box(x, y - window.height(), x + window.width(), y);
    }

    private static String label(int column, int row) {
        StringBuilder letters = new StringBuilder();
        for (int i = row + 1; i > 0; i = (i - 1) / 26) {
            letters.insert(0, (char) ('A' + (i - 1) % 26));
        }
        return letters.append(column + 1).toString();
    }

    /** Adds the pages. */
    void add(List<Page> all, String title, int count) {
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                if (shown[row * columns + column]) {
                    all.add(page(title, column, row, all.size() + 1, count));
                }
            }
        }
    }

    private Page page(String title, int column, int row, int number, int count) {
        Box tile = tile(column, row);
        Point shift = new Point(window.minX() - tile.minX(), window.minY() - tile.minY());
        Pen part = new Pen();
        item.draw(part, new Placement(turn, shift), window);
        joints(part, column, row, shift);
        Pen pen = new Pen();
        PaperFrame.draw(pen, sheet, title, number, count);
        head(pen, column, row);
        pen.box(Pen.THIN, window);
        return new Page(
                sheet.width(),
                sheet.height(),
                List.of(
                        new Page.Content(part.drawing(item.name()), Optional.of(window)),
                        new Page.Content(pen.drawing(title), Optional.empty())));
    }

    /**
     * Dashed lines in the middle of the strips that a tile shares, and crosses along them; those of other tiles lie
     * outside its window. All in the turned part's coordinates, moved to the page.
     */
    private void joints(Pen pen, int column, int row, Point shift) {
        Box tile = tile(column, row);
        for (int joint = Math.max(1, column); joint <= Math.min(columns - 1, column + 1); joint++) {
            double x = whole.minX() + joint * stepX() + OVERLAP / 2;
            line(pen, new Point(x, whole.minY()), new Point(0, 1), tile.minY(), tile.maxY(), shift);
        }
        for (int joint = Math.max(1, row); joint <= Math.min(rows - 1, row + 1); joint++) {
            double y = whole.maxY() - joint * stepY() - OVERLAP / 2;
            line(pen, new Point(whole.minX(), y), new Point(1, 0), tile.minX(), tile.maxX(), shift);
        }
    }

    /** The dashes of one line, counted from its start so that neighbours show the same, from one place to another. */
    private static void line(Pen pen, Point start, Point along, double from, double to, Point shift) {
        double origin = start.dot(along);
        for (double at = Math.floor((from - origin) / (2 * DASH)) * 2 * DASH; at < to - origin; at += 2 * DASH) {
            Point dash = start.plus(along.times(at)).plus(shift);
            pen.line(Pen.THIN, dash, dash.plus(along.times(DASH)));
        }
        for (double share : new double[] {0.2, 0.5, 0.8}) {
            double at = from + share * (to - from) - origin;
            PaperItem.cross(pen, start.plus(along.times(at)).plus(shift), CROSS);
        }
    }

    /** Name, label of the tile, how to join, and the map of all tiles with this one filled by a frame. */
    private void head(Pen pen, int column, int row) {
        double top = window.maxY() + MAP - 4;
        double scale = Math.min((MAP - 4) / whole.height(), 60 / whole.width());
        double left = window.maxX() - whole.width() * scale;
        double room = left - window.minX() - 4;
        pen.text(Pen.fitted(item.name(), TEXT, room), new Point(window.minX(), top - TEXT), TEXT);
        pen.text(Pen.fitted(item.detail(), SMALL, room), new Point(window.minX(), top - 7), SMALL);
        pen.text(
                "tile " + label(column, row) + " of " + columns + " x " + rows,
                new Point(window.minX(), top - 13),
                3.5);
        pen.text(
                Pen.fitted("Lay the crosses of neighbours on one another, or cut along the dashed lines.", SMALL, room),
                new Point(window.minX(), top - 18),
                SMALL);
        Point corner = new Point(left, window.maxY() + 2).minus(new Point(whole.minX(), whole.minY()).times(scale));
        map(pen, column, row, scale, corner);
    }

    private void map(Pen pen, int column, int row, double scale, Point shift) {
        for (Contour contour : item.contours()) {
            Contour turned = contour.placed(Placement.turn(turn));
            pen.contour(Pen.THIN, Scaled.of(turned, scale).placed(new Placement(0, shift)));
        }
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                Box core = core(c, r);
                Box small = new Box(
                        core.minX() * scale + shift.x(),
                        core.minY() * scale + shift.y(),
                        core.maxX() * scale + shift.x(),
                        core.maxY() * scale + shift.y());
                boolean own = c == column && r == row;
                pen.box(own ? Pen.OUTLINE : Pen.THIN, own ? small.grown(-0.4) : small);
                String label = label(c, r);
                double height = Math.min(SMALL, small.height() * 0.5);
                if (shown[r * columns + c]
                        && height >= LEAST_LABEL
                        && Lettering.width(label, height) < small.width() - 1) {
                    double half = Lettering.width(label, height) / 2;
                    pen.text(label, small.centre().minus(new Point(half, height / 2)), height);
                }
            }
        }
    }

    /** What of a tile is left when the shared strips are halved. */
    private Box core(int column, int row) {
        Box tile = tile(column, row);
        double half = OVERLAP / 2;
        return new Box(
                tile.minX() + (column > 0 ? half : 0),
                tile.minY() + (row < rows - 1 ? half : 0),
                tile.maxX() - (column < columns - 1 ? half : 0),
                tile.maxY() - (row > 0 ? half : 0));
    }
}
