// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** What of a line lies on material, for marks that must not run over holes. */
public final class OnMaterial {
    private OnMaterial() {}

    /**
     * The longest part of a line that lies on a region, in the line's own direction.
     *
     * @param gap kept to every edge that the line crosses, mm, at least 0
     * @return nothing where no part is longer than twice the gap
     */
    public static Optional<Line> longest(Line line, Region on, double gap) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, line.length()));
        for (Contour contour : on.contours()) {
            for (Segment piece : contour.segments()) {
                for (Point p : Intersections.of(line, piece, Tolerance.CURVE.length())) {
                    cuts.add(p.distance(line.start()));
                }
            }
        }
        cuts.sort(Double::compare);
        Line longest = null;
        for (int i = 1; i < cuts.size(); i++) {
            double from = cuts.get(i - 1) + (i > 1 ? gap : 0);
            double to = cuts.get(i) - (i < cuts.size() - 1 ? gap : 0);
            Point middle = at(line, (cuts.get(i - 1) + cuts.get(i)) / 2);
            boolean longer = to > from && (longest == null || to - from > longest.length());
            if (longer && Containment.of(on, middle, 0) == Containment.INSIDE) {
                longest = new Line(at(line, from), at(line, to));
            }
        }
        return Optional.ofNullable(longest);
    }

    private static Point at(Line line, double along) {
        return along == 0 ? line.start() : along == line.length() ? line.end() : line.pointAt(along / line.length());
    }
}
