// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.Arrays;
import java.util.List;
import ringleaf.geom.Box;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** Finds the pieces of an outline that may lie within a small reach of a point, by a grid of square cells. */
final class NearPieces {
    private static final int MOST_CELLS = 160;
    private static final int[] NONE = new int[0];

    private final double left;
    private final double bottom;
    private final double cell;
    private final int across;
    private final int up;
    private final int[][] cells;
    private final int[] counts;

    /**
     * A grid.
     *
     * @param reach that is asked for later, mm
     */
    NearPieces(List<Segment> pieces, Box box, double reach) {
        double margin = 3 * reach;
        double size = Math.max(box.width(), box.height()) + 2 * margin;
        cell = Math.max(4 * reach, size / MOST_CELLS);
        left = box.minX() - margin - cell;
        bottom = box.minY() - margin - cell;
        across = (int) Math.ceil((box.width() + 2 * margin) / cell) + 3;
        up = (int) Math.ceil((box.height() + 2 * margin) / cell) + 3;
        cells = new int[across * up][];
        counts = new int[across * up];
        for (int i = 0; i < pieces.size(); i++) {
            add(pieces.get(i), i);
        }
    }

    /** Points half a cell apart stand for the piece, each for the nine cells round it. */
    private void add(Segment piece, int index) {
        int steps = Math.max(1, (int) Math.ceil(2 * piece.length() / cell));
        int last = -1;
        for (int i = 0; i <= steps; i++) {
            Point p = piece.pointAt((double) i / steps);
            int x = (int) ((p.x() - left) / cell);
            int y = (int) ((p.y() - bottom) / cell);
            if (y * across + x == last) {
                continue;
            }
            last = y * across + x;
            for (int dy = -1; dy <= 1; dy++) {
                for (int dx = -1; dx <= 1; dx++) {
                    put((y + dy) * across + x + dx, index);
                }
            }
        }
    }

    private void put(int at, int index) {
        int count = counts[at];
        if (cells[at] == null) {
            cells[at] = new int[4];
        } else if (count > 0 && cells[at][count - 1] == index) {
            return;
        } else if (count == cells[at].length) {
            cells[at] = Arrays.copyOf(cells[at], 2 * count);
        }
        cells[at][count] = index;
        counts[at] = count + 1;
    }

    /** How many pieces may be near; all that lie within the reach are among them. */
    int count(Point p) {
        int at = at(p);
        return at < 0 ? 0 : counts[at];
    }

    /** Their numbers, of which the first {@link #count} hold. */
    int[] near(Point p) {
        int at = at(p);
        return at < 0 || cells[at] == null ? NONE : cells[at];
    }

    private int at(Point p) {
        int x = (int) Math.floor((p.x() - left) / cell);
        int y = (int) Math.floor((p.y() - bottom) / cell);
        return x < 0 || y < 0 || x >= across || y >= up ? -1 : y * across + x;
    }
}
