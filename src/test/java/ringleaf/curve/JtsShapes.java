// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** Outlines as chords in JTS, to hold what is worked out on arcs against that library. */
public final class JtsShapes {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private JtsShapes() {}

    /** The corners of the flattened path, both ends included. */
    public static List<Point> points(Path path, Tolerance tolerance) {
        List<Point> points = new ArrayList<>();
        for (Segment segment : path.segments()) {
            points.add(segment.start());
            if (segment instanceof Arc arc) {
                int n = Flattening.chords(arc, tolerance);
                for (int i = 1; i < n; i++) {
                    double angle = arc.startAngle() + i * arc.sweep() / n;
                    points.add(arc.centre().plus(Point.polar(arc.radius(), angle)));
                }
            }
        }
        points.add(path.end());
        return points;
    }

    /** The region as a polygon; its area is less than the true one by at most tolerance times arc length. */
    public static Polygon polygon(Region region, Tolerance tolerance) {
        LinearRing[] rings =
                region.holes().stream().map(hole -> ring(hole, tolerance)).toArray(LinearRing[]::new);
        return FACTORY.createPolygon(ring(region.outer(), tolerance), rings);
    }

    /** The contour as a closed ring. */
    public static LinearRing ring(Contour contour, Tolerance tolerance) {
        List<Coordinate> corners = new ArrayList<>();
        for (Point point : Flattening.points(contour, tolerance)) {
            corners.add(new Coordinate(point.x(), point.y()));
        }
        corners.add(corners.get(0).copy());
        return FACTORY.createLinearRing(corners.toArray(Coordinate[]::new));
    }

    /** The path as a line string. */
    public static LineString lineString(Path path, Tolerance tolerance) {
        return FACTORY.createLineString(points(path, tolerance).stream()
                .map(point -> new Coordinate(point.x(), point.y()))
                .toArray(Coordinate[]::new));
    }
}
