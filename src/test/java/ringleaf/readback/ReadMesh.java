// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import java.util.HashMap;
import java.util.Map;

/**
 * Triangles as a file has them: nine numbers each, x, y and z of three corners. Corners are told apart by their values
 * alone.
 */
public record ReadMesh(double[][] triangles) {
    private record Corner(double x, double y, double z) {}

    private record Edge(Corner from, Corner to) {}

    private static Corner corner(double[] t, int k) {
        return new Corner(t[3 * k] + 0.0, t[3 * k + 1] + 0.0, t[3 * k + 2] + 0.0);
    }

    /** Edges that are not shared by exactly two triangles which run along them in opposite directions. */
    public int faults() {
        Map<Edge, Integer> edges = new HashMap<>();
        int faults = 0;
        for (double[] t : triangles) {
            for (int k = 0; k < 3; k++) {
                Corner a = corner(t, k);
                Corner b = corner(t, (k + 1) % 3);
                faults += a.equals(b) ? 1 : 0;
                edges.merge(new Edge(a, b), 1, Integer::sum);
            }
        }
        for (Map.Entry<Edge, Integer> edge : edges.entrySet()) {
            Edge back = new Edge(edge.getKey().to, edge.getKey().from);
            faults += edge.getValue() != 1 || edges.getOrDefault(back, 0) != 1 ? 1 : 0;
        }
        return faults;
    }

    /** Enclosed volume by the divergence theorem with the field (0, 0, z), mm³. */
    public double volume() {
        double sum = 0;
        for (double[] t : triangles) {
            double up = ((t[3] - t[0]) * (t[7] - t[1]) - (t[4] - t[1]) * (t[6] - t[0])) / 2;
            sum += up * (t[2] + t[5] + t[8]) / 3;
        }
        return sum;
    }

    public double least(int axis) {
        double least = Double.POSITIVE_INFINITY;
        for (double[] t : triangles) {
            least = Math.min(least, Math.min(t[axis], Math.min(t[axis + 3], t[axis + 6])));
        }
        return least;
    }

    public double greatest(int axis) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (double[] t : triangles) {
            greatest = Math.max(greatest, Math.max(t[axis], Math.max(t[axis + 3], t[axis + 6])));
        }
        return greatest;
    }
}
