// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Finding;
import ringleaf.spec.shared.Servo;

/**
 * A servo seen along its output, in its place in a mechanism; lengths in mm.
 *
 * @param servo of the catalogue
 * @param place from the servo's own frame (output in the origin, body towards +x) to the mechanism's
 */
public record ServoOutline(Servo servo, Placement place) {
    /** Room round body, horn and output, mm; common practice, no source. */
    public static final double ROOM = 0.5;

    /** Of the window, mm: small enough that a body with sharp corners goes in. */
    public static final double CORNER = 0.5;

    /** The body, or what is between its ears' ends, in the servo's own frame. */
    public Box box(double length) {
        double half = servo.bodyWidth() / 2;
        return new Box(middle() - length / 2, -half, middle() + length / 2, half);
    }

    /** The cut-out for the body, with room all round. */
    public Contour body() {
        return window(box(servo.bodyLength())).placed(place);
    }

    /** A cut-out round a box, with the room that a body has. */
    public static Contour window(Box box) {
        return Shapes.roundedRectangle(box.grown(ROOM / 2), CORNER);
    }

    /**
     * The window for the body, and the holes for the screws of the ears. Where too little would stand between the two,
     * the window is opened to the holes: the screws then lie in slots and clamp the ears with washers and nuts, and the
     * window holds the body in its place.
     *
     * @param web least material that stands by itself, mm
     * @return the window first
     */
    public List<Contour> seat(double web) {
        double radius = servo.holeDiameter() / 2;
        if (!isSlotted(web)) {
            List<Contour> seat = new ArrayList<>(List.of(body()));
            earHoles().forEach(hole -> seat.add(Contour.circle(hole, radius)));
            return seat;
        }
        Point centre = place.apply(new Point(middle(), 0));
        Point along = Point.polar(1, place.angle());
        List<Region> window = new ArrayList<>(List.of(Region.of(body())));
        for (Point hole : earHoles()) {
            Point in = hole.plus(along.times(along.dot(centre.minus(hole)) / 2));
            window.add(Region.of(Shapes.obround(hole, in, radius)));
        }
        return List.of(Overlay.union(window).get(0).outer());
    }

    /** Whether the window for the body is opened to the holes of the ears. */
    public boolean isSlotted(double web) {
        double between = (servo.holesAlong() - servo.bodyLength() - servo.holeDiameter() - ROOM) / 2;
        return between < web - Finding.ROUNDING;
    }

    /** Centres of the holes in the ears, in the servo's own frame. */
    public List<Point> ownEarHoles() {
        List<Point> holes = new ArrayList<>();
        double across = servo.holesAcross() / 2;
        for (int end = -1; end <= 1; end += 2) {
            double x = middle() + end * servo.holesAlong() / 2;
            for (double y : across > 0 ? new double[] {-across, across} : new double[] {0}) {
                holes.add(new Point(x, y));
            }
        }
        return holes;
    }

    /** The same in the mechanism's. */
    public List<Point> earHoles() {
        return placed(ownEarHoles());
    }

    /** Corners of the body. */
    public List<Point> bodyCorners() {
        return placed(corners(box(servo.bodyLength())));
    }

    /** Corners of the rectangle that holds body and ears. */
    public List<Point> earCorners() {
        return placed(corners(box(servo.earLength())));
    }

    /** Corners of a box. */
    public static List<Point> corners(Box box) {
        List<Point> corners = new ArrayList<>();
        for (double x : new double[] {box.minX(), box.maxX()}) {
            corners.add(new Point(x, box.minY()));
            corners.add(new Point(x, box.maxY()));
        }
        return corners;
    }

    /** Distance of a point from a box in the servo's own frame; 0 inside. */
    public double distance(Point point, Box box) {
        Point own = place.inverse().apply(point);
        double dx = Math.max(0, Math.max(box.minX() - own.x(), own.x() - box.maxX()));
        double dy = Math.max(0, Math.max(box.minY() - own.y(), own.y() - box.maxY()));
        return Math.hypot(dx, dy);
    }

    private List<Point> placed(List<Point> own) {
        return own.stream().map(place::apply).toList();
    }

    /** Middle of body and ears along the body, in the servo's own frame. */
    private double middle() {
        return servo.bodyLength() / 2 - servo.axisOffset();
    }
}
