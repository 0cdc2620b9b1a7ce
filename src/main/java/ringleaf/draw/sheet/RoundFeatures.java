// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Arc;
import ringleaf.geom.Point;
import ringleaf.geom.Tolerance;
import ringleaf.part.FitRow;

/** Circles: those about the part's centre, patterns on a circle about it, and all others by their places. */
final class RoundFeatures {
    private final Bearings bearings;
    private final List<SheetItem.FitLine> fits;
    private final Tolerance same;
    private final Found found;
    private Edge outline;

    RoundFeatures(Bearings bearings, List<SheetItem.FitLine> fits, Tolerance same, Found found) {
        this.bearings = bearings;
        this.fits = fits;
        this.same = same;
        this.found = found;
    }

    /** Notes all circles among the edges, the outline first. */
    void add(List<Edge> edges) {
        outline = edges.get(0);
        List<Edge> circles = new ArrayList<>();
        for (Edge edge : edges) {
            if (edge.isCircle()) {
                circles.add(edge);
            }
        }
        circles.sort(Comparator.comparingDouble((Edge e) -> -e.circle().radius()));
        Map<String, List<Edge>> groups = new LinkedHashMap<>();
        for (Edge edge : circles) {
            Arc circle = edge.circle();
            double off = circle.centre().distance(bearings.origin());
            found.mark(circle.centre(), circle.radius());
            if (bearings.round() && off < same.length()) {
                found.callout(lines("", edge, ""), List.of(new Target.OnArc(circle)));
                if (edge == edges.get(0)) {
                    found.sized();
                }
            } else {
                long ring = bearings.round() ? Math.round(off / same.length()) : 0;
                String key = what(edge) + " " + ring + edge.hole();
                groups.computeIfAbsent(key, k -> new ArrayList<>()).add(edge);
            }
        }
        for (List<Edge> group : groups.values()) {
            group(group);
        }
    }

    private void group(List<Edge> group) {
        List<Point> centres = new ArrayList<>();
        List<Target> targets = new ArrayList<>();
        for (Edge edge : group) {
            centres.add(edge.circle().centre());
            targets.add(new Target.OnArc(edge.circle()));
        }
        double first = bearings.round() ? Spacing.firstOf(centres, bearings.origin(), same) : Double.NaN;
        if (Double.isNaN(first)) {
            for (Edge edge : group) {
                found.place(what(edge), edge.circle().centre(), new Target.OnArc(edge.circle()));
            }
            return;
        }
        double radius = centres.get(0).distance(bearings.origin());
        found.ring(bearings.origin(), radius);
        String place = "on " + found.sizes().diameter(radius) + ", from " + Sizes.degrees(first);
        found.callout(lines(Sizes.times(group.size()), group.get(0), place), targets);
    }

    private List<String> lines(String times, Edge edge, String place) {
        List<String> lines = new ArrayList<>();
        String levels = edge.levels().isEmpty() ? "" : " " + edge.levels();
        lines.add(times + found.sizes().diameter(edge.circle().radius()) + (edge.hole() ? "" : outer(edge)) + levels);
        if (!place.isEmpty()) {
            lines.add(place);
        }
        String fit = fit(edge);
        if (!fit.isEmpty()) {
            lines.add(fit);
        }
        return lines;
    }

    /** Bosses and pins stand up from another level; the outline itself needs no word. */
    private String outer(Edge edge) {
        return edge == outline ? "" : " boss";
    }

    private String what(Edge edge) {
        String fit = fit(edge);
        String levels = edge.levels().isEmpty() ? "" : ", " + edge.levels();
        return found.sizes().diameter(edge.circle().radius())
                + (edge.hole() ? "" : outer(edge))
                + levels
                + (fit.isEmpty() ? "" : ", " + fit);
    }

    private String fit(Edge edge) {
        FitRow.Shape shape = edge.hole() ? FitRow.Shape.HOLE : FitRow.Shape.SHAFT;
        for (SheetItem.FitLine fit : fits) {
            boolean alike = fit.shape() == shape
                    && Math.abs(fit.size() - 2 * edge.circle().radius()) < same.length();
            if (alike && fit.has(edge.circle().centre(), same)) {
                return fit.fit();
            }
        }
        return "";
    }
}
