// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Distances;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.body.ServoOutline;

/**
 * Where the screws stand that hold the plates: two beside each of driver and driven pulley, as near as belt, wheels,
 * servo, obstacles and the holes in the plates let them, wherever in its slot what moves may stand.
 *
 * @param places of the screws, mm
 * @param missing pulleys beside which no place was found
 */
record Standoffs(List<Point> places, List<String> missing) {
    /** How far the search goes, and in what steps, mm. */
    private static final double STEP = 0.25;

    private static final int STEPS = 2000;

    /**
     * Looks for the places.
     *
     * @param radius of a standoff, mm
     * @param taken of the plates by other holes
     */
    static Standoffs of(DrivePlan plan, double radius, Optional<ServoPlace> servo, List<Region> taken) {
        List<Point> places = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        if (plan.spec().plates() == 0) {
            return new Standoffs(places, missing);
        }
        Search search = new Search(plan, radius, servo, taken, places);
        for (int wheel : new int[] {0, plan.layout().driven()}) {
            for (int side = -1; side <= 1; side += 2) {
                Point place = search.beside(wheel, side);
                if (place == null) {
                    missing.add(plan.path().wheels().get(wheel).name());
                } else {
                    places.add(place);
                }
            }
        }
        return new Standoffs(places, missing);
    }

    private static final class Search {
        private final DrivePlan plan;
        private final DriveSpec spec;
        private final double radius;
        private final Optional<ServoPlace> servo;
        private final List<Region> taken;
        private final List<Point> others;
        private final List<Region> belts = new ArrayList<>();

        Search(DrivePlan plan, double radius, Optional<ServoPlace> servo, List<Region> taken, List<Point> others) {
            this.plan = plan;
            this.spec = plan.spec();
            this.radius = radius;
            this.servo = servo;
            this.taken = taken;
            this.others = others;
            belts.add(plan.path().covered(spec.choice().belt()));
            BeltPath tight = plan.layout().pathAt(plan.slot().outward());
            if (tight != null && tight != plan.path()) {
                belts.add(tight.covered(spec.choice().belt()));
            }
        }

        /** The nearest place beside a wheel, a little away from the other pulley; null when there is none. */
        Point beside(int wheel, int side) {
            Point way = Point.polar(1, spec.at());
            Point direction = way.left()
                    .times(side)
                    .plus(way.times(wheel == 0 ? -0.3 : 0.3))
                    .unit();
            Point centre = plan.path().wheels().get(wheel).centre();
            double off = plan.reach(wheel) + radius;
            for (int i = 0; i < STEPS; i++) {
                Point place = centre.plus(direction.times(off));
                if (isFree(place)) {
                    return place;
                }
                off += STEP;
            }
            return null;
        }

        private boolean isFree(Point at) {
            double room = radius + spec.beltRoom();
            List<Wheel> wheels = plan.path().wheels();
            DriveSlot slot = plan.slot();
            for (int i = 0; i < wheels.size(); i++) {
                double apart = slot.distance(i, wheels.get(i).centre(), at, -slot.inward(), slot.outward());
                if (apart < plan.reach(i) + room) {
                    return false;
                }
            }
            for (DriveSpec.Obstacle o : spec.obstacles()) {
                if (at.distance(o.centre())
                        < o.diameter() / 2 + room + spec.plate().leastWeb()) {
                    return false;
                }
            }
            for (Point other : others) {
                if (at.distance(other) < 2 * radius + spec.plate().leastWeb()) {
                    return false;
                }
            }
            if (servo.isPresent() && servo.get().distance(at) <= spec.screw().headDiameter() / 2 + ServoOutline.ROOM) {
                return false;
            }
            Region disc = Region.disc(at, radius);
            for (Region belt : belts) {
                if (Distances.between(disc, belt).distance() < spec.beltRoom()) {
                    return false;
                }
            }
            Region hole = Region.disc(at, spec.screw().hole() / 2);
            for (Region cut : taken) {
                if (Distances.between(hole, cut).distance() < spec.plate().leastWeb()) {
                    return false;
                }
            }
            return true;
        }
    }
}
