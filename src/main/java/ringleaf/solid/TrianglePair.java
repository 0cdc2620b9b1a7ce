// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

/**
 * The distance of two triangles and the points where they are nearest: the least of the distances of all edges to all
 * edges and of corners to faces they stand over, and 0 where an edge of one goes through the other (Ericson, Real-Time
 * Collision Detection, 2005, 5.1.5 and 5.1.9; Larsen and others, Fast Proximity Queries with Swept Sphere Volumes,
 * 1999). The distance found is that of two true points of the triangles, to rounding.
 *
 * <p>Set both triangles, ask, read the points. For one thread.
 */
final class TrianglePair {
    /** x, y and z of the corners of either, in one frame, mm. */
    final double[] p = new double[9];

    final double[] q = new double[9];
    /** The nearest point of each after {@link #squared}, where that found them below its limit. */
    final double[] onP = new double[3];

    final double[] onQ = new double[3];

    private final double[] normal = new double[3];
    private final double[] heights = new double[3];
    private double best;

    /** The least squared distance, mm², or the limit where it is not below that. */
    double squared(double limit) {
        best = limit;
        if (!face(p, q, onP, onQ) || !face(q, p, onQ, onP)) {
            return best;
        }
        for (int i = 0; i < 9; i += 3) {
            for (int j = 0; j < 9; j += 3) {
                edges(i, (i + 3) % 9, j, (j + 3) % 9);
            }
        }
        return best;
    }

    /**
     * Corners and edges of {@code v} against the face {@code f}.
     *
     * @return false where the rest need not be looked at: nothing below the limit, or both touch
     */
    private boolean face(double[] f, double[] v, double[] onF, double[] onV) {
        double ux = f[3] - f[0];
        double uy = f[4] - f[1];
        double uz = f[5] - f[2];
        double wx = f[6] - f[0];
        double wy = f[7] - f[1];
        double wz = f[8] - f[2];
        double nx = uy * wz - uz * wy;
        double ny = uz * wx - ux * wz;
        double nz = ux * wy - uy * wx;
        double length = nx * nx + ny * ny + nz * nz;
        if (!(length > 0)) {
            return true;
        }
        normal[0] = nx;
        normal[1] = ny;
        normal[2] = nz;
        double h0 = nx * (v[0] - f[0]) + ny * (v[1] - f[1]) + nz * (v[2] - f[2]);
        double h1 = nx * (v[3] - f[0]) + ny * (v[4] - f[1]) + nz * (v[5] - f[2]);
        double h2 = nx * (v[6] - f[0]) + ny * (v[7] - f[1]) + nz * (v[8] - f[2]);
        heights[0] = h0;
        heights[1] = h1;
        heights[2] = h2;
        if (h0 > 0 && h1 > 0 && h2 > 0 || h0 < 0 && h1 < 0 && h2 < 0) {
            double least = Math.min(Math.abs(h0), Math.min(Math.abs(h1), Math.abs(h2)));
            if (least * least >= best * length) {
                return false;
            }
        } else {
            for (int i = 0; i < 3; i++) {
                if (through(f, v, i, (i + 1) % 3, onF, onV)) {
                    return false;
                }
            }
        }
        for (int i = 0; i < 3; i++) {
            corner(f, v, i, length, onF, onV);
        }
        return true;
    }

    private void corner(double[] f, double[] v, int i, double length, double[] onF, double[] onV) {
        double squared = heights[i] * heights[i] / length;
        if (squared < best && over(f, v[3 * i], v[3 * i + 1], v[3 * i + 2])) {
            best = squared;
            double share = heights[i] / length;
            for (int k = 0; k < 3; k++) {
                onV[k] = v[3 * i + k];
                onF[k] = v[3 * i + k] - share * normal[k];
            }
        }
    }

    /** Whether an edge goes through the face; then the distance is 0. */
    private boolean through(double[] f, double[] v, int i, int j, double[] onF, double[] onV) {
        double from = heights[i];
        double to = heights[j];
        if (from > 0 && to > 0 || from < 0 && to < 0 || from == to) {
            return false;
        }
        double share = from / (from - to);
        double x = v[3 * i] + share * (v[3 * j] - v[3 * i]);
        double y = v[3 * i + 1] + share * (v[3 * j + 1] - v[3 * i + 1]);
        double z = v[3 * i + 2] + share * (v[3 * j + 2] - v[3 * i + 2]);
        if (!over(f, x, y, z)) {
            return false;
        }
        best = 0;
        onF[0] = x;
        onF[1] = y;
        onF[2] = z;
        System.arraycopy(onF, 0, onV, 0, 3);
        return true;
    }

    /** Whether a point stands over the face along its normal. */
    private boolean over(double[] f, double x, double y, double z) {
        for (int i = 0; i < 9; i += 3) {
            int j = (i + 3) % 9;
            double ex = f[j] - f[i];
            double ey = f[j + 1] - f[i + 1];
            double ez = f[j + 2] - f[i + 2];
            double dx = x - f[i];
            double dy = y - f[i + 1];
            double dz = z - f[i + 2];
            double side =
                    normal[0] * (ey * dz - ez * dy) + normal[1] * (ez * dx - ex * dz) + normal[2] * (ex * dy - ey * dx);
            if (side < 0) {
                return false;
            }
        }
        return true;
    }

    /** The edge of p between two of its corners against one of q (Ericson, 5.1.9). */
    private void edges(int p0, int p1, int q0, int q1) {
        double ux = p[p1] - p[p0];
        double uy = p[p1 + 1] - p[p0 + 1];
        double uz = p[p1 + 2] - p[p0 + 2];
        double vx = q[q1] - q[q0];
        double vy = q[q1 + 1] - q[q0 + 1];
        double vz = q[q1 + 2] - q[q0 + 2];
        double rx = p[p0] - q[q0];
        double ry = p[p0 + 1] - q[q0 + 1];
        double rz = p[p0 + 2] - q[q0 + 2];
        double a = ux * ux + uy * uy + uz * uz;
        double e = vx * vx + vy * vy + vz * vz;
        double b = ux * vx + uy * vy + uz * vz;
        double c = ux * rx + uy * ry + uz * rz;
        double f = vx * rx + vy * ry + vz * rz;
        double apart = a * e - b * b;
        double s = apart > 1e-16 * a * e ? clamped((b * f - c * e) / apart) : 0;
        double t = e > 0 ? (b * s + f) / e : 0;
        if (t < 0 || t > 1) {
            t = clamped(t);
            s = a > 0 ? clamped((b * t - c) / a) : 0;
        } else if (!(e > 0)) {
            s = a > 0 ? clamped(-c / a) : 0;
        }
        double dx = rx + s * ux - t * vx;
        double dy = ry + s * uy - t * vy;
        double dz = rz + s * uz - t * vz;
        double squared = dx * dx + dy * dy + dz * dz;
        if (squared < best) {
            best = squared;
            onP[0] = p[p0] + s * ux;
            onP[1] = p[p0 + 1] + s * uy;
            onP[2] = p[p0 + 2] + s * uz;
            onQ[0] = q[q0] + t * vx;
            onQ[1] = q[q0 + 1] + t * vy;
            onQ[2] = q[q0 + 2] + t * vz;
        }
    }

    private static double clamped(double share) {
        return share < 0 ? 0 : share > 1 ? 1 : share;
    }
}
