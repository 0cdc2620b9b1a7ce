// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** Teeth, diameters and radii of contours that are more than a simple opening. */
final class OutlineFeatures {
    /** Contours with more radii than that are curves of many arcs. */
    private static final int MOST_RADII = 8;
    /** Arcs whose centre is worth a row of the table: turn and radius, rad and mm. */
    private static final double TURN = Math.toRadians(20);

    private static final double LARGE = 2.5;
    /** More arcs of one radius than this are a pattern, and no stops. */
    private static final int MOST_STOPS = 3;
    /** Cosine of the least turn at a corner. */
    private static final double CORNER = Math.cos(Math.toRadians(20));

    private final Bearings bearings;
    private final Tolerance same;
    private final Found found;

    OutlineFeatures(Bearings bearings, Tolerance same, Found found) {
        this.bearings = bearings;
        this.same = same;
        this.found = found;
    }

    /** Whether the contour has teeth, which are noted then. */
    boolean teeth(Edge edge) {
        Optional<Teeth> teeth = Teeth.of(edge, bearings, same);
        teeth.ifPresent(t -> {
            boolean both = t.outer() - t.inner() > same.length();
            String suffix = edge.levels().isEmpty() ? "" : " " + edge.levels();
            String outer = edge.hole() && both ? "roots " : "tips ";
            found.callout(List.of(outer + found.sizes().diameter(t.outer()) + suffix), targets(t.lands()));
            if (both) {
                String inner = edge.hole() ? "tips " : "roots ";
                List<String> bottoms =
                        new ArrayList<>(List.of(inner + found.sizes().diameter(t.inner()) + suffix));
                t.extent(bearings.origin())
                        .ifPresent(e -> bottoms.add(
                                "middles from " + Sizes.degrees(e.from()) + " over " + Sizes.degrees(e.sweep())));
                found.callout(bottoms, targets(t.bottoms()));
            }
            radii(edge, Optional.of(t));
        });
        return teeth.isPresent();
    }

    /** Notes the radii of a contour. */
    void radii(Edge edge) {
        radii(edge, Optional.empty());
    }

    private void radii(Edge edge, Optional<Teeth> teeth) {
        TreeMap<Long, List<Arc>> about = new TreeMap<>();
        TreeMap<Long, List<Arc>> others = new TreeMap<>();
        for (Arc arc : edge.arcs()) {
            boolean central = bearings.round() && arc.centre().distance(bearings.origin()) < same.length();
            boolean stop = central && teeth.isPresent() && teeth.get().isStop(arc, same);
            if (teeth.isPresent() && teeth.get().has(arc, bearings, same) && !stop) {
                continue;
            }
            long sense = arc.sweep() > 0 ? 1 : -1;
            (central ? about : others)
                    .computeIfAbsent(sense * Math.round(arc.radius() / same.length()), k -> new ArrayList<>())
                    .add(arc);
        }
        String suffix = edge.levels().isEmpty() ? "" : " " + edge.levels();
        for (List<Arc> arcs : about.values()) {
            central(edge, arcs, suffix);
        }
        if (others.size() > MOST_RADII) {
            found.profile();
            return;
        }
        for (Map.Entry<Long, List<Arc>> each : others.entrySet()) {
            List<Arc> arcs = each.getValue();
            double radius = arcs.get(0).radius();
            found.callout(List.of(Sizes.times(arcs.size()) + found.sizes().radius(radius) + suffix), targets(arcs));
            for (Arc arc : arcs) {
                boolean convex = arc.sweep() > 0 != edge.hole();
                if (convex
                        && Math.abs(arc.sweep()) > TURN
                        && radius > LARGE
                        && !found.isMarked(arc.centre(), 2 * same.length())) {
                    found.place("centre of " + found.sizes().radius(radius), arc.centre(), new Target.At(arc.centre()));
                    found.mark(arc.centre(), 0);
                }
            }
        }
    }

    /** Arcs about the centre; where they end at corners, as stops and sectors do, with the angles at which they do. */
    private void central(Edge edge, List<Arc> arcs, String suffix) {
        double sweep = 0;
        for (Arc arc : arcs) {
            sweep += Math.abs(arc.sweep());
        }
        double radius = arcs.get(0).radius();
        String size =
                sweep > Math.PI ? found.sizes().diameter(radius) : found.sizes().radius(radius);
        List<String> lines = new ArrayList<>(List.of(size + suffix));
        for (Arc arc : arcs.size() > MOST_STOPS ? List.<Arc>of() : arcs) {
            if (!arc.isCircle() && endsAtCorners(edge, arc)) {
                double from = arc.sweep() > 0 ? arc.startAngle() : arc.startAngle() + arc.sweep();
                lines.add("from " + Sizes.degrees(Angles.positive(from)) + " over "
                        + Sizes.degrees(Math.abs(arc.sweep())));
            }
        }
        found.callout(lines, targets(arcs));
    }

    private static boolean endsAtCorners(Edge edge, Arc arc) {
        List<Segment> pieces = edge.pieces();
        int at = pieces.indexOf(arc);
        Segment before = pieces.get((at + pieces.size() - 1) % pieces.size());
        Segment after = pieces.get((at + 1) % pieces.size());
        return isCorner(before.tangentAt(1), arc.tangentAt(0)) && isCorner(arc.tangentAt(1), after.tangentAt(0));
    }

    private static boolean isCorner(Point in, Point out) {
        return in.dot(out) < CORNER;
    }

    private static List<Target> targets(List<Arc> arcs) {
        List<Target> targets = new ArrayList<>();
        for (Arc arc : arcs) {
            targets.add(new Target.OnArc(arc));
        }
        return targets;
    }
}
