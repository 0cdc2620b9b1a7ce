// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** Outlines made larger or smaller about the origin, for pictures that are not at true scale; exact to rounding. */
public final class Scaled {
    private Scaled() {}

    /** The piece with all lengths times {@code factor}, which is above 0; an arc stays an arc. */
    public static Segment of(Segment segment, double factor) {
        Point start = segment.start().times(factor);
        Point end = segment.end().times(factor);
        if (segment instanceof Arc arc) {
            return new Arc(
                    arc.centre().times(factor), arc.radius() * factor, arc.startAngle(), arc.sweep(), start, end);
        }
        return new Line(start, end);
    }

    public static Contour of(Contour contour, double factor) {
        return new Contour(pieces(contour.segments(), factor));
    }

    public static Path of(Path path, double factor) {
        return new Path(pieces(path.segments(), factor));
    }

    private static List<Segment> pieces(List<Segment> segments, double factor) {
        List<Segment> scaled = new ArrayList<>(segments.size());
        for (Segment segment : segments) {
            scaled.add(of(segment, factor));
        }
        return scaled;
    }
}
