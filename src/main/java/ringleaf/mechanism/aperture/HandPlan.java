// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * An arm on the ring that reaches out through a window in the wall; the window's ends are the stops.
 *
 * @param at direction of the arm in the open pose
 * @param travel of the ring from open to closed, signed
 * @param halfWidth of the arm, mm
 * @param reach of the arm's end beyond the housing, mm
 */
record HandPlan(double at, double travel, double halfWidth, double reach) implements DrivePlan {
    private static final double LEAST_EYE = 0.5;

    @Override
    public double blockedCentre() {
        return at + travel / 2;
    }

    @Override
    public double blockedHalfAngle(Rim rim, double pad) {
        return Math.abs(travel) / 2 + rim.overTravel() + Math.asin((halfWidth + pad) / rim.screws());
    }

    @Override
    public List<Point> ownScrews(Rim rim, double pad) {
        return List.of();
    }

    @Override
    public Contour outline(Rim rim) {
        return Housing.round(rim);
    }

    @Override
    public double envelopeWidth(Rim rim) {
        return 2 * rim.outer();
    }

    /** Distance of the middle of the arm's round end from the axis. */
    double armEnd(Rim rim) {
        return rim.outer() + reach - halfWidth;
    }

    /** The ring's outline with its arm, counter-clockwise. */
    Contour ringOutline(Rim rim) {
        double half = Math.asin(halfWidth / rim.rim());
        Arc plain = Arc.of(Point.ORIGIN, rim.rim(), at + half, 2 * Math.PI - 2 * half);
        Point along = Point.polar(1, at);
        Point end = along.times(armEnd(rim));
        Point right = end.minus(along.left().times(halfWidth));
        Point left = end.plus(along.left().times(halfWidth));
        List<Segment> pieces = new ArrayList<>();
        pieces.add(plain);
        pieces.add(new Line(plain.end(), right));
        pieces.add(new Arc(end, halfWidth, at - Math.PI / 2, Math.PI, right, left));
        pieces.add(new Line(left, plain.start()));
        return new Contour(pieces);
    }

    /**
     * What is taken from the wall, from well inside it to well outside the housing; its two ends lie flat against
     * the arm where the ring is to stop.
     */
    Contour window(Rim rim) {
        double first = at + Math.min(0, travel) - rim.overTravel();
        double last = at + Math.max(0, travel) + rim.overTravel();
        double inner = rim.rim() / 2;
        double outer = rim.outer() + 2 * halfWidth + 1;
        Point a = corner(first, inner, -halfWidth);
        Point b = corner(first, outer, -halfWidth);
        Point c = corner(last, outer, halfWidth);
        Point d = corner(last, inner, halfWidth);
        return Contour.of(
                new Line(a, b),
                Arc.around(Point.ORIGIN, b, c, true),
                new Line(c, d),
                Arc.around(Point.ORIGIN, d, a, false));
    }

    /** A hole in the arm's end by which a cord or a rod can pull, where the arm is wide enough to keep its web. */
    Optional<Contour> eye(Rim rim, double web) {
        double radius = Math.min(halfWidth - web, halfWidth / 2);
        return radius < LEAST_EYE
                ? Optional.empty()
                : Optional.of(Contour.circle(Point.polar(armEnd(rim), at), radius));
    }

    private static Point corner(double direction, double along, double across) {
        return new Point(along, across).turned(direction);
    }
}
