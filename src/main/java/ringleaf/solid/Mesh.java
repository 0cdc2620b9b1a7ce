// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

/**
 * A surface of triangles, closed where nothing is wrong with it; seen from outside, the corners of each run counter-clockwise. Nobody changes the
 * arrays that are handed out.
 */
public final class Mesh {
    private final double[] corners;
    private final int[] triangles;

    /**
     * A mesh of these corners, whatever they are: {@link MeshFault} says whether it bounds a solid.
     *
     * @param corners x, y and z of each, mm
     * @param triangles three corner numbers each
     */
    public Mesh(double[] corners, int[] triangles) {
        this.corners = corners;
        this.triangles = triangles;
    }

    /** x, y and z of each corner, mm. */
    public double[] corners() {
        return corners;
    }

    /** Three corner numbers a triangle. */
    public int[] triangles() {
        return triangles;
    }

    public int cornerCount() {
        return corners.length / 3;
    }

    public int triangleCount() {
        return triangles.length / 3;
    }

    /** Whether {@link MeshFault} finds nothing wrong. */
    public boolean isClosed() {
        return MeshFault.of(this).isEmpty();
    }

    /** The enclosed volume by the divergence theorem, mm³; above 0 when the triangles face outwards. */
    public double volume() {
        double sum = 0;
        for (int t = 0; t < triangles.length; t += 3) {
            int a = 3 * triangles[t];
            int b = 3 * triangles[t + 1];
            int c = 3 * triangles[t + 2];
            sum += corners[a] * (corners[b + 1] * corners[c + 2] - corners[b + 2] * corners[c + 1])
                    + corners[a + 1] * (corners[b + 2] * corners[c] - corners[b] * corners[c + 2])
                    + corners[a + 2] * (corners[b] * corners[c + 1] - corners[b + 1] * corners[c]);
        }
        return sum / 6;
    }

    /** Least coordinate along an axis (0 for x, 1 for y, 2 for z), mm. */
    public double least(int axis) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = axis; i < corners.length; i += 3) {
            least = Math.min(least, corners[i]);
        }
        return least;
    }

    /** Greatest coordinate along an axis, mm. */
    public double greatest(int axis) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = axis; i < corners.length; i += 3) {
            greatest = Math.max(greatest, corners[i]);
        }
        return greatest;
    }

    /** The same with its lowest face at z = 0. */
    public Mesh lowered() {
        double[] moved = corners.clone();
        double least = least(2);
        for (int i = 2; i < moved.length; i += 3) {
            moved[i] -= least;
        }
        return new Mesh(moved, triangles);
    }

    /** The same turned over about the x axis, its lowest face at z = 0; no mirror image. */
    public Mesh turnedOver() {
        double[] moved = corners.clone();
        double greatest = greatest(2);
        for (int i = 0; i < moved.length; i += 3) {
            moved[i + 1] = -moved[i + 1] + 0.0;
            moved[i + 2] = greatest - moved[i + 2];
        }
        return new Mesh(moved, triangles);
    }
}
