// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.GeometryFactory;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * Outlines as chords, for a judge that knows no arcs.
 *
 * <p>Chords are inscribed: their ends lie on the arc, and no chord leaves it by more than the tolerance. A chord over
 * the angle {@code a} leaves the arc by r (1 - cos(a/2)), so an arc takes ceil(|sweep| / (2 acos(1 - tolerance / r)))
 * of them (proved). A whole circle takes at least three.
 */
public final class Flattening {
    /** The one factory for all flattened outlines: floating precision, no coordinate system. */
    static final GeometryFactory FACTORY = new GeometryFactory();

    private Flattening() {}

    /** The least number of equal chords that keep the tolerance on this arc. */
    public static int chords(Arc arc, Tolerance tolerance) {
        double share = tolerance.length() / arc.radius();
        // 2 acos(1 - s) = 4 asin(sqrt(s / 2)), which keeps its digits for small s
        double angle = share >= 1 ? Math.PI : 4 * Math.asin(Math.sqrt(share / 2));
        int least = arc.isCircle() ? 3 : 1;
        return Math.max(least, (int) Math.ceil(Math.abs(arc.sweep()) / angle - 1e-9));
    }

    /** The corners of the flattened contour, each once, in its own direction. */
    public static List<Point> points(Contour contour, Tolerance tolerance) {
        List<Point> points = new ArrayList<>();
        for (Segment segment : contour.segments()) {
            add(points, segment, tolerance);
        }
        return points;
    }

    /** All points of the piece but its last. */
    private static void add(List<Point> points, Segment segment, Tolerance tolerance) {
        points.add(segment.start());
        if (segment instanceof Arc arc) {
            int n = chords(arc, tolerance);
            double step = arc.sweep() / n;
            double x = arc.centre().x();
            double y = arc.centre().y();
            for (int i = 1; i < n; i++) {
                double angle = arc.startAngle() + i * step;
                points.add(new Point(x + arc.radius() * Math.cos(angle), y + arc.radius() * Math.sin(angle)));
            }
        }
    }
}
