package ringleaf.mechanism.belt;

import java.util.List;
import ringleaf.curve.Distances;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * The least room round a belt and its wheels: none of these distances changes while the belt runs.
 *
 * @param pulleys least distance between two wheels, flanges included, mm
 * @param pulleysAt which two
 * @param belt least distance of the belt to a wheel it does not run on there, or to another stretch of itself, mm
 * @param beltAt what it comes near to
 * @param obstacle least distance of belt or wheel to an obstacle, mm; infinite without any
 * @param obstacleAt which obstacle and what comes near to it
 */
record DriveRoom(
        double pulleys, String pulleysAt, double belt, String beltAt, double obstacle, String obstacleAt) {

    static DriveRoom of(DrivePlan plan) {
        List<Wheel> wheels = plan.path().wheels();
        int n = wheels.size();
        double pulleys = Double.POSITIVE_INFINITY;
        String pulleysAt = "";
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                double d = wheels.get(i).centre().distance(wheels.get(j).centre()) - plan.reach(i) - plan.reach(j);
                if (d < pulleys) {
                    pulleys = d;
                    pulleysAt = wheels.get(i).name() + " and " + wheels.get(j).name();
                }
            }
        }
        Nearest belt = beltRoom(plan);
        Nearest obstacle = obstacleRoom(plan);
        return new DriveRoom(pulleys, pulleysAt, belt.least, belt.at, obstacle.least, obstacle.at);
    }

    private static final class Nearest {
        double least = Double.POSITIVE_INFINITY;
        String at = "";

        void offer(double distance, String place) {
            if (distance < least) {
                least = distance;
                at = place;
            }
        }
    }

    private static Nearest beltRoom(DrivePlan plan) {
        Nearest nearest = new Nearest();
        List<Wheel> wheels = plan.path().wheels();
        int n = wheels.size();
        double back = plan.spec().choice().belt().back();
        double teeth = plan.spec().choice().belt().pitchLine() + plan.spec().choice().belt().toothHeight();
        double thick = Math.max(back, teeth);
        for (int s = 0; s < n; s++) {
            Segment span = plan.path().span(s);
            for (int i = 0; i < n; i++) {
                if (i != s && i != (s + 1) % n) {
                    double d = Distances.distance(span, wheels.get(i).centre()) - plan.reach(i) - thick;
                    nearest.offer(d, "span after " + wheels.get(s).name() + " and " + wheels.get(i).name());
                }
            }
            for (int t = s + 1; t < n; t++) {
                boolean next = t == s + 1;
                boolean last = s == 0 && t == n - 1;
                // spans that leave one wheel come together only where it is wrapped by more than half
                boolean open = (!next || plan.path().wrap(t) < Math.PI) && (!last || plan.path().wrap(0) < Math.PI);
                if ((next || last) && open) {
                    continue;
                }
                boolean outside = next && !wheels.get(t).inside() || last && !next && !wheels.get(0).inside();
                double sides = outside ? 2 * back : 2 * thick;
                double d = Distances.between(span, plan.path().span(t)).distance() - sides;
                nearest.offer(d, "spans after " + wheels.get(s).name() + " and " + wheels.get(t).name());
            }
        }
        return nearest;
    }

    private static Nearest obstacleRoom(DrivePlan plan) {
        Nearest nearest = new Nearest();
        Region region = plan.belt();
        List<Wheel> wheels = plan.path().wheels();
        List<DriveSpec.Obstacle> obstacles = plan.spec().obstacles();
        for (int k = 0; k < obstacles.size(); k++) {
            DriveSpec.Obstacle o = obstacles.get(k);
            String name = "obstacle " + (k + 1) + " and ";
            nearest.offer(
                    Distances.between(Region.disc(o.centre(), o.diameter() / 2), region).distance(), name + "belt");
            for (int i = 0; i < wheels.size(); i++) {
                double d = wheels.get(i).centre().distance(o.centre()) - plan.reach(i) - o.diameter() / 2;
                nearest.offer(d, name + wheels.get(i).name());
            }
        }
        return nearest;
    }

    /** The least of all. */
    double least() {
        return Math.min(pulleys, Math.min(belt, obstacle));
    }

    String leastAt() {
        double least = least();
        return least == pulleys ? pulleysAt : least == belt ? beltAt : obstacleAt;
    }
}
