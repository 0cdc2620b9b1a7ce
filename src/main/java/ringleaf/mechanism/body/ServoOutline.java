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

    private static final double BODY_CORNER = 1;

    /** The cut-out for the body, with room all round. */
    public Contour body() {
        Box box = new Box(
                -servo.axisOffset(),
                -servo.bodyWidth() / 2,
                servo.bodyLength() - servo.axisOffset(),
                servo.bodyWidth() / 2);
        return Shapes.roundedRectangle(box.grown(ROOM / 2), BODY_CORNER).placed(place);
    }

    /**
     * The window for the body, and the holes for the screws of the ears. Where too little would stand between the two,
     * the window is opened to the holes: the screws then lie in slots and clamp the ears with washers and nuts, and the
     * window holds the body in its place.
     *
     * @param web least material that stands by itself, mm
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

    /** Centres of the holes in the ears. */
    public List<Point> earHoles() {
        List<Point> holes = new ArrayList<>();
        double across = servo.holesAcross() / 2;
        for (int end = -1; end <= 1; end += 2) {
            double x = middle() + end * servo.holesAlong() / 2;
            holes.add(place.apply(new Point(x, -across)));
            if (across > 0) {
                holes.add(place.apply(new Point(x, across)));
            }
        }
        return holes;
    }

    /** Corners of the rectangle that holds body and ears. */
    public List<Point> corners() {
        List<Point> corners = new ArrayList<>();
        for (int end = -1; end <= 1; end += 2) {
            for (int side = -1; side <= 1; side += 2) {
                corners.add(place.apply(
                        new Point(middle() + end * servo.earLength() / 2, side * servo.bodyWidth() / 2)));
            }
        }
        return corners;
    }

    /** Middle of body and ears along the body, in the servo's own frame. */
    private double middle() {
        return servo.bodyLength() / 2 - servo.axisOffset();
    }
}
