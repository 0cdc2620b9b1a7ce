// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import ringleaf.curve.Distances;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** Where contours that run along one another meet: every end of a piece that lies on another piece stops that one too. */
public final class Stops {
    private final Corners corners;
    private final double near;
    private final int[] byX;
    private final double[] xs;

    /** A corner on a piece, by its share of the piece's length. */
    public record Stop(double share, int corner) {}

    /**
     * Stops of these contours.
     *
     * @param near points closer than this are one, mm
     * @param shared whether contours may run along one another in part
     */
    public Stops(List<Contour> contours, double near, boolean shared) {
        this.near = near;
        corners = new Corners(near);
        for (Contour contour : contours) {
            for (Segment segment : contour.segments()) {
                corners.number(segment.start());
            }
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; shared && i < corners.points().size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> corners.points().get(i).x()));
        byX = new int[order.size()];
        xs = new double[order.size()];
        for (int i = 0; i < byX.length; i++) {
            byX[i] = order.get(i);
            xs[i] = corners.points().get(byX[i]).x();
        }
    }

    /** The corners, in the order of their numbers. */
    public List<Point> points() {
        return corners.points();
    }

    /** The number of the corner at a point, which is added where there is none. */
    public int number(Point p) {
        return corners.number(p);
    }

    /** The stops of a piece in its own direction, both of its ends among them. */
    public List<Stop> on(Segment segment) {
        int first = corners.number(segment.start());
        int last = corners.number(segment.end());
        List<Stop> stops = new ArrayList<>();
        stops.add(new Stop(0, first));
        if (byX.length > 0) {
            Box box = segment.box().grown(near);
            int i = Arrays.binarySearch(xs, box.minX());
            for (i = i < 0 ? -i - 1 : i; i < byX.length && xs[i] <= box.maxX(); i++) {
                Point p = corners.points().get(byX[i]);
                boolean inside = byX[i] != first && byX[i] != last && p.y() >= box.minY() && p.y() <= box.maxY();
                double share = inside && Distances.distance(segment, p) <= near ? share(segment, p) : -1;
                // beside an end, but not between both: that of an arc would be most of a turn away
                if (share > 0 && share < 1) {
                    stops.add(new Stop(share, byX[i]));
                }
            }
        }
        stops.add(new Stop(1, last));
        stops.sort(Comparator.comparingDouble(Stop::share));
        return stops;
    }

    private static double share(Segment segment, Point p) {
        if (segment instanceof Arc arc) {
            return arc.shareOf(p.minus(arc.centre()).angle());
        }
        Line line = (Line) segment;
        Point along = line.end().minus(line.start());
        return p.minus(line.start()).dot(along) / along.dot(along);
    }
}
