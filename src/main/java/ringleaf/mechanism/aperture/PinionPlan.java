package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
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
 * @param meshBefore roll of the ring from the start of the path of contact to the pitch point, rad
 * @param meshAfter roll of the ring from the pitch point to the path's end, rad
 * @param pocketClearance between tips and pocket, mm
 * @param servo that turns it
 */
record PinionPlan(
        double at,
        double travel,
        GearPair pair,
        int spaces,
        double meshBefore,
        double meshAfter,
        double pocketClearance,
        Servo servo)
        implements DrivePlan {

    /** Directions of the lobe's two screws from the pinion, to either side of the outward direction, rad. */
    private static final double LOBE_SCREWS = Math.toRadians(58);

    ToothForm pinion() {
        return pair.pinion();
    }

    ToothForm sector() {
        return pair.gear();
    }

    double centreDistance() {
        return pair.centreDistance();
    }

    /** Turn of the pinion's outline (a tooth on its +x) in the open pose, rad. */
    double phase() {
        double firstSpace = spaces % 2 == 1 ? sectorCentre() : sectorCentre() + sector().pitchAngle() / 2;
        return pair.pinionPhase(firstSpace, at);
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
    public double blockedHalfAngle(Rim rim, double pad) {
        double s = rim.screws();
        double a = centreDistance();
        double apart = pocketRadius() + pad;
        double cos = (s * s + a * a - apart * apart) / (2 * s * a);
        return Math.acos(Math.max(-1, Math.min(1, cos)));
    }

    @Override
    public List<Point> ownScrews(Rim rim, double pad) {
        double radius = pocketRadius() + pad;
        List<Point> screws = new ArrayList<>();
        screws.add(centre().plus(Point.polar(radius, at - LOBE_SCREWS)));
        screws.add(centre().plus(Point.polar(radius, at + LOBE_SCREWS)));
        return screws;
    }

    /** Radius of the lobe about the pinion: its wall is as thick as the round one. */
    double lobeRadius(Rim rim) {
        return pocketRadius() + rim.outer() - rim.wall();
    }

    @Override
    public Contour outline(Rim rim) {
        return Housing.withLobe(rim, centre(), lobeRadius(rim));
    }

    @Override
    public double envelopeWidth(Rim rim) {
        return rim.outer() + Math.max(rim.outer(), centreDistance() + lobeRadius(rim));
    }
}
