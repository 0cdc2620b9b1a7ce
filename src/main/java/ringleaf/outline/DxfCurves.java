// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** Ellipses and splines of a DXF text as arcs (groups as in the format's public reference, from memory). */
final class DxfCurves {
    private DxfCurves() {}

    /** Its major axis is a vector from the centre; parameters run counter-clockwise from it. */
    static Optional<List<Segment>> ellipse(DxfEntity entity, double within) {
        Point centre = entity.point(10);
        Point across = entity.point(11);
        Point up = across.left().times(entity.number(40));
        double from = entity.has(41) ? entity.number(41) : 0;
        double to = entity.has(42) ? entity.number(42) : 2 * Math.PI;
        if (!entity.isGood() || !(across.norm() > 0) || !(up.norm() > 0)) {
            return Optional.empty();
        }
        double sweep = ringleaf.geom.Angles.positive(to - from);
        boolean whole = sweep < 1e-6 || sweep > 2 * Math.PI - 1e-6;
        return whole
                ? Curves.wholeEllipse(centre, across, up, within)
                : Curves.ellipse(centre, across, up, from, sweep, within);
    }

    static Optional<List<Segment>> spline(DxfEntity entity, double within) {
        List<Point> controls = new ArrayList<>();
        for (DxfVertex vertex : entity.vertices()) {
            controls.add(vertex.point());
        }
        double[] weights = entity.numbers(41);
        if (weights.length == 0) {
            weights = controls.stream().mapToDouble(p -> 1).toArray();
        }
        Spline spline = new Spline(entity.whole(71), entity.numbers(40), controls, weights);
        if (!entity.isGood() || !spline.isWhole()) {
            return Optional.empty();
        }
        Optional<List<Segment>> arcs = spline.arcs(within);
        return arcs.map(DxfCurves::closed);
    }

    /** Ends that are one but for rounding are one. */
    private static List<Segment> closed(List<Segment> arcs) {
        Segment last = arcs.get(arcs.size() - 1);
        Point first = arcs.get(0).start();
        boolean same = arcs.size() > 1 && last.end().distance(first) < 1e-9 * (1 + first.norm());
        if (!same) {
            return arcs;
        }
        List<Segment> all = new ArrayList<>(arcs.subList(0, arcs.size() - 1));
        all.add(last.withEnds(last.start(), first));
        return all;
    }
}
