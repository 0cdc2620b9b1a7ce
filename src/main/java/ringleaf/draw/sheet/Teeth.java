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
    /** Arcs longer than so many times the usual one go on at the radius of the teeth and belong to none. */
    private static final double LONGEST = 3;

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
        return Optional.of(new Teeth(lands.get(0).radius(), bottoms.get(0).radius(), alike(lands), alike(bottoms)));
    }

    /**
     * Where teeth stand that do not go all round: the middles of the arcs at the inner radius. Those at the outer one run
     * on into a plain rim at either end.
     *
     * @param from direction of the first one's middle, rad
     * @param sweep counter-clockwise to the last one's, rad
     */
    record Extent(double from, double sweep) {}

    /** Where the teeth begin and end, if somewhere two stand further apart than twice the usual. */
    Optional<Extent> extent(Point centre) {
        List<Double> angles = new ArrayList<>();
        for (Arc bottom : bottoms) {
            angles.add(Angles.positive(bottom.pointAt(0.5).minus(centre).angle()));
        }
        angles.sort(Double::compare);
        int n = angles.size();
        double widest = 0;
        double closest = Angles.TURN;
        int first = 0;
        for (int i = 0; i < n; i++) {
            double gap = Angles.positive(angles.get(i) - angles.get((i + n - 1) % n));
            closest = Math.min(closest, gap);
            if (gap > widest) {
                widest = gap;
                first = i;
            }
        }
        boolean round = widest < 2 * closest;
        return round ? Optional.empty() : Optional.of(new Extent(angles.get(first), Angles.TURN - widest));
    }

    /** Whether an arc about the centre is the floor of a notch: at a radius of its own, or long at the inner one. */
    boolean isStop(Arc arc, Tolerance same) {
        boolean outside = Math.abs(arc.radius() - outer) <= same.length();
        boolean inside = Math.abs(arc.radius() - inner) <= same.length();
        return !outside && (!inside || !bottoms.contains(arc));
    }

    /** Those of about one length: a notch for a stop may have the radius of the roots and is none. */
    private static List<Arc> alike(List<Arc> arcs) {
        double[] sweeps =
                arcs.stream().mapToDouble(a -> Math.abs(a.sweep())).sorted().toArray();
        double most = LONGEST * sweeps[sweeps.length / 2];
        return arcs.stream().filter(a -> Math.abs(a.sweep()) <= most).toList();
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
