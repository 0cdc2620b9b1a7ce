// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

import java.util.ArrayList;
import java.util.List;

/** A closed chain of pieces; each ends on the very point value at which the next begins. A circle is one arc. */
public record Contour(List<Segment> segments) {
    public Contour {
        segments = List.copyOf(segments);
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("a contour needs a piece");
        }
        Segment before = segments.get(segments.size() - 1);
        for (Segment segment : segments) {
            if (!before.end().equals(segment.start())) {
                throw new IllegalArgumentException(
                        "contour is open between " + before.end() + " and " + segment.start());
            }
            before = segment;
        }
    }

    public static Contour of(Segment... segments) {
        return new Contour(List.of(segments));
    }

    /** A whole circle, counter-clockwise. */
    public static Contour circle(Point centre, double radius) {
        return of(Arc.circle(centre, radius));
    }

    /** The polygon through the points in the order given. */
    public static Contour polygon(List<Point> points) {
        List<Segment> lines = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            lines.add(new Line(points.get(i), points.get((i + 1) % points.size())));
        }
        return new Contour(lines);
    }

    /** An upright rectangle, counter-clockwise. */
    public static Contour rectangle(Box box) {
        return polygon(List.of(
                new Point(box.minX(), box.minY()),
                new Point(box.maxX(), box.minY()),
                new Point(box.maxX(), box.maxY()),
                new Point(box.minX(), box.maxY())));
    }

    public boolean isCircle() {
        return segments.size() == 1 && segments.get(0) instanceof Arc arc && arc.isCircle();
    }

    /** Signed area, mm², positive when counter-clockwise; exact to rounding. */
    public double area() {
        double sum = 0;
        for (Segment segment : segments) {
            sum += segment.areaTerm();
        }
        return sum;
    }

    public boolean isCounterClockwise() {
        return area() > 0;
    }

    public double length() {
        double sum = 0;
        for (Segment segment : segments) {
            sum += segment.length();
        }
        return sum;
    }

    /** Centre of the enclosed area. */
    public Point centroid() {
        Point moment = Point.ORIGIN;
        for (Segment segment : segments) {
            moment = moment.plus(segment.momentTerm());
        }
        return moment.times(1 / area());
    }

    public Box box() {
        Box box = segments.get(0).box();
        for (Segment segment : segments) {
            box = box.union(segment.box());
        }
        return box;
    }

    public Contour reversed() {
        List<Segment> back = new ArrayList<>(segments.size());
        for (int i = segments.size() - 1; i >= 0; i--) {
            back.add(segments.get(i).reversed());
        }
        return new Contour(back);
    }

    /** The same contour run counter-clockwise. */
    public Contour counterClockwise() {
        return isCounterClockwise() ? this : reversed();
    }

    /** The same contour run clockwise. */
    public Contour clockwise() {
        return isCounterClockwise() ? reversed() : this;
    }

    public Contour placed(Placement placement) {
        List<Segment> placed = new ArrayList<>(segments.size());
        for (Segment segment : segments) {
            placed.add(segment.placed(placement));
        }
        return new Contour(placed);
    }

    public Contour mirrored(Mirror mirror) {
        List<Segment> mirrored = new ArrayList<>(segments.size());
        for (Segment segment : segments) {
            mirrored.add(segment.mirrored(mirror));
        }
        return new Contour(mirrored);
    }
}
