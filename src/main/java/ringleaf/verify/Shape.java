// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/** A region in its place as a flat row of pieces, material on their left; contours follow one another, outer first. */
final class Shape {
    private static final double ROUNDING = 1e-9;

    final Piece[] pieces;
    /** Index of the first piece of each contour, and the number of pieces at the end. */
    final int[] starts;

    /** Pieces from which an outline is looked at by runs of them. */
    static final int MANY = 512;

    final double minX;
    final double minY;
    final double maxX;
    final double maxY;
    /** The same whoever works it out. */
    private Runs runs;

    private Shape(Piece[] pieces, int[] starts) {
        this.pieces = pieces;
        this.starts = starts;
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = x0;
        double x1 = -x0;
        double y1 = -x0;
        for (int i = 0; i < starts[1]; i++) {
            x0 = Math.min(x0, pieces[i].minX);
            y0 = Math.min(y0, pieces[i].minY);
            x1 = Math.max(x1, pieces[i].maxX);
            y1 = Math.max(y1, pieces[i].maxY);
        }
        minX = x0;
        minY = y0;
        maxX = x1;
        maxY = y1;
    }

    static Shape of(Region region) {
        List<Contour> contours = region.contours();
        int[] starts = new int[contours.size() + 1];
        for (int i = 0; i < contours.size(); i++) {
            starts[i + 1] = starts[i] + contours.get(i).segments().size();
        }
        Piece[] pieces = new Piece[starts[contours.size()]];
        int n = 0;
        for (Contour contour : contours) {
            for (Segment segment : contour.segments()) {
                pieces[n++] = Piece.of(segment);
            }
        }
        return new Shape(pieces, starts);
    }

    Shape placed(Placement placement) {
        if (placement.angle() == 0
                && placement.shift().x() == 0
                && placement.shift().y() == 0) {
            return this;
        }
        double cos = Math.cos(placement.angle());
        double sin = Math.sin(placement.angle());
        Piece[] moved = new Piece[pieces.length];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = pieces[i].moved(
                    cos, sin, placement.shift().x(), placement.shift().y());
        }
        return new Shape(moved, starts);
    }

    /** The mirror image about the x axis, with the material on the left again. */
    Shape mirrored() {
        Piece[] image = new Piece[pieces.length];
        for (int c = 0; c < contours(); c++) {
            for (int i = starts[c]; i < starts[c + 1]; i++) {
                image[starts[c] + starts[c + 1] - 1 - i] = pieces[i].mirrored();
            }
        }
        return new Shape(image, starts);
    }

    int contours() {
        return starts.length - 1;
    }

    /** Whether this is one full circle without holes. */
    boolean isDisc() {
        return pieces.length == 1 && pieces[0].whole;
    }

    /** The shape that contour {@code index} encloses, filled. */
    Shape filled(int index) {
        int n = starts[index + 1] - starts[index];
        Piece[] ring = new Piece[n];
        System.arraycopy(pieces, starts[index], ring, 0, n);
        return new Shape(ring, new int[] {0, n});
    }

    /** The outer contour with only those of the other contours. */
    Shape withHoles(List<Integer> kept) {
        int[] from = new int[kept.size() + 2];
        from[1] = starts[1];
        for (int i = 0; i < kept.size(); i++) {
            from[i + 2] = from[i + 1] + starts[kept.get(i) + 1] - starts[kept.get(i)];
        }
        Piece[] some = new Piece[from[kept.size() + 1]];
        System.arraycopy(pieces, 0, some, 0, starts[1]);
        for (int i = 0; i < kept.size(); i++) {
            System.arraycopy(pieces, starts[kept.get(i)], some, from[i + 1], from[i + 2] - from[i + 1]);
        }
        return new Shape(some, from);
    }

    /** The distance of a piece's box from this one's; 0 when they meet. */
    double gapTo(Piece p) {
        return gap(p.minX, p.minY, p.maxX, p.maxY);
    }

    /** The distance of two boxes; 0 when they meet. */
    double gapTo(Shape s) {
        return gap(s.minX, s.minY, s.maxX, s.maxY);
    }

    private double gap(double x0, double y0, double x1, double y1) {
        double dx = Math.max(0, Math.max(minX - x1, x0 - maxX));
        double dy = Math.max(0, Math.max(minY - y1, y0 - maxY));
        return dx == 0 ? dy : dy == 0 ? dx : Math.sqrt(dx * dx + dy * dy);
    }

    /**
     * Whether the point lies in the material, exact but for points on the outline, which may go either way: the
     * winding number of the chords, corrected by one for each arc between whose chord and circle the point lies.
     * A point on a chord is taken to lie a hair to its +x side in both terms, so that they agree.
     */
    boolean contains(double x, double y) {
        if (x < minX || x > maxX || y < minY || y > maxY) {
            return false;
        }
        if (pieces.length < MANY) {
            return winding(x, y, 0, pieces.length) > 0;
        }
        int[] winding = {0};
        runs().level(y, (from, to) -> winding[0] += winding(x, y, from, to));
        return winding[0] > 0;
    }

    /** The pieces in runs, worked out when they are first asked for. */
    Runs runs() {
        if (runs == null) {
            runs = new Runs(this);
        }
        return runs;
    }

    /** Whether contour {@code index} encloses the point. */
    boolean encloses(int index, double x, double y) {
        return winding(x, y, starts[index], starts[index + 1]) != 0;
    }

    private int winding(double x, double y, int from, int to) {
        int winding = 0;
        for (int i = from; i < to; i++) {
            Piece p = pieces[i];
            if (p.whole) {
                winding += within(p, x, y) ? p.turn : 0;
                continue;
            }
            boolean up = p.y0 <= y && y < p.y1;
            boolean down = p.y1 <= y && y < p.y0;
            boolean round = p.turn != 0 && x >= p.minX && x <= p.maxX && y >= p.minY && y <= p.maxY;
            if (!up && !down && !round) {
                continue;
            }
            double side = p.side(x, y);
            if (up && side > 0) {
                winding++;
            } else if (down && side < 0) {
                winding--;
            }
            if (round && within(p, x, y) && beyondChord(p, side)) {
                winding += p.turn;
            }
        }
        return winding;
    }

    private static boolean within(Piece p, double x, double y) {
        double ex = x - p.cx;
        double ey = y - p.cy;
        return ex * ex + ey * ey < p.r * p.r;
    }

    private static boolean beyondChord(Piece p, double side) {
        double s = side;
        if (s == 0) {
            double dy = p.y1 - p.y0;
            s = dy != 0 ? -dy : p.x1 - p.x0;
        }
        return p.turn * s < 0;
    }

    /** Whether the outline comes nearer to the point than {@code limit}. */
    boolean isNearer(double x, double y, double limit) {
        for (Piece p : pieces) {
            if (x > p.minX - limit && x < p.maxX + limit && y > p.minY - limit && y < p.maxY + limit) {
                Point q = p.nearestTo(x, y);
                double dx = q.x() - x;
                double dy = q.y() - y;
                if (dx * dx + dy * dy < limit * limit) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The least distance of the point from the outline, inside or out. */
    double distanceFromOutline(double x, double y) {
        Nearest nearest = new Nearest(Double.POSITIVE_INFINITY);
        for (Piece p : pieces) {
            nearest.point(x, y, p);
        }
        return nearest.distance;
    }

    /** The point of the outline that is nearest to the given one. */
    Point nearestTo(double x, double y) {
        Nearest nearest = new Nearest(Double.POSITIVE_INFINITY);
        for (Piece p : pieces) {
            nearest.point(x, y, p);
        }
        return new Point(nearest.bx, nearest.by);
    }

    /** The point of the outer contour that is farthest from the given one. */
    Point farthestFrom(double x, double y) {
        Point best = null;
        double most = -1;
        for (int i = 0; i < starts[1]; i++) {
            Point q = pieces[i].farthestFrom(x, y);
            double d = Math.hypot(q.x() - x, q.y() - y);
            if (d > most) {
                most = d;
                best = q;
            }
        }
        return best;
    }

    /**
     * The point of the outer contour that is farthest from the origin, of those seen from there within {@code half} rad
     * of a direction; null when there is none.
     */
    Point farthestWithin(double direction, double half) {
        Point best = null;
        for (int i = 0; i < starts[1]; i++) {
            for (Point q : pieces[i].extremes(direction - half, direction + half)) {
                boolean within = Math.abs(Angles.signed(q.angle() - direction)) <= half + ROUNDING;
                best = within && (best == null || q.norm() > best.norm()) ? q : best;
            }
        }
        return best;
    }
}
