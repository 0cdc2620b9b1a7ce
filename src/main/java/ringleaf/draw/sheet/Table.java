// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Lettering;
import ringleaf.draw.page.Pen;
import ringleaf.geom.Box;
import ringleaf.geom.Line;
import ringleaf.geom.Point;

/**
 * A table on a sheet, or lines of notes when it has no header.
 *
 * @param title above it
 * @param header of the columns, empty for notes
 * @param rows each with a cell for every column
 */
record Table(String title, List<String> header, List<List<String>> rows) {
    static final double TEXT = 1.8;
    private static final double STEP = 3.4;
    private static final double PAD = 1.2;
    private static final double HEAD = 4.4;
    private static final double WIDEST = 62;

    Table {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /** A block of notes, broken into lines of at most {@code width} mm. */
    static Table notes(List<String> notes, double width) {
        List<List<String>> rows = new ArrayList<>();
        for (String note : notes) {
            StringBuilder line = new StringBuilder();
            for (String word : note.split(" ")) {
                String longer = line.length() == 0 ? word : line + " " + word;
                if (line.length() > 0 && Lettering.width(longer, TEXT) > width) {
                    rows.add(List.of(line.toString()));
                    line = new StringBuilder(word);
                } else {
                    line = new StringBuilder(longer);
                }
            }
            rows.add(List.of(line.toString()));
        }
        return new Table("Notes", List.of(), rows);
    }

    private double[] widths() {
        int columns = header.isEmpty() ? 1 : header.size();
        double[] widths = new double[columns];
        for (int i = 0; i < columns; i++) {
            if (!header.isEmpty()) {
                widths[i] = Lettering.width(header.get(i), TEXT);
            }
            for (List<String> row : rows) {
                widths[i] = Math.max(widths[i], Lettering.width(row.get(i), TEXT));
            }
            widths[i] = Math.min(WIDEST, widths[i]) + 2 * PAD;
        }
        if (header.isEmpty()) {
            for (List<String> row : rows) {
                widths[0] = Math.max(widths[0], Lettering.width(row.get(0), TEXT) + 2 * PAD);
            }
        }
        return widths;
    }

    double width() {
        double sum = 0;
        for (double width : widths()) {
            sum += width;
        }
        return Math.max(sum, Lettering.width(title, TEXT) + 2 * PAD);
    }

    double height() {
        return HEAD + (rows.size() + (header.isEmpty() ? 0 : 1)) * STEP;
    }

    /** The table in pieces of at most {@code height} mm, each with title and header. */
    List<Table> pieces(double height) {
        int most = (int) Math.max(1, Math.floor((height - HEAD) / STEP) - 1);
        if (rows.size() <= most) {
            return List.of(this);
        }
        List<Table> pieces = new ArrayList<>();
        for (int i = 0; i < rows.size(); i += most) {
            pieces.add(new Table(title, header, rows.subList(i, Math.min(rows.size(), i + most))));
        }
        return pieces;
    }

    /** Draws it with its upper left corner there. */
    void draw(Plotter plotter, Point corner) {
        double[] widths = widths();
        double width = width();
        double top = corner.y() - HEAD;
        plotter.text(title, new Point(corner.x(), top + 1.4), TEXT);
        double bottom = corner.y() - height();
        List<List<String>> lines = new ArrayList<>(rows);
        if (!header.isEmpty()) {
            lines.add(0, header);
        }
        for (int i = 0; i < lines.size(); i++) {
            double x = corner.x();
            double base = top - (i + 1) * STEP;
            for (int column = 0; column < widths.length; column++) {
                String text = Pen.fitted(lines.get(i).get(column), TEXT, widths[column] - 2 * PAD + 0.01);
                plotter.text(text, new Point(x + PAD, base + 0.9), TEXT);
                x += widths[column];
            }
        }
        if (!header.isEmpty()) {
            rules(plotter, new Box(corner.x(), bottom, corner.x() + width, top), widths, lines.size());
        }
        plotter.room().add(new Box(corner.x(), bottom, corner.x() + width, corner.y()));
    }

    private static void rules(Plotter plotter, Box box, double[] widths, int lines) {
        double total = 0;
        for (double width : widths) {
            total += width;
        }
        double right = box.minX() + total;
        for (int i = 0; i <= lines; i++) {
            double y = box.maxY() - i * STEP;
            Line rule = new Line(new Point(box.minX(), y), new Point(right, y));
            if (i < 2 || i == lines) {
                plotter.thin(rule);
            }
        }
        double x = box.minX();
        plotter.thin(new Line(new Point(x, box.minY()), new Point(x, box.maxY())));
        for (double width : widths) {
            x += width;
            plotter.thin(new Line(new Point(x, box.minY()), new Point(x, box.maxY())));
        }
    }
}
