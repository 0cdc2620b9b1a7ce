// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;
import ringleaf.draw.PlainText;
import ringleaf.geom.Point;
import ringleaf.part.Part;

/** What stands round a picture: title, legend, scale bar. */
final class Furniture {
    private static final int LONGEST = 40;
    private static final double ROW = 7.2;
    private static final double SWATCH = 4.4;
    /** From line to line of small text. */
    private static final double LINE = 2.8;

    private Furniture() {}

    static double legendHeight(List<Part> parts, double unit) {
        double height = 0;
        for (Part part : parts) {
            height += (ROW + more(part)) * unit;
        }
        return height;
    }

    /** Height of the further lines that a part's source takes, in units. */
    static double more(Part part) {
        return LINE * (source(part).size() - 1);
    }

    static double legendWidth(List<Part> parts, double textSize, double smallSize, double unit) {
        double widest = 0;
        for (Part part : parts) {
            widest = Math.max(widest, Sheet.width(name(part), textSize));
            for (String line : source(part)) {
                widest = Math.max(widest, Sheet.width(line, smallSize));
            }
        }
        return widest + (SWATCH + 2) * unit;
    }

    /** A row for every part, from the given upper left corner down. */
    static void legend(Sheet sheet, Scene scene, Point corner) {
        Element group = sheet.group(sheet.root(), "legend");
        double u = sheet.unit();
        double y = corner.y();
        for (Part part : scene.parts()) {
            entry(sheet, group, scene.palette().of(part), part, new Point(corner.x(), y));
            y -= (ROW + more(part)) * u;
        }
    }

    /** Swatch, quantity and name, and under them how it is made. */
    static void entry(Sheet sheet, Element group, Palette.Paint paint, Part part, Point corner) {
        double u = sheet.unit();
        sheet.add(
                group,
                "rect",
                "x",
                Sheet.number(corner.x()),
                "y",
                Sheet.number(-corner.y()),
                "width",
                Sheet.number(SWATCH * u),
                "height",
                Sheet.number(3 * u),
                "rx",
                Sheet.number(0.5 * u),
                "fill",
                paint.fill(),
                "stroke",
                paint.line(),
                "stroke-width",
                Sheet.number(0.2 * u));
        double x = corner.x() + (SWATCH + 1.6) * u;
        sheet.text(group, name(part), new Point(x, corner.y() - 2.5 * u), sheet.textSize(), Palette.INK, "start");
        Point below = new Point(x, corner.y() - 5.4 * u);
        for (String line : source(part)) {
            sheet.text(group, line, below, sheet.smallSize(), Palette.QUIET_INK, "start");
            below = below.minus(new Point(0, LINE * u));
        }
    }

    static String name(Part part) {
        return Sheet.cut(part.quantity() + " \u00d7 " + part.name(), LONGEST);
    }

    /** How it is made or what to buy, in as many lines as it takes: what is to be ordered must not be cut off. */
    static List<String> source(Part part) {
        String process = part.source().process();
        String stock = part.source().stock();
        String text = PlainText.line(stock.isEmpty() ? process : process + ", " + stock);
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > LONGEST) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** The title in the upper left corner and a quieter line under it. */
    static void title(Sheet sheet, String title, String caption) {
        Element group = sheet.group(sheet.root(), "title");
        int letters = (int) (sheet.area().width() / (0.6 * sheet.titleSize()));
        Element text = sheet.text(
                group, Sheet.cut(title, letters), sheet.fromTopLeft(4, 8.5), sheet.titleSize(), Palette.INK, "start");
        Sheet.set(text, "font-weight", "bold");
        int small = (int) (sheet.area().width() / (0.6 * sheet.textSize()));
        Point under = sheet.fromTopLeft(4, 14);
        sheet.text(group, Sheet.cut(caption, small), under, sheet.textSize(), Palette.QUIET_INK, "start");
    }

    /** A bar of a round length in the lower left corner, with its length beside it. */
    static void scaleBar(Sheet sheet) {
        scaleBar(sheet, 1);
    }

    /** The same on a sheet that shows things so many times as large. */
    static void scaleBar(Sheet sheet, int scale) {
        Element group = sheet.group(sheet.root(), "scale");
        double u = sheet.unit();
        double length = 10;
        while (length < 6 * u) {
            length *= 10;
        }
        while (length > 60 * u) {
            length /= 10;
        }
        Point left = sheet.fromBottomLeft(4, 4);
        Point right = left.plus(new Point(length, 0));
        Point tick = new Point(0, 0.9 * u);
        sheet.line(group, left, right, Palette.INK, 0.3);
        sheet.line(group, left.minus(tick), left.plus(tick), Palette.INK, 0.3);
        sheet.line(group, right.minus(tick), right.plus(tick), Palette.INK, 0.3);
        Point text = right.plus(new Point(2 * u, -u));
        sheet.text(group, Sheet.number(length / scale) + " mm", text, sheet.textSize(), Palette.QUIET_INK, "start");
    }
}
