// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringleaf.geom.Arc;
import ringleaf.geom.Tolerance;

/** Teeth, diameters and radii of contours that are more than a simple opening. */
final class OutlineFeatures {
    /** Contours with more radii than that are curves of many arcs. */
    private static final int MOST_RADII = 8;
    /** Arcs whose centre is worth a row of the table: turn and radius, rad and mm. */
    private static final double TURN = Math.toRadians(20);

    private static final double LARGE = 2.5;
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
                found.callout(List.of(inner + found.sizes().diameter(t.inner()) + suffix), targets(t.bottoms()));
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
            if (teeth.isPresent() && teeth.get().has(arc, bearings, same)) {
                continue;
            }
            boolean central = bearings.round() && arc.centre().distance(bearings.origin()) < same.length();
            long sense = arc.sweep() > 0 ? 1 : -1;
            (central ? about : others)
                    .computeIfAbsent(sense * Math.round(arc.radius() / same.length()), k -> new ArrayList<>())
                    .add(arc);
        }
        String suffix = edge.levels().isEmpty() ? "" : " " + edge.levels();
        for (List<Arc> arcs : about.values()) {
            central(arcs, suffix);
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

    private void central(List<Arc> arcs, String suffix) {
        double sweep = 0;
        for (Arc arc : arcs) {
            sweep += Math.abs(arc.sweep());
        }
        double radius = arcs.get(0).radius();
        String size =
                sweep > Math.PI ? found.sizes().diameter(radius) : found.sizes().radius(radius);
        found.callout(List.of(size + suffix), targets(arcs));
    }

    private static List<Target> targets(List<Arc> arcs) {
        List<Target> targets = new ArrayList<>();
        for (Arc arc : arcs) {
            targets.add(new Target.OnArc(arc));
        }
        return targets;
    }
}
