// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import ringleaf.geom.Point;

/**
 * How far two shapes are apart, or how deep they overlap.
 *
 * @param distance mm between them, exact to rounding; 0 when they touch or overlap by no more than the tolerance;
 *     negative when they overlap: the diameter of the greatest circle in what they share
 *     (to the tolerance or 2 % where that is more), or the width of a sliver
 * @param at where
 */
record Reach(double distance, Point at) {
    /** Length of the edge over mean half width from which a shared area is measured as a sliver, by its width. */
    private static final double SLIVER = 400;

    /**
     * @param limit distances from here on are of no interest and come back as the limit or more
     * @param tolerance overlaps up to this deep count as touching, mm
     */
    static Reach of(Shape a, Shape b, double limit, double tolerance) {
        double gap = a.gapTo(b);
        if (gap > 0 && gap >= limit) {
            return new Reach(limit, Point.ORIGIN);
        }
        // Overlaps are always of interest, so contact must be seen even when the limit is 0 or less.
        double hair = tolerance * 1e-6;
        Nearest nearest = new Nearest(Math.max(limit, 2 * hair));
        nearest.between(a, b);
        if (nearest.distance > hair && !holds(a, b) && !holds(b, a)) {
            return new Reach(nearest.distance, nearest.middle());
        }
        Reach overlap = overlap(a, b, tolerance);
        return overlap == null ? new Reach(0, nearest.middle()) : overlap;
    }

    private static boolean holds(Shape outer, Shape inner) {
        return outer.contains(inner.pieces[0].x0, inner.pieces[0].y0);
    }

    private static Reach overlap(Shape a, Shape b, double tolerance) {
        if (SharedArea.of(a, b, tolerance / 1000) < tolerance * tolerance) {
            return null;
        }
        double fine = tolerance / 4;
        Geometry shared = intersection(Chords.lean(a, fine), Chords.lean(b, fine));
        if (shared.isEmpty() || shared.buffer(-tolerance / 2).isEmpty()) {
            return null;
        }
        Reach deepest = null;
        for (Polygon polygon : polygons(shared)) {
            boolean sliver = polygon.getLength() > SLIVER * polygon.getArea() / polygon.getLength();
            Reach deep = sliver ? widest(polygon, a, b) : deepest(polygon, fine);
            if (deepest == null || deep.distance < deepest.distance) {
                deepest = deep;
            }
        }
        return deepest == null || -deepest.distance <= tolerance ? null : deepest;
    }

    /** Chords can cross where an outline is thinner than they are coarse; such outlines are set right first. */
    private static Geometry intersection(Geometry a, Geometry b) {
        try {
            return OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION);
        } catch (TopologyException crossed) {
            return OverlayNGRobust.overlay(GeometryFixer.fix(a), GeometryFixer.fix(b), OverlayNG.INTERSECTION);
        }
    }

    /**
     * The width of a sliver: how far from one outline the other's corners stand in it, and the middles of its sides, as
     * the corners may lie on both.
     */
    private static Reach widest(Polygon sliver, Shape a, Shape b) {
        Reach widest = new Reach(1, Point.ORIGIN);
        for (int ring = 0; ring <= sliver.getNumInteriorRing(); ring++) {
            Coordinate[] corners =
                    (ring == 0 ? sliver.getExteriorRing() : sliver.getInteriorRingN(ring - 1)).getCoordinates();
            for (int i = 0; i < 2 * corners.length - 1; i++) {
                Coordinate from = corners[i / 2];
                Coordinate to = corners[(i + 1) / 2];
                Point p = new Point((from.x + to.x) / 2, (from.y + to.y) / 2);
                double d = Math.max(a.distanceFromOutline(p.x(), p.y()), b.distanceFromOutline(p.x(), p.y()));
                widest = -d < widest.distance ? new Reach(-d, p) : widest;
            }
        }
        return widest;
    }

    /** The greatest circle in a polygon, to {@code fine} or a fiftieth of its mean width, whichever is more. */
    static Reach deepest(Polygon polygon, double fine) {
        double meanWidth = 2 * polygon.getArea() / polygon.getLength();
        MaximumInscribedCircle circle = new MaximumInscribedCircle(polygon, Math.max(fine, meanWidth / 50));
        Coordinate c = circle.getCenter().getCoordinate();
        return new Reach(-2 * circle.getRadiusLine().getLength(), new Point(c.x, c.y));
    }

    static List<Polygon> polygons(Geometry geometry) {
        List<Polygon> polygons = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                polygons.add(polygon);
            }
        }
        return polygons;
    }
}
