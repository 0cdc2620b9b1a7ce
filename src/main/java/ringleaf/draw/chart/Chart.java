// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.chart;

import org.w3c.dom.Element;
import ringleaf.draw.Decimals;
import ringleaf.draw.svg.SvgDocument;

/** A sheet with one or more plots beside each other; lengths in its own units, four to a millimetre, y down. */
public final class Chart {
    private static final double PER_MM = 4;
    static final String INK = "#2c3036";
    static final String QUIET = "#6a7078";
    static final String GRID = "#e3e0d8";
    private static final String PAPER = "#fbfaf6";

    private final SvgDocument document;

    /** An empty sheet with a title and a line below it. */
    public Chart(double width, double height, String title, String subtitle) {
        document = new SvgDocument(
                number(width / PER_MM) + "mm",
                number(height / PER_MM) + "mm",
                "0 0 " + number(width) + " " + number(height));
        document.root().setAttributeNS(null, "font-family", "Helvetica, Arial, sans-serif");
        document.addText(document.root(), "title", title);
        document.add(document.root(), "rect", "width", number(width), "height", number(height), "fill", PAPER);
        text(document.root(), title, 24, 34, 19, INK, "start");
        text(document.root(), subtitle, 24, 54, 12, QUIET, "start");
    }

    /** A plot with its top left corner here; the size is that of its inner frame. */
    public Plot plot(double left, double top, double plotWidth, double plotHeight, Scale x, Scale y) {
        return new Plot(this, left, top, plotWidth, plotHeight, x, y);
    }

    public byte[] toBytes() {
        return document.toBytes();
    }

    Element group() {
        return document.add(document.root(), "g");
    }

    Element add(Element parent, String name, String... attributes) {
        return document.add(parent, name, attributes);
    }

    Element text(Element parent, String words, double x, double y, double size, String ink, String anchor) {
        return document.addText(
                parent,
                "text",
                words,
                "x",
                number(x),
                "y",
                number(y),
                "font-size",
                number(size),
                "fill",
                ink,
                "text-anchor",
                anchor);
    }

    void tip(Element of, String words) {
        document.addText(of, "title", words);
    }

    static String number(double value) {
        return Decimals.of(value, 2);
    }
}
