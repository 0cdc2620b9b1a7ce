// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** A linear map and a shift, as SVG's matrix(a b c d e f): x' = a x + c y + e, y' = b x + d y + f. */
record Affine(double a, double b, double c, double d, double e, double f) {
    static final Affine NONE = new Affine(1, 0, 0, 1, 0, 0);

    /** This map after another. */
    Affine after(Affine first) {
        return new Affine(
                a * first.a + c * first.b,
                b * first.a + d * first.b,
                a * first.c + c * first.d,
                b * first.c + d * first.d,
                a * first.e + c * first.f + e,
                b * first.e + d * first.f + f);
    }

    Point apply(Point p) {
        return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
    }

    /** The most by which a length grows (the greater singular value). */
    double stretch() {
        double p = (a * a + b * b + c * c + d * d) / 2;
        double q = a * d - b * c;
        return Math.sqrt(p + Math.sqrt(Math.max(0, p * p - q * q)));
    }

    double scale() {
        return Math.sqrt(Math.abs(a * d - b * c));
    }

    /** Whether circles stay circles, to a ten millionth of their size. */
    boolean keepsCircles() {
        double size = a * a + b * b + c * c + d * d;
        return size > 0
                && Math.abs(a * c + b * d) <= 1e-7 * size
                && Math.abs(a * a + b * b - c * c - d * d) <= 1e-7 * size;
    }

    /** The piece mapped; an arc only where circles stay circles. */
    Segment apply(Segment segment) {
        if (segment instanceof Arc arc) {
            double sense = Math.signum(a * d - b * c);
            Point centre = apply(arc.centre());
            Point start = apply(arc.start());
            Point end = apply(arc.end());
            double from = start.minus(centre).angle();
            return new Arc(centre, arc.radius() * scale(), Angles.signed(from), sense * arc.sweep(), start, end);
        }
        return new Line(apply(segment.start()), apply(segment.end()));
    }

    /** The pieces mapped, joined on the same point values as before. */
    List<Segment> apply(Piece piece) {
        List<Segment> out = new ArrayList<>();
        int last = piece.segments().size() - 1;
        for (int i = 0; i <= last; i++) {
            Segment mapped = apply(piece.segments().get(i));
            boolean closes = piece.closed() && i == last && i > 0;
            Point end = closes ? out.get(0).start() : mapped.end();
            out.add(i == 0 ? mapped : mapped.withEnds(out.get(i - 1).end(), end));
        }
        return out;
    }

    static Affine shift(double x, double y) {
        return new Affine(1, 0, 0, 1, x, y);
    }

    static Affine turn(double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new Affine(cos, sin, -sin, cos, 0, 0);
    }
}
