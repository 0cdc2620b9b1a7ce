// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;
import org.locationtech.jts.triangulate.tri.Tri;
import ringleaf.geom.Point;

/** A polygon with holes cut into triangles between its own corners: no corner is added and none is left out. */
public final class Triangulation {
    /** Flat triangles that lie beside one another may take turns. */
    private static final int ROUNDS = 4;

    private Triangulation() {}

    /**
     * The triangles, three corner numbers each, counter-clockwise.
     *
     * @param corners the points that the rings number
     * @param rings corner numbers of the outer ring and then of the holes, each ring once round, in either direction
     * @param flat height, mm, below which a triangle shares the room of its neighbour across its longest edge instead,
     *     where it has one: between corners on a straight line the library's own test of circles drowns in rounding
     * @throws IllegalStateException when the rings cross one another or themselves
     */
    public static int[] of(List<Point> corners, List<int[]> rings, double flat) {
        Map<Coordinate, Integer> numbers = new HashMap<>();
        LinearRing outer = ring(corners, rings.get(0), numbers);
        LinearRing[] holes = new LinearRing[rings.size() - 1];
        for (int i = 0; i < holes.length; i++) {
            holes[i] = ring(corners, rings.get(i + 1), numbers);
        }
        List<Tri> tris;
        try {
            tris = new ConstrainedDelaunayTriangulator(Flattening.FACTORY.createPolygon(outer, holes)).getTriangles();
        } catch (IllegalArgumentException | IndexOutOfBoundsException | NullPointerException e) {
            // what the library makes of rings that cross depends on where they do
            throw new IllegalStateException("rings that cannot be cut into triangles", e);
        }
        boolean turned = true;
        for (int i = 0; i < ROUNDS && turned; i++) {
            turned = raise(tris, flat);
        }
        int[] triangles = new int[3 * tris.size()];
        for (int i = 0; i < tris.size(); i++) {
            // the library's triangles run clockwise
            for (int k = 0; k < 3; k++) {
                triangles[3 * i + k] = numbers.get(tris.get(i).getCoordinate(2 - k));
            }
        }
        return triangles;
    }

    /** Turns the longest edge of flat triangles, where the two that come of it are less flat. */
    private static boolean raise(List<Tri> tris, double flat) {
        boolean turned = false;
        for (Tri tri : tris) {
            int longest = 0;
            for (int i = 1; i < 3; i++) {
                longest = edge(tri, i) > edge(tri, longest) ? i : longest;
            }
            double height = 2 * tri.getArea() / edge(tri, longest);
            Tri neighbour = tri.getAdjacent(longest);
            if (height < flat && neighbour != null) {
                Coordinate tip = tri.getCoordinate(Tri.oppVertex(longest));
                Coordinate far = neighbour.getCoordinate(Tri.oppVertex(neighbour.getIndex(tri)));
                Coordinate one = tri.getCoordinate(longest);
                Coordinate two = tri.getCoordinate(Tri.next(longest));
                double across = tip.distance(far);
                // the library's triangles run clockwise: both new ones have to do so as well
                double least = Math.min(-doubled(tip, one, far), -doubled(tip, far, two));
                if (least > height * across) {
                    tri.flip(longest);
                    turned = true;
                }
            }
        }
        return turned;
    }

    private static double edge(Tri tri, int i) {
        return tri.getCoordinate(i).distance(tri.getCoordinate(Tri.next(i)));
    }

    /** Twice the area, positive where the corners run counter-clockwise. */
    private static double doubled(Coordinate a, Coordinate b, Coordinate c) {
        return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    }

    private static LinearRing ring(List<Point> corners, int[] ring, Map<Coordinate, Integer> numbers) {
        Coordinate[] coordinates = new Coordinate[ring.length + 1];
        for (int i = 0; i < ring.length; i++) {
            Point p = corners.get(ring[i]);
            coordinates[i] = new Coordinate(p.x(), p.y());
            numbers.put(coordinates[i], ring[i]);
        }
        coordinates[ring.length] = coordinates[0].copy();
        return Flattening.FACTORY.createLinearRing(coordinates);
    }
}
