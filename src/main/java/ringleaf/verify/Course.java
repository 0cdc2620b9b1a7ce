// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import ringleaf.geom.Angles;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Figure;
import ringleaf.part.Motion;
import ringleaf.part.Saying;

/**
 * The way of one body through its whole travel, between the states as well: from one state to the next it turns about
 * the one point that stays, or is shifted. For what turns about an axis or slides straight that is its true path;
 * what runs along a line made of both (a belt's tooth) leaves it by what the line bends within a step. What turns
 * without end about an axis turns once right round.
 *
 * <p>The setting runs from 0 to {@link #last}, a state at each whole number.
 */
public final class Course {
    /** Steps of a whole turn. */
    private static final int ROUND = 36;
    /** Turns below this are shifts, rad: the point that stays would be lost in rounding. */
    private static final double LEAST_TURN = 1e-9;
    /** Two axes nearer than this are one, mm. */
    private static final double SAME_AXIS = 1e-6;

    private final Motion motion;
    private final Placement[] poses;
    /** The point that stays in each step; null where it is shifted. */
    private final Point[] poles;
    /** Turn of each step, rad, or length of the shift, mm. */
    private final double[] moves;

    private final boolean round;

    private Course(Motion motion, Placement[] poses, boolean round) {
        this.motion = motion;
        this.round = round;
        this.poses = poses;
        this.poles = new Point[poses.length - 1];
        this.moves = new double[poses.length - 1];
        for (int i = 0; i < poles.length; i++) {
            Placement step = poses[i].inverse().then(poses[i + 1]);
            Point shift = step.shift();
            if (Math.abs(step.angle()) < LEAST_TURN) {
                moves[i] = shift.norm();
            } else {
                double cot = 1 / Math.tan(step.angle() / 2);
                poles[i] = new Point((shift.x() - cot * shift.y()) / 2, (shift.y() + cot * shift.x()) / 2);
                moves[i] = step.angle();
            }
        }
    }

    /** The way of a body by its motion. */
    public static Course of(Motion motion, int body) {
        Placement[] poses = new Placement[motion.states()];
        for (int i = 0; i < poses.length; i++) {
            poses[i] = motion.pose(body, i);
        }
        Course course = new Course(motion, poses, false);
        Optional<Point> axis = course.axis();
        if (!motion.isEndless() || axis.isEmpty()) {
            return course;
        }
        Placement[] turned = new Placement[ROUND + 1];
        for (int i = 0; i <= ROUND; i++) {
            turned[i] = poses[0].then(Placement.turnAbout(axis.get(), i * Angles.TURN / ROUND));
        }
        return new Course(motion, turned, true);
    }

    /** The greatest setting. */
    public int last() {
        return poles.length;
    }

    /** Whether nothing moves it. */
    public boolean isStill() {
        for (double move : moves) {
            if (move != 0) {
                return false;
            }
        }
        return true;
    }

    /** The one point about which it turns all along; empty where there is none. */
    public Optional<Point> axis() {
        Point axis = null;
        for (int i = 0; i < poles.length; i++) {
            boolean still = moves[i] == 0;
            if (!still
                    && (poles[i] == null || axis != null && axis.minus(poles[i]).norm() > SAME_AXIS)) {
                return Optional.empty();
            }
            axis = still || axis != null ? axis : poles[i];
        }
        return Optional.ofNullable(axis);
    }

    /** Where the body is at a setting. */
    public Placement at(double setting) {
        int step = Math.min((int) setting, poles.length - 1);
        double share = setting - step;
        if (share == 0) {
            return poses[step];
        }
        if (poles[step] != null) {
            return poses[step].then(Placement.turnAbout(poles[step], share * moves[step]));
        }
        Point shift = poses[step].inverse().then(poses[step + 1]).shift();
        return poses[step].then(Placement.shift(share * shift.x(), share * shift.y()));
    }

    /**
     * How far a thing that rides on the body goes, at most, any of its points.
     *
     * @param reach the farthest of its points from a point, while the body is where the setting's start has it
     * @return for every state, the way from state 0, mm
     */
    public double[] ways(Farthest reach) {
        double[] ways = new double[poses.length];
        Point about = null;
        double farthest = 0;
        for (int i = 0; i < poles.length; i++) {
            double way = moves[i];
            if (poles[i] != null) {
                if (about == null || about.minus(poles[i]).norm() > SAME_AXIS) {
                    about = poles[i];
                    farthest = reach.from(poses[i], about) + SAME_AXIS;
                }
                way = Math.abs(moves[i]) * farthest;
            }
            ways[i + 1] = ways[i] + way;
        }
        return ways;
    }

    /** The farthest of a thing's points from a point, with the body in a place. */
    @FunctionalInterface
    public interface Farthest {
        /** In mm. */
        double from(Placement body, Point point);
    }

    /** The greatest over all settings of a length that grows no faster than the way. */
    public double most(ToDoubleFunction<Placement> length, double[] ways) {
        double most = length.applyAsDouble(poses[0]);
        for (int i = 1; i < poses.length; i++) {
            most = Math.max(most, length.applyAsDouble(poses[i]));
            double between =
                    (length.applyAsDouble(poses[i - 1]) + length.applyAsDouble(poses[i]) + ways[i] - ways[i - 1]) / 2;
            most = Math.max(most, between);
        }
        return most;
    }

    /** The setting, by the name of its state where it has one. */
    Saying label(double setting) {
        if (round) {
            return Saying.of("verify.turned-round", Words.degrees(setting * Angles.TURN / ROUND));
        }
        double near = Math.rint(setting);
        return setting == near
                ? Saying.plain(motion.label((int) near))
                : Saying.of("verify.between-states", Figure.number(setting, 2));
    }

    /** The state nearest to a setting; -1 where it goes round beyond all of them. */
    public int state(double setting) {
        return round ? -1 : (int) Math.rint(setting);
    }
}
