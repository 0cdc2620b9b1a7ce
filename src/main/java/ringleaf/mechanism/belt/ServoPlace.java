// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.body.Bore;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.spec.shared.Servo;

/**
 * Where the servo stands behind the base, its output under the driver. Its long side looks away from the driven pulley;
 * where the driver moves in a slot the servo moves along, and where the slots of ears and output would run into one
 * another, its long side lies across, so that they run side by side. Lengths in mm, in the frame of the mechanism.
 *
 * @param outline the servo where it stands when the belt is tight enough
 * @param way towards the driven pulley, of length 1
 * @param in by how much it moves that way
 * @param out by how much it moves away
 */
record ServoPlace(ServoOutline outline, Point way, double in, double out) {
    /** Thickness of a horn, which lies between the base and the driver, mm; from memory. */
    static final double HORN = 2;
    /** Wall of a horn's collar round the output, mm; from memory. */
    private static final double COLLAR = 1;

    /** The servo of a drive, if it has one and a plate to stand on. */
    static Optional<ServoPlace> of(DriveSpec spec, DriveSlot slot) {
        boolean moves = slot.wheel() == 0;
        return of(spec, moves ? slot.inward() : 0, moves ? slot.outward() : 0);
    }

    /** The same with its travel towards the driven pulley and away from it. */
    static Optional<ServoPlace> of(DriveSpec spec, double in, double out) {
        if (spec.servo().isEmpty() || spec.plates() == 0) {
            return Optional.empty();
        }
        ServoPlace along = turned(spec, in, out, Math.PI);
        return Optional.of(
                in + out == 0 || along.web(spec) >= spec.plate().leastWeb()
                        ? along
                        : turned(spec, in, out, Math.PI / 2));
    }

    private static ServoPlace turned(DriveSpec spec, double in, double out, double turn) {
        Placement place = new Placement(spec.at() + turn, Point.ORIGIN);
        return new ServoPlace(new ServoOutline(spec.servo().get(), place), Point.polar(1, spec.at()), in, out);
    }

    /** What stands there. */
    Servo servo() {
        return outline.servo();
    }

    /** The way in the servo's own frame. */
    private Point own() {
        return outline.place().inverse().apply(way.plus(outline.place().shift()));
    }

    /** Body with what is between its ears' ends, in its own frame, so long, through all of its travel. */
    private Box swept(double length) {
        Box box = outline.box(length);
        return shifted(box, own().times(in)).union(shifted(box, own().times(-out)));
    }

    private static Box shifted(Box box, Point by) {
        return new Box(box.minX() + by.x(), box.minY() + by.y(), box.maxX() + by.x(), box.maxY() + by.y());
    }

    /** Whether its long side lies along the line of centres. */
    boolean isAlong() {
        return Math.abs(own().x()) > 0.5;
    }

    /** What the body takes of a plate that it reaches into, through all of its travel. */
    Region bodyCut() {
        return Region.of(ServoOutline.window(swept(servo().bodyLength())).placed(outline.place()));
    }

    /** Holes for the screws in its ears, slots where it moves. */
    List<Region> earCuts() {
        List<Region> cuts = new ArrayList<>();
        for (Point hole : outline.earHoles()) {
            cuts.add(Region.of(
                    Shapes.obround(hole.plus(way.times(in)), hole.minus(way.times(out)), servo().holeDiameter() / 2)));
        }
        return cuts;
    }

    /** Radius of the hole through which the output, or the collar of the horn on it, comes up to the driver. */
    double outputRadius(DriveSpec spec, boolean base) {
        boolean horn = base && spec.driver().body().bore() instanceof Bore.Horn;
        return servo().splineDiameter() / 2 + (horn ? COLLAR : 0) + ServoOutline.ROOM;
    }

    /** What stands between the output's hole and those of the ears in the base, least of all. */
    double web(DriveSpec spec) {
        double least = Double.POSITIVE_INFINITY;
        Point own = own();
        for (Point ear : outline.ownEarHoles()) {
            // slots of one length and one direction: what parts them is what parts their middles, less the length
            double beside = Math.abs(ear.cross(own));
            double along = Math.max(0, Math.abs(ear.dot(own)) - in - out);
            double apart = Math.hypot(beside, along) - outputRadius(spec, true) - servo().holeDiameter() / 2;
            least = Math.min(least, apart);
        }
        return least;
    }

    /** Corners of the ears, through all of the travel. */
    List<Point> corners() {
        return ServoOutline.corners(swept(servo().earLength())).stream()
                .map(outline.place()::apply)
                .toList();
    }

    /** Distance of a point from body and ears, wherever in its travel the servo stands; 0 inside them. */
    double distance(Point p) {
        return outline.distance(p, swept(servo().earLength()));
    }
}
