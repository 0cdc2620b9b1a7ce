// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import ringleaf.space.Pose;
import ringleaf.space.Vector;

/** The boxes of a tree as they stand in another frame, each worked out when it is asked for the first time at a pose. */
final class PlacedBoxes {
    /** Three numbers a node, valid after {@link #want}. */
    final double[] middles;
    /** Nine numbers a node, valid after {@link #want}. */
    final double[] axes;

    private final BoxTree tree;
    private final int[] stamps;
    private int stamp;
    /** Rows of the turn, then the shift. */
    private final double[] r = new double[9];

    private final double[] shift = new double[3];

    PlacedBoxes(BoxTree tree) {
        this.tree = tree;
        middles = new double[3 * tree.nodes()];
        axes = new double[9 * tree.nodes()];
        stamps = new int[tree.nodes()];
    }

    void place(Pose pose) {
        stamp++;
        Vector x = pose.turn().apply(Vector.X);
        Vector y = pose.turn().apply(Vector.Y);
        Vector z = pose.turn().apply(Vector.Z);
        set(0, x.x(), y.x(), z.x(), pose.shift().x());
        set(1, x.y(), y.y(), z.y(), pose.shift().y());
        set(2, x.z(), y.z(), z.z(), pose.shift().z());
    }

    private void set(int row, double x, double y, double z, double by) {
        r[3 * row] = x;
        r[3 * row + 1] = y;
        r[3 * row + 2] = z;
        shift[row] = by;
    }

    void want(int node) {
        if (stamps[node] != stamp) {
            stamps[node] = stamp;
            point(tree.middles, 3 * node, middles, 3 * node);
            for (int at = 9 * node; at < 9 * node + 9; at += 3) {
                direction(tree.axes, at, axes, at);
            }
        }
    }

    /** Has a direction of the other frame, of length 1, looked along in the tree. */
    void along(Parting parting, double x, double y, double z) {
        parting.along(
                r[0] * x + r[3] * y + r[6] * z,
                r[1] * x + r[4] * y + r[7] * z,
                r[2] * x + r[5] * y + r[8] * z,
                shift[0] * x + shift[1] * y + shift[2] * z);
    }

    /** The corners of a triangle where they stand. */
    void triangle(int number, double[] to) {
        for (int i = 0; i < 9; i += 3) {
            point(tree.triangles, 9 * number + i, to, i);
        }
    }

    private void point(double[] from, int i, double[] to, int j) {
        direction(from, i, to, j);
        to[j] += shift[0];
        to[j + 1] += shift[1];
        to[j + 2] += shift[2];
    }

    private void direction(double[] from, int i, double[] to, int j) {
        double x = from[i];
        double y = from[i + 1];
        double z = from[i + 2];
        to[j] = r[0] * x + r[1] * y + r[2] * z;
        to[j + 1] = r[3] * x + r[4] * y + r[5] * z;
        to[j + 2] = r[6] * x + r[7] * y + r[8] * z;
    }
}
