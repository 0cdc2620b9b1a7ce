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
        double belt = Double.POSITIVE_INFINITY;
        String beltAt = "";
        double back = plan.spec().choice().belt().back();
        double teeth = plan.spec().choice().belt().pitchLine() + plan.spec().choice().belt().toothHeight();
        double thick = Math.max(back, teeth);
        for (int s = 0; s < n; s++) {
            Segment span = plan.path().span(s);
            for (int i = 0; i < n; i++) {
                if (i != s && i != (s + 1) % n) {
                    double d = Distances.distance(span, wheels.get(i).centre()) - plan.reach(i) - thick;
                    if (d < belt) {
                        belt = d;
                        beltAt = "span after " + wheels.get(s).name() + " and " + wheels.get(i).name();
                    }
                }
            }
            for (int t = s + 1; t < n; t++) {
                double d = Distances.between(span, plan.path().span(t)).distance() - 2 * teeth;
                boolean neighbours = t == s + 1 || s == 0 && t == n - 1;
                if (!neighbours && d < belt || n == 2 && d < belt) {
                    belt = d;
                    beltAt = "spans after " + wheels.get(s).name() + " and " + wheels.get(t).name();
                }
            }
        }
        double obstacle = Double.POSITIVE_INFINITY;
        String obstacleAt = "";
        Region region = plan.belt();
        List<DriveSpec.Obstacle> obstacles = plan.spec().obstacles();
        for (int k = 0; k < obstacles.size(); k++) {
            DriveSpec.Obstacle o = obstacles.get(k);
            double d = Distances.between(Region.disc(o.centre(), o.diameter() / 2), region).distance();
            if (d < obstacle) {
                obstacle = d;
                obstacleAt = "obstacle " + (k + 1) + " and belt";
            }
            for (int i = 0; i < n; i++) {
                d = wheels.get(i).centre().distance(o.centre()) - plan.reach(i) - o.diameter() / 2;
                if (d < obstacle) {
                    obstacle = d;
                    obstacleAt = "obstacle " + (k + 1) + " and " + wheels.get(i).name();
                }
            }
        }
        return new DriveRoom(pulleys, pulleysAt, belt, beltAt, obstacle, obstacleAt);
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
