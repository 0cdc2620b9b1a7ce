// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * The points that two pieces share, in closed form.
 *
 * <p>Pieces that touch within the tolerance touch in one point; pieces that run along each other (on one line or one
 * circle) share the ends of the common stretch. A point counts for a piece up to the tolerance beyond its ends.
 */
public final class Intersections {
    private Intersections() {}

    /**
     * Shared points, none twice (within the tolerance), in an order that follows from the arguments alone.
     *
     * @param tolerance mm, of the order of rounding; how near is a touch
     */
    public static List<Point> of(Segment a, Segment b, double tolerance) {
        List<Point> found = new ArrayList<>(2);
        crossings(a, b, tolerance, found);
        ends(a, b, tolerance, found);
        ends(b, a, tolerance, found);
        return found;
    }

    /** Whether both pieces lie on one line or one circle within the tolerance. */
    public static boolean sameCarrier(Segment a, Segment b, double tolerance) {
        if (a instanceof Arc p && b instanceof Arc q) {
            return p.centre().distance(q.centre()) + Math.abs(p.radius() - q.radius()) <= tolerance;
        }
        if (a instanceof Line p && b instanceof Line q) {
            Point u = p.end().minus(p.start()).unit();
            return Math.abs(u.cross(q.start().minus(p.start()))) <= tolerance
                    && Math.abs(u.cross(q.end().minus(p.start()))) <= tolerance;
        }
        return false;
    }

    /** Crossings and touches of the carriers that lie on both pieces; none where the carriers are the same. */
    public static void crossings(Segment a, Segment b, double tolerance, List<Point> found) {
        if (a instanceof Line p) {
            if (b instanceof Line q) {
                lines(p, q, tolerance, found);
            } else {
                lineAndArc(p, (Arc) b, tolerance, found);
            }
        } else if (b instanceof Line q) {
            lineAndArc(q, (Arc) a, tolerance, found);
        } else {
            arcs((Arc) a, (Arc) b, tolerance, found);
        }
    }

    private static void ends(Segment a, Segment b, double tolerance, List<Point> found) {
        if (Distances.distance(b, a.start()) <= tolerance) {
            add(found, a.start(), tolerance);
        }
        if (Distances.distance(b, a.end()) <= tolerance) {
            add(found, a.end(), tolerance);
        }
    }

    private static void add(List<Point> found, Point p, double tolerance) {
        for (Point known : found) {
            if (known.distance(p) <= 2 * tolerance) {
                return;
            }
        }
        found.add(p);
    }

    private static void addIfOn(List<Point> found, Point p, Segment a, Segment b, double tolerance) {
        if (Stations.within(a, p, tolerance) && Stations.within(b, p, tolerance)) {
            add(found, p, tolerance);
        }
    }

    private static void lines(Line a, Line b, double tolerance, List<Point> found) {
        Point u = a.end().minus(a.start());
        Point v = b.end().minus(b.start());
        double cross = u.cross(v);
        // parallel to rounding: what they share are ends
        if (Math.abs(cross) <= 1e-14 * u.norm() * v.norm() || sameCarrier(a, b, tolerance)) {
            return;
        }
        double s = b.start().minus(a.start()).cross(v) / cross;
        addIfOn(found, a.start().plus(u.times(s)), a, b, tolerance);
    }

    private static void lineAndArc(Line line, Arc arc, double tolerance, List<Point> found) {
        Point u = line.end().minus(line.start()).unit();
        Point toCentre = arc.centre().minus(line.start());
        double off = u.cross(toCentre);
        double apart = Math.abs(off) - arc.radius();
        if (apart > tolerance) {
            return;
        }
        Point foot = line.start().plus(u.times(u.dot(toCentre)));
        if (apart >= -tolerance) {
            addIfOn(found, foot, line, arc, tolerance);
            return;
        }
        double half = Math.sqrt((arc.radius() - off) * (arc.radius() + off));
        addIfOn(found, foot.minus(u.times(half)), line, arc, tolerance);
        addIfOn(found, foot.plus(u.times(half)), line, arc, tolerance);
    }

    private static void arcs(Arc a, Arc b, double tolerance, List<Point> found) {
        Point way = b.centre().minus(a.centre());
        double d = way.norm();
        double r = a.radius();
        double s = b.radius();
        if (d <= tolerance || d > r + s + tolerance || d < Math.abs(r - s) - tolerance) {
            return;
        }
        if (d + Math.abs(r - s) <= 2 * tolerance) {
            return;
        }
        Point u = way.times(1 / d);
        boolean outside = d >= r + s - tolerance;
        if (outside || d <= Math.abs(r - s) + tolerance) {
            double along = outside || r > s ? r : -r;
            addIfOn(found, a.centre().plus(u.times(along)), a, b, tolerance);
            return;
        }
        // (d² + r² - s²) / 2d, grouped so that near circles do not cancel
        double along = d / 2 + (r - s) * (r + s) / (2 * d);
        double half = Math.sqrt(Math.max(0, (r - along) * (r + along)));
        Point foot = a.centre().plus(u.times(along));
        Point across = u.left().times(half);
        addIfOn(found, foot.minus(across), a, b, tolerance);
        addIfOn(found, foot.plus(across), a, b, tolerance);
    }
}
