// SPDX-License-Identifier: Apache-2.0
package ringleaf.figure;

import java.util.List;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.solid.Solid;
import ringleaf.space.Pose;
import ringleaf.space.Vector;
import ringleaf.verify.Course;
import ringleaf.verify.Relative;

/** One body in the frame that two mechanisms have in common: where the drives put it, and how far they move it. */
final class Carried {
    private final List<Relative.Link> links;
    private final Solid solid;
    /** Of each link's body at each state: the way from the first, which no point of the solid exceeds, mm. */
    private final double[][] ways;

    /**
     * @param links from the common frame to the body, the body's own last; none for what the frame belongs to
     * @param solid in its mechanism's frame, in state 0
     */
    Carried(List<Relative.Link> links, Solid solid) {
        this.links = links;
        this.solid = solid;
        this.ways = new double[links.size()][];
        double around = 0;
        for (int i = links.size() - 1; i >= 0; i--) {
            Course course = links.get(i).course();
            if (i == links.size() - 1) {
                ways[i] = course.ways(this::fromAxis);
                around = i == 0 ? 0 : course.most(pose -> fromAxis(pose, Point.ORIGIN), ways[i]) + height();
            } else {
                Vector shift = links.get(i + 1).stand().shift();
                Point at = new Point(shift.x(), shift.y());
                double inner = around;
                ways[i] = course.ways((pose, p) -> pose.apply(at).minus(p).norm() + inner);
                around = course.most(pose -> pose.apply(at).norm() + inner, ways[i]) + Math.abs(shift.z());
            }
        }
    }

    Solid solid() {
        return solid;
    }

    boolean isStill() {
        return links.stream().allMatch(link -> link.drive() < 0);
    }

    boolean isMovedBy(int drive) {
        return links.stream().anyMatch(link -> link.drive() == drive);
    }

    /** How far the solid stands from a line along z through a point, with its body in a place. */
    private double fromAxis(Placement body, Point point) {
        Point seen = body.inverse().apply(point);
        return solid.radiusAbout(new Vector(seen.x(), seen.y(), 0), Vector.Z);
    }

    private double height() {
        return Math.max(Math.abs(solid.mesh().least(2)), Math.abs(solid.mesh().greatest(2)));
    }

    /** From the solid's frame to the common one. */
    Pose at(double[] settings) {
        Pose pose = Pose.NONE;
        for (int i = links.size() - 1; i >= 0; i--) {
            pose = pose.then(links.get(i).moved(settings)).then(links.get(i).stand());
        }
        return pose;
    }

    /** A point of the common frame in the frame of its mechanism. */
    Vector own(Vector point, double[] settings) {
        Vector drawn = at(settings).inverse().apply(point);
        return links.isEmpty()
                ? drawn
                : links.get(links.size() - 1).moved(settings).apply(drawn);
    }

    /** How far a drive moves any point of it per unit of its setting, at most, between two settings, mm. */
    double reach(int drive, double from, double to) {
        double most = 0;
        for (int i = 0; i < ways.length; i++) {
            Relative.Link link = links.get(i);
            if (link.drive() == drive) {
                int first = Math.max(0, (int) Math.floor(link.share() * from));
                int last = Math.min(ways[i].length - 1, (int) Math.ceil(link.share() * to));
                double step = 0;
                for (int k = Math.min(first, ways[i].length - 2); k < Math.max(last, first + 1); k++) {
                    int at = Math.min(k, ways[i].length - 2);
                    step = Math.max(step, ways[i][at + 1] - ways[i][at]);
                }
                most += link.share() * step;
            }
        }
        return most;
    }
}
