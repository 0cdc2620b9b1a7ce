// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/**
 * Reads the data of a path (SVG 1.1, section 8.3): lines, arcs and Bézier curves, which become arcs. An own reader,
 * because the XML library's gives numbers in single precision.
 */
final class SvgPath {
    private final SvgNumbers numbers;
    private final Place place;
    private final Problems problems;
    private final List<Piece> pieces = new ArrayList<>();
    private List<Segment> chain = new ArrayList<>();
    private Point first = Point.ORIGIN;
    private Point last = Point.ORIGIN;
    /** The last control point, which smooth curves go on from, and the command that it is of. */
    private Point control = Point.ORIGIN;

    private char previous;
    private final double within;

    /**
     * A reader.
     *
     * @param within how far arcs may lie from curves, in user units
     */
    SvgPath(String data, double within, Place place, Problems problems) {
        this.within = within;
        this.numbers = new SvgNumbers(data);
        this.place = place;
        this.problems = problems;
    }

    /** The chains, in user units, y down; fewer after reporting. */
    List<Piece> read() {
        char command = 0;
        int before = problems.count();
        while (!numbers.isDone() && problems.count() == before) {
            char letter = numbers.letter();
            if (letter != 0) {
                command = numbers.takeLetter();
            } else if (command == 'M') {
                command = 'L';
            } else if (command == 'm') {
                command = 'l';
            } else if (command == 0 || command == 'z' || command == 'Z') {
                problems.at(place, "the path's data lack a command at character " + numbers.position());
                return pieces;
            }
            step(command);
            previous = Character.toUpperCase(command);
        }
        end(false);
        return pieces;
    }

    private void step(char command) {
        boolean relative = Character.isLowerCase(command);
        Point base = relative ? last : Point.ORIGIN;
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                end(false);
                last = point(base);
                first = last;
            }
            case 'L' -> line(point(base));
            case 'H' -> line(new Point(base.x() + number(), last.y()));
            case 'V' -> line(new Point(last.x(), base.y() + number()));
            case 'A' -> arc(base);
            case 'Z' -> close();
            case 'C' -> curve(point(base), point(base), base);
            case 'S' -> curve(previous == 'C' || previous == 'S' ? smooth() : last, point(base), base);
            case 'Q' -> curve(point(base), null, base);
            case 'T' -> curve(previous == 'Q' || previous == 'T' ? smooth() : last, null, base);
            default -> problems.at(place, "there is no command " + command + " in a path");
        }
    }

    /** The last control point seen from the other side of where the path stands. */
    private Point smooth() {
        return last.times(2).minus(control);
    }

    /** With one or two control points; those of two are given first. */
    private void curve(Point one, Point two, Point base) {
        Point to = point(base);
        control = two == null ? one : two;
        add(Curves.bezier(two == null ? List.of(last, one, to) : List.of(last, one, two, to), within), to);
    }

    private void add(Optional<List<Segment>> arcs, Point to) {
        if (arcs.isEmpty()) {
            problems.at(
                    place,
                    "holds a curve that turns back on itself (before character " + numbers.position() + ")",
                    "draw it as two, or as lines and arcs");
            return;
        }
        for (int i = 0; i < arcs.get().size(); i++) {
            Segment piece = arcs.get().get(i);
            boolean end = i + 1 == arcs.get().size();
            chain.add(piece.withEnds(i == 0 ? last : chain.get(chain.size() - 1).end(), end ? to : piece.end()));
        }
        last = arcs.get().isEmpty() && !chain.isEmpty()
                ? chain.get(chain.size() - 1).end()
                : to;
    }

    private double number() {
        return checked(numbers.number());
    }

    private double checked(double value) {
        if (Double.isNaN(value)) {
            problems.at(place, "a number is wanted at character " + numbers.position() + " of its data");
            return 0;
        }
        return value;
    }

    private Point point(Point base) {
        double x = number();
        return base.plus(new Point(x, number()));
    }

    private void line(Point to) {
        if (!to.equals(last)) {
            chain.add(new Line(last, to));
        }
        last = to;
    }

    /** Centre and sweep from end points and flags (SVG 1.1, appendix F.6.5). */
    private void arc(Point base) {
        double rx = Math.abs(number());
        double ry = Math.abs(number());
        double turn = Math.toRadians(number());
        boolean large = checked(numbers.flag()) > 0;
        boolean positive = checked(numbers.flag()) > 0;
        Point to = point(base);
        if (Math.abs(rx - ry) > 1e-6 * Math.max(rx, ry) && rx > 0 && ry > 0 && !to.equals(last)) {
            elliptic(rx, ry, turn, large, positive, to);
            return;
        }
        double chord = last.distance(to);
        if (chord == 0 || rx == 0) {
            line(to);
            return;
        }
        double radius = Math.max(rx, chord / 2);
        double half = Math.asin(Math.min(1, chord / 2 / radius));
        double sweep = large ? 2 * Math.PI - 2 * half : 2 * half;
        sweep = positive ? sweep : -sweep;
        double off = Math.sqrt(Math.max(0, radius * radius - chord * chord / 4));
        Point across = to.minus(last).left().times(1 / chord);
        Point centre = last.towards(to, 0.5).plus(across.times(large == positive ? -off : off));
        chain.add(new Arc(centre, radius, last.minus(centre).angle(), sweep, last, to));
        last = to;
    }

    /** On the unit circle, from which the ellipse is stretched and turned (SVG 1.1, appendix F.6.5 and F.6.6). */
    private void elliptic(double rx, double ry, double turn, boolean large, boolean positive, Point to) {
        Point x = Point.polar(1, turn);
        Point half = last.minus(to).times(0.5);
        Point p = new Point(half.dot(x) / rx, half.dot(x.left()) / ry);
        double grown = Math.max(1, p.norm());
        Point q = p.times(1 / grown);
        double off = Math.sqrt(Math.max(0, 1 - q.dot(q))) * (large == positive ? -1 : 1);
        Point middle = q.left().times(q.norm() > 0 ? -off / q.norm() : 0);
        double from = q.minus(middle).angle();
        double sweep = q.times(-1).minus(middle).angle() - from;
        sweep = positive ? Angles.positive(sweep) : -Angles.positive(-sweep);
        Point across = x.times(rx * grown);
        Point up = x.left().times(ry * grown);
        Point centre = last.towards(to, 0.5).plus(across.times(middle.x())).plus(up.times(middle.y()));
        add(Curves.ellipse(centre, across, up, from, sweep, within), to);
    }

    private void close() {
        if (!last.equals(first)) {
            boolean rounding = last.distance(first) < 1e-5 && !chain.isEmpty();
            if (rounding) {
                Segment end = chain.remove(chain.size() - 1);
                chain.add(end.withEnds(end.start(), first));
                last = first;
            } else {
                line(first);
            }
        }
        end(true);
        last = first;
    }

    private void end(boolean closed) {
        if (!chain.isEmpty()) {
            boolean whole =
                    chain.get(0).start().equals(chain.get(chain.size() - 1).end());
            pieces.add(new Piece(circle(chain, whole), whole, place));
        } else if (closed) {
            problems.at(place, "closes nothing", "remove it");
        }
        chain = new ArrayList<>();
    }

    /** A circle written as several arcs is one circle. */
    private static List<Segment> circle(List<Segment> chain, boolean whole) {
        double sweep = 0;
        for (Segment piece : chain) {
            if (!whole || !(piece instanceof Arc arc)) {
                return chain;
            }
            Arc head = (Arc) chain.get(0);
            if (arc.centre().distance(head.centre()) > 1e-5 || Math.abs(arc.radius() - head.radius()) > 1e-5) {
                return chain;
            }
            sweep += arc.sweep();
        }
        Arc head = (Arc) chain.get(0);
        boolean full = Math.abs(Math.abs(sweep) - 2 * Math.PI) < 1e-6;
        return full ? Contour.circle(head.centre(), head.radius()).segments() : chain;
    }
}
