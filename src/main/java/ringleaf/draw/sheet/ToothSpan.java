// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Intersections;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * What a caliper measures over some teeth, taken from the outline itself: jaws touch involute flanks where a tangent of
 * the base circle crosses them at right angles, so the span is the distance of two such crossings (the definition of the
 * base tangent length). Within the outline's own deviation.
 *
 * @param teeth between the jaws
 * @param span mm
 */
record ToothSpan(int teeth, double span) {
    /** Cosine of the angle at which a crossing still counts as square: arcs follow the flank only nearly. */
    private static final double SQUARE = 0.05;

    /**
     * The span whose jaws touch nearest to the middle of the teeth.
     *
     * @param edge with external teeth
     * @param teeth on it
     * @param centre of the teeth
     * @param gear what they are
     */
    static Optional<ToothSpan> of(Edge edge, Teeth teeth, Point centre, SheetItem.Involute gear, Tolerance same) {
        double base = gear.module() * gear.teeth() * Math.cos(gear.pressureAngle()) / 2;
        double pitch = Math.PI * gear.module() * Math.cos(gear.pressureAngle());
        double middle = (teeth.outer() + teeth.inner()) / 2;
        ToothSpan best = null;
        double nearest = (teeth.outer() - teeth.inner()) / 2;
        for (double direction : directions(teeth, centre, gear.teeth())) {
            Point foot = centre.plus(Point.polar(base, direction));
            Point along = Point.polar(1, direction).left();
            List<Double> right = crossings(edge, foot, along, teeth.outer(), same);
            List<Double> left = crossings(edge, foot, along.times(-1), teeth.outer(), same);
            for (double s : right) {
                for (double t : left) {
                    double off = Math.abs(Math.hypot(base, s) - middle);
                    if (Math.abs(s - t) < pitch / 4 && off < nearest) {
                        nearest = off;
                        int between = between(teeth, centre, direction, Math.atan2(t, base), Math.atan2(s, base));
                        best = new ToothSpan(between, s + t);
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * How many teeth stand between the jaws: counted, as from the length alone it cannot be told where a tooth is wider on
     * the base circle than the base pitch, as it is from about a hundred teeth on.
     */
    private static int between(Teeth teeth, Point centre, double direction, double before, double after) {
        int count = 0;
        for (Arc land : teeth.lands()) {
            double at = Angles.signed(land.pointAt(0.5).minus(centre).angle() - direction);
            if (at > -before && at < after) {
                count++;
            }
        }
        return count;
    }

    /** Through the middle of a tooth and of the space beside it, away from where teeth end. */
    private static List<Double> directions(Teeth teeth, Point centre, int all) {
        List<Double> angles = new ArrayList<>();
        for (Arc land : teeth.lands()) {
            angles.add(Angles.positive(land.pointAt(0.5).minus(centre).angle()));
        }
        angles.sort(Double::compare);
        int n = angles.size();
        double widest = 0;
        int first = 0;
        for (int i = 0; i < n; i++) {
            double gap = Angles.positive(angles.get(i) - angles.get((i + n - 1) % n));
            if (gap > widest) {
                widest = gap;
                first = i;
            }
        }
        double tooth = angles.get((first + n / 2) % n);
        return List.of(tooth, tooth + Math.PI / all);
    }

    /** How far along the tangent it leaves material squarely. */
    private static List<Double> crossings(Edge edge, Point foot, Point along, double reach, Tolerance same) {
        Line ray = new Line(foot, foot.plus(along.times(2 * reach)));
        List<Double> all = new ArrayList<>();
        for (Segment segment : edge.contour().segments()) {
            if (segment.box().meets(ray.box())) {
                for (Point p : Intersections.of(ray, segment, same.length() / 100)) {
                    Point tangent = tangent(segment, p);
                    // Outlines run counter-clockwise: material lies left, so leaving it the outline runs to the left.
                    if (Math.abs(tangent.dot(along)) < SQUARE && along.cross(tangent) > 0) {
                        all.add(p.minus(foot).dot(along));
                    }
                }
            }
        }
        return all;
    }

    private static Point tangent(Segment segment, Point p) {
        if (segment instanceof Arc arc) {
            Point out = p.minus(arc.centre()).unit().left();
            return arc.sweep() > 0 ? out : out.times(-1);
        }
        return segment.tangentAt(0);
    }
}
