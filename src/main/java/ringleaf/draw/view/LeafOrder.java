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
 * last: all in laying order, then the first ones once more inside a wedge.
 *
 * <p>Seen from the origin every leaf covers a range of directions; the ranges are equal and a pitch apart. Painting in
 * laying order is right in every direction in which the leaves that are there do not run from the last over to the
 * first. Where they do, which is a single wedge that begins where the first leaf begins, the first leaves have to be
 * painted again, over the last ones.
 *
 * @param again how many of the first leaves are to be painted a second time
 * @param wedge where, or null for nowhere
 */
record LeafOrder(int again, Region wedge) {
    private static final int STEPS = 16;

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
        double shared = range[1] - range[0] - pitch;
        if (count < 3 || shared <= 0) {
            return new LeafOrder(0, null);
        }
        shared = Math.min(shared, Angles.TURN - pitch);
        double step = Angles.signed(range(second)[0] - range[0]);
        int again = Math.min(count, (int) Math.ceil(shared / pitch));
        Region wedge = step > 0 ? wedge(range[0], shared, reach) : wedge(range[1] - shared, shared, reach);
        return new LeafOrder(again, wedge);
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
