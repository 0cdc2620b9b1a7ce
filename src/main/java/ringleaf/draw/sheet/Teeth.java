// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringleaf.geom.Arc;
import ringleaf.geom.Point;
import ringleaf.geom.Tolerance;

/**
 * Teeth on a contour: many short arcs about the part's centre at one radius.
 *
 * @param outer radius of the outermost such arcs, mm
 * @param inner radius of the innermost, the same where there are only lands
 * @param lands arcs at the outer radius
 * @param bottoms arcs at the inner radius
 */
record Teeth(double outer, double inner, List<Arc> lands, List<Arc> bottoms) {
    private static final int LEAST = 6;
    private static final double WIDEST = Math.toRadians(40);

    static Optional<Teeth> of(Edge edge, Bearings bearings, Tolerance same) {
        if (!bearings.round()) {
            return Optional.empty();
        }
        TreeMap<Long, List<Arc>> classes = new TreeMap<>();
        for (Arc arc : edge.arcs()) {
            if (arc.centre().distance(bearings.origin()) < same.length() && Math.abs(arc.sweep()) < WIDEST) {
                classes.computeIfAbsent(Math.round(arc.radius() / (2 * same.length())), k -> new ArrayList<>())
                        .add(arc);
            }
        }
        List<List<Arc>> many = new ArrayList<>();
        for (Map.Entry<Long, List<Arc>> each : classes.entrySet()) {
            if (each.getValue().size() >= LEAST) {
                many.add(each.getValue());
            }
        }
        if (many.isEmpty()) {
            return Optional.empty();
        }
        List<Arc> bottoms = many.get(0);
        List<Arc> lands = many.get(many.size() - 1);
        return Optional.of(new Teeth(lands.get(0).radius(), bottoms.get(0).radius(), lands, bottoms));
    }

    /** Whether the arc is part of the teeth or goes on at their radius. */
    boolean has(Arc arc, Bearings bearings, Tolerance same) {
        return within(arc.start(), bearings, same) && within(arc.end(), bearings, same);
    }

    private boolean within(Point p, Bearings bearings, Tolerance same) {
        double at = p.distance(bearings.origin());
        boolean lone = outer - inner < same.length();
        return at < outer + 10 * same.length() && (lone || at > inner - 10 * same.length());
    }
}
