// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import ringleaf.curve.Flattening;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * The square cells that a region touches, with those of its edge apart. No cell that the region touches is missing
 * (proved: every point of the edge lies within half a step of a sample, and a square of that half width is marked); a
 * cell that is not of the edge lies wholly inside or outside.
 */
final class Raster {
    /** Column and row of the first cell. */
    final int left;

    final int bottom;
    final int width;
    final int height;
    private final BitSet edge;
    private final BitSet filled;

    private Raster(int left, int bottom, int width, int height) {
        this.left = left;
        this.bottom = bottom;
        this.width = width;
        this.height = height;
        edge = new BitSet(width * height);
        filled = new BitSet(width * height);
    }

    /** The region on a grid of cells of {@code cell} mm whose cell 0 begins at {@code origin}. */
    static Raster of(Region region, Point origin, double cell) {
        Box box = region.box();
        int left = (int) Math.floor((box.minX() - origin.x()) / cell) - 1;
        int bottom = (int) Math.floor((box.minY() - origin.y()) / cell) - 1;
        int right = (int) Math.floor((box.maxX() - origin.x()) / cell) + 1;
        int top = (int) Math.floor((box.maxY() - origin.y()) / cell) + 1;
        Raster raster = new Raster(left, bottom, right - left + 1, top - bottom + 1);
        for (Contour contour : region.contours()) {
            for (Segment segment : contour.segments()) {
                raster.mark(segment, origin, cell);
            }
        }
        raster.fill(region, origin, cell);
        return raster;
    }

    private void mark(Segment segment, Point origin, double cell) {
        int steps = Math.max(1, (int) Math.ceil(segment.length() / cell * 4));
        double reach = segment.length() / steps / 2 + 1e-9;
        for (int i = 0; i <= steps; i++) {
            Point p = segment.pointAt((double) i / steps).minus(origin);
            int x0 = (int) Math.floor((p.x() - reach) / cell);
            int x1 = (int) Math.floor((p.x() + reach) / cell);
            int y0 = (int) Math.floor((p.y() - reach) / cell);
            int y1 = (int) Math.floor((p.y() + reach) / cell);
            set(x0, y0);
            set(x1, y0);
            set(x0, y1);
            set(x1, y1);
        }
    }

    private void set(int x, int y) {
        edge.set((y - bottom) * width + x - left);
    }

    /** Cells whose middle lies inside, by crossings of the row's middle line with chords near the edge. */
    private void fill(Region region, Point origin, double cell) {
        double[][] crossings = new double[height][8];
        int[] counts = new int[height];
        for (Contour contour : region.contours()) {
            List<Point> points = Flattening.points(contour, new Tolerance(cell / 8));
            for (int i = 0; i < points.size(); i++) {
                Point a = points.get(i).minus(origin);
                Point b = points.get((i + 1) % points.size()).minus(origin);
                double low = Math.min(a.y(), b.y());
                double high = Math.max(a.y(), b.y());
                for (int row = Math.max(0, (int) Math.ceil(low / cell - 0.5) - bottom); row < height; row++) {
                    double y = (row + bottom + 0.5) * cell;
                    if (y >= high) {
                        break;
                    }
                    if (counts[row] == crossings[row].length) {
                        crossings[row] = Arrays.copyOf(crossings[row], 2 * counts[row]);
                    }
                    crossings[row][counts[row]++] = a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
                }
            }
        }
        filled.or(edge);
        for (int row = 0; row < height; row++) {
            Arrays.sort(crossings[row], 0, counts[row]);
            for (int i = 0; i + 1 < counts[row]; i += 2) {
                int from = (int) Math.ceil(crossings[row][i] / cell - 0.5) - left;
                int to = (int) Math.ceil(crossings[row][i + 1] / cell - 0.5) - left;
                if (to > from) {
                    filled.set(row * width + Math.max(0, from), row * width + Math.min(width, to));
                }
            }
        }
    }

    /** Whether the region touches this cell, counted from the origin's. */
    boolean has(int x, int y) {
        return x >= left
                && y >= bottom
                && x < left + width
                && y < bottom + height
                && filled.get((y - bottom) * width + x - left);
    }

    /** The edge's cells as steps in a grid of rows of this length, spread so that early ones lie far apart. */
    int[] edgeSteps(int stride) {
        int[] steps = new int[edge.cardinality()];
        int n = 0;
        for (int i = edge.nextSetBit(0); i >= 0; i = edge.nextSetBit(i + 1)) {
            steps[n++] = (i / width + bottom) * stride + i % width + left;
        }
        int[] spread = new int[n];
        int at = 0;
        // strides of a coprime step visit each once and jump across the shape
        int jump = Math.max(1, (int) (n * 0.381966));
        while (n > 0 && gcd(jump, n) != 1) {
            jump++;
        }
        for (int i = 0; i < n; i++) {
            spread[i] = steps[at];
            at = (at + jump) % n;
        }
        return spread;
    }

    private static int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** Marks all cells in a grid as taken; cells off the grid fall away. */
    void take(boolean[] grid, int stride, int x, int y) {
        int rows = grid.length / stride;
        for (int i = filled.nextSetBit(0); i >= 0; i = filled.nextSetBit(i + 1)) {
            int column = x + i % width + left;
            int row = y + i / width + bottom;
            if (column >= 0 && column < stride && row >= 0 && row < rows) {
                grid[row * stride + column] = true;
            }
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Raster r
                && left == r.left
                && bottom == r.bottom
                && width == r.width
                && height == r.height
                && filled.equals(r.filled);
    }

    @Override
    public int hashCode() {
        return 31 * width + height;
    }

    /** A cell of the edge, as column and row counted from the origin's. */
    int[] someCell() {
        int i = edge.nextSetBit(0);
        return new int[] {i % width + left, i / width + bottom};
    }
}
