// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Polygons in place of shapes, off to one side only: {@code full} ones hold the shape and reach at most the tolerance
 * beyond it, {@code lean} ones lie in it and miss at most the tolerance. So a judge knows to which side it errs. An
 * arc becomes chords where that is the right side, else tangents; chords over an angle d stray r (1 - cos(d/2)),
 * tangents r (1/cos(d/2) - 1).
 */
final class Chords {
    static final GeometryFactory FACTORY = new GeometryFactory();
    private final double tolerance;
    private final boolean full;

    private Chords(double tolerance, boolean full) {
        this.tolerance = tolerance;
        this.full = full;
    }

    /** The polygon that holds the shape. */
    static Polygon full(Shape shape, double tolerance) {
        return new Chords(tolerance, true).polygon(shape);
    }

    /** The polygon that lies in the shape. */
    static Polygon lean(Shape shape, double tolerance) {
        return new Chords(tolerance, false).polygon(shape);
    }

    private Polygon polygon(Shape shape) {
        LinearRing outer = ring(shape, 0);
        LinearRing[] holes = new LinearRing[shape.contours() - 1];
        for (int i = 0; i < holes.length; i++) {
            holes[i] = ring(shape, i + 1);
        }
        return FACTORY.createPolygon(outer, holes);
    }

    private LinearRing ring(Shape shape, int contour) {
        List<Coordinate> points = new ArrayList<>();
        for (int i = shape.starts[contour]; i < shape.starts[contour + 1]; i++) {
            add(shape.pieces[i], points);
        }
        points.add(points.get(0).copy());
        return FACTORY.createLinearRing(points.toArray(new Coordinate[0]));
    }

    private void add(Piece p, List<Coordinate> points) {
        points.add(new Coordinate(p.x0, p.y0));
        if (p.isLine()) {
            return;
        }
        double from = Math.atan2(p.y0 - p.cy, p.x0 - p.cx);
        double sweep = p.sweep();
        boolean tangents = full == p.turn > 0;
        double ratio = tangents ? p.r / (p.r + tolerance) : 1 - tolerance / p.r;
        double most = Math.min(2 * Math.acos(Math.max(ratio, 0)), Math.PI / 2);
        int n = Math.max(1, (int) Math.ceil(sweep / most));
        double step = sweep / n;
        double radius = tangents ? p.r / Math.cos(step / 2) : p.r;
        for (int k = tangents ? 0 : 1; k < n; k++) {
            double angle = from + p.turn * (k + (tangents ? 0.5 : 0)) * step;
            points.add(new Coordinate(p.cx + radius * Math.cos(angle), p.cy + radius * Math.sin(angle)));
        }
    }
}
