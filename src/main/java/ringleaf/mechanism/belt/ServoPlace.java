package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Distances;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.body.Bore;
import ringleaf.spec.shared.Servo;

/**
 * Where the servo stands behind the base: its output under the driver, its long side away from the driven pulley. Where
 * the driver moves in a slot the servo moves along. Lengths in mm, in the frame of the mechanism.
 *
 * @param servo of the catalogue
 * @param place from the servo's own frame (output at the origin, body towards +x) to where it stands
 * @param way towards the driven pulley, of length 1
 * @param in by how much it moves that way
 * @param out by how much it moves away
 */
record ServoPlace(Servo servo, Placement place, Point way, double in, double out) {
    /** Room round the servo's body, horn and output, mm; common practice, no source. */
    static final double ROOM = 0.5;

    private static final double BODY_CORNER = 1;

    /** The servo of a drive, if it has one and a plate to stand on. */
    static Optional<ServoPlace> of(DriveSpec spec, DriveSlot slot) {
        boolean moves = slot.wheel() == 0;
        return of(spec, moves ? slot.inward() : 0, moves ? slot.outward() : 0);
    }

    /** The same with its travel towards the driven pulley and away from it. */
    static Optional<ServoPlace> of(DriveSpec spec, double in, double out) {
        return spec.servo().filter(servo -> spec.plates() > 0).map(servo -> new ServoPlace(
                servo, new Placement(spec.at() + Math.PI, Point.ORIGIN), Point.polar(1, spec.at()), in, out));
    }

    /** Middle of the body along its length, from the output. */
    private double middle() {
        return servo.bodyLength() / 2 - servo.axisOffset();
    }

    /** What the body takes of a plate that it reaches into, through all of its travel. */
    Region bodyCut() {
        // the servo's own +x looks away from the driven pulley
        Box box = new Box(-servo.axisOffset() - in, -servo.bodyWidth() / 2,
                servo.bodyLength() - servo.axisOffset() + out, servo.bodyWidth() / 2);
        return Region.of(Shapes.roundedRectangle(box.grown(ROOM / 2), BODY_CORNER).placed(place));
    }

    /** Holes for the screws in its ears, slots where it moves. */
    List<Region> earCuts() {
        List<Region> cuts = new ArrayList<>();
        for (int end = -1; end <= 1; end += 2) {
            double x = middle() + end * servo.holesAlong() / 2;
            double across = servo.holesAcross() / 2;
            for (double y : across > 0 ? new double[] {-across, across} : new double[] {0}) {
                Point hole = place.apply(new Point(x, y));
                cuts.add(Region.of(Shapes.obround(
                        hole.plus(way.times(in)), hole.minus(way.times(out)), servo.holeDiameter() / 2)));
            }
        }
        return cuts;
    }

    /** Radius of the hole through which the output, or the horn on it, comes up to the driver. */
    double outputRadius(DriveSpec spec, boolean base) {
        boolean horn = base && spec.driver().body().bore() instanceof Bore.Horn;
        return (horn ? servo.hornDiameter() : servo.splineDiameter()) / 2 + ROOM;
    }

    /** What stands between the output's hole and those of the ears in the base, least of all. */
    double web(DriveSpec spec) {
        Region output = Region.of(Shapes.obround(
                place.apply(new Point(-in, 0)), place.apply(new Point(out, 0)), outputRadius(spec, true)));
        double least = Double.POSITIVE_INFINITY;
        for (Region ear : earCuts()) {
            least = Math.min(least, Distances.between(output, ear).distance());
        }
        return least;
    }

    /** Corners of the ears at both ends of the travel. */
    List<Point> corners() {
        List<Point> corners = new ArrayList<>();
        for (int end = -1; end <= 1; end += 2) {
            for (int side = -1; side <= 1; side += 2) {
                double x = middle() + end * servo.earLength() / 2 + (end < 0 ? -in : out);
                corners.add(place.apply(new Point(x, side * servo.bodyWidth() / 2)));
            }
        }
        return corners;
    }

    /** Distance of a point from body and ears, wherever in its travel the servo stands; 0 inside them. */
    double distance(Point p) {
        Point own = place.inverse().apply(p);
        double from = middle() - servo.earLength() / 2 - in;
        double to = middle() + servo.earLength() / 2 + out;
        double dx = Math.max(0, Math.max(from - own.x(), own.x() - to));
        double dy = Math.max(0, Math.abs(own.y()) - servo.bodyWidth() / 2);
        return Math.hypot(dx, dy);
    }
}
