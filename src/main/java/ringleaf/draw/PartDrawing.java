// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringleaf.curve.StrokeFont;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/**
 * Makes the drawing of a part: its outlines on {@code cut}, or on {@code level-1}, {@code level-2}, … from the bed up
 * where it is stepped, what is engraved on {@code mark}, what is only to be read on {@code guide}. Nominal size.
 */
public final class PartDrawing {
    /** Heights of capitals that are tried, mm, the most legible first. */
    private static final double[] TEXT_HEIGHTS = {3, 2.5, 2, 1.6, 1.2, 0.9};
    /** Least room between lettering and the next line, mm. */
    private static final double TEXT_CLEARANCE = 0.8;

    /**
     * What may be chosen about a part's drawing.
     *
     * @param naming which parts carry their name on {@code mark}
     * @param styles of layers by name, instead of the usual ones
     */
    public record Options(Naming naming, Map<String, LayerStyle> styles) {
        public static final Options USUAL = new Options(Naming.WHERE_HIDDEN, Map.of());

        public Options {
            styles = Map.copyOf(styles);
        }
    }

    /**
     * What was done to an outline beyond its nominal size, and what the file says of it.
     *
     * @param notes lines for people, first among the notes; empty for a nominal outline
     * @param guide short lines to be read on {@code guide}
     * @param marks lines drawn on {@code guide}
     * @param scaleBar whether a bar of 50 mm is drawn on {@code guide}
     */
    public record Extra(List<String> notes, List<String> guide, List<Path> marks, boolean scaleBar) {
        public static final Extra NONE = new Extra(List.of(), List.of(), List.of(), false);

        public Extra {
            notes = List.copyOf(notes);
            guide = List.copyOf(guide);
            marks = List.copyOf(marks);
        }

        boolean isGuiding() {
            return !guide.isEmpty() || !marks.isEmpty() || scaleBar;
        }
    }

    private PartDrawing() {}

    /** The drawing of a part that has at least one layer, with what was done to its outline. */
    public static Drawing of(Part part, Options options, Extra extra) {
        List<DrawingLayer> layers = new ArrayList<>();
        int levels = part.layers().size();
        for (int i = 0; i < levels; i++) {
            Layer layer = part.layers().get(i);
            String name = levels == 1 ? DrawingLayer.CUT : DrawingLayer.level(i + 1);
            LayerStyle usual = levels == 1 ? LayerStyles.CUT : LayerStyles.level(i + 1);
            layers.add(new DrawingLayer(name, style(options, name, usual), heights(layer), outlines(layer)));
        }
        List<Drawn> marks = marks(part, options);
        if (!marks.isEmpty()) {
            LayerStyle style = style(options, DrawingLayer.MARK, LayerStyles.MARK);
            layers.add(new DrawingLayer(DrawingLayer.MARK, style, "engrave or score, do not cut", marks));
        }
        if (levels > 1 || extra.isGuiding()) {
            LayerStyle style = style(options, DrawingLayer.GUIDE, LayerStyles.GUIDE);
            String note = levels > 1 ? "for reading only: " + heightLines(part) : "for reading only";
            List<Drawn> things = levels > 1 ? guide(part, marks) : new ArrayList<>();
            addExtra(things, part, extra);
            layers.add(new DrawingLayer(DrawingLayer.GUIDE, style, note, things));
        }
        return new Drawing(part.name(), notes(part, extra), layers);
    }

    /** Below the part, so that nothing of it hides what is to be read. */
    private static void addExtra(List<Drawn> things, Part part, Extra extra) {
        for (Path mark : extra.marks()) {
            things.add(Drawn.of(mark));
        }
        Point corner = new Point(part.box().minX(), part.box().minY() - TEXT_HEIGHTS[2] - 1);
        for (String line : extra.guide()) {
            things.add(new Drawn.Lettering(line, StrokeFont.strokes(line, corner, TEXT_HEIGHTS[2])));
            corner = corner.plus(new Point(0, -1.7 * TEXT_HEIGHTS[2]));
        }
        if (extra.scaleBar()) {
            things.addAll(ScaleBar.at(corner));
        }
    }

    private static LayerStyle style(Options options, String name, LayerStyle usual) {
        return options.styles().getOrDefault(name, usual);
    }

    private static List<String> notes(Part part, Extra extra) {
        List<String> notes = new ArrayList<>();
        String outline = extra.notes().isEmpty() ? ", nominal outline" : "";
        notes.add("mm, true scale" + outline + "; quantity: " + part.quantityWords());
        notes.addAll(extra.notes());
        notes.add("process: " + part.source().process() + "; stock: "
                + part.source().stock());
        if (!part.note().isEmpty()) {
            notes.add(part.note());
        }
        return notes;
    }

    private static List<Drawn> outlines(Layer layer) {
        List<Drawn> things = new ArrayList<>();
        for (Region region : layer.regions()) {
            for (Contour contour : region.contours()) {
                things.add(Drawn.of(contour));
            }
        }
        return things;
    }

    private static String heights(Layer layer) {
        return "z " + Decimals.of(layer.zFrom(), 4) + " to " + Decimals.of(layer.zTo(), 4);
    }

    private static String heightLines(Part part) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < part.layers().size(); i++) {
            out.append(i == 0 ? "" : "; ").append(DrawingLayer.level(i + 1)).append(' ');
            out.append(heights(part.layers().get(i)));
        }
        return out.toString();
    }

    private static List<Drawn> marks(Part part, Options options) {
        List<Drawn> things = new ArrayList<>();
        for (Path mark : part.marks()) {
            things.add(Drawn.of(mark));
        }
        String name = PlainText.line(part.name());
        if (options.naming().isOn(part) && !name.isBlank()) {
            FreeSpot spots = spots(
                    part,
                    part.layers()
                            .subList(part.layers().size() - 1, part.layers().size()));
            addLines(things, spots, part.box(), List.of(name), true);
        }
        return things;
    }

    /**
     * Heights of the levels as text, inside the part's box, so that the drawing's extent stays the part's own, and clear
     * of what is engraved.
     */
    private static List<Drawn> guide(Part part, List<Drawn> engraved) {
        List<Drawn> things = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        for (int i = part.layers().size() - 1; i >= 0; i--) {
            lines.add(DrawingLayer.level(i + 1) + " " + heights(part.layers().get(i)));
        }
        FreeSpot spots = spots(part, part.layers());
        for (Drawn drawn : engraved) {
            if (drawn instanceof Drawn.Lettering lettering) {
                for (Path stroke : lettering.strokes()) {
                    spots.add(stroke);
                }
            }
        }
        addLines(things, spots, part.box(), lines, false);
        return things;
    }

    private static FreeSpot spots(Part part, List<Layer> layers) {
        FreeSpot spots = new FreeSpot();
        for (Layer layer : layers) {
            for (Region region : layer.regions()) {
                for (Contour contour : region.contours()) {
                    spots.add(contour);
                }
            }
        }
        for (Path mark : part.marks()) {
            spots.add(mark);
        }
        return spots;
    }

    /** Lays lines of text into the first free spot, the largest letters first; nothing where there is no room. */
    private static void addLines(List<Drawn> things, FreeSpot spots, Box room, List<String> lines, boolean inside) {
        for (double height : TEXT_HEIGHTS) {
            double width = 0;
            for (String line : lines) {
                width = Math.max(width, StrokeFont.width(line, height));
            }
            double step = 1.7 * height;
            double block = step * (lines.size() - 1) + height;
            Point centre = spots.find(room, width, block, TEXT_CLEARANCE, inside);
            if (centre == null) {
                continue;
            }
            for (int i = 0; i < lines.size(); i++) {
                double left = centre.x() - StrokeFont.width(lines.get(i), height) / 2;
                Point origin = new Point(left, centre.y() + block / 2 - height - i * step);
                List<Path> strokes = StrokeFont.strokes(lines.get(i), origin, height);
                things.add(new Drawn.Lettering(lines.get(i), strokes));
            }
            return;
        }
    }
}
