// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Circle;
import ringleaf.curve.Shapes;
import ringleaf.geom.Angles;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.spec.shared.Servo;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.ToothForm;

/**
 * A pinion beside the ring that meshes with a sector of teeth cut into its rim.
 *
 * @param at direction of the pinion from the axis
 * @param travel of the ring from open to closed, signed
 * @param pair pinion first, the ring's full circle of teeth second
 * @param spaces tooth spaces cut into the rim
 * @param pocketClearance between tips and pocket, mm
 * @param pad radius of a screw's hole and of the web round it, mm
 * @param held discs that the plates must hold besides, e.g. the ears of a servo that sits on the base itself
 * @param stepUp the compound pair between servo and pinion, where there is one
 * @param servo that turns it
 */
record PinionPlan(
        double at,
        double travel,
        GearPair pair,
        int spaces,
        double pocketClearance,
        double pad,
        List<Circle> held,
        Optional<StepUp> stepUp,
        Servo servo)
        implements DrivePlan {

    /** Directions of the lobe's two screws from the pinion, to either side of the outward direction, rad. */
    private static final double LOBE_SCREWS = Math.toRadians(58);

    /** Steps in which screws are moved until they clear pocket and servo. */
    private static final double LOBE_STEP = 0.25;

    private static final double SCREW_STEP = Math.toRadians(0.5);
    private static final double MOST_LOBE = 60;

    ToothForm pinion() {
        return pair.pinion();
    }

    ToothForm sector() {
        return pair.gear();
    }

    double centreDistance() {
        return pair.centreDistance();
    }

    /** The same with more for the plates to hold. */
    PinionPlan holding(List<Circle> discs) {
        return new PinionPlan(at, travel, pair, spaces, pocketClearance, pad, discs, stepUp, servo);
    }

    /** Turn of the pinion's outline (a tooth on its +x) in the open pose, rad. */
    double phase() {
        double firstSpace = spaces % 2 == 1 ? sectorCentre() : sectorCentre() + sector().pitchAngle() / 2;
        return pair.pinionPhase(firstSpace, at);
    }

    /** Angle of the servo from open to closed, unsigned. */
    double servoTravel() {
        return Math.abs(travel) * servoRatio();
    }

    /** Turns of the servo for one of the ring. */
    double servoRatio() {
        return ratio() / (stepUp.isPresent() ? stepUp.get().ratio() : 1);
    }

    /** Axis of the servo's output. */
    /** The servo in its place, its body square to the line from the axis to the pinion. */
    ServoOutline servoOutline() {
        return new ServoOutline(servo(), new Placement(at() + Math.PI / 2, servoCentre()));
    }

    Point servoCentre() {
        return stepUp.isPresent() ? stepUp.get().servoCentre(centre()) : centre();
    }

    /** The gear on the servo's output. */
    ToothForm servoGear() {
        return stepUp.isPresent() ? stepUp.get().servoGear() : pinion();
    }

    Point centre() {
        return Point.polar(centreDistance(), at);
    }

    /** Angle of the pinion for a turn of the ring, unsigned: ring travel times the ratio of teeth. */
    double pinionTravel() {
        return Math.abs(travel) * ratio();
    }

    double ratio() {
        return (double) sector().teeth() / pinion().teeth();
    }

    /** Direction of the middle of the sector in the open pose. */
    double sectorCentre() {
        return at - travel / 2;
    }

    double pocketRadius() {
        return pinion().tipRadius() + pocketClearance;
    }

    @Override
    public double blockedCentre() {
        return at;
    }

    @Override
    public double blockedHalfAngle(Rim rim, double room) {
        double s = rim.screws();
        double a = centreDistance();
        double apart = pocketRadius() + room;
        double cos = (s * s + a * a - apart * apart) / (2 * s * a);
        double half = Math.acos(Math.max(-1, Math.min(1, cos)));
        while (half < Math.PI / 2
                && !(clears(Point.polar(s, at - half), room) && clears(Point.polar(s, at + half), room))) {
            half += SCREW_STEP;
        }
        return half;
    }

    @Override
    public List<Point> ownScrews(Rim rim, double room) {
        double radius = lobeScrews();
        List<Point> screws = new ArrayList<>();
        for (int side = -1; side <= 1; side += 2) {
            Point screw = centre().plus(Point.polar(radius, at + side * LOBE_SCREWS));
            if (clears(screw, room)) {
                screws.add(screw);
            }
        }
        return screws;
    }

    /**
     * Distance of the lobe's screws from the pinion: clear of its pocket and of the servo behind it, mm. With a step-up
     * one of the two may be in the way of the servo's gear; the other is placed then.
     */
    private double lobeScrews() {
        double radius = pocketRadius() + pad;
        double least = radius;
        while (radius < least + MOST_LOBE) {
            boolean first = clears(centre().plus(Point.polar(radius, at - LOBE_SCREWS)), pad);
            boolean second = clears(centre().plus(Point.polar(radius, at + LOBE_SCREWS)), pad);
            if (first && second || stepUp.isPresent() && (first || second)) {
                return radius;
            }
            radius += LOBE_STEP;
        }
        return least;
    }

    /** Whether a screw at {@code point} stays clear of the servo and of the gears behind the base. */
    private boolean clears(Point point, double room) {
        ServoOutline outline = servoOutline();
        boolean clear = outline.distance(point, outline.box(servo().earLength()).grown(ServoOutline.ROOM / 2)) >= room;
        if (stepUp.isPresent()) {
            double play = room + pocketClearance;
            clear &= point.distance(servoCentre()) >= servoGear().tipRadius() + play;
            clear &= point.distance(centre()) >= stepUp.get().wheel().tipRadius() + play;
        }
        return clear;
    }

    /** Radius of the lobe about the pinion. */
    double lobeRadius() {
        return lobeScrews() + pad;
    }

    @Override
    public Contour outline(Rim rim) {
        List<Circle> discs = new ArrayList<>(held);
        discs.add(new Circle(Point.ORIGIN, rim.outer()));
        discs.add(new Circle(centre(), lobeRadius()));
        return Shapes.hull(discs);
    }

    /** Half the angle about {@code at} within which the plates stand out of the round housing, at least a quarter turn. */
    double lobeHalfAngle(Rim rim) {
        List<Circle> discs = new ArrayList<>(held);
        discs.add(new Circle(centre(), lobeRadius()));
        double half = Math.PI / 2;
        for (Circle disc : discs) {
            double apart = disc.centre().norm();
            // The outer tangent of two circles touches either of them in the same direction.
            double touches = Math.acos(Math.max(-1, Math.min(1, (rim.outer() - disc.radius()) / apart)));
            half = Math.max(half, Math.abs(Angles.signed(disc.centre().angle() - at)) + touches);
        }
        return Math.min(half, Math.PI);
    }

    @Override
    public double envelopeWidth(Rim rim) {
        double far = Math.max(rim.outer(), centreDistance() + lobeRadius());
        Point along = Point.polar(1, at);
        for (Circle disc : held) {
            far = Math.max(far, disc.centre().dot(along) + disc.radius());
        }
        return rim.outer() + far;
    }
}
