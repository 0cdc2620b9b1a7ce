// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** The whole line or circle that a piece lies on. */
final class Carriers {
    private Carriers() {}

    /** The foot of {@code p} on the carrier; for a circle the near one. */
    static Point foot(Segment segment, Point p) {
        if (segment instanceof Arc arc) {
            Point out = p.minus(arc.centre());
            return arc.centre().plus(out.times(arc.radius() / out.norm()));
        }
        Point u = segment.tangentAt(0);
        return segment.start().plus(u.times(u.dot(p.minus(segment.start()))));
    }

    /** The piece moved by {@code shift} mm to its left; null where an arc has no radius left. */
    static Segment moved(Segment segment, double shift) {
        if (segment instanceof Arc arc) {
            double radius = arc.radius() - Math.signum(arc.sweep()) * shift;
            return radius > 1e-12 * arc.radius() ? Arc.of(arc.centre(), radius, arc.startAngle(), arc.sweep()) : null;
        }
        Point by = segment.tangentAt(0).left().times(shift);
        return new Line(segment.start().plus(by), segment.end().plus(by));
    }

    /** Where the carriers cross or touch; none for the same carrier or parallel lines. */
    static List<Point> meet(Segment a, Segment b) {
        List<Point> found = new ArrayList<>(2);
        if (a instanceof Arc p && b instanceof Arc q) {
            circles(p, q, found);
        } else if (a instanceof Arc arc) {
            lineAndCircle(b, arc, found);
        } else if (b instanceof Arc arc) {
            lineAndCircle(a, arc, found);
        } else {
            Point u = a.tangentAt(0);
            Point v = b.tangentAt(0);
            double cross = u.cross(v);
            if (Math.abs(cross) > 1e-12) {
                found.add(a.start().plus(u.times(b.start().minus(a.start()).cross(v) / cross)));
            }
        }
        return found;
    }

    private static void lineAndCircle(Segment line, Arc arc, List<Point> found) {
        Point foot = foot(line, arc.centre());
        double off = foot.distance(arc.centre());
        // a touch that rounding lifts off counts as a touch
        double square = (arc.radius() - off) * (arc.radius() + off);
        if (square >= -1e-12 * arc.radius() * arc.radius()) {
            Point along = line.tangentAt(0).times(Math.sqrt(Math.max(0, square)));
            found.add(foot.minus(along));
            found.add(foot.plus(along));
        }
    }

    private static void circles(Arc a, Arc b, List<Point> found) {
        Point way = b.centre().minus(a.centre());
        double d = way.norm();
        if (d <= 1e-12 * a.radius()) {
            return;
        }
        double along = d / 2 + (a.radius() - b.radius()) * (a.radius() + b.radius()) / (2 * d);
        double square = (a.radius() - along) * (a.radius() + along);
        if (square >= -1e-12 * a.radius() * a.radius()) {
            Point u = way.times(1 / d);
            Point across = u.left().times(Math.sqrt(Math.max(0, square)));
            found.add(a.centre().plus(u.times(along)).minus(across));
            found.add(a.centre().plus(u.times(along)).plus(across));
        }
    }
}
