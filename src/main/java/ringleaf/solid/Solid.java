// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import java.util.ArrayList;
import java.util.List;
import ringleaf.space.Vector;

/** What a closed mesh bounds, ready to be asked for distances. */
public final class Solid {
    private final Mesh mesh;
    private final double chord;
    private final BoxTree tree;
    private final List<Vector> shells;

    /**
     * The solid of a mesh.
     *
     * @param mesh closed
     * @param chord by how much the true surface may leave the mesh, mm, 0 where it is flat
     * @throws IllegalArgumentException where the mesh does not bound a solid, with the fault and its place
     */
    public Solid(Mesh mesh, double chord) {
        MeshFault.of(mesh).ifPresent(fault -> {
            throw new IllegalArgumentException(fault.words());
        });
        if (!(chord >= 0)) {
            throw new IllegalArgumentException("no chord error of " + chord);
        }
        this.mesh = mesh;
        this.chord = chord;
        tree = new BoxTree(mesh);
        shells = shells(mesh);
    }

    public Mesh mesh() {
        return mesh;
    }

    /** By how much the true surface may leave the mesh, mm. */
    public double chord() {
        return chord;
    }

    BoxTree tree() {
        return tree;
    }

    /** A corner of each connected piece of the surface. */
    List<Vector> shells() {
        return shells;
    }

    /**
     * Whether a point that is not on the surface lies in the solid: the sum of the triangles' solid angles seen from it
     * is a whole turn (van Oosterom and Strackee, 1983). Takes time with every triangle.
     */
    public boolean contains(Vector point) {
        double[] t = tree.triangles;
        Vector out = point.minus(new Vector(tree.middles[0], tree.middles[1], tree.middles[2]));
        for (int i = 0; i < 3; i++) {
            Vector axis = new Vector(tree.axes[3 * i], tree.axes[3 * i + 1], tree.axes[3 * i + 2]);
            if (Math.abs(out.dot(axis)) > tree.halves[i] * (1 + 1e-9)) {
                return false;
            }
        }
        double sum = 0;
        for (int i = 0; i < t.length; i += 9) {
            sum += solidAngle(t, i, point);
        }
        return sum > 2 * Math.PI;
    }

    /** How far its farthest corner is from a straight line through a point along a direction of length 1, mm. */
    public double radiusAbout(Vector through, Vector direction) {
        double most = 0;
        double[] c = mesh.corners();
        for (int i = 0; i < c.length; i += 3) {
            Vector from = new Vector(c[i], c[i + 1], c[i + 2]).minus(through);
            most = Math.max(most, from.cross(direction).length());
        }
        return most + chord;
    }

    private static double solidAngle(double[] t, int i, Vector p) {
        Vector a = new Vector(t[i] - p.x(), t[i + 1] - p.y(), t[i + 2] - p.z());
        Vector b = new Vector(t[i + 3] - p.x(), t[i + 4] - p.y(), t[i + 5] - p.z());
        Vector c = new Vector(t[i + 6] - p.x(), t[i + 7] - p.y(), t[i + 8] - p.z());
        double la = a.length();
        double lb = b.length();
        double lc = c.length();
        double below = la * lb * lc + a.dot(b) * lc + b.dot(c) * la + c.dot(a) * lb;
        return 2 * Math.atan2(a.dot(b.cross(c)), below);
    }

    private static List<Vector> shells(Mesh mesh) {
        int[] leader = new int[mesh.cornerCount()];
        for (int i = 0; i < leader.length; i++) {
            leader[i] = i;
        }
        int[] triangles = mesh.triangles();
        for (int i = 0; i < triangles.length; i++) {
            int a = leader(leader, triangles[i]);
            int b = leader(leader, triangles[i % 3 == 2 ? i - 2 : i + 1]);
            leader[Math.max(a, b)] = Math.min(a, b);
        }
        boolean[] seen = new boolean[leader.length];
        List<Vector> shells = new ArrayList<>();
        for (int corner : triangles) {
            int first = leader(leader, corner);
            if (!seen[first]) {
                seen[first] = true;
                double[] c = mesh.corners();
                shells.add(new Vector(c[3 * first], c[3 * first + 1], c[3 * first + 2]));
            }
        }
        return shells;
    }

    private static int leader(int[] leader, int i) {
        int at = i;
        while (leader[at] != at) {
            leader[at] = leader[leader[at]];
            at = leader[at];
        }
        return at;
    }
}
