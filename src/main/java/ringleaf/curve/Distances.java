// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** Least distances between points, pieces, contours and regions, in closed form; mm, exact to rounding. */
public final class Distances {
    private Distances() {}

    /** From the piece to {@code p}. */
    public static double distance(Segment segment, Point p) {
        if (segment instanceof Arc arc) {
            double out = p.distance(arc.centre());
            if (arc.isCircle() || arc.shareOf(p.minus(arc.centre()).angle()) <= 1) {
                return Math.abs(out - arc.radius());
            }
            return Math.min(p.distance(arc.start()), p.distance(arc.end()));
        }
        return p.distance(nearest(segment, p));
    }

    /** The point of the piece that is nearest to {@code p}; for the centre of an arc, the arc's middle. */
    public static Point nearest(Segment segment, Point p) {
        if (segment instanceof Arc arc) {
            Point out = p.minus(arc.centre());
            if (out.x() == 0 && out.y() == 0) {
                return arc.pointAt(0.5);
            }
            if (arc.isCircle() || arc.shareOf(out.angle()) <= 1) {
                return arc.centre().plus(out.times(arc.radius() / out.norm()));
            }
            return p.distance(arc.start()) <= p.distance(arc.end()) ? arc.start() : arc.end();
        }
        Point along = segment.end().minus(segment.start());
        double u = p.minus(segment.start()).dot(along) / along.dot(along);
        return u > 0 && u < 1 ? segment.start().towards(segment.end(), u) : u >= 1 ? segment.end() : segment.start();
    }

    /** Between two pieces; 0 where they cross or touch. */
    public static Gap between(Segment a, Segment b) {
        List<Point> crossings = new ArrayList<>(2);
        Intersections.crossings(a, b, Tolerance.rounding(a.box().union(b.box())), crossings);
        if (!crossings.isEmpty()) {
            return new Gap(0, crossings.get(0), crossings.get(0));
        }
        Gap best = Gap.between(a.start(), nearest(b, a.start()))
                .orNearer(Gap.between(a.end(), nearest(b, a.end())))
                .orNearer(Gap.between(nearest(a, b.start()), b.start()))
                .orNearer(Gap.between(nearest(a, b.end()), b.end()));
        return best.orNearer(inner(a, b));
    }

    /** Where both pieces are nearest to each other away from their ends: on a line through the centres. */
    private static Gap inner(Segment a, Segment b) {
        if (a instanceof Arc p && b instanceof Arc q) {
            return arcs(p, q);
        }
        if (a instanceof Line line && b instanceof Arc arc) {
            return lineAndArc(line, arc);
        }
        if (a instanceof Arc arc && b instanceof Line line) {
            return lineAndArc(line, arc).swapped();
        }
        return Gap.NONE;
    }

    private static Gap lineAndArc(Line line, Arc arc) {
        Point foot = nearest(line, arc.centre());
        return Gap.between(foot, nearest(arc, foot));
    }

    private static Gap arcs(Arc a, Arc b) {
        Point way = b.centre().minus(a.centre());
        double d = way.norm();
        if (d == 0) {
            // concentric: any common direction; ends are tried already, so the middles are enough
            return Gap.between(a.pointAt(0.5), nearest(b, a.pointAt(0.5)))
                    .orNearer(Gap.between(nearest(a, b.pointAt(0.5)), b.pointAt(0.5)));
        }
        Point u = way.times(1 / d);
        Gap best = Gap.NONE;
        for (int sign = -1; sign <= 1; sign += 2) {
            Point onA = a.centre().plus(u.times(sign * a.radius()));
            Point onB = b.centre().plus(u.times(sign * b.radius()));
            if (Stations.within(a, onA, 0)) {
                best = best.orNearer(Gap.between(onA, nearest(b, onA)));
            }
            if (Stations.within(b, onB, 0)) {
                best = best.orNearer(Gap.between(nearest(a, onB), onB));
            }
        }
        return best;
    }

    /** Between the outlines of two contours; what they enclose does not count. */
    public static Gap between(Contour a, Contour b) {
        return between(List.of(a), List.of(b));
    }

    /** Between two regions: 0 where they overlap (at a point of one that lies in the other), else of their contours. */
    public static Gap between(Region a, Region b) {
        Point inA = a.outer().segments().get(0).start();
        if (Winding.of(b, inA) > 0) {
            return new Gap(0, inA, inA);
        }
        Point inB = b.outer().segments().get(0).start();
        if (Winding.of(a, inB) > 0) {
            return new Gap(0, inB, inB);
        }
        return between(a.contours(), b.contours());
    }

    private static Gap between(List<Contour> first, List<Contour> second) {
        List<Segment> a = segments(first);
        List<Segment> b = segments(second);
        Box[] boxes = new Box[b.size()];
        for (int j = 0; j < boxes.length; j++) {
            boxes[j] = b.get(j).box();
        }
        Gap best = Gap.NONE;
        for (Segment piece : a) {
            Box box = piece.box();
            for (int j = 0; j < boxes.length; j++) {
                if (apart(box, boxes[j]) < best.distance()) {
                    best = best.orNearer(between(piece, b.get(j)));
                    if (best.distance() == 0) {
                        return best;
                    }
                }
            }
        }
        return best;
    }

    private static List<Segment> segments(List<Contour> contours) {
        List<Segment> all = new ArrayList<>();
        for (Contour contour : contours) {
            all.addAll(contour.segments());
        }
        return all;
    }

    private static double apart(Box a, Box b) {
        double dx = Math.max(0, Math.max(a.minX() - b.maxX(), b.minX() - a.maxX()));
        double dy = Math.max(0, Math.max(a.minY() - b.maxY(), b.minY() - a.maxY()));
        return Math.sqrt(dx * dx + dy * dy);
    }
}
