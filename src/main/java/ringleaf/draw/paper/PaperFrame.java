// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.paper;

import ringleaf.curve.Lettering;
import ringleaf.draw.page.Pen;
import ringleaf.geom.Box;
import ringleaf.geom.Point;

/** What every page at true scale carries: a bar of 100 mm each way, how to print, title and number of the page. */
final class PaperFrame {
    /** Length of either bar, mm. */
    static final double BAR = 100;

    private static final double MARGIN = 10;
    private static final double BARS = 12;
    private static final double HEAD = 8;
    private static final double SMALL = 2.5;
    private static final double LARGE = 3.5;

    private PaperFrame() {}

    /** Where parts go on a sheet of this size. */
    static Box area(Box sheet) {
        return new Box(
                sheet.minX() + MARGIN + BARS,
                sheet.minY() + MARGIN + BARS + 4,
                sheet.maxX() - MARGIN,
                sheet.maxY() - MARGIN - HEAD);
    }

    /** Draws it all. */
    static void draw(Pen pen, Box sheet, String title, int page, int pages) {
        double left = sheet.minX() + MARGIN;
        double bottom = sheet.minY() + MARGIN;
        String number = "page " + page + " of " + pages;
        double top = sheet.maxY() - MARGIN - LARGE;
        double numberWidth = Lettering.width(number, SMALL);
        pen.text(number, new Point(sheet.maxX() - MARGIN - numberWidth, top), SMALL);
        double room = sheet.width() - 2 * MARGIN - numberWidth - 6;
        pen.text(Pen.fitted(title, LARGE, room), new Point(left, top), LARGE);

        Point corner = new Point(left + BARS, bottom + 6);
        bar(pen, corner, new Point(1, 0), new Point(0, 1));
        pen.text("100 mm", corner.plus(new Point(BAR + 2, -1)), SMALL);
        pen.text(
                "Print at 100 %, not fitted to the page. Measure both bars: paper may feed a little short.",
                new Point(left + BARS, bottom), SMALL);
        Point foot = new Point(left + 6, bottom + BARS + 4);
        bar(pen, foot, new Point(0, 1), new Point(-1, 0));
        pen.text("100 mm", foot.plus(new Point(1, BAR + 2)), SMALL, Math.PI / 2);
    }

    private static void bar(Pen pen, Point from, Point along, Point up) {
        pen.line(Pen.OUTLINE, from, from.plus(along.times(BAR)));
        for (int i = 0; i <= 10; i++) {
            Point at = from.plus(along.times(i * BAR / 10));
            pen.line(Pen.THIN, at, at.plus(up.times(i % 10 == 0 ? 4 : i == 5 ? 3 : 2)));
        }
    }
}
