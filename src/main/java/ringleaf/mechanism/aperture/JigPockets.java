// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Distances;
import ringleaf.curve.Roots;
import ringleaf.geom.Box;
import ringleaf.geom.Placement;
import ringleaf.geom.Region;

/**
 * Equal shapes side by side on a plate: turned to the angle, and laid in as many columns, as give the smallest plate.
 * Each follows the one below at the least distance that leaves the web, so that bands lie in one another.
 *
 * @param places from the shape's own frame to each place
 * @param box of all of them
 */
record JigPockets(List<Placement> places, Box box) {
    private static final int ANGLES = 24;
    private static final int MOST_COLUMNS = 4;
    private static final int HALVINGS = 14;

    static JigPockets of(Region shape, int count, double web) {
        JigPockets best = null;
        for (int i = 0; i < ANGLES; i++) {
            Placement turn = Placement.turn(i * Math.PI / ANGLES);
            Region turned = shape.placed(turn);
            double step = step(turned, web, Math.min(count, 3));
            Box one = turned.box();
            for (int columns = 1; columns <= Math.min(MOST_COLUMNS, count); columns++) {
                int rows = (count + columns - 1) / columns;
                double across = one.width() + web;
                Box box = new Box(
                        one.minX(), one.minY(), one.maxX() + (columns - 1) * across, one.maxY() + (rows - 1) * step);
                if (best == null || size(box) < size(best.box) * (1 - 1e-9)) {
                    List<Placement> places = new ArrayList<>();
                    for (int k = 0; k < count; k++) {
                        places.add(turn.then(Placement.shift(k / rows * across, k % rows * step)));
                    }
                    best = new JigPockets(places, box);
                }
            }
        }
        return best;
    }

    /** Small area counts, and so does being about square. */
    private static double size(Box box) {
        return box.width() * box.height() + 0.2 * (box.width() * box.width() + box.height() * box.height());
    }

    /** The least upward shift at which copies keep the web, found by halving; the one above that is taken holds it. */
    private static double step(Region shape, double web, int copies) {
        return Roots.last(step -> keeps(shape, step, web, copies), shape.box().height() + web, web, HALVINGS);
    }

    private static boolean keeps(Region shape, double step, double web, int copies) {
        for (int i = 1; i < copies; i++) {
            if (Distances.between(shape, shape.placed(Placement.shift(0, i * step)))
                            .distance()
                    < web) {
                return false;
            }
        }
        return true;
    }
}
