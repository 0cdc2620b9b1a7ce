// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/**
 * Reads the data of a path (SVG 1.1, section 8.3): lines and circular arcs. An own reader, because the XML library's
 * gives numbers in single precision. Béziers and ellipses are refused.
 */
final class SvgPath {
    private final SvgNumbers numbers;
    private final Place place;
    private final Problems problems;
    private final List<Piece> pieces = new ArrayList<>();
    private List<Segment> chain = new ArrayList<>();
    private Point first = Point.ORIGIN;
    private Point last = Point.ORIGIN;

    SvgPath(String data, Place place, Problems problems) {
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
            case 'C', 'S', 'Q', 'T' ->
                problems.at(
                        place,
                        "holds a Bézier curve (" + command + ", character " + numbers.position() + "); lines and"
                                + " circular arcs"
                                + " are read, nothing else",
                        "turn it into arcs, or put it into another group and name the ones to take under layers:");
            default -> problems.at(place, "there is no command " + command + " in a path");
        }
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
        number();
        boolean large = checked(numbers.flag()) > 0;
        boolean positive = checked(numbers.flag()) > 0;
        Point to = point(base);
        if (Math.abs(rx - ry) > 1e-6 * Math.max(rx, ry)) {
            problems.at(place, "holds a piece of an ellipse", "circular arcs are read; turn it into those");
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
