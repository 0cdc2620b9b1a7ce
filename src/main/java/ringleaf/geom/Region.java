// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

import java.util.ArrayList;
import java.util.List;

/**
 * One connected piece of the plane: an outer contour, counter-clockwise, and holes in it, clockwise. The constructor
 * turns contours that run the other way; it does not check that holes lie inside (the judge does).
 */
public record Region(Contour outer, List<Contour> holes) {
    public Region {
        outer = outer.counterClockwise();
        List<Contour> clockwise = new ArrayList<>(holes.size());
        for (Contour hole : holes) {
            clockwise.add(hole.clockwise());
        }
        holes = List.copyOf(clockwise);
    }

    public static Region of(Contour outer, Contour... holes) {
        return new Region(outer, List.of(holes));
    }

    public static Region disc(Point centre, double radius) {
        return of(Contour.circle(centre, radius));
    }

    public static Region ring(Point centre, double innerRadius, double outerRadius) {
        return of(Contour.circle(centre, outerRadius), Contour.circle(centre, innerRadius));
    }

    /** Outer contour first, then the holes. */
    public List<Contour> contours() {
        List<Contour> all = new ArrayList<>();
        all.add(outer);
        all.addAll(holes);
        return all;
    }

    public Region withHoles(List<Contour> more) {
        List<Contour> all = new ArrayList<>(holes);
        all.addAll(more);
        return new Region(outer, all);
    }

    /** Net area, mm²: the outer's less the holes'. */
    public double area() {
        double sum = outer.area();
        for (Contour hole : holes) {
            sum += hole.area();
        }
        return sum;
    }

    /** Length of all contours, mm. */
    public double perimeter() {
        double sum = outer.length();
        for (Contour hole : holes) {
            sum += hole.length();
        }
        return sum;
    }

    public Point centroid() {
        Point moment = Point.ORIGIN;
        for (Contour contour : contours()) {
            moment = moment.plus(contour.centroid().times(contour.area()));
        }
        return moment.times(1 / area());
    }

    public Box box() {
        return outer.box();
    }

    public Region placed(Placement placement) {
        List<Contour> placed = new ArrayList<>(holes.size());
        for (Contour hole : holes) {
            placed.add(hole.placed(placement));
        }
        return new Region(outer.placed(placement), placed);
    }

    public Region mirrored(Mirror mirror) {
        List<Contour> mirrored = new ArrayList<>(holes.size());
        for (Contour hole : holes) {
            mirrored.add(hole.mirrored(mirror));
        }
        return new Region(outer.mirrored(mirror), mirrored);
    }
}
