// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Setup;
import ringleaf.space.Pose;
import ringleaf.space.Vector;

/**
 * One outline of one mechanism as it moves in the common plane of two: what carries it, over what heights it stands,
 * and how far each drive moves it.
 */
final class Rider {
    final int mechanism;
    final int body;
    final String name;
    final double zFrom;
    final double zTo;
    private final Shape drawn;
    private final Pose frame;
    private final List<Relative.Link> links;
    private final Pose home;
    /** Way of each link's body at each state, mm: no point of the outline goes further. */
    private final double[][] ways;
    /** How far it ever stands from the origin of each link's mechanism, mm, seen along the axis. */
    private final double[] around;
    /** Where it is while nothing moves it; null where something does. */
    private final Shape fixed;

    final Cover cover;

    /**
     * @param frame from the frame in which the links begin to the common plane's
     * @param heights of the outline in its own mechanism's frame, mm
     */
    Rider(Setup setup, int mechanism, Slab slab, double[] heights, Pose frame, List<Relative.Link> links) {
        this.mechanism = mechanism;
        this.body = slab.body;
        this.frame = frame;
        this.links = links;
        this.name = setup.assemblies().get(mechanism).members().get(slab.member).name();
        Placement home =
                setup.assemblies().get(mechanism).members().get(slab.member).home();
        this.home = Pose.of(home);
        Pose rest = pose(null);
        boolean flipped = rest.turn().apply(Vector.Z).z() < 0;
        double z = rest.shift().z();
        zFrom = flipped ? z - heights[1] : z + heights[0];
        zTo = flipped ? z - heights[0] : z + heights[1];
        drawn = flipped ? slab.drawn.mirrored() : slab.drawn;
        ways = new double[links.size()][];
        around = new double[links.size()];
        measureWays(slab.drawn.placed(home));
        fixed = isStill() ? drawn.placed(flat(rest)) : null;
        cover = cover();
    }

    boolean isStill() {
        return links.stream().allMatch(link -> link.drive() < 0);
    }

    boolean isMovedBy(int drive) {
        return links.stream().anyMatch(link -> link.drive() == drive);
    }

    /** How far each body on the way can move the outline, from the outline outward. */
    private void measureWays(Shape shape) {
        for (int i = links.size() - 1; i >= 0; i--) {
            Course course = links.get(i).course();
            if (i == links.size() - 1) {
                ways[i] = course.ways((pose, p) -> farthest(shape, pose, p));
                around[i] = course.most(pose -> farthest(shape, pose, Point.ORIGIN), ways[i]);
            } else {
                Vector shift = links.get(i + 1).stand().shift();
                Point at = new Point(shift.x(), shift.y());
                // Where the carried frame is tilted, its heights may lie in this plane.
                double inner = around[i + 1] + Math.abs(shift.z());
                ways[i] = course.ways((pose, p) -> pose.apply(at).minus(p).norm() + inner);
                around[i] = course.most(pose -> pose.apply(at).norm() + inner, ways[i]);
            }
        }
    }

    private static double farthest(Shape shape, Placement pose, Point from) {
        Point seen = pose.inverse().apply(from);
        Point far = shape.farthestFrom(seen.x(), seen.y());
        return Math.hypot(far.x() - seen.x(), far.y() - seen.y());
    }

    /** The outline at these settings of the drives. */
    Shape at(double[] settings) {
        return fixed != null ? fixed : drawn.placed(flat(pose(settings)));
    }

    /** How far any of its points can be from where it is at the settings, while a drive goes so far to either side, mm. */
    double way(int drive, double setting, double half) {
        double most = 0;
        for (int i = 0; i < ways.length; i++) {
            if (links.get(i).drive() == drive) {
                double share = links.get(i).share();
                double middle = between(ways[i], share * setting);
                double low = middle - between(ways[i], share * (setting - half));
                double high = between(ways[i], share * (setting + half)) - middle;
                most += Math.max(low, high);
            }
        }
        return most;
    }

    private static double between(double[] ways, double setting) {
        double inside = Math.max(0, Math.min(ways.length - 1, setting));
        int step = Math.min((int) inside, ways.length - 2);
        return ways[step] + (inside - step) * (ways[step + 1] - ways[step]);
    }

    /** A point of the common plane in its mechanism's own frame, at the middle of the outline's heights. */
    Vector own(Point at, double[] settings) {
        Pose toFrame = Pose.NONE;
        for (int i = links.size() - 1; i >= 0; i--) {
            if (i < links.size() - 1) {
                toFrame = toFrame.then(links.get(i).moved(settings));
            }
            toFrame = toFrame.then(links.get(i).stand());
        }
        return toFrame.then(frame).inverse().apply(new Vector(at.x(), at.y(), (zFrom + zTo) / 2));
    }

    private Pose pose(double[] settings) {
        Pose pose = home;
        for (int i = links.size() - 1; i >= 0; i--) {
            pose = pose.then(links.get(i).moved(settings)).then(links.get(i).stand());
        }
        return pose.then(frame);
    }

    /** What a pose does in the plane; a mirror image of the drawing where it is seen from behind. */
    private static Placement flat(Pose pose) {
        Vector x = pose.turn().apply(Vector.X);
        return new Placement(
                Math.atan2(x.y(), x.x()),
                new Point(pose.shift().x(), pose.shift().y()));
    }

    /** What it never leaves, whatever the drives do. */
    private Cover cover() {
        if (fixed != null) {
            Point middle = new Point((fixed.minX + fixed.maxX) / 2, (fixed.minY + fixed.maxY) / 2);
            Point far = fixed.farthestFrom(middle.x(), middle.y());
            return new Cover(middle, 0, far.minus(middle).norm());
        }
        List<Integer> moving = new ArrayList<>();
        for (int i = 0; i < links.size(); i++) {
            if (links.get(i).drive() >= 0) {
                moving.add(i);
            }
        }
        int first = moving.get(0);
        Pose toFrame = Pose.NONE;
        for (int i = first; i >= 0; i--) {
            toFrame = i < first ? toFrame.then(links.get(i).moved(null)) : toFrame;
            toFrame = toFrame.then(links.get(i).stand());
        }
        toFrame = toFrame.then(frame);
        Point axis = links.get(first).course().axis().orElse(null);
        if (moving.size() > 1 || axis == null || first < links.size() - 1) {
            Vector origin = toFrame.shift();
            return new Cover(new Point(origin.x(), origin.y()), 0, around[first]);
        }
        Vector centre = toFrame.apply(new Vector(axis.x(), axis.y(), 0));
        Point at = new Point(centre.x(), centre.y());
        Shape rest = drawn.placed(flat(pose(null)));
        double inner = rest.contains(at.x(), at.y())
                ? 0
                : rest.nearestTo(at.x(), at.y()).minus(at).norm();
        return new Cover(at, inner, rest.farthestFrom(at.x(), at.y()).minus(at).norm());
    }

    /**
     * A ring, or a disc where {@code inner} is 0, that holds all settings of an outline.
     *
     * @param inner radius, mm
     * @param outer radius, mm
     */
    record Cover(Point centre, double inner, double outer) {
        /** A distance below which two such never come, mm; negative where nothing is known. */
        double gapTo(Cover other) {
            double d = centre.minus(other.centre).norm();
            double within = Math.max(inner - d - other.outer, other.inner - d - outer);
            return Math.max(d - outer - other.outer, within);
        }

        /** The same for an outline that stands still. */
        double gapTo(Shape still) {
            boolean over = still.contains(centre.x(), centre.y());
            double near = over
                    ? 0
                    : still.nearestTo(centre.x(), centre.y()).minus(centre).norm();
            double far =
                    still.farthestFrom(centre.x(), centre.y()).minus(centre).norm();
            return Math.max(near - outer, inner - far);
        }
    }

    /** A distance below which this and another never come in the plane, mm; negative where nothing is known. */
    double gapTo(Rider other) {
        double gap = cover.gapTo(other.cover);
        if (gap < 0 && fixed != null && other.fixed == null) {
            return other.cover.gapTo(fixed);
        }
        return gap < 0 && fixed == null && other.fixed != null ? cover.gapTo(other.fixed) : gap;
    }

    /** How far it reaches in a direction at most, mm from the origin of the common plane. */
    double reach(Point direction) {
        return cover.centre().dot(direction) + cover.outer();
    }
}
