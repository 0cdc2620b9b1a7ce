// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Box;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * Rays in one direction against many pieces: pieces are kept in strips along the direction, so that a ray looks only at
 * its own strip.
 */
final class Rays {
    private static final int[] NONE = {};

    private final List<Segment> pieces;
    private final double dx;
    private final double dy;
    private final double low;
    private final double width;
    private final int[][] strips;

    Rays(List<Segment> pieces, Point direction) {
        this.pieces = pieces;
        this.dx = direction.x();
        this.dy = direction.y();
        int n = pieces.size();
        double[] from = new double[n];
        double[] to = new double[n];
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            Box box = pieces.get(i).box();
            double middle = across(box.centre());
            // half the box's extent across the rays, and more than rounding could add
            double half = (Math.abs(dx) * box.height() + Math.abs(dy) * box.width()) / 2 + Tolerance.rounding(box);
            from[i] = middle - half;
            to[i] = middle + half;
            least = Math.min(least, from[i]);
            most = Math.max(most, to[i]);
        }
        int count = Math.max(1, Math.min(n / 2, 500));
        this.low = least;
        this.width = (most - least) / count;
        this.strips = strips(from, to, count);
    }

    private int[][] strips(double[] from, double[] to, int count) {
        List<List<Integer>> lists = new ArrayList<>(count);
        for (int s = 0; s < count; s++) {
            lists.add(new ArrayList<>());
        }
        for (int i = 0; i < from.length; i++) {
            int last = Math.min(count - 1, (int) ((to[i] - low) / width));
            for (int s = Math.max(0, (int) ((from[i] - low) / width)); s <= last; s++) {
                lists.get(s).add(i);
            }
        }
        int[][] strips = new int[count][];
        for (int s = 0; s < count; s++) {
            List<Integer> list = lists.get(s);
            strips[s] = new int[list.size()];
            for (int k = 0; k < list.size(); k++) {
                strips[s][k] = list.get(k);
            }
        }
        return strips;
    }

    /** The indices of all pieces that a ray from {@code p} could cross, and of all that {@code p} could lie in. */
    int[] near(Point p) {
        double strip = Math.floor((across(p) - low) / width);
        return strip >= 0 && strip < strips.length ? strips[(int) strip] : NONE;
    }

    /** Signed crossings of the ray from {@code p} with one piece. */
    int crossings(int piece, Point p) {
        return Winding.crossings(pieces.get(piece), p, dx, dy);
    }

    /** The winding number of all pieces together about {@code p}; they must form closed contours. */
    int winding(Point p) {
        int sum = 0;
        for (int piece : near(p)) {
            sum += crossings(piece, p);
        }
        return sum;
    }

    private double across(Point p) {
        return dx * p.y() - dy * p.x();
    }
}
