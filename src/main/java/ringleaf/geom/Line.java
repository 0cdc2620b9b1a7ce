// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

/** A straight piece from {@code start} to {@code end}, mm. */
public record Line(Point start, Point end) implements Segment {
    @Override
    public double length() {
        return start.distance(end);
    }

    @Override
    public Point pointAt(double u) {
        return u == 1 ? end : start.towards(end, u);
    }

    @Override
    public Point tangentAt(double u) {
        return end.minus(start).unit();
    }

    @Override
    public double curvature() {
        return 0;
    }

    @Override
    public Line reversed() {
        return new Line(end, start);
    }

    @Override
    public Box box() {
        return Box.of(start, end);
    }

    @Override
    public Line placed(Placement placement) {
        return new Line(placement.apply(start), placement.apply(end));
    }

    @Override
    public Line mirrored(Mirror mirror) {
        return new Line(mirror.apply(start), mirror.apply(end));
    }

    @Override
    public Line part(double from, double to) {
        return new Line(pointAt(from), pointAt(to));
    }

    @Override
    public Line withEnds(Point newStart, Point newEnd) {
        return new Line(newStart, newEnd);
    }

    @Override
    public double areaTerm() {
        return start.cross(end) / 2;
    }

    @Override
    public Point momentTerm() {
        double x0 = start.x();
        double y0 = start.y();
        double x1 = end.x();
        double y1 = end.y();
        return new Point((x0 * x0 + x0 * x1 + x1 * x1) / 6 * (y1 - y0), -(y0 * y0 + y0 * y1 + y1 * y1) / 6 * (x1 - x0));
    }
}
