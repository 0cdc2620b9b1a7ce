// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** Outlines as chords for JTS, with the chord's greatest distance from its arc given. */
final class Flattened {
    static final GeometryFactory FACTORY = new GeometryFactory();

    private Flattened() {}

    static List<Point> points(List<Segment> pieces, double chord) {
        List<Point> points = new ArrayList<>();
        for (Segment piece : pieces) {
            int count = 1;
            if (piece instanceof Arc arc) {
                double step = 2 * Math.acos(Math.max(0, 1 - chord / arc.radius()));
                count = (int) Math.max(2, Math.ceil(Math.abs(arc.sweep()) / step));
            }
            for (int i = 0; i < count; i++) {
                points.add(piece.pointAt((double) i / count));
            }
        }
        points.add(pieces.get(pieces.size() - 1).end());
        return points;
    }

    static Polygon polygon(Contour contour, double chord) {
        return FACTORY.createPolygon(coordinates(points(contour.segments(), chord)));
    }

    static LineString line(List<Segment> pieces, double chord) {
        return FACTORY.createLineString(coordinates(points(pieces, chord)));
    }

    static Coordinate[] coordinates(List<Point> points) {
        Coordinate[] coordinates = new Coordinate[points.size()];
        for (int i = 0; i < coordinates.length; i++) {
            coordinates[i] = new Coordinate(points.get(i).x(), points.get(i).y());
        }
        return coordinates;
    }

    static org.locationtech.jts.geom.Point jts(Point point) {
        return FACTORY.createPoint(new Coordinate(point.x(), point.y()));
    }
}
