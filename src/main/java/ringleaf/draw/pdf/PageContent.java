// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.pdf;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import ringleaf.draw.Decimals;
import ringleaf.draw.DrawingLayer;
import ringleaf.draw.Drawn;
import ringleaf.draw.LayerStyle;
import ringleaf.draw.page.Page;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * The content stream of a page (ISO 32000-1, 8 and 9): coordinates in points of 1/72 inch, computed here and written
 * with 4 decimals (error at most 1.8e-5 mm), never scaled by a matrix.
 *
 * <p>An arc becomes cubic Bézier curves of at most 45 degrees each, with handles of 4/3 tan(sweep/4) radii along the
 * tangents. Such a curve lies outside its circle by at most 2/27 sin⁶(sweep/4) / cos²(sweep/4) radii (the extremum of
 * the radius, by calculus), which is 4.3e-6 radii at 45 degrees; pieces are made smaller where that would be over
 * {@link #ROUND}.
 */
final class PageContent {
    /** How far a curve may leave its arc, mm. */
    static final Tolerance ROUND = Tolerance.CURVE;

    private static final double POINTS = 72 / 25.4;
    private static final int DECIMALS = 4;
    private static final double WIDEST = Math.PI / 4;
    private static final Charset WIN_ANSI = Charset.forName("windows-1252");
    private final StringBuilder out = new StringBuilder(8192);

    static byte[] of(Page page) {
        PageContent content = new PageContent();
        content.out.append("1 J 1 j\n");
        for (Page.Content each : page.contents()) {
            content.add(each);
        }
        return content.out.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private void add(Page.Content content) {
        out.append("q\n");
        content.window().ifPresent(this::window);
        for (DrawingLayer layer : content.drawing().layers()) {
            if (!layer.things().isEmpty()) {
                style(layer.style());
                for (Drawn thing : layer.things()) {
                    add(thing);
                }
            }
        }
        out.append("Q\n");
    }

    private void window(Box box) {
        at(new Point(box.minX(), box.minY()));
        number(box.width());
        number(box.height());
        out.append("re W n\n");
    }

    private void style(LayerStyle style) {
        for (int shift = 16; shift >= 0; shift -= 8) {
            Decimals.append(out, (style.rgb() >> shift & 0xFF) / 255.0, 3);
            out.append(' ');
        }
        out.append("RG\n");
        number(style.width());
        out.append("w\n");
    }

    private void add(Drawn thing) {
        if (thing instanceof Drawn.Round round) {
            pieces(List.of(Arc.circle(round.centre(), round.radius())), true);
        } else if (thing instanceof Drawn.Closed closed) {
            pieces(closed.contour().segments(), true);
        } else if (thing instanceof Drawn.Open open) {
            pieces(open.path().segments(), false);
        } else if (thing instanceof Drawn.Lettering lettering) {
            for (Path stroke : lettering.strokes()) {
                pieces(stroke.segments(), false);
            }
            unseen(lettering);
        }
    }

    private void pieces(List<Segment> segments, boolean closed) {
        at(segments.get(0).start());
        out.append("m\n");
        for (Segment segment : segments) {
            if (segment instanceof Arc arc) {
                curves(arc);
            } else {
                at(segment.end());
                out.append("l\n");
            }
        }
        out.append(closed ? "s\n" : "S\n");
    }

    private void curves(Arc arc) {
        int n = curves(arc.radius(), arc.sweep());
        double handle = 4.0 / 3 * Math.tan(arc.sweep() / n / 4) * arc.radius();
        Point from = arc.start();
        for (int i = 1; i <= n; i++) {
            Point to = i == n ? arc.end() : arc.pointAt((double) i / n);
            at(from.plus(along(arc, (double) (i - 1) / n).times(handle)));
            at(to.minus(along(arc, (double) i / n).times(handle)));
            at(to);
            out.append("c\n");
            from = to;
        }
    }

    /** Tangent of counter-clockwise travel; the sign of the sweep sits in the handle. */
    private static Point along(Arc arc, double share) {
        return Point.polar(1, arc.startAngle() + share * arc.sweep()).left();
    }

    /** The least number of equal curves that keeps to the widest piece and the bound. */
    static int curves(double radius, double sweep) {
        int n = Math.max(1, (int) Math.ceil(Math.abs(sweep) / WIDEST - 1e-9));
        while (deviation(radius, sweep / n) > ROUND.length()) {
            n++;
        }
        return n;
    }

    /** How far a curve of this sweep leaves its arc, mm. */
    static double deviation(double radius, double sweep) {
        double sine = Math.sin(sweep / 4);
        double square = sine * sine;
        return radius * 2 / 27 * square * square * square / (1 - square);
    }

    /**
     * Letters that are not painted (text mode 3) over the strokes, so that a reader can search and copy them. Text that
     * is higher than wide runs upwards.
     */
    private void unseen(Drawn.Lettering lettering) {
        byte[] bytes = lettering.text().replace('\u2300', '\u00D8').getBytes(WIN_ANSI);
        Box box = lettering.box();
        boolean upwards = bytes.length > 2 && box.height() > 1.5 * box.width();
        double width = upwards ? box.height() : box.width();
        double size = Math.max(0.5, upwards ? box.width() : box.height());
        out.append("BT /F1 ");
        number(size);
        out.append("Tf 3 Tr ");
        double natural = HelveticaWidths.of(bytes) * size / 1000;
        Decimals.append(out, 100 * width / Math.max(natural, 1e-3), 3);
        out.append(" Tz ").append(upwards ? "0 1 -1 0 " : "1 0 0 1 ");
        at(new Point(upwards ? box.maxX() : box.minX(), box.minY()));
        out.append("Tm <");
        for (byte b : bytes) {
            out.append(Character.forDigit(b >> 4 & 0xF, 16)).append(Character.forDigit(b & 0xF, 16));
        }
        out.append("> Tj ET\n");
    }

    private void at(Point p) {
        number(p.x());
        number(p.y());
    }

    /** A length in mm as points. */
    private void number(double length) {
        Decimals.append(out, length * POINTS, DECIMALS);
        out.append(' ');
    }
}
