// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/**
 * A part of several levels cut across along a level line: what is solid, level by level. Cuts that would run through a
 * corner are moved a little, so that every contour is crossed or missed for certain.
 */
final class Section {
    private static final double HATCH = 2;
    /** By how much the cut keeps off the line it is named for, mm: it would meet corners on that. */
    private static final double ASIDE = 0.0173;

    private final Part part;
    private final double turn;
    private final double y;

    /** A cut of the turned part along the line of height {@code y}. */
    Section(Part part, double turn, double y) {
        this.part = part;
        this.turn = turn;
        this.y = y + ASIDE;
    }

    /** Where a layer is solid along the cut: ends of stretches, rising, an even number. */
    List<Double> ends(Layer layer) {
        List<Double> ends = new ArrayList<>();
        for (Region region : layer.regions()) {
            for (Contour contour : region.placed(Placement.turn(turn)).contours()) {
                for (Segment segment : contour.segments()) {
                    cross(ends, segment);
                }
            }
        }
        ends.sort(Double::compare);
        return ends;
    }

    private void cross(List<Double> ends, Segment segment) {
        if (segment instanceof Arc arc) {
            double up = y - arc.centre().y();
            if (Math.abs(up) < arc.radius()) {
                double angle = Math.asin(up / arc.radius());
                for (double way : new double[] {angle, Math.PI - angle}) {
                    if (arc.shareOf(way) < 1 || arc.isCircle()) {
                        ends.add(arc.centre().x() + arc.radius() * Math.cos(way));
                    }
                }
            }
        } else if (segment.start().y() > y != segment.end().y() > y) {
            double share = (y - segment.start().y())
                    / (segment.end().y() - segment.start().y());
            ends.add(segment.start().towards(segment.end(), share).x());
        }
    }

    /**
     * Draws the section with the part's x as in the view and its lowest face at {@code bottom}.
     *
     * @return its box on the sheet
     */
    Box draw(Plotter plotter, View view, double bottom) {
        TreeSet<Double> faces = new TreeSet<>();
        for (Layer layer : part.layers()) {
            faces.add(layer.zFrom());
            faces.add(layer.zTo());
        }
        Box box = null;
        for (Layer layer : part.layers()) {
            List<Double> ends = ends(layer);
            double low = bottom + (layer.zFrom() - part.zFrom()) * view.scale();
            double high = bottom + (layer.zTo() - part.zFrom()) * view.scale();
            for (int i = 0; i + 1 < ends.size(); i += 2) {
                Box cut = new Box(x(view, ends.get(i)), low, x(view, ends.get(i + 1)), high);
                plotter.wide(new Line(new Point(cut.minX(), low), new Point(cut.minX(), high)));
                plotter.wide(new Line(new Point(cut.maxX(), low), new Point(cut.maxX(), high)));
                hatch(plotter, cut);
                box = box == null ? cut : box.union(cut);
            }
        }
        for (double face : faces) {
            face(plotter, view, face, bottom + (face - part.zFrom()) * view.scale());
        }
        return box;
    }

    private static double x(View view, double x) {
        return view.at(new Point(x, 0)).x();
    }

    /** A face shows where only one of the levels below and above it is solid. */
    private void face(Plotter plotter, View view, double z, double height) {
        List<Double> ends = new ArrayList<>();
        for (Layer layer : part.layers()) {
            if (layer.zFrom() == z || layer.zTo() == z) {
                ends.addAll(ends(layer));
            }
        }
        ends.sort(Double::compare);
        for (int i = 0; i + 1 < ends.size(); i += 2) {
            if (ends.get(i + 1) - ends.get(i) > 1e-6) {
                plotter.wide(
                        new Line(new Point(x(view, ends.get(i)), height), new Point(x(view, ends.get(i + 1)), height)));
            }
        }
    }

    /** Thin lines at 45 degrees that go on from one level to the next. */
    private static void hatch(Plotter plotter, Box box) {
        double step = HATCH * Math.sqrt(2);
        double first = Math.ceil((box.minX() - box.maxY()) / step) * step;
        for (double off = first; off < box.maxX() - box.minY(); off += step) {
            double x0 = Math.max(box.minX(), off + box.minY());
            double x1 = Math.min(box.maxX(), off + box.maxY());
            if (x1 - x0 > 0.05) {
                plotter.thin(new Line(new Point(x0, x0 - off), new Point(x1, x1 - off)));
            }
        }
    }
}
