// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import ringleaf.curve.Lettering;
import ringleaf.geom.Box;
import ringleaf.geom.Line;
import ringleaf.geom.Point;

/** Level and upright dimensions of the box of a view: extension lines, dimension line with arrows, text above it. */
final class Linear {
    /** From the view to the dimension line, mm. */
    static final double OFFSET = 9;

    private static final double GAP = 1;
    private static final double OVER = 1.5;
    private static final double OUTSIDE = 7;
    private final Plotter plotter;

    Linear(Plotter plotter) {
        this.plotter = plotter;
    }

    /** Below the view, between the outermost points left and right; false where its text has no room. */
    boolean level(Point left, Point right, double y, String text) {
        double width = Lettering.width(text, Plotter.TEXT);
        double length = right.x() - left.x();
        boolean within = length >= width + 8;
        double x = within ? (left.x() + right.x() - width) / 2 : right.x() + OUTSIDE + 1;
        Point corner = new Point(x, y + 0.9 + (within ? 0.2 : 0));
        if (!plotter.room().isFree(Room.textBox(text, corner, Plotter.TEXT).grown(-0.5))) {
            return false;
        }
        plotter.text(text, corner, Plotter.TEXT);
        extension(left, new Point(left.x(), y), new Point(0, -1));
        extension(right, new Point(right.x(), y), new Point(0, -1));
        Point a = new Point(left.x(), y);
        Point b = new Point(right.x(), y);
        line(a, b, within, within ? 0 : width + 2);
        return true;
    }

    /** Left of the view, between the lowest and the highest point; false where its text has no room. */
    boolean upright(Point low, Point high, double x, String text) {
        double width = Lettering.width(text, Plotter.TEXT);
        double length = high.y() - low.y();
        boolean within = length >= width + 8;
        double y = within ? (low.y() + high.y() - width) / 2 : high.y() + OUTSIDE + 1;
        Point corner = new Point(x - 0.9 - 0.2, y);
        Box box = Plotter.uprightBox(text, corner, Plotter.TEXT);
        if (!plotter.room().isFree(box.grown(-0.5))) {
            return false;
        }
        plotter.upright(text, corner, Plotter.TEXT);
        extension(low, new Point(x, low.y()), new Point(-1, 0));
        extension(high, new Point(x, high.y()), new Point(-1, 0));
        line(new Point(x, low.y()), new Point(x, high.y()), within, within ? 0 : width + 2);
        return true;
    }

    private void extension(Point from, Point to, Point out) {
        Point start = from.plus(out.times(GAP));
        if (to.minus(start).dot(out) > 0) {
            plotter.thin(new Line(start, to.plus(out.times(OVER))));
        }
    }

    /** Arrows within, or from outside where there is no room; the line goes on under the text. */
    private void line(Point a, Point b, boolean within, double further) {
        Point along = b.minus(a).unit();
        if (within) {
            plotter.leader(a, b);
            plotter.arrow(a, along.times(-1));
            plotter.arrow(b, along);
            return;
        }
        plotter.leader(a.minus(along.times(OUTSIDE)), a);
        plotter.leader(a, b);
        plotter.leader(b, b.plus(along.times(OUTSIDE + further)));
        plotter.arrow(a, along);
        plotter.arrow(b, along.times(-1));
    }
}
