// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * In which order leaves are painted so that each lies over the one laid before it, all round, with no first and no
 * last: all in laying order, then the first ones once more, each inside a wedge of its own.
 *
 * <p>Seen from the origin every leaf covers a range of directions; the ranges are equal and a pitch apart. Painting in
 * laying order is right in every direction in which the leaves that are there do not run from the last over to the
 * first. They do so from where the first leaf begins to where the last one ends; there every leaf that has begun since
 * the first one has to be painted again, over the last ones. A leaf of more than half a turn is in such a wedge twice,
 * so its second painting starts where it starts.
 *
 * @param wedges where the first, second, … leaf is painted a second time; empty for nowhere
 */
record LeafOrder(List<Region> wedges) {
    private static final int STEPS = 16;
    /** Room at the sides of a wedge for outlines and shades, as a share of the pitch. */
    private static final double ROOM = 0.25;

    /**
     * The order for leaves in their places, in laying order.
     *
     * @param first outline of the first leaf
     * @param second outline of the next
     * @param count of leaves
     * @param reach radius beyond which nothing lies, mm
     */
    static LeafOrder of(Contour first, Contour second, int count, double reach) {
        double[] range = range(first);
        double pitch = Angles.TURN / count;
        double shared = Math.min(range[1] - range[0] - pitch, Angles.TURN - 2 * pitch);
        List<Region> wedges = new ArrayList<>();
        if (count < 3 || shared <= 0) {
            return new LeafOrder(wedges);
        }
        boolean onwards = Angles.signed(range(second)[0] - range[0]) > 0;
        double room = ROOM * pitch;
        for (double begun = 0; begun < shared + room && wedges.size() < count; begun += pitch) {
            double sweep = shared + 2 * room - begun;
            double from = onwards ? range[0] + begun - room : range[1] - shared - room;
            wedges.add(wedge(from, sweep, reach));
        }
        return new LeafOrder(wedges);
    }

    /**
     * The directions from the origin that a contour covers, first and last, followed round without a jump; sampled,
     * which is near enough for a picture.
     */
    private static double[] range(Contour contour) {
        double last = contour.segments().get(0).start().angle();
        double at = last;
        double least = at;
        double most = at;
        for (Segment segment : contour.segments()) {
            for (int i = 1; i <= STEPS; i++) {
                double next = segment.pointAt((double) i / STEPS).angle();
                at += Angles.signed(next - last);
                last = next;
                least = Math.min(least, at);
                most = Math.max(most, at);
            }
        }
        return new double[] {least, Math.min(most, least + Angles.TURN)};
    }

    private static Region wedge(double from, double sweep, double reach) {
        Point start = Point.polar(reach, from);
        Arc rim = Arc.of(Point.ORIGIN, reach, from, sweep);
        List<Segment> pieces = new ArrayList<>();
        pieces.add(new Line(Point.ORIGIN, start));
        pieces.add(rim.withEnds(start, rim.end()));
        pieces.add(new Line(rim.end(), Point.ORIGIN));
        return Region.of(new Contour(pieces));
    }
}
