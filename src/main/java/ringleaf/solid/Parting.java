// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

/**
 * How far what each node of a tree holds reaches along a direction: that in which the nearest points found so far lie.
 * Two bodies are at least as far apart as along any one direction, and along this one nearly all of two bodies that face
 * one another is told apart at once. All nodes are worked out together, from the corners up.
 */
final class Parting {
    private final BoxTree tree;
    private final double[] corners;
    private final double[] reaches;

    Parting(BoxTree tree) {
        this.tree = tree;
        corners = new double[tree.corners.length / 3];
        reaches = new double[tree.right.length];
    }

    /**
     * Looks along another direction from now on.
     *
     * @param x of a vector of length 1 in the tree's frame
     * @param by added to every coordinate along it, mm
     */
    void along(double x, double y, double z, double by) {
        double[] c = tree.corners;
        for (int i = 0; i < corners.length; i++) {
            corners[i] = x * c[3 * i] + y * c[3 * i + 1] + z * c[3 * i + 2] + by;
        }
        int[] right = tree.right;
        int[] of = tree.cornersOf;
        for (int node = right.length - 1; node >= 0; node--) {
            int next = right[node];
            if (next < 0) {
                int t = 3 * (-1 - next);
                reaches[node] = Math.max(corners[of[t]], Math.max(corners[of[t + 1]], corners[of[t + 2]]));
            } else {
                reaches[node] = Math.max(reaches[node + 1], reaches[next]);
            }
        }
    }

    /** The greatest coordinate along the direction of what a node holds, mm. */
    double reach(int node) {
        return reaches[node];
    }
}
