// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import java.util.Arrays;

/**
 * A tree of boxes over the triangles of a mesh, one triangle a leaf, each turned as suits what it holds ({@link BoxFit}).
 * A box is split where upright boxes round both halves, weighed by their triangles, have the least surface (the
 * surface-area heuristic over equal bins along each axis: Wald, "On fast construction of SAH-based bounding volume
 * hierarchies", 2007).
 */
final class BoxTree {
    private static final int BINS = 16;

    /** Middle of each node's box, mm: three numbers a node; the left child follows its parent. */
    final double[] middles;
    /** The axes of each node's box, of length 1: nine numbers a node. */
    final double[] axes;
    /** Half the size of each node's box along each of its axes, mm: three numbers a node. */
    final double[] halves;
    /** The right child of each node; of a leaf, -1 less the number of its triangle in {@link #triangles}. */
    final int[] right;
    /** Nine coordinates a triangle, in the order of the leaves, mm. */
    final double[] triangles;

    /** Corners of the mesh, mm, and the three of each triangle in the order of the leaves. */
    final double[] corners;

    final int[] cornersOf;

    private final BoxFit fit = new BoxFit();
    private final double[] homes;
    private final int[] order;
    private final double[] source;
    private int used;

    BoxTree(Mesh mesh) {
        int n = mesh.triangleCount();
        middles = new double[3 * (2 * n - 1)];
        axes = new double[9 * (2 * n - 1)];
        halves = new double[3 * (2 * n - 1)];
        right = new int[2 * n - 1];
        triangles = new double[9 * n];
        source = new double[9 * n];
        homes = new double[3 * n];
        order = new int[n];
        for (int i = 0; i < 3 * n; i++) {
            System.arraycopy(mesh.corners(), 3 * mesh.triangles()[i], source, 3 * i, 3);
        }
        for (int t = 0; t < n; t++) {
            order[t] = t;
            for (int axis = 0; axis < 3; axis++) {
                int at = 9 * t + axis;
                double least = Math.min(source[at], Math.min(source[at + 3], source[at + 6]));
                double most = Math.max(source[at], Math.max(source[at + 3], source[at + 6]));
                homes[3 * t + axis] = (least + most) / 2;
            }
        }
        build(0, n);
        corners = mesh.corners();
        cornersOf = new int[3 * n];
        for (int t = 0; t < n; t++) {
            System.arraycopy(source, 9 * order[t], triangles, 9 * t, 9);
            System.arraycopy(mesh.triangles(), 3 * order[t], cornersOf, 3 * t, 3);
        }
    }

    int nodes() {
        return right.length;
    }

    /** Half the greatest size of a node's box, mm. */
    double size(int node) {
        return Math.max(halves[3 * node], Math.max(halves[3 * node + 1], halves[3 * node + 2]));
    }

    private int build(int from, int to) {
        int node = used++;
        fit.fit(source, order, from, to);
        System.arraycopy(fit.middle, 0, middles, 3 * node, 3);
        System.arraycopy(fit.axes, 0, axes, 9 * node, 9);
        System.arraycopy(fit.half, 0, halves, 3 * node, 3);
        if (to - from == 1) {
            right[node] = -1 - from;
            return node;
        }
        int cut = split(from, to);
        build(from, cut);
        right[node] = build(cut, to);
        return node;
    }

    /** Sorts the triangles of a node into two halves; the index where the second one begins. */
    private int split(int from, int to) {
        double best = Double.POSITIVE_INFINITY;
        int bestAxis = -1;
        double border = 0;
        for (int axis = 0; axis < 3; axis++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                least = Math.min(least, homes[3 * order[i] + axis]);
                most = Math.max(most, homes[3 * order[i] + axis]);
            }
            double width = (most - least) / BINS;
            if (!(width > 0)) {
                continue;
            }
            double[][] bins = new double[BINS][];
            int[] counts = new int[BINS];
            for (int i = from; i < to; i++) {
                int bin = Math.min(BINS - 1, (int) ((homes[3 * order[i] + axis] - least) / width));
                bins[bin] = bins[bin] == null ? emptyBox() : bins[bin];
                include(bins[bin], order[i]);
                counts[bin]++;
            }
            double[] costs = costs(bins, counts, to - from);
            for (int k = 1; k < BINS; k++) {
                if (costs[k] < best) {
                    best = costs[k];
                    bestAxis = axis;
                    border = least + k * width;
                }
            }
        }
        int cut = bestAxis < 0 ? from : parted(from, to, bestAxis, border);
        return cut == from || cut == to ? (from + to) / 2 : cut;
    }

    /** Cost of parting before each bin; endless where one half would be empty. */
    private static double[] costs(double[][] bins, int[] counts, int all) {
        double[] costs = new double[BINS];
        Arrays.fill(costs, Double.POSITIVE_INFINITY);
        double[] box = emptyBox();
        int count = 0;
        double[] left = new double[BINS];
        for (int k = 0; k + 1 < BINS; k++) {
            join(box, bins[k]);
            count += counts[k];
            left[k + 1] = count == 0 ? Double.POSITIVE_INFINITY : count * surface(box);
        }
        box = emptyBox();
        count = 0;
        for (int k = BINS - 1; k > 0; k--) {
            join(box, bins[k]);
            count += counts[k];
            if (count > 0 && count < all) {
                costs[k] = left[k] + count * surface(box);
            }
        }
        return costs;
    }

    private int parted(int from, int to, int axis, double border) {
        int low = from;
        int high = to - 1;
        while (low <= high) {
            if (homes[3 * order[low] + axis] < border) {
                low++;
            } else {
                int swap = order[low];
                order[low] = order[high];
                order[high--] = swap;
            }
        }
        return low;
    }

    private static double[] emptyBox() {
        double inf = Double.POSITIVE_INFINITY;
        return new double[] {inf, inf, inf, -inf, -inf, -inf};
    }

    private void include(double[] box, int triangle) {
        for (int i = 0; i < 9; i++) {
            double v = source[9 * triangle + i];
            box[i % 3] = Math.min(box[i % 3], v);
            box[3 + i % 3] = Math.max(box[3 + i % 3], v);
        }
    }

    private static void join(double[] box, double[] other) {
        for (int i = 0; other != null && i < 3; i++) {
            box[i] = Math.min(box[i], other[i]);
            box[i + 3] = Math.max(box[i + 3], other[i + 3]);
        }
    }

    private static double surface(double[] box) {
        double x = box[3] - box[0];
        double y = box[4] - box[1];
        double z = box[5] - box[2];
        return x * y + y * z + z * x;
    }
}
