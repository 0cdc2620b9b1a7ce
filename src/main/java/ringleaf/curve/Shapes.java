// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;

/** Outlines that are known in closed form and need no cutting; all run counter-clockwise, exact to rounding. */
public final class Shapes {
    private Shapes() {}

    /** A straight slot with round ends about {@code a} and {@code b}; equal points give the circle. */
    public static Contour obround(Point a, Point b, double radius) {
        return hull(a, radius, b, radius);
    }

    /**
     * The hull of two discs: two outer tangents and the far arcs. The larger circle alone where it holds the other.
     */
    public static Contour hull(Point c1, double r1, Point c2, double r2) {
        return DiscHull.of(List.of(new Circle(c1, r1), new Circle(c2, r2)));
    }

    /** The convex hull of discs, as lines and arcs; one disc that holds all gives its circle. */
    public static Contour hull(List<Circle> circles) {
        return DiscHull.of(circles);
    }

    /** A piece of a ring with straight radial ends, from one angle counter-clockwise to the other (rad). */
    public static Contour annulusSector(Point centre, double rInner, double rOuter, double fromAngle, double toAngle) {
        double sweep = sweep(fromAngle, toAngle);
        if (!(rInner > 0) || !(rOuter > rInner) || !(sweep > 0) || sweep >= Angles.TURN) {
            throw new IllegalArgumentException(
                    "no ring piece from radius " + rInner + " to " + rOuter + " over " + sweep + " rad");
        }
        Arc outer = Arc.of(centre, rOuter, fromAngle, sweep);
        Arc inner = Arc.of(centre, rInner, fromAngle + sweep, -sweep);
        return Contour.of(outer, new Line(outer.end(), inner.start()), inner, new Line(inner.end(), outer.start()));
    }

    /** A wedge of a disc, from one angle counter-clockwise to the other (rad), its tip at the centre. */
    public static Contour discSector(Point centre, double radius, double fromAngle, double toAngle) {
        double sweep = sweep(fromAngle, toAngle);
        if (!(sweep > 0) || sweep >= Angles.TURN) {
            throw new IllegalArgumentException("no disc piece over " + sweep + " rad");
        }
        Arc rim = Arc.of(centre, radius, fromAngle, sweep);
        return Contour.of(new Line(centre, rim.start()), rim, new Line(rim.end(), centre));
    }

    /**
     * An upright rectangle with rounded corners.
     *
     * @param radius mm, 0 for sharp corners, at most half the shorter side; a side that is used up falls away
     */
    public static Contour roundedRectangle(Box box, double radius) {
        double half = Math.min(box.width(), box.height()) / 2;
        if (!(radius >= 0) || radius > half * (1 + 1e-12)) {
            throw new IllegalArgumentException("no corner radius " + radius + " on a half side of " + half);
        }
        if (radius == 0) {
            return Contour.rectangle(box);
        }
        // discs in the corners; equal centres where the sides are used up
        double r = Math.min(radius, half);
        double x0 = Math.min(box.minX() + r, box.centre().x());
        double x1 = Math.max(box.maxX() - r, box.centre().x());
        double y0 = Math.min(box.minY() + r, box.centre().y());
        double y1 = Math.max(box.maxY() - r, box.centre().y());
        if (x0 == x1 && y0 == y1) {
            return Contour.circle(box.centre(), r);
        }
        double[][] centres = {{x1, y0}, {x1, y1}, {x0, y1}, {x0, y0}};
        List<Arc> corners = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Point centre = new Point(centres[i][0], centres[i][1]);
            double c0 = i == 1 ? 1 : i == 3 ? -1 : 0;
            double s0 = i == 0 ? -1 : i == 2 ? 1 : 0;
            Point start = new Point(centre.x() + r * c0, centre.y() + r * s0);
            Point end = new Point(centre.x() - r * s0, centre.y() + r * c0);
            corners.add(new Arc(centre, r, (i - 1) * Math.PI / 2, Math.PI / 2, start, end));
        }
        return DiscHull.closed(corners);
    }

    private static double sweep(double fromAngle, double toAngle) {
        double sweep = toAngle - fromAngle;
        return sweep >= 0 && sweep <= Angles.TURN ? sweep : Angles.positive(sweep);
    }
}
