// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringleaf.curve.StrokeFont;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

/**
 * Makes the drawing of a sheet: pieces in the order in which they are cut, holes of each before its outer contour;
 * their marks and names; the sheet itself, a scale bar and what was done to the outlines on {@code guide}. The sheet's
 * lower left corner is the origin.
 */
public final class SheetDrawing {
    private static final double[] NAME_HEIGHTS = {2.5, 2, 1.6, 1.2, 0.9, 0.7};
    private static final double NAME_CLEARANCE = 0.5;
    private static final double LINE_HEIGHT = 2;
    private static final double ARROW = 12;

    /**
     * A piece on the sheet.
     *
     * @param name for people
     * @param outline in its place
     * @param cuts what is cut of the outer contour between tabs; empty where it is cut all round
     * @param marks that go with it
     * @param engraved whether its name is engraved; else it stands on {@code guide}, as on leaves that slide
     * @param guides lines on {@code guide} that go with it
     * @param levels of what is printed, from the bed up, which are drawn in place of the outline; empty for what is cut
     */
    public record Item(
            String name,
            Region outline,
            List<Path> cuts,
            List<Path> marks,
            boolean engraved,
            List<Path> guides,
            List<List<Region>> levels) {}

    /**
     * The sheet.
     *
     * @param title a line for people
     * @param width mm
     * @param height mm
     * @param first contours that are cut before all pieces, e.g. tooling holes
     * @param notes lines for people, which stand on {@code guide} too
     * @param rolled whether the rolling direction and the burr's side are marked, as on sheet metal
     * @param styles of layers by name, instead of the usual ones
     */
    public record Sheet(
            String title,
            double width,
            double height,
            List<Contour> first,
            List<String> notes,
            boolean rolled,
            Map<String, LayerStyle> styles) {}

    private SheetDrawing() {}

    /** The drawing of the sheet with the items, of which there is at least one. */
    public static Drawing of(Sheet sheet, List<Item> items) {
        List<Drawn> cut = new ArrayList<>();
        List<Drawn> mark = new ArrayList<>();
        List<List<Drawn>> levels = new ArrayList<>();
        List<Drawn> guide = new ArrayList<>();
        guide.add(Drawn.of(Contour.rectangle(new Box(0, 0, sheet.width(), sheet.height()))));
        for (Contour contour : sheet.first()) {
            cut.add(Drawn.of(contour));
        }
        for (Item item : items) {
            if (item.levels().isEmpty()) {
                cut(cut, item);
            }
            build(levels, item);
            for (Path path : item.marks()) {
                mark.add(Drawn.of(path));
            }
            for (Path path : item.guides()) {
                guide.add(Drawn.of(path));
            }
            name(item.engraved() ? mark : guide, item, items);
        }
        below(guide, sheet);
        List<DrawingLayer> layers = new ArrayList<>();
        if (!cut.isEmpty()) {
            layers.add(layer(sheet, DrawingLayer.CUT, LayerStyles.CUT, "in this order: inside before outside", cut));
        }
        for (int i = 0; i < levels.size(); i++) {
            String name = DrawingLayer.level(i + 1);
            LayerStyle usual = LayerStyles.level(i + 1);
            layers.add(layer(sheet, name, usual, "of each part that has it, heights on guide", levels.get(i)));
        }
        if (!mark.isEmpty()) {
            layers.add(layer(sheet, DrawingLayer.MARK, LayerStyles.MARK, "engrave or score, do not cut", mark));
        }
        layers.add(layer(sheet, DrawingLayer.GUIDE, LayerStyles.GUIDE, "for reading only", guide));
        return new Drawing(sheet.title(), sheet.notes(), layers);
    }

    private static DrawingLayer layer(Sheet sheet, String name, LayerStyle usual, String note, List<Drawn> things) {
        return new DrawingLayer(name, sheet.styles().getOrDefault(name, usual), note, things);
    }

    private static void build(List<List<Drawn>> levels, Item item) {
        for (int i = 0; i < item.levels().size(); i++) {
            if (i == levels.size()) {
                levels.add(new ArrayList<>());
            }
            for (Region region : item.levels().get(i)) {
                for (Contour contour : region.contours()) {
                    levels.get(i).add(Drawn.of(contour));
                }
            }
        }
    }

    private static void cut(List<Drawn> cut, Item item) {
        for (Contour hole : item.outline().holes()) {
            cut.add(Drawn.of(hole));
        }
        if (item.cuts().isEmpty()) {
            cut.add(Drawn.of(item.outline().outer()));
        }
        for (Path path : item.cuts()) {
            cut.add(new Drawn.Open(path, true));
        }
    }

    /** The name where there is room for it on the piece, clear of pieces that lie in its holes. */
    private static void name(List<Drawn> things, Item item, List<Item> items) {
        FreeSpot spots = new FreeSpot();
        for (Contour contour : item.outline().contours()) {
            spots.add(contour);
        }
        for (List<Region> level : item.levels()) {
            for (Region region : level) {
                for (Contour contour : region.contours()) {
                    spots.add(new Path(contour.segments()));
                }
            }
        }
        for (Path path : item.marks()) {
            spots.add(path);
        }
        Box box = item.outline().box();
        for (Item other : items) {
            if (other != item && other.outline().box().meets(box)) {
                spots.add(new Path(other.outline().outer().segments()));
            }
        }
        String text = PlainText.line(item.name());
        for (double height : NAME_HEIGHTS) {
            double width = StrokeFont.width(text, height);
            Point centre = spots.find(box, width, height, NAME_CLEARANCE, true);
            if (centre != null) {
                Point corner = centre.minus(new Point(width / 2, height / 2));
                things.add(new Drawn.Lettering(text, StrokeFont.strokes(text, corner, height)));
                return;
            }
        }
    }

    /** Notes, scale bar and arrow stand below the sheet. */
    private static void below(List<Drawn> guide, Sheet sheet) {
        Point corner = new Point(0, -LINE_HEIGHT - 3);
        guide.addAll(ScaleBar.at(corner));
        if (sheet.rolled()) {
            Point tail = corner.plus(new Point(ScaleBar.LENGTH + 16, LINE_HEIGHT / 2));
            Point tip = tail.plus(new Point(ARROW, 0));
            guide.add(new Drawn.Open(Path.of(new Line(tail, tip))));
            guide.add(new Drawn.Open(
                    Path.of(new Line(tip.plus(new Point(-2, 1)), tip), new Line(tip, tip.plus(new Point(-2, -1))))));
            line(guide, "rolling direction, burr side down", tip.plus(new Point(2, -LINE_HEIGHT / 2)));
        }
        for (String note : sheet.notes()) {
            corner = corner.plus(new Point(0, -2 * LINE_HEIGHT));
            line(guide, note, corner);
        }
    }

    private static void line(List<Drawn> guide, String text, Point corner) {
        String plain = PlainText.line(text);
        guide.add(new Drawn.Lettering(plain, StrokeFont.strokes(plain, corner, LINE_HEIGHT)));
    }
}
