// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * How often outlines of lines and true arcs run round a point, counter-clockwise positive; exact, no flattening.
 *
 * <p>A ray is cast from the point and signed crossings are counted. An arc counts as its chord and, when the point lies
 * between chord and arc, once more in its own sense; both use one and the same side test, so that rounding cannot
 * count a point twice. A corner on the ray belongs to the right side of the ray, which makes corners safe. For a point
 * on an outline (within rounding) the number is that of one of its sides.
 */
public final class Winding {
    private Winding() {}

    /** The winding number of the contour about {@code p}. */
    public static int of(Contour contour, Point p) {
        int sum = 0;
        for (Segment segment : contour.segments()) {
            sum += crossings(segment, p, 1, 0);
        }
        return sum;
    }

    /** The winding number of outer contour and holes together: 1 in the region, 0 outside and in its holes. */
    public static int of(Region region, Point p) {
        int sum = of(region.outer(), p);
        for (Contour hole : region.holes()) {
            sum += of(hole, p);
        }
        return sum;
    }

    /** Signed crossings of the ray from {@code p} towards (dx, dy); only the sum over a closed chain has a meaning. */
    static int crossings(Segment segment, Point p, double dx, double dy) {
        double px = p.x();
        double py = p.y();
        double ax = segment.start().x() - px;
        double ay = segment.start().y() - py;
        double bx = segment.end().x() - px;
        double by = segment.end().y() - py;
        boolean aLeft = dx * ay - dy * ax > 0;
        boolean bLeft = dx * by - dy * bx > 0;
        if (!(segment instanceof Arc arc)) {
            return aLeft == bLeft ? 0 : chord(aLeft, bLeft, isLeft(ax, ay, bx, by, dx, dy));
        }
        boolean left = isLeft(ax, ay, bx, by, dx, dy);
        double cx = px - arc.centre().x();
        double cy = py - arc.centre().y();
        boolean inCircle = cx * cx + cy * cy < arc.radius() * arc.radius();
        // between chord and arc, the ends of no more than half a circle are seen at a right angle or wider; without
        // this a point on the same circle beyond a tiny arc's end could count as between by rounding
        boolean beside = Math.abs(arc.sweep()) > Math.PI || ax * bx + ay * by <= 0;
        return chord(aLeft, bLeft, left) + (inCircle && beside ? between(arc, left) : 0);
    }

    /** As {@link #crossings} for a point that lies on the arc's own circle and is to count as just inside of it. */
    static int crossingsFromInside(Arc arc, Point p, double dx, double dy) {
        double ax = arc.start().x() - p.x();
        double ay = arc.start().y() - p.y();
        double bx = arc.end().x() - p.x();
        double by = arc.end().y() - p.y();
        boolean left = isLeft(ax, ay, bx, by, dx, dy);
        return chord(dx * ay - dy * ax > 0, dx * by - dy * bx > 0, left) + between(arc, left);
    }

    /**
     * Whether the origin lies left of the chord from a to b. On the chord's line it counts as moved a little to the
     * left of the ray, and much less along it: the move that also puts corners on the ray to its right.
     */
    private static boolean isLeft(double ax, double ay, double bx, double by, double dx, double dy) {
        double side = ax * by - ay * bx;
        if (side != 0) {
            return side > 0;
        }
        double alongRay = (bx - ax) * dx + (by - ay) * dy;
        return alongRay != 0 ? alongRay > 0 : (bx - ax) * dy - (by - ay) * dx > 0;
    }

    private static int chord(boolean aLeft, boolean bLeft, boolean left) {
        if (aLeft == bLeft || left != bLeft) {
            return 0;
        }
        return bLeft ? 1 : -1;
    }

    /** 1 or -1 in the arc's sense when a point in its circle lies on the chord's side where the arc is, else 0. */
    private static int between(Arc arc, boolean left) {
        boolean whole = arc.start().equals(arc.end()) && Math.abs(arc.sweep()) > Math.PI;
        if (arc.sweep() > 0) {
            return whole || !left ? 1 : 0;
        }
        return whole || left ? -1 : 0;
    }
}
