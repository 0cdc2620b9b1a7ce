// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.StrokeFont;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;

/** A bar of 50 mm to lay a ruler on: whoever prints or imports a file sees at once whether the scale is true. */
public final class ScaleBar {
    /** Length of the bar, mm. */
    public static final double LENGTH = 50;

    private static final double TICK = 2;
    private static final double LETTER = 2;

    private ScaleBar() {}

    /** The bar with its ticks and its figure, the left end of the line at {@code corner}. */
    public static List<Drawn> at(Point corner) {
        List<Drawn> things = new ArrayList<>();
        things.add(line(corner, corner.plus(new Point(LENGTH, 0))));
        for (int i = 0; i <= 5; i++) {
            Point foot = corner.plus(new Point(i * LENGTH / 5, 0));
            things.add(line(foot, foot.plus(new Point(0, i % 5 == 0 ? TICK : TICK / 2))));
        }
        Point text = corner.plus(new Point(LENGTH + 1, 0));
        things.add(new Drawn.Lettering("50 mm", StrokeFont.strokes("50 mm", text, LETTER)));
        return things;
    }

    private static Drawn line(Point from, Point to) {
        return new Drawn.Open(Path.of(new Line(from, to)));
    }
}
