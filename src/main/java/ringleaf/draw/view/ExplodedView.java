// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.w3c.dom.Element;
import ringleaf.geom.Box;
import ringleaf.geom.Point;
import ringleaf.part.Family;
import ringleaf.part.Part;

/**
 * The parts drawn apart along the axis, the lowest at the foot, seen aslant from above. True scale across; depth is
 * shortened, the gaps are free.
 */
final class ExplodedView {
    private static final double TOP = 19;
    private static final double BOTTOM = 11;
    private static final double SIDE = 4;
    /** Gap to the level below by the depth of what is seen of a level: rings let most of it be seen. */
    private static final double GAP = 0.7;

    private static final double PIN_GAP = 0.34;
    private static final double LEAST_GAP = 9;

    /** Least height of a label with one line under its name, in units. */
    private static final double STEP = 8;
    /** Room for the figures of a number before a label, in units. */
    private static final double FIGURES = 2.4;

    private ExplodedView() {}

    static byte[] draw(Scene scene, String title) {
        Box body = scene.box();
        double unit = Math.max(body.width(), body.height()) / 100;
        List<Part> parts = new ArrayList<>();
        for (Part part : scene.parts()) {
            if (!part.layers().isEmpty()) {
                parts.add(part);
            }
        }
        parts.sort(Comparator.comparingDouble(Part::zFrom).thenComparingDouble(Part::zTo));
        double[] lifts = lifts(parts, body, unit);
        double top = lifts[parts.size() - 1]
                + AslantPainter.SQUASH * body.maxY()
                + AslantPainter.RISE
                        * (parts.get(parts.size() - 1).zTo()
                                - parts.get(parts.size() - 1).zFrom());
        double foot = AslantPainter.SQUASH * body.minY();
        Sheet measure = new Sheet(body, unit);
        double labelX = body.maxX() + 12 * unit;
        double right = labelX
                + Furniture.legendWidth(parts, measure.textSize(), measure.smallSize(), unit)
                + (SIDE + 4) * unit;
        top = Math.max(top, lifts[parts.size() - 1] + 8 * unit);
        Box area = new Box(body.minX() - 2 * SIDE * unit, foot - BOTTOM * unit, right, top + TOP * unit);
        Sheet sheet = new Sheet(area, unit);
        sheet.paper(title + ", exploded", "parts in the order in which they go together, from the foot up");
        axis(sheet, foot, top);
        AslantPainter painter = new AslantPainter(scene, sheet);
        for (int i = 0; i < parts.size(); i++) {
            painter.paint(parts.get(i), lifts[i]);
        }
        Element labels = sheet.group(sheet.root(), "labels");
        List<Point> edges = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            edges.add(painter.rightEdge(parts.get(i), lifts[i]));
        }
        double[] rows = rows(edges, parts, unit);
        for (int i = 0; i < parts.size(); i++) {
            label(sheet, labels, scene, parts.get(i), i + 1, edges.get(i), new Point(labelX, rows[i]));
        }
        Furniture.title(sheet, title, "exploded: from the foot up in the order in which the parts go on");
        Furniture.scaleBar(sheet);
        return sheet.toBytes();
    }

    private static double[] lifts(List<Part> parts, Box body, double unit) {
        double[] lifts = new double[parts.size()];
        double depth = AslantPainter.SQUASH * body.height();
        for (int i = 1; i < parts.size(); i++) {
            boolean small =
                    parts.get(i).family() == Family.PIN || parts.get(i).box().height() < body.height() / 3;
            double height = AslantPainter.RISE
                    * (parts.get(i - 1).zTo() - parts.get(i - 1).zFrom());
            double gap = Math.max(LEAST_GAP * unit, (small ? PIN_GAP : GAP) * depth);
            lifts[i] = lifts[i - 1] + height + gap;
        }
        return lifts;
    }

    /** A row for each label near its part, with room for all its lines above the one below, in the order of the parts. */
    private static double[] rows(List<Point> edges, List<Part> parts, double unit) {
        double[] rows = new double[edges.size()];
        for (int i = 0; i < rows.length; i++) {
            double step = (STEP + Furniture.more(parts.get(i))) * unit;
            rows[i] = i == 0 ? edges.get(0).y() : Math.max(edges.get(i).y(), rows[i - 1] + step);
        }
        return rows;
    }

    private static void axis(Sheet sheet, double foot, double top) {
        double u = sheet.unit();
        Element line =
                sheet.line(sheet.root(), new Point(0, foot - 2 * u), new Point(0, top + 2 * u), Palette.QUIET_INK, 0.2);
        Sheet.set(
                line,
                "stroke-dasharray",
                Sheet.number(4 * u) + " " + Sheet.number(u) + " " + Sheet.number(0.6 * u) + " " + Sheet.number(u));
    }

    private static void label(Sheet sheet, Element group, Scene scene, Part part, int number, Point from, Point to) {
        double u = sheet.unit();
        Point knee = new Point(to.x() - (FIGURES + 2) * u, to.y());
        sheet.line(group, from, knee, Palette.QUIET_INK, 0.2);
        sheet.line(group, knee, new Point(to.x() - FIGURES * u, to.y()), Palette.QUIET_INK, 0.2);
        Point figure = new Point(to.x() + 2.2 * u, to.y() - 1.1 * u);
        sheet.text(group, Integer.toString(number), figure, sheet.textSize(), Palette.QUIET_INK, "end");
        Point corner = new Point(to.x() + 3.4 * u, to.y() + 1.5 * u);
        Furniture.entry(sheet, group, scene.palette().of(part), part, corner);
    }
}
