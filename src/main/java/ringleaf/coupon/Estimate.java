// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * A value with its uncertainty, in the unit of the value.
 *
 * @param value the best estimate
 * @param u its standard uncertainty (GUM, JCGM 100:2008, section 3.3.5), 0 or more
 * @param low lower end of the interval that holds the true value with a probability of 95 %
 * @param high its upper end
 */
public record Estimate(double value, double u, double low, double high) {
    /** Above this many degrees of freedom Student's t is the normal distribution's to 1e-6. */
    private static final double MANY = 1e6;

    private static final double SHARE = 0.975;

    /**
     * A value with a standard uncertainty and the (effective) degrees of freedom behind it, above 0: the interval is
     * Student's.
     */
    static Estimate of(double value, double u, double dof) {
        double half = student(dof) * u;
        return new Estimate(value, u, value - half, value + half);
    }

    /** A value known to lie anywhere between two others with the same likelihood (GUM 4.3.7). */
    static Estimate between(double value, double low, double high) {
        return new Estimate(value, (high - low) / Math.sqrt(12), low, high);
    }

    /** Two-sided 95 % quantile of Student's distribution. */
    static double student(double dof) {
        return new TDistribution(null, Math.min(dof, MANY)).inverseCumulativeProbability(SHARE);
    }

    /** Half the width of the interval. */
    public double half() {
        return (high - low) / 2;
    }

    /** Whether the interval holds a value. */
    public boolean holds(double other) {
        return low <= other && other <= high;
    }

    /**
     * This and an independent uncertainty of many degrees of freedom that is added to the value: the interval's half
     * width grows as the root of the sum of squares.
     *
     * @param otherU standard uncertainty of what is added
     */
    Estimate plus(double shift, double otherU) {
        double more = student(MANY) * otherU;
        double below = Math.sqrt((value - low) * (value - low) + more * more);
        double above = Math.sqrt((high - value) * (high - value) + more * more);
        double moved = value + shift;
        return new Estimate(moved, Math.sqrt(u * u + otherU * otherU), moved - below, moved + above);
    }
}
