// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * Where sizes of a part are taken from, found on its outline: the centre that most of its arcs share; or the mechanism's
 * origin where a hole lies there; or the lower left corner, the part turned so that its longest straight edges are level.
 *
 * @param origin in the turned part
 * @param round whether it is the centre of the part's arcs
 * @param turn of the part against its file, rad
 */
record Bearings(Point origin, boolean round, double turn) {
    /** Arcs about one centre that make the part round, as a share of the box's own length round. */
    private static final double ROUND_SHARE = 0.2;
    /** Straight edges along and across one direction that turn the part, as a share of all straight edges. */
    private static final double SQUARE_SHARE = 0.6;

    private static final double PARALLEL = Math.toRadians(0.05);

    static Bearings of(List<Edge> edges, Tolerance same) {
        Box box = edges.get(0).contour().box();
        Point centre = null;
        double most = ROUND_SHARE * 2 * (box.width() + box.height());
        List<Point> centres = new ArrayList<>();
        List<Double> lengths = new ArrayList<>();
        for (Edge edge : edges) {
            for (Arc arc : edge.arcs()) {
                int i = index(centres, arc.centre(), same);
                if (i == centres.size()) {
                    centres.add(arc.centre());
                    lengths.add(0.0);
                }
                lengths.set(i, lengths.get(i) + arc.length());
            }
        }
        for (int i = 0; i < centres.size(); i++) {
            if (lengths.get(i) > most) {
                most = lengths.get(i);
                centre = centres.get(i);
            }
        }
        if (centre != null) {
            // What is meant to be the origin is called so, free of rounding.
            boolean origin = centre.norm() < same.length();
            return new Bearings(origin ? Point.ORIGIN : centre, true, 0);
        }
        for (Edge edge : edges) {
            if (edge.isCircle() && edge.circle().centre().norm() < same.length()) {
                return new Bearings(Point.ORIGIN, false, 0);
            }
        }
        double turn = turn(edges);
        Box turned = edges.get(0).contour().placed(Placement.turn(turn)).box();
        return new Bearings(new Point(turned.minX(), turned.minY()), false, turn);
    }

    private static int index(List<Point> centres, Point p, Tolerance same) {
        for (int i = 0; i < centres.size(); i++) {
            if (centres.get(i).distance(p) < same.length()) {
                return i;
            }
        }
        return centres.size();
    }

    /** The least turn that levels most straight edges, 0 where no direction has most. */
    private static double turn(List<Edge> edges) {
        List<Line> lines = new ArrayList<>();
        double total = 0;
        for (Edge edge : edges) {
            for (Segment piece : edge.pieces()) {
                if (piece instanceof Line line) {
                    lines.add(line);
                    total += line.length();
                }
            }
        }
        double best = 0;
        double most = SQUARE_SHARE * total;
        for (Line line : lines) {
            double angle = tilt(line);
            double sum = 0;
            for (Line other : lines) {
                double off = Math.abs(tilt(other) - angle);
                if (Math.min(off, Math.PI / 2 - off) < PARALLEL) {
                    sum += other.length();
                }
            }
            if (sum > most * (1 + 1e-9)) {
                most = sum;
                best = angle;
            }
        }
        return Math.abs(best) < 1e-9 ? 0 : -best;
    }

    /** The direction of the line brought into (-45°, 45°] by right angles. */
    private static double tilt(Line line) {
        double quarter = Math.PI / 2;
        double angle = line.end().minus(line.start()).angle();
        return angle - quarter * Math.ceil(angle / quarter - 0.5);
    }
}
