// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.svg;

import ringleaf.draw.Decimals;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * The {@code d} of an SVG path: absolute coordinates, y negated, arcs as {@code A} commands of at most 120 degrees.
 *
 * <p>Every number is rounded once, from the exact end point, so rounding does not add up along the path and the last
 * piece ends on the very text the first one started on. With 6 decimals and pieces of at most 120 degrees the arc
 * that a reader rebuilds stays within 2e-6 mm of the true one (worst measured: 1.6e-6). A piece whose rounded ends
 * coincide is left out, because a reader must drop such an arc and shows a dot for such a line.
 *
 * <p>For pictures the plane may be seen aslant: y shrunk by a factor and everything shifted, which turns circles into
 * ellipses, again without loss.
 */
public final class PathData {
    /** 120 degrees; wider arcs rebuilt from rounded ends go astray (SVG 1.1, F.6.5: the centre is ill placed). */
    private static final double WIDEST = 2 * Math.PI / 3;

    private static final double SLACK = 1e-12;

    private final StringBuilder out = new StringBuilder(256);
    private final int decimals;
    private final double factorY;
    private final double shiftY;
    private long lastX;
    private long lastY;

    /** Path data with coordinates rounded to so many decimals. */
    public PathData(int decimals) {
        this(decimals, 1, 0);
    }

    /**
     * Path data of the plane seen aslant.
     *
     * @param decimals of every coordinate
     * @param factorY by which y shrinks, above 0
     * @param shiftY added to y after that, downwards
     */
    public PathData(int decimals, double factorY, double shiftY) {
        this.decimals = decimals;
        this.factorY = factorY;
        this.shiftY = shiftY;
    }

    /** Adds a closed contour, a circle too (in pieces). */
    public PathData add(Contour contour) {
        move(contour.segments().get(0).start());
        int last = contour.segments().size() - 1;
        for (int i = 0; i <= last; i++) {
            Segment segment = contour.segments().get(i);
            if (i < last || segment instanceof Arc) {
                add(segment);
            }
        }
        // A last line back to the start is what Z draws; written out it would be there twice.
        out.append('Z');
        return this;
    }

    /** Adds an open path. */
    public PathData add(Path path) {
        move(path.start());
        for (Segment segment : path.segments()) {
            add(segment);
        }
        return this;
    }

    /** Adds all contours of a region; filled by the non-zero or the even-odd rule alike. */
    public PathData add(Region region) {
        for (Contour contour : region.contours()) {
            add(contour);
        }
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }

    private void add(Segment segment) {
        if (!(segment instanceof Arc arc)) {
            line(segment.end());
            return;
        }
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / WIDEST - SLACK));
        for (int i = 1; i <= pieces; i++) {
            Point end = i == pieces ? arc.end() : arc.pointAt((double) i / pieces);
            arc(arc.radius(), arc.isCounterClockwise(), end);
        }
    }

    private void move(Point p) {
        if (out.length() > 0) {
            out.append(' ');
        }
        out.append('M');
        target(Decimals.scaled(p.x(), decimals), Decimals.scaled(down(p), decimals));
    }

    private void line(Point p) {
        long x = Decimals.scaled(p.x(), decimals);
        long y = Decimals.scaled(down(p), decimals);
        if (x != lastX || y != lastY) {
            out.append(" L");
            target(x, y);
        }
    }

    private void arc(double radius, boolean counterClockwise, Point p) {
        long x = Decimals.scaled(p.x(), decimals);
        long y = Decimals.scaled(down(p), decimals);
        if (x == lastX && y == lastY) {
            return;
        }
        out.append(" A");
        Decimals.append(out, radius, decimals);
        out.append(' ');
        Decimals.append(out, radius * factorY, decimals);
        // y is negated, so counter-clockwise becomes the direction of decreasing angle: sweep flag 0.
        out.append(counterClockwise ? " 0 0 0 " : " 0 0 1 ");
        target(x, y);
    }

    private double down(Point p) {
        return shiftY - factorY * p.y();
    }

    private void target(long x, long y) {
        lastX = x;
        lastY = y;
        Decimals.appendScaled(out, x, decimals);
        out.append(' ');
        Decimals.appendScaled(out, y, decimals);
    }
}
