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
<<<<<<< HEAD
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
        return add(fromDirection, toDirection, List.of(
                new Line(from, low), Arc.around(Point.ORIGIN, low, lowEnd, true), new Line(lowEnd, to)));
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
=======
 * Cuts in the plain part of a round rim about the axis, strung together piece by piece: they lie beside each other on
 * one arc, so nothing has to be intersected. Exact to rounding.
 */
final class RimCuts {
    private final Contour blank;
    private final Arc rim;
    private final List<Cut> cuts = new ArrayList<>();
    private boolean fits = true;

    /** What replaces the rim from {@code from} to {@code to}, rad from the start of the plain arc. */
    private record Cut(double from, double to, List<Segment> pieces) {}

    /** Cuts into the longest arc about the axis of an outline that runs counter-clockwise. */
    RimCuts(Contour blank) {
        this.blank = blank;
        Arc longest = null;
        for (Segment piece : blank.segments()) {
            if (piece instanceof Arc arc
                    && arc.centre().equals(Point.ORIGIN)
                    && (longest == null || arc.length() > longest.length())) {
                longest = arc;
            }
        }
        if (longest == null || !longest.isCounterClockwise() || longest.isCircle()) {
            throw new IllegalArgumentException("an outline with a plain rim about the axis is wanted");
        }
        rim = longest;
    }

    /** A notch with radial ends down to the radius {@code floor}, counter-clockwise from one direction to the other. */
    void notch(double floor, double from, double to) {
        Arc bottom = Arc.of(Point.ORIGIN, floor, from, to - from);
        Line down = new Line(Point.polar(rim.radius(), from), bottom.start());
        Line up = new Line(bottom.end(), Point.polar(rim.radius(), to));
        add(from, to, List.of(down, bottom, up));
    }

    /** A scallop: what a circle of this radius about a point of the rim takes away. */
    void scallop(double direction, double radius) {
        double half = 2 * Math.asin(radius / (2 * rim.radius()));
        Point start = Point.polar(rim.radius(), direction - half);
        Point end = Point.polar(rim.radius(), direction + half);
        Arc hollow = Arc.around(Point.polar(rim.radius(), direction), start, end, false);
        add(direction - half, direction + half, List.of(hollow));
    }

    private void add(double from, double to, List<Segment> pieces) {
        double first = Angles.positive(from - rim.startAngle());
        double last = first + to - from;
        int place = cuts.size();
        while (place > 0 && cuts.get(place - 1).from > first) {
            place--;
        }
        fits &= first > 0 && last < rim.sweep();
        fits &= place == 0 || cuts.get(place - 1).to < first;
        fits &= place == cuts.size() || last < cuts.get(place).from;
        cuts.add(place, new Cut(first, last, pieces));
    }

    /** Whether every cut lies on the plain arc and clear of the others. */
    boolean fits() {
        return fits;
    }

    /** The outline with its cuts, which must fit. */
    Contour outline() {
        if (!fits) {
            throw new IllegalStateException("cuts that meet have to be intersected");
        }
        List<Segment> pieces = new ArrayList<>();
        for (Segment piece : blank.segments()) {
            if (piece == rim) {
                addRim(pieces);
            } else {
                pieces.add(piece);
            }
        }
        return new Contour(pieces);
    }

    private void addRim(List<Segment> pieces) {
        Point at = rim.start();
        double done = 0;
        for (Cut cut : cuts) {
            Point next = cut.pieces.get(0).start();
            pieces.add(plain(done, cut.from, at, next));
            pieces.addAll(cut.pieces);
            at = cut.pieces.get(cut.pieces.size() - 1).end();
            done = cut.to;
        }
        pieces.add(plain(done, rim.sweep(), at, rim.end()));
    }

    private Arc plain(double from, double to, Point start, Point end) {
        double angle = Angles.signed(rim.startAngle() + from);
        return new Arc(Point.ORIGIN, rim.radius(), angle, to - from, start, end);
>>>>>>> cold
    }
}
