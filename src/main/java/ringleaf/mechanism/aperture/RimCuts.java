// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * Cuts in the plain part of a round rim about the axis, strung together piece by piece: no boolean is needed, and the
 * rim's arcs stay on their circle.
 */
final class RimCuts {
    private final Arc plain;
    private final List<Cut> cuts = new ArrayList<>();

    /** A cut between two places on the plain arc, rad from its start, and the pieces that run along it. */
    private record Cut(double from, double to, List<Segment> pieces) {}

    /**
     * Starts on the plain arc, which runs counter-clockwise about the origin.
     *
     * @throws IllegalArgumentException for an arc that runs the other way
     */
    RimCuts(Arc plain) {
        if (!plain.isCounterClockwise()) {
            throw new IllegalArgumentException("a rim runs counter-clockwise");
        }
        this.plain = plain;
    }

    /** A round scallop of this radius (mm) about a point of the rim. */
    RimCuts scallop(double direction, double radius) {
        double half = 2 * Math.asin(radius / (2 * plain.radius()));
        Point centre = Point.polar(plain.radius(), direction);
        Point from = Point.polar(plain.radius(), direction - half);
        Point to = Point.polar(plain.radius(), direction + half);
        return add(direction - half, direction + half, List.of(Arc.around(centre, from, to, false)));
    }

    /** A notch with radial flanks down to the floor's radius, mm. */
    RimCuts notch(double fromDirection, double toDirection, double floor) {
        Point from = Point.polar(plain.radius(), fromDirection);
        Point low = Point.polar(floor, fromDirection);
        Point lowEnd = Point.polar(floor, toDirection);
        Point to = Point.polar(plain.radius(), toDirection);
        return add(
                fromDirection,
                toDirection,
                List.of(new Line(from, low), Arc.around(Point.ORIGIN, low, lowEnd, true), new Line(lowEnd, to)));
    }

    private RimCuts add(double from, double to, List<Segment> pieces) {
        double start = Angles.positive(from - plain.startAngle());
        Cut cut = new Cut(start, start + (to - from), pieces);
        int place = 0;
        while (place < cuts.size() && cuts.get(place).from < start) {
            place++;
        }
        cuts.add(place, cut);
        return this;
    }

    /**
     * The outline with the plain arc cut.
     *
     * @param outline counter-clockwise, holding the plain arc as its first piece
     * @throws IllegalArgumentException when cuts run into one another or off the plain arc
     */
    Contour in(Contour outline) {
        List<Segment> pieces = new ArrayList<>();
        Point from = plain.start();
        double at = 0;
        for (Cut cut : cuts) {
            Point to = cut.pieces.get(0).start();
            rim(pieces, at, cut.from, from, to);
            pieces.addAll(cut.pieces);
            from = cut.pieces.get(cut.pieces.size() - 1).end();
            at = cut.to;
        }
        rim(pieces, at, plain.sweep(), from, plain.end());
        pieces.addAll(outline.segments().subList(1, outline.segments().size()));
        return new Contour(pieces);
    }

    private void rim(List<Segment> pieces, double from, double to, Point start, Point end) {
        if (!(to > from)) {
            throw new IllegalArgumentException("cuts in a rim run into one another");
        }
        double angle = Angles.signed(plain.startAngle() + from);
        pieces.add(new Arc(plain.centre(), plain.radius(), angle, to - from, start, end));
    }
}
