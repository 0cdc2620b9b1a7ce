// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Point;

/** Points made one: a point within the snap radius of a known node is that node. Order of arrival decides. */
final class Nodes {
    private final double snap;
    private final double cell;
    private final List<Point> points = new ArrayList<>();
    /** Nodes by grid cell; only ever looked up, so hash order decides nothing. */
    private final Map<Long, List<Integer>> grid = new HashMap<>();

    Nodes(double snap) {
        this.snap = snap;
        this.cell = 4 * snap;
    }

    int size() {
        return points.size();
    }

    Point point(int node) {
        return points.get(node);
    }

    /** The node at {@code p}: the nearest known one within the snap radius, or a new one. */
    int at(Point p) {
        long column = (long) Math.floor(p.x() / cell);
        long row = (long) Math.floor(p.y() / cell);
        int best = -1;
        double least = snap;
        for (long i = column - 1; i <= column + 1; i++) {
            for (long j = row - 1; j <= row + 1; j++) {
                for (int node : grid.getOrDefault(key(i, j), List.of())) {
                    double distance = points.get(node).distance(p);
                    if (distance <= least && (distance < least || best < 0)) {
                        best = node;
                        least = distance;
                    }
                }
            }
        }
        if (best >= 0) {
            return best;
        }
        points.add(p);
        List<Integer> here = grid.get(key(column, row));
        if (here == null) {
            here = new ArrayList<>(1);
            grid.put(key(column, row), here);
        }
        here.add(points.size() - 1);
        return points.size() - 1;
    }

    private static long key(long column, long row) {
        return column * 0x9E3779B97F4A7C15L + row;
    }
}
