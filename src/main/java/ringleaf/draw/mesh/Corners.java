// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.mesh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Point;

/** Points of the plane, where those nearer to one another than a distance count as one and keep the first's place. */
final class Corners {
    private static final double CELL = 64;

    private final double near;
    private final double cell;
    private final List<Point> points = new ArrayList<>();
    private final Map<Long, List<Integer>> cells = new HashMap<>();

    Corners(double near) {
        this.near = near;
        this.cell = CELL * near;
    }

    List<Point> points() {
        return points;
    }

    /** The number of the point, which is added where none lies so near. */
    int number(Point p) {
        long x0 = (long) Math.floor((p.x() - near) / cell);
        long x1 = (long) Math.floor((p.x() + near) / cell);
        long y0 = (long) Math.floor((p.y() - near) / cell);
        long y1 = (long) Math.floor((p.y() + near) / cell);
        for (long x = x0; x <= x1; x++) {
            for (long y = y0; y <= y1; y++) {
                for (int i : cells.getOrDefault(key(x, y), List.of())) {
                    if (points.get(i).distance(p) <= near) {
                        return i;
                    }
                }
            }
        }
        points.add(p);
        long home = key((long) Math.floor(p.x() / cell), (long) Math.floor(p.y() / cell));
        cells.computeIfAbsent(home, k -> new ArrayList<>(2)).add(points.size() - 1);
        return points.size() - 1;
    }

    private static long key(long x, long y) {
        return x * 0x9E3779B97F4A7C15L + y;
    }
}
