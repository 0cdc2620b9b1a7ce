// SPDX-License-Identifier: Apache-2.0
package ringleaf.groove;

import ringleaf.curve.Distances;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** A groove's edge as something to be held against: how deep a point lies in the pulley's material. */
final class GrooveEdge {
    private static final double SLACK = 1e-9;

    private final Segment[] right;
    private final double[] least;
    private final double[] most;
    private final double rim;
    private final double root;
    private final double pitch;

    GrooveEdge(Groove groove) {
        this.rim = groove.rim();
        this.root = groove.rootRadius();
        this.pitch = Angles.TURN / groove.teeth();
        int n = 0;
        Segment[] all = groove.edge().segments().toArray(new Segment[0]);
        for (Segment piece : all) {
            // the left side is the right one's image
            if (Math.max(piece.start().x(), piece.end().x()) > SLACK) {
                all[n++] = piece;
            }
        }
        right = java.util.Arrays.copyOf(all, n);
        least = new double[n];
        most = new double[n];
        for (int i = 0; i < n; i++) {
            least[i] = Distances.distance(right[i], Point.ORIGIN) - SLACK;
            most[i] = Math.max(right[i].start().norm(), right[i].end().norm()) + bow(right[i]) + SLACK;
        }
    }

    /** By how much a piece may lie further out than its ends. */
    private static double bow(Segment piece) {
        return piece instanceof Arc arc ? arc.radius() * (1 - Math.cos(arc.sweep() / 2)) : 0;
    }

    double root() {
        return root;
    }

    /** How deep a point lies in the pulley's material, mm; 0 outside. */
    double depth(Point p) {
        double square = p.x() * p.x() + p.y() * p.y();
        if (square >= rim * rim) {
            return 0;
        }
        double radius = Math.sqrt(square);
        double off = Math.atan2(p.x(), p.y());
        off = Math.abs(off - pitch * Math.rint(off / pitch));
        if (radius > root && off <= open(radius)) {
            return 0;
        }
        Point own = new Point(radius * Math.sin(off), radius * Math.cos(off));
        double nearest = rim - radius;
        for (Segment piece : right) {
            nearest = Math.min(nearest, Distances.distance(piece, own));
        }
        return nearest;
    }

    /** Half the angle over which the groove is open at a radius between bottom and rim. */
    double open(double radius) {
        double widest = 0;
        for (int i = 0; i < right.length; i++) {
            if (radius >= least[i] && radius <= most[i]) {
                widest = Math.max(widest, reach(right[i], radius));
            }
        }
        return widest;
    }

    private static double reach(Segment piece, double radius) {
        if (piece instanceof Line line) {
            Point u = line.end().minus(line.start());
            double length = u.norm();
            u = u.times(1 / length);
            double along = line.start().dot(u);
            double off = radius * radius - (line.start().dot(line.start()) - along * along);
            double half = Math.sqrt(Math.max(0, off));
            return Math.max(onLine(line, u, length, -along - half), onLine(line, u, length, -along + half));
        }
        Arc arc = (Arc) piece;
        double d = arc.centre().norm();
        if (d < 1e-12) {
            return Math.max(angle(arc.start()), angle(arc.end()));
        }
        double along = (d * d + radius * radius - arc.radius() * arc.radius()) / (2 * d);
        double half = Math.sqrt(Math.max(0, radius * radius - along * along));
        Point u = arc.centre().times(1 / d);
        Point foot = u.times(along);
        Point across = u.left().times(half);
        return Math.max(onArc(arc, foot.plus(across)), onArc(arc, foot.minus(across)));
    }

    private static double onLine(Line line, Point u, double length, double at) {
        return at < -SLACK || at > length + SLACK ? 0 : angle(line.start().plus(u.times(at)));
    }

    private static double onArc(Arc arc, Point p) {
        double share = arc.shareOf(p.minus(arc.centre()).angle());
        double slack = SLACK / arc.length();
        double whole = Angles.TURN / Math.abs(arc.sweep());
        return share <= 1 + slack || share >= whole - slack ? angle(p) : 0;
    }

    private static double angle(Point p) {
        return Math.atan2(p.x(), p.y());
    }
}
