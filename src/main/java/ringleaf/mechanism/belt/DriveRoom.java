// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.List;
import java.util.Optional;
import ringleaf.curve.Distances;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * The least room round a belt and its wheels, over the slot from its place to the tight end, for obstacles from end to
 * end: none of these distances changes while the belt runs.
 *
 * @param pulleys between two wheels, flanges included
 * @param belt of the belt to a wheel it does not run on there, or to another stretch of itself
 * @param obstacle of belt, wheels and servo to an obstacle; infinite without any
 */
record DriveRoom(Nearest pulleys, Nearest belt, Nearest obstacle) {
    /**
     * A least distance.
     *
     * @param distance mm; negative where two overlap
     * @param first what is near, for people
     * @param second and what to
     */
    record Nearest(double distance, String first, String second) {
        static final Nearest NONE = new Nearest(Double.POSITIVE_INFINITY, "", "");

        Nearest or(double other, String one, String two) {
            return other < distance ? new Nearest(other, one, two) : this;
        }

        String words() {
            return first.isEmpty() ? "" : first + " and " + second;
        }
    }

    static DriveRoom of(DriveSpec spec, DriveLayout layout) {
        BeltPath tight = layout.pathAt(layout.slot().outward());
        Nearest belt = beltRoom(spec, layout.path(), Nearest.NONE);
        Nearest obstacle = obstacles(spec, layout, layout.path(), Nearest.NONE);
        if (tight != null && layout.slot().outward() > 0) {
            belt = beltRoom(spec, tight, belt);
            obstacle = obstacles(spec, layout, tight, obstacle);
        }
        return new DriveRoom(pulleyRoom(spec, layout), belt, obstacle);
    }

    private static Nearest pulleyRoom(DriveSpec spec, DriveLayout layout) {
        List<Wheel> wheels = layout.path().wheels();
        DriveSlot slot = layout.slot();
        Nearest nearest = Nearest.NONE;
        for (int i = 0; i < wheels.size(); i++) {
            for (int j = i + 1; j < wheels.size(); j++) {
                Wheel a = wheels.get(i);
                Wheel b = wheels.get(j);
                double apart = slot.wheel() == j
                        ? slot.distance(j, b.centre(), a.centre(), 0, slot.outward())
                        : slot.distance(i, a.centre(), b.centre(), 0, slot.outward());
                nearest = nearest.or(apart - spec.reach(a) - spec.reach(b), a.name(), b.name());
            }
        }
        return nearest;
    }

    /** Room of one wheel, moved by {@code shift}, to the other wheels, to obstacles and to spans it does not bound. */
    static double around(DriveSpec spec, BeltPath path, int wheel, Point shift) {
        List<Wheel> wheels = path.wheels();
        int n = wheels.size();
        Point centre = wheels.get(wheel).centre().plus(shift);
        double reach = spec.reach(wheels.get(wheel));
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            if (i != wheel) {
                least = Math.min(least, centre.distance(wheels.get(i).centre()) - reach - spec.reach(wheels.get(i)));
            }
            if (i != wheel && (i + 1) % n != wheel) {
                least = Math.min(least, Distances.distance(path.span(i), centre) - reach - thick(spec));
            }
        }
        for (DriveSpec.Obstacle o : spec.obstacles()) {
            least = Math.min(least, centre.distance(o.centre()) - reach - o.diameter() / 2);
        }
        return least;
    }

    /** How far the belt, teeth included, reaches from its pitch line at most. */
    private static double thick(DriveSpec spec) {
        return Math.max(
                spec.choice().belt().back(),
                spec.choice().belt().pitchLine() + spec.choice().belt().toothHeight());
    }

    private static Nearest beltRoom(DriveSpec spec, BeltPath path, Nearest before) {
        Nearest nearest = before;
        List<Wheel> wheels = path.wheels();
        int n = wheels.size();
        double back = spec.choice().belt().back();
        double thick = thick(spec);
        for (int s = 0; s < n; s++) {
            Segment span = path.span(s);
            String name = "span after " + wheels.get(s).name();
            for (int i = 0; i < n; i++) {
                if (i != s && i != (s + 1) % n) {
                    Wheel w = wheels.get(i);
                    nearest = nearest.or(Distances.distance(span, w.centre()) - spec.reach(w) - thick, name, w.name());
                }
            }
            for (int t = s + 1; t < n; t++) {
                boolean next = t == s + 1;
                boolean last = s == 0 && t == n - 1;
                // spans that leave one wheel come together only where it is wrapped by more than half
                boolean open = (!next || path.wrap(t) < Math.PI) && (!last || path.wrap(0) < Math.PI);
                if ((next || last) && open) {
                    continue;
                }
                boolean outside = next && !wheels.get(t).inside()
                        || last && !next && !wheels.get(0).inside();
                double sides = outside ? 2 * back : 2 * thick;
                double d = Distances.between(span, path.span(t)).distance() - sides;
                nearest = nearest.or(d, name, "span after " + wheels.get(t).name());
            }
        }
        return nearest;
    }

    private static Nearest obstacles(DriveSpec spec, DriveLayout layout, BeltPath path, Nearest before) {
        Nearest nearest = before;
        Region belt = path.covered(spec.choice().belt());
        DriveSlot slot = layout.slot();
        Optional<ServoPlace> servo = ServoPlace.of(spec, slot);
        List<Wheel> wheels = layout.path().wheels();
        for (int k = 0; k < spec.obstacles().size(); k++) {
            DriveSpec.Obstacle o = spec.obstacles().get(k);
            String name = "obstacle " + (k + 1);
            Region disc = Region.disc(o.centre(), o.diameter() / 2);
            nearest = nearest.or(Distances.between(disc, belt).distance(), name, "belt");
            for (int i = 0; i < wheels.size(); i++) {
                Wheel w = wheels.get(i);
                double apart = slot.distance(i, w.centre(), o.centre(), -slot.inward(), slot.outward());
                nearest = nearest.or(apart - spec.reach(w) - o.diameter() / 2, name, w.name());
            }
            if (servo.isPresent()) {
                nearest = nearest.or(servo.get().distance(o.centre()) - o.diameter() / 2, name, "servo");
            }
        }
        return nearest;
    }

    /** The least of all. */
    Nearest least() {
        Nearest two = pulleys.distance() <= belt.distance() ? pulleys : belt;
        return two.distance() <= obstacle.distance() ? two : obstacle;
    }
}
