// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Arc;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;
import ringleaf.part.FitRow;

/** Openings and bosses that are no circles: patterns about the part's centre, and all others by their places. */
final class ShapeFeatures {
    private final Bearings bearings;
    private final List<SheetItem.FitLine> fits;
    private final Tolerance same;
    private final Found found;

    private record Seen(Edge edge, Shape shape) {}

    ShapeFeatures(Bearings bearings, List<SheetItem.FitLine> fits, Tolerance same, Found found) {
        this.bearings = bearings;
        this.fits = fits;
        this.same = same;
        this.found = found;
    }

    void add(List<Edge> edges) {
        Map<String, List<Seen>> groups = new LinkedHashMap<>();
        for (Edge edge : edges) {
            if (!edge.isCircle()) {
                Shape shape = Shape.of(edge, bearings, same, found.sizes());
                groups.computeIfAbsent(shape.lines() + edge.levels(), k -> new ArrayList<>())
                        .add(new Seen(edge, shape));
            }
        }
        for (List<Seen> group : groups.values()) {
            group(group);
        }
    }

    private void group(List<Seen> group) {
        List<Point> centres = new ArrayList<>();
        List<Target> targets = new ArrayList<>();
        for (Seen seen : group) {
            centres.add(seen.shape().centre());
            targets.addAll(targets(seen.edge()));
        }
        Shape shape = group.get(0).shape();
        double first = bearings.round() ? Spacing.firstOf(centres, bearings.origin(), same) : Double.NaN;
        boolean central =
                bearings.round() && group.size() == 1 && shape.centre().distance(bearings.origin()) < same.length();
        if (Double.isNaN(first) && !central) {
            for (Seen one : group) {
                Seen seen = one.shape().isOpening()
                        ? new Seen(one.edge(), Shape.opening(one.edge(), bearings, same, found.sizes(), false))
                        : one;
                Target target = targets(seen.edge()).get(0);
                found.place(String.join(", ", lines(seen, true)), seen.shape().centre(), target);
                found.mark(seen.shape().centre(), 0);
            }
            return;
        }
        List<String> lines = lines(group.get(0), central);
        lines.set(0, Sizes.times(group.size()) + lines.get(0));
        if (!central) {
            double radius = centres.get(0).distance(bearings.origin());
            found.ring(bearings.origin(), radius);
            lines.add("from " + Sizes.degrees(first));
        }
        found.callout(lines, targets);
    }

    private List<String> lines(Seen seen, boolean directed) {
        List<String> lines = new ArrayList<>(seen.shape().lines());
        if (!seen.edge().levels().isEmpty()) {
            lines.set(0, lines.get(0) + " " + seen.edge().levels());
        }
        if (directed && seen.shape().axis().isPresent()) {
            double axis = seen.shape().axis().get();
            boolean flat = lines.get(0).contains("flat");
            double turn = flat ? Math.PI * 2 : Math.PI;
            axis = ((axis % turn) + turn) % turn;
            axis = turn - axis < 1e-6 ? 0 : axis;
            lines.set(0, lines.get(0) + " at " + Sizes.degrees(axis));
        }
        for (SheetItem.FitLine fit : fits) {
            if (fit.shape() == FitRow.Shape.SLOT
                    && Math.abs(fit.size() - seen.shape().width()) < same.length()) {
                lines.add(fit.fit());
            }
        }
        return lines;
    }

    /** Long arcs first, as a leader stands best on them, else the middles of the longest straight edge. */
    private static List<Target> targets(Edge edge) {
        Segment longest = edge.pieces().get(0);
        Arc round = null;
        for (Segment piece : edge.pieces()) {
            if (piece.length() > longest.length()) {
                longest = piece;
            }
            if (piece instanceof Arc arc && (round == null || arc.length() > round.length())) {
                round = arc;
            }
        }
        List<Target> targets = new ArrayList<>();
        if (round != null) {
            targets.add(new Target.OnArc(round));
        }
        targets.add(new Target.At(longest.pointAt(0.5)));
        return targets;
    }
}
