// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.svg;

import org.w3c.dom.Element;
import ringleaf.draw.Decimals;
import ringleaf.draw.Drawing;
import ringleaf.draw.DrawingLayer;
import ringleaf.draw.Drawn;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;

/**
 * Writes a drawing as SVG 1.1 at true scale: one user unit is 1 mm, the sheet is the drawing's box and 1 mm all
 * round, y is negated in the coordinates and nothing is transformed. Arcs stay arcs; see {@link PathData} for the
 * error of rounding.
 */
public final class SvgWriter {
    private static final int DECIMALS = 6;
    private static final double MARGIN = 1;

    private SvgWriter() {}

    /** The file, UTF-8; the same drawing gives the same bytes. */
    public static byte[] write(Drawing drawing) {
        Box box = drawing.box();
        double left = Decimals.rounded(box.minX() - MARGIN, DECIMALS);
        double top = Decimals.rounded(-box.maxY() - MARGIN, DECIMALS);
        String width = Decimals.of(box.maxX() + MARGIN - left, DECIMALS);
        String height = Decimals.of(-box.minY() + MARGIN - top, DECIMALS);
        String viewBox = Decimals.of(left, DECIMALS) + " " + Decimals.of(top, DECIMALS) + " " + width + " " + height;
        SvgDocument document = new SvgDocument(width + "mm", height + "mm", viewBox);
        document.addText(document.root(), "title", drawing.title());
        if (!drawing.notes().isEmpty()) {
            document.addText(document.root(), "desc", String.join("; ", drawing.notes()));
        }
        for (DrawingLayer layer : drawing.layers()) {
            addLayer(document, layer);
        }
        return document.toBytes();
    }

    private static void addLayer(SvgDocument document, DrawingLayer layer) {
        Element group = document.add(
                document.root(),
                "g",
                "id",
                layer.name(),
                "fill",
                "none",
                "stroke",
                layer.style().hex(),
                "stroke-width",
                Decimals.of(layer.style().width(), DECIMALS));
        if (!layer.note().isEmpty()) {
            document.addText(group, "desc", layer.note());
        }
        for (Drawn thing : layer.things()) {
            add(document, group, thing);
        }
    }

    private static void add(SvgDocument document, Element group, Drawn thing) {
        if (thing instanceof Drawn.Round round) {
            circle(document, group, round);
        } else if (thing instanceof Drawn.Closed closed) {
            path(document, group, closed.contour());
        } else if (thing instanceof Drawn.Open open) {
            document.add(
                    group, "path", "d", new PathData(DECIMALS).add(open.path()).toString());
        } else if (thing instanceof Drawn.Lettering lettering) {
            PathData data = new PathData(DECIMALS);
            for (Path stroke : lettering.strokes()) {
                data.add(stroke);
            }
            document.add(group, "path", "d", data.toString());
        }
    }

    private static void path(SvgDocument document, Element group, Contour contour) {
        document.add(group, "path", "d", new PathData(DECIMALS).add(contour).toString());
    }

    private static void circle(SvgDocument document, Element group, Drawn.Round round) {
        document.add(
                group,
                "circle",
                "cx",
                Decimals.of(round.centre().x(), DECIMALS),
                "cy",
                Decimals.of(-round.centre().y(), DECIMALS),
                "r",
                Decimals.of(round.radius(), DECIMALS));
    }
}
