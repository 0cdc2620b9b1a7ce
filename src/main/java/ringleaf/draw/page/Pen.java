// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.curve.Lettering;
import ringleaf.draw.Drawing;
import ringleaf.draw.DrawingLayer;
import ringleaf.draw.Drawn;
import ringleaf.draw.LayerStyle;
import ringleaf.draw.PlainText;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;

/**
 * Collects what is drawn on a page, by lines of one width each. Widths are those of line group 0.35 (ISO 128-2, from
 * memory): wide lines 0.35 mm, narrow ones 0.18 mm, lettering between them; the frame is 0.7 mm (ISO 5457, from memory).
 */
public final class Pen {
    /** Names of the layers, in the order in which they are drawn. */
    public static final String FRAME = "frame";
    /** Visible edges. */
    public static final String OUTLINE = "outline";
    /** Dimension and leader lines, hatching, centre lines. */
    public static final String THIN = "thin";
    /** All lettering. */
    public static final String TEXT = "text";

    private static final Map<String, LayerStyle> STYLES = styles();
    private final Map<String, List<Drawn>> things = new LinkedHashMap<>();

    /** A pen with nothing drawn yet. */
    public Pen() {
        for (String name : STYLES.keySet()) {
            things.put(name, new ArrayList<>());
        }
    }

    private static Map<String, LayerStyle> styles() {
        Map<String, LayerStyle> styles = new LinkedHashMap<>();
        styles.put(THIN, LayerStyle.black(0.18));
        styles.put(OUTLINE, LayerStyle.black(0.35));
        styles.put(FRAME, LayerStyle.black(0.7));
        styles.put(TEXT, LayerStyle.black(0.25));
        return styles;
    }

    public void line(String layer, Point from, Point to) {
        things.get(layer).add(new Drawn.Open(Path.of(new Line(from, to))));
    }

    public void path(String layer, Path path) {
        things.get(layer).add(Drawn.of(path));
    }

    public void contour(String layer, Contour contour) {
        things.get(layer).add(Drawn.of(contour));
    }

    public void circle(String layer, Point centre, double radius) {
        things.get(layer).add(Drawn.of(Contour.of(Arc.circle(centre, radius))));
    }

    public void box(String layer, Box box) {
        things.get(layer).add(Drawn.of(Contour.rectangle(box)));
    }

    /** A line of text, level, from its lower left corner; nothing for a blank one. */
    public void text(String text, Point corner, double height) {
        text(text, corner, height, 0);
    }

    /** A line of text at an angle. */
    public void text(String text, Point corner, double height, double angle) {
        String plain = PlainText.line(text);
        List<Path> strokes = Lettering.strokes(plain, corner, height, angle);
        if (!strokes.isEmpty()) {
            things.get(TEXT).add(new Drawn.Lettering(plain, strokes));
        }
    }

    /** The text, cut with an ellipsis to what has room in {@code width} mm. */
    public static String fitted(String text, double height, double width) {
        String plain = PlainText.line(text);
        if (Lettering.width(plain, height) <= width) {
            return plain;
        }
        int end = plain.length();
        while (end > 0 && Lettering.width(plain.substring(0, end).stripTrailing() + "\u2026", height) > width) {
            end = plain.offsetByCodePoints(end, -1);
        }
        return plain.substring(0, end).stripTrailing() + "\u2026";
    }

    /** Everything drawn so far. */
    public Drawing drawing(String title) {
        List<DrawingLayer> layers = new ArrayList<>();
        for (Map.Entry<String, List<Drawn>> layer : things.entrySet()) {
            layers.add(new DrawingLayer(layer.getKey(), STYLES.get(layer.getKey()), "", layer.getValue()));
        }
        return new Drawing(title, List.of(), layers);
    }
}
