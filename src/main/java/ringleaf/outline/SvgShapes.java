// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/** The shapes of SVG 1.1, chapters 8 and 9, in user units, y down. */
final class SvgShapes {
    private final Attributes attributes;
    private final Place place;
    private final Problems problems;

    private final double within;

    /**
     * The shapes of an element.
     *
     * @param within how far arcs may lie from curves, in user units
     */
    SvgShapes(Attributes attributes, double within, Place place, Problems problems) {
        this.within = within;
        this.attributes = attributes;
        this.place = place;
        this.problems = problems;
    }

    /** What an element draws; nothing after reporting. */
    List<Piece> of(String name) {
        int before = problems.count();
        List<Piece> pieces =
                switch (name) {
                    case "path" -> new SvgPath(text("d"), within, place, problems).read();
                    case "circle" -> circle(number("r", 0), number("r", 0));
                    case "ellipse" -> circle(number("rx", 0), number("ry", 0));
                    case "rect" -> rectangle();
                    case "line" ->
                        List.of(new Piece(
                                List.of(new Line(
                                        new Point(number("x1", 0), number("y1", 0)),
                                        new Point(number("x2", 0), number("y2", 0)))),
                                false,
                                place));
                    case "polyline" -> polygon(false);
                    case "polygon" -> polygon(true);
                    default -> {
                        problems.at(
                                place,
                                "is not read; paths, circles, rectangles, lines and polygons are",
                                "put it into another group and name the ones to take under layers:");
                        yield List.of();
                    }
                };
        return problems.count() > before ? List.of() : pieces;
    }

    private String text(String key) {
        String value = attributes.getValue(key);
        return value == null ? "" : value;
    }

    private double number(String key, double otherwise) {
        String text = text(key).trim();
        if (text.isEmpty()) {
            return otherwise;
        }
        SvgNumbers numbers = new SvgNumbers(text.endsWith("px") ? text.substring(0, text.length() - 2) : text);
        double value = numbers.number();
        if (Double.isNaN(value) || !numbers.isDone()) {
            problems.at(place, key + " is " + Shown.quoted(text) + ", and a plain number is wanted");
            return otherwise;
        }
        return value;
    }

    private List<Piece> circle(double rx, double ry) {
        if (!(rx > 0) || !(ry > 0)) {
            problems.at(place, "has no radius above 0");
            return List.of();
        }
        Point centre = new Point(number("cx", 0), number("cy", 0));
        if (Math.abs(rx - ry) > 1e-6 * rx) {
            return ellipse(centre, rx, ry);
        }
        return List.of(new Piece(Contour.circle(centre, rx).segments(), true, place));
    }

    private List<Piece> ellipse(Point centre, double rx, double ry) {
        return Curves.wholeEllipse(centre, new Point(rx, 0), new Point(0, ry), within)
                .map(arcs -> List.of(new Piece(arcs, true, place)))
                .orElseGet(() -> {
                    problems.at(place, "is so flat an ellipse that no arcs follow it");
                    return List.of();
                });
    }

    private List<Piece> rectangle() {
        double x = number("x", 0);
        double y = number("y", 0);
        double width = number("width", 0);
        double height = number("height", 0);
        double rx = number("rx", number("ry", 0));
        double ry = number("ry", rx);
        if (!(width > 0) || !(height > 0) || rx < 0 || Math.abs(rx - ry) > 1e-9 * width) {
            problems.at(place, "is no rectangle with a size and round corners");
            return List.of();
        }
        double radius = Math.min(rx, Math.min(width, height) / 2);
        Contour contour = Shapes.roundedRectangle(new Box(x, y, x + width, y + height), radius);
        return List.of(new Piece(contour.segments(), true, place));
    }

    private List<Piece> polygon(boolean closed) {
        SvgNumbers numbers = new SvgNumbers(text("points"));
        List<Point> points = new ArrayList<>();
        while (!numbers.isDone()) {
            Point point = new Point(numbers.number(), numbers.number());
            if (Double.isNaN(point.x() + point.y())) {
                problems.at(place, "a number is wanted at character " + numbers.position() + " of its points");
                return List.of();
            }
            if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
                points.add(point);
            }
        }
        if (closed && points.size() > 1 && points.get(0).equals(points.get(points.size() - 1))) {
            points.remove(points.size() - 1);
        }
        if (points.size() < 2) {
            problems.at(place, "has fewer than two points");
            return List.of();
        }
        List<Segment> lines = new ArrayList<>();
        for (int i = 0; i + (closed ? 0 : 1) < points.size(); i++) {
            lines.add(new Line(points.get(i), points.get((i + 1) % points.size())));
        }
        boolean whole = lines.get(0).start().equals(lines.get(lines.size() - 1).end());
        return List.of(new Piece(lines, whole, place));
    }
}
