// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import org.w3c.dom.Element;
import ringleaf.draw.Decimals;
import ringleaf.draw.PlainText;
import ringleaf.draw.svg.PathData;
import ringleaf.draw.svg.SvgDocument;
import ringleaf.geom.Box;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

/**
 * A sheet of paper for a view: the picture in millimetres at true scale, y up as everywhere; text, lines and margins
 * in a unit that grows with what is shown, so that every sheet reads alike.
 */
final class Sheet {
    /** Pictures need no more. */
    static final int DECIMALS = 3;
    /** Mean width of a letter of a sans-serif face by its size; wide, because the reader's face is not known. */
    private static final double LETTER = 0.56;

    private static final double TEXT = 3;
    private static final double SMALL = 2.3;
    private static final double TITLE = 5;

    private final SvgDocument document;
    private final Box area;
    private final double unit;
    private int clips;

    /**
     * A sheet.
     *
     * @param area what of the plane it shows, mm
     * @param unit of text and margins, mm: a hundredth of the size of what is shown
     */
    Sheet(Box area, double unit) {
        this.area = area;
        this.unit = unit;
        String width = number(area.width());
        String height = number(area.height());
        String viewBox = number(area.minX()) + " " + number(-area.maxY()) + " " + width + " " + height;
        document = new SvgDocument(width + "mm", height + "mm", viewBox);
        set(document.root(), "font-family", "Helvetica, Arial, sans-serif");
        set(document.root(), "stroke-linejoin", "round");
    }

    private Sheet(SvgDocument document, Box area, double unit) {
        this.document = document;
        this.area = area;
        this.unit = unit;
    }

    /** The same sheet for what is drawn in a group so many times as large: its lines are as wide on paper. */
    Sheet enlarged(int scale) {
        return scale == 1 ? this : new Sheet(document, area, unit / scale);
    }

    Element root() {
        return document.root();
    }

    double unit() {
        return unit;
    }

    Box area() {
        return area;
    }

    byte[] toBytes() {
        return document.toBytes();
    }

    static String number(double value) {
        return Decimals.of(value, DECIMALS);
    }

    static void set(Element element, String name, String value) {
        element.setAttributeNS(null, name, value);
    }

    double textSize() {
        return TEXT * unit;
    }

    double smallSize() {
        return SMALL * unit;
    }

    double titleSize() {
        return TITLE * unit;
    }

    /** A wide guess of how long a text is, mm. */
    static double width(String text, double size) {
        return LETTER * size * text.codePointCount(0, text.length());
    }

    /** The text, cut short where it is longer than a person reads. */
    static String cut(String text, int most) {
        String line = PlainText.line(text);
        if (line.codePointCount(0, line.length()) <= most) {
            return line;
        }
        return line.substring(0, line.offsetByCodePoints(0, most - 1)) + "\u2026";
    }

    Element group(Element parent, String id) {
        return document.add(parent, "g", "id", id);
    }

    Element add(Element parent, String name, String... attributes) {
        return document.add(parent, name, attributes);
    }

    /** The background, the document's own title and description. */
    void paper(String title, String description) {
        document.addText(root(), "title", title);
        document.addText(root(), "desc", description);
        document.add(
                root(),
                "rect",
                "x",
                number(area.minX()),
                "y",
                number(-area.maxY()),
                "width",
                number(area.width()),
                "height",
                number(area.height()),
                "fill",
                Palette.PAPER);
    }

    /** A group of which only what lies inside the path is seen. */
    Element clipped(Element parent, PathData path) {
        String id = "clip-" + ++clips;
        Element clip = document.add(parent, "clipPath", "id", id);
        document.add(clip, "path", "d", path.toString());
        return document.add(parent, "g", "clip-path", "url(#" + id + ")");
    }

    /** Text at a point of its base line; {@code anchor} is start, middle or end. */
    Element text(Element parent, String text, Point at, double size, String colour, String anchor) {
        return document.addText(
                parent,
                "text",
                text,
                "x",
                number(at.x()),
                "y",
                number(-at.y()),
                "font-size",
                number(size),
                "fill",
                colour,
                "text-anchor",
                anchor);
    }

    Element line(Element parent, Point a, Point b, String colour, double width) {
        return document.add(
                parent,
                "line",
                "x1",
                number(a.x()),
                "y1",
                number(-a.y()),
                "x2",
                number(b.x()),
                "y2",
                number(-b.y()),
                "stroke",
                colour,
                "stroke-width",
                number(width * unit));
    }

    /** A filled region with an outline. */
    Element region(Element parent, Region region, String fill, String line, double width) {
        return path(parent, new PathData(DECIMALS).add(region).toString(), fill, line, width);
    }

    Element path(Element parent, String data, String fill, String line, double width) {
        return document.add(
                parent, "path", "d", data, "fill", fill, "stroke", line, "stroke-width", number(width * unit));
    }

    /** The upper left corner of the sheet, moved by so many units. */
    Point fromTopLeft(double right, double down) {
        return new Point(area.minX() + right * unit, area.maxY() - down * unit);
    }

    /** The lower left corner of the sheet, moved by so many units. */
    Point fromBottomLeft(double right, double up) {
        return new Point(area.minX() + right * unit, area.minY() + up * unit);
    }
}
