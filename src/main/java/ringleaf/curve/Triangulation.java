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
    private Triangulation() {}

    /**
     * The triangles, three corner numbers each, counter-clockwise.
     *
     * @param corners the points that the rings number
     * @param rings corner numbers of the outer ring and then of the holes, each ring once round, in either direction
     * @throws IllegalStateException when the rings cross one another or themselves
     */
    public static int[] of(List<Point> corners, List<int[]> rings) {
        Map<Coordinate, Integer> numbers = new HashMap<>();
        LinearRing outer = ring(corners, rings.get(0), numbers);
        LinearRing[] holes = new LinearRing[rings.size() - 1];
        for (int i = 0; i < holes.length; i++) {
            holes[i] = ring(corners, rings.get(i + 1), numbers);
        }
        List<Tri> tris;
        try {
            tris = new ConstrainedDelaunayTriangulator(Flattening.FACTORY.createPolygon(outer, holes)).getTriangles();
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            // what the library makes of rings that cross depends on where they do
            throw new IllegalStateException("rings that cannot be cut into triangles", e);
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

    private static LinearRing ring(
            List<Point> corners, int[] ring, Map<Coordinate, Integer> numbers) {
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
