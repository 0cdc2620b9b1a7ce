// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.List;
import ringleaf.curve.Lettering;
import ringleaf.draw.page.Pen;
import ringleaf.geom.Box;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.part.Part;

/**
 * Frame and title block of a sheet. The frame leaves 20 mm at the left, to file the sheet, and 10 mm elsewhere (ISO 5457,
 * from memory); the title block is 180 mm wide, in the lower right corner (ISO 7200, from memory).
 */
final class TitleBlock {
    private static final double LEFT = 20;
    private static final double MARGIN = 10;
    private static final double WIDTH = 180;
    private static final double ROW = 8.5;
    private static final double[] ROWS = {ROW, ROW, ROW, 6};
    private static final double CAPTION = 1.8;
    private static final double VALUE = 2.5;
    private static final double NAME = 3.5;

    /** What a title block says beside the part itself. */
    record Facts(SheetItem item, String scale, String sheet, String format, String tool) {}

    private TitleBlock() {}

    static Box frame(Box sheet) {
        return new Box(sheet.minX() + LEFT, sheet.minY() + MARGIN, sheet.maxX() - MARGIN, sheet.maxY() - MARGIN);
    }

    static Box block(Box sheet) {
        Box frame = frame(sheet);
        double height = 0;
        for (double row : ROWS) {
            height += row;
        }
        return new Box(frame.maxX() - WIDTH, frame.minY(), frame.maxX(), frame.minY() + height);
    }

    /** Draws both; cells carry their values cut to what they have room for. */
    static void draw(Pen pen, Box sheet, Facts facts) {
        Box frame = frame(sheet);
        pen.box(Pen.FRAME, frame);
        for (Line mark : centring(sheet)) {
            pen.line(Pen.OUTLINE, mark.start(), mark.end());
        }
        Box block = block(sheet);
        pen.box(Pen.OUTLINE, block);
        SheetItem item = facts.item();
        double y = block.maxY();
        y = row(pen, block, y, ROWS[0], new double[] {0, 105, 130, 155, WIDTH}, new String[][] {
            {"part", item.mechanism() + " " + item.part().name()},
            {"quantity", quantity(item.part())},
            {"scale", facts.scale()},
            {"sheet", facts.sheet()}
        });
        double thick = item.part().zTo() - item.part().zFrom();
        y = row(pen, block, y, ROWS[1], new double[] {0, 105, 130, 155, WIDTH}, new String[][] {
            {"title", item.title()},
            {
                item.part().layers().size() > 1 ? "height" : "thickness",
                item.unit().length(thick)
            },
            {"units", item.unit().spelling()},
            {"format", facts.format()}
        });
        y = row(pen, block, y, ROWS[2], new double[] {0, 55, 105, WIDTH}, new String[][] {
            {"process", item.part().source().process()},
            {"material", item.part().source().stock()},
            {"sizes without a tolerance", item.tolerance()}
        });
        String file = item.file().isEmpty() ? "" : "; where they differ, " + item.file() + " holds";
        pen.text(
                Pen.fitted("Nominal outline, no kerf" + file + ".", CAPTION, 140),
                new Point(block.minX() + 1.5, block.minY() + 2),
                CAPTION);
        double width = Lettering.width(facts.tool(), CAPTION);
        pen.text(facts.tool(), new Point(block.maxX() - 1.5 - width, block.minY() + 2), CAPTION);
    }

    /** Copies, spares apart, and the pieces that they are cut as. */
    private static String quantity(Part part) {
        String words = part.quantity()
                + (part.pieces().spares() > 0 ? " + " + part.pieces().spares() : "");
        return part.pieceCount() == part.copies() ? words : words + " (" + part.pieceCount() + " pcs)";
    }

    private static double row(Pen pen, Box block, double top, double height, double[] at, String[][] cells) {
        double bottom = top - height;
        pen.line(Pen.THIN, new Point(block.minX(), bottom), new Point(block.maxX(), bottom));
        for (int i = 0; i < cells.length; i++) {
            double x = block.minX() + at[i];
            if (i > 0) {
                pen.line(Pen.THIN, new Point(x, bottom), new Point(x, top));
            }
            double room = at[i + 1] - at[i] - 3;
            boolean name = cells[i][0].equals("part");
            double size = name ? NAME : VALUE;
            pen.text(cells[i][0], new Point(x + 1, top - CAPTION - 0.8), CAPTION);
            pen.text(Pen.fitted(cells[i][1], size, room), new Point(x + 1.5, bottom + 1.5), size);
        }
        return bottom;
    }

    /** Marks in the middle of each side, from near the edge of the sheet into the frame; none into the title block. */
    static List<Line> centring(Box sheet) {
        Box frame = frame(sheet);
        Point centre = sheet.centre();
        double edge = 5;
        return List.of(
                new Line(new Point(centre.x(), edge), new Point(centre.x(), frame.minY())),
                new Line(new Point(centre.x(), sheet.maxY() - edge), new Point(centre.x(), frame.maxY() - edge)),
                new Line(new Point(edge, centre.y()), new Point(frame.minX() + edge, centre.y())),
                new Line(new Point(sheet.maxX() - edge, centre.y()), new Point(frame.maxX() - edge, centre.y())));
    }
}
