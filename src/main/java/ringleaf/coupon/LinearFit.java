// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Ordinary least squares y = X b + e by QR decomposition, with what an uncertainty needs: the residual variance, the
 * covariance s² (XᵀX)⁻¹, and how far a shift of the observations moves each parameter.
 */
final class LinearFit {
    private final RealMatrix x;
    /** (XᵀX)⁻¹ Xᵀ: parameters from observations. */
    private final RealMatrix solver;

    private final RealMatrix unscaled;
    private final double[] parameters;
    private final double[] residuals;
    private final double variance;

    private LinearFit(RealMatrix x, RealMatrix solver, double[] y) {
        this.x = x;
        this.solver = solver;
        this.unscaled = solver.multiply(solver.transpose());
        this.parameters = solver.operate(y);
        double[] fitted = x.operate(parameters);
        residuals = new double[y.length];
        double sum = 0;
        for (int i = 0; i < y.length; i++) {
            residuals[i] = y[i] - fitted[i];
            sum += residuals[i] * residuals[i];
        }
        variance = sum / dof();
    }

    /**
     * The fit.
     *
     * @param rows of X, more than parameters, of full rank
     * @param y observations
     */
    static LinearFit of(double[][] rows, double[] y) {
        RealMatrix x = new Array2DRowRealMatrix(rows);
        QRDecomposition qr = new QRDecomposition(x, 1e-12);
        RealMatrix solver = qr.getSolver().solve(MatrixUtils.createRealIdentityMatrix(rows.length));
        return new LinearFit(x, solver, y);
    }

    double parameter(int i) {
        return parameters[i];
    }

    int dof() {
        return x.getRowDimension() - x.getColumnDimension();
    }

    /** Residual variance, the sum of squares over the degrees of freedom. */
    double variance() {
        return variance;
    }

    double residual(int i) {
        return residuals[i];
    }

    /** Variance of w·b for a residual variance of 1. */
    double spread(double[] w) {
        double sum = 0;
        for (int i = 0; i < w.length; i++) {
            for (int j = 0; j < w.length; j++) {
                sum += w[i] * unscaled.getEntry(i, j) * w[j];
            }
        }
        return sum;
    }

    /** How far w·b moves when the observations move by these amounts. */
    double moved(double[] w, double[] shift) {
        double[] by = solver.operate(shift);
        double sum = 0;
        for (int i = 0; i < w.length; i++) {
            sum += w[i] * by[i];
        }
        return sum;
    }

    /** Share of an observation in its own fitted value, 0 to 1. */
    double leverage(int i) {
        double sum = 0;
        for (int j = 0; j < x.getColumnDimension(); j++) {
            sum += x.getEntry(i, j) * solver.getEntry(j, i);
        }
        return sum;
    }

    /**
     * The residual over the deviation that all other observations give it: Student's t with one degree of freedom
     * less (Cook and Weisberg, Residuals and Influence in Regression, 1982, section 2.2; from memory). 0 for an
     * observation that nothing else checks.
     */
    double studentized(int i) {
        double free = 1 - leverage(i);
        if (free < 1e-9) {
            return 0;
        }
        double others = (variance * dof() - residuals[i] * residuals[i] / free) / (dof() - 1);
        return others > 0 ? residuals[i] / Math.sqrt(others * free) : Math.signum(residuals[i]) * 1e9;
    }
}
