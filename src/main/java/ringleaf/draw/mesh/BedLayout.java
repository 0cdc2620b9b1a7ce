// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ringleaf.geom.Point;
import ringleaf.solid.Mesh;

/**
 * Copies of solids side by side on one plate: boxes in rows, the deepest first, in about a square. Whoever prints them
 * may still move them; nothing lies on anything else.
 */
final class BedLayout {
    /** Between the boxes of neighbours, mm; common practice, room for a brim. */
    static final double GAP = 5;

    private BedLayout() {}

    /** Where a copy goes: added to the solid's x and y. */
    record Spot(int item, Point shift) {}

    /** A spot for every copy of every item; copies of one item follow one another. */
    static List<Spot> of(List<ThreeMfWriter.Item> items) {
        List<Integer> order = new ArrayList<>();
        double area = 0;
        double widest = 0;
        for (int i = 0; i < items.size(); i++) {
            order.add(i);
            Mesh mesh = items.get(i).mesh();
            area += items.get(i).count() * (width(mesh) + GAP) * (depth(mesh) + GAP);
            widest = Math.max(widest, width(mesh));
        }
        order.sort(Comparator.comparingDouble(i -> -depth(items.get(i).mesh())));
        double room = Math.max(widest, Math.sqrt(area));
        List<Spot> spots = new ArrayList<>();
        double x = 0;
        double row = 0;
        double deepest = 0;
        for (int i : order) {
            Mesh mesh = items.get(i).mesh();
            for (int n = 0; n < items.get(i).count(); n++) {
                if (x > 0 && x + width(mesh) > room) {
                    row += deepest + GAP;
                    x = 0;
                    deepest = 0;
                }
                spots.add(new Spot(i, new Point(x - mesh.least(0), row - mesh.least(1))));
                x += width(mesh) + GAP;
                deepest = Math.max(deepest, depth(mesh));
            }
        }
        return spots;
    }

    private static double width(Mesh mesh) {
        return mesh.greatest(0) - mesh.least(0);
    }

    private static double depth(Mesh mesh) {
        return mesh.greatest(1) - mesh.least(1);
    }
}
