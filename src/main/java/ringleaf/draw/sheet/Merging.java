// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** Joins neighbouring pieces of one circle or one straight line, so that a feature is one piece. */
final class Merging {
    private Merging() {}

    /** The contour's pieces, joined where they go on along the same carrier within the tolerance. */
    static List<Segment> of(Contour contour, Tolerance same) {
        List<Segment> pieces = contour.segments();
        int n = pieces.size();
        int first = 0;
        while (first < n && goesOn(pieces.get((first + n - 1) % n), pieces.get(first), same)) {
            first++;
        }
        if (first == n && n > 1 && pieces.get(0) instanceof Arc arc) {
            return List.of(
                    Arc.of(arc.centre(), arc.radius(), arc.startAngle(), Math.signum(arc.sweep()) * Angles.TURN));
        }
        List<Segment> merged = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Segment next = pieces.get((first + i) % n);
            int last = merged.size() - 1;
            if (last >= 0 && goesOn(merged.get(last), next, same)) {
                merged.set(last, joined(merged.get(last), next));
            } else {
                merged.add(next);
            }
        }
        return merged;
    }

    private static boolean goesOn(Segment before, Segment after, Tolerance same) {
        if (before == after) {
            return false;
        }
        if (before instanceof Arc a && after instanceof Arc b) {
            return a.sweep() > 0 == b.sweep() > 0
                    && a.centre().distance(b.centre()) < same.length()
                    && Math.abs(a.radius() - b.radius()) < same.length()
                    && Math.abs(a.sweep() + b.sweep()) < Angles.TURN;
        }
        if (before instanceof Line a && after instanceof Line b) {
            double off = a.tangentAt(0).cross(b.end().minus(a.start()));
            return Math.abs(off) < same.length() / 10 && a.tangentAt(0).dot(b.tangentAt(0)) > 0;
        }
        return false;
    }

    private static Segment joined(Segment before, Segment after) {
        if (before instanceof Arc a && after instanceof Arc b) {
            return new Arc(a.centre(), a.radius(), a.startAngle(), a.sweep() + b.sweep(), a.start(), b.end());
        }
        return new Line(before.start(), after.end());
    }
}
