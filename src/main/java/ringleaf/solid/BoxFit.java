// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import java.util.Arrays;

/**
 * The box round some triangles, turned as suits them: along the main directions in which their corners spread (Gottschalk
 * and others, OBBTree, 1996), or along the mesh's axes where that has less surface.
 */
final class BoxFit {
    private static final int SWEEPS = 12;

    /** Rows are the box's axes, of length 1. */
    final double[] axes = new double[9];
    /** Its middle in the mesh's frame, mm. */
    final double[] middle = new double[3];
    /** Half its size along each of its axes, mm. */
    final double[] half = new double[3];

    private final double[] spread = new double[9];
    private final double[] low = new double[3];
    private final double[] high = new double[3];

    /** Fits the box to the corners of these triangles. */
    void fit(double[] corners, int[] order, int from, int to) {
        turnToSpread(corners, order, from, to);
        double turned = measure(corners, order, from, to);
        double[] kept = axes.clone();
        Arrays.fill(axes, 0);
        axes[0] = 1;
        axes[4] = 1;
        axes[8] = 1;
        if (measure(corners, order, from, to) > turned) {
            System.arraycopy(kept, 0, axes, 0, 9);
            measure(corners, order, from, to);
        }
        for (int k = 0; k < 3; k++) {
            half[k] = (high[k] - low[k]) / 2;
            middle[k] = 0;
            for (int i = 0; i < 3; i++) {
                middle[k] += axes[3 * i + k] * (low[i] + high[i]) / 2;
            }
        }
    }

    /** Extents along the axes; the surface that comes of them. */
    private double measure(double[] corners, int[] order, int from, int to) {
        for (int k = 0; k < 3; k++) {
            low[k] = Double.POSITIVE_INFINITY;
            high[k] = Double.NEGATIVE_INFINITY;
        }
        for (int i = from; i < to; i++) {
            for (int at = 9 * order[i]; at < 9 * order[i] + 9; at += 3) {
                for (int k = 0; k < 3; k++) {
                    double along = axes[3 * k] * corners[at]
                            + axes[3 * k + 1] * corners[at + 1]
                            + axes[3 * k + 2] * corners[at + 2];
                    low[k] = Math.min(low[k], along);
                    high[k] = Math.max(high[k], along);
                }
            }
        }
        double x = high[0] - low[0];
        double y = high[1] - low[1];
        double z = high[2] - low[2];
        return x * y + y * z + z * x;
    }

    /** Axes along the eigenvectors of the corners' covariance, found by Jacobi's rotations. */
    private void turnToSpread(double[] corners, int[] order, int from, int to) {
        covariance(corners, order, from, to);
        double[] v = {1, 0, 0, 0, 1, 0, 0, 0, 1};
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (int p = 0; p < 2; p++) {
                for (int q = p + 1; q < 3; q++) {
                    rotate(v, p, q);
                }
            }
        }
        // columns of v are the directions; rows of axes are wanted
        for (int i = 0; i < 3; i++) {
            double length = Math.sqrt(v[i] * v[i] + v[3 + i] * v[3 + i] + v[6 + i] * v[6 + i]);
            for (int k = 0; k < 3; k++) {
                axes[3 * i + k] = v[3 * k + i] / length;
            }
        }
    }

    private void covariance(double[] corners, int[] order, int from, int to) {
        double[] mean = new double[3];
        int count = 3 * (to - from);
        for (int i = from; i < to; i++) {
            for (int at = 0; at < 9; at++) {
                mean[at % 3] += corners[9 * order[i] + at] / count;
            }
        }
        Arrays.fill(spread, 0);
        for (int i = from; i < to; i++) {
            for (int at = 9 * order[i]; at < 9 * order[i] + 9; at += 3) {
                for (int k = 0; k < 9; k++) {
                    spread[k] += (corners[at + k / 3] - mean[k / 3]) * (corners[at + k % 3] - mean[k % 3]);
                }
            }
        }
    }

    private void rotate(double[] v, int p, int q) {
        double off = spread[3 * p + q];
        if (off == 0) {
            return;
        }
        double theta = (spread[4 * q] - spread[4 * p]) / (2 * off);
        double t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        double c = 1 / Math.sqrt(t * t + 1);
        double s = t * c;
        for (int k = 0; k < 3; k++) {
            double kp = spread[3 * k + p];
            double kq = spread[3 * k + q];
            spread[3 * k + p] = c * kp - s * kq;
            spread[3 * k + q] = s * kp + c * kq;
            double vp = v[3 * k + p];
            double vq = v[3 * k + q];
            v[3 * k + p] = c * vp - s * vq;
            v[3 * k + q] = s * vp + c * vq;
        }
        for (int k = 0; k < 3; k++) {
            double pk = spread[3 * p + k];
            double qk = spread[3 * q + k];
            spread[3 * p + k] = c * pk - s * qk;
            spread[3 * q + k] = s * pk + c * qk;
        }
    }
}
