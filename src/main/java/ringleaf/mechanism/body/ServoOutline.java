package ringleaf.mechanism.body;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
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
