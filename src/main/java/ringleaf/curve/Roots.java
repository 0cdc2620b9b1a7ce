// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.NoBracketingException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Numbers at which something happens, between two ends: a function's root or least value by Commons Math, and where a
 * condition ends by halving, as a condition has no value that could be followed.
 */
public final class Roots {
    private static final int MOST = 500;
    /** Steps of halving that leave nothing between two neighbouring numbers, whatever their size. */
    private static final int TO_ROUNDING = 1100;

    private Roots() {}

    /**
     * Where {@code f} vanishes between {@code a} and {@code b}, by Brent's method; not a number when both ends have the
     * same sign.
     *
     * @param accuracy how far from the root the result may be; some last digits are always left to rounding
     */
    public static double between(DoubleUnaryOperator f, double a, double b, double accuracy) {
        double atA = f.applyAsDouble(a);
        double atB = f.applyAsDouble(b);
        if (atA == 0 || atB == 0) {
            return atA == 0 ? a : b;
        }
        if (!(atA * atB < 0)) {
            return Double.NaN;
        }
        try {
            return new BrentSolver(1e-15, accuracy, 0)
                    .solve(MOST, f::applyAsDouble, Math.min(a, b), Math.max(a, b), (a + b) / 2);
        } catch (TooManyEvaluationsException | NoBracketingException e) {
            // It is not a number somewhere between, which leads interpolation astray; its sign is enough for halving.
            return last(x -> f.applyAsDouble(x) * atA > 0, a, b);
        }
    }

    /**
     * Where {@code f} is least between {@code low} and {@code high}, by Brent's method, when it first falls and then
     * rises there; as near as its values tell apart, which is about the root of the rounding.
     */
    public static double least(DoubleUnaryOperator f, double low, double high) {
        return new BrentOptimizer(1e-10, 1e-14)
                .optimize(
                        new UnivariateObjectiveFunction(f::applyAsDouble),
                        GoalType.MINIMIZE,
                        new SearchInterval(low, high),
                        new MaxEval(MOST))
                .getPoint();
    }

    /**
     * The last place, on the way from {@code from} to {@code to}, at which a condition holds that holds at
     * {@code from}, not at {@code to}, and changes once; exact to rounding.
     */
    public static double last(DoublePredicate holds, double from, double to) {
        return last(holds, from, to, TO_ROUNDING);
    }

    /** The same after so many halvings; what is found holds, and {@code from} stands where nothing else does. */
    public static double last(DoublePredicate holds, double from, double to, int halvings) {
        double kept = from;
        double lost = to;
        for (int i = 0; i < halvings; i++) {
            double middle = (kept + lost) / 2;
            if (middle == kept || middle == lost) {
                break;
            }
            if (holds.test(middle)) {
                kept = middle;
            } else {
                lost = middle;
            }
        }
        return kept;
    }

    /**
     * What is made at the last place, on the way from {@code from} to {@code to}, at which something can be made; empty
     * when that is at none of the places tried. The end itself is tried first.
     */
    public static <T> Optional<T> lastMade(DoubleFunction<Optional<T>> made, double from, double to, int halvings) {
        Optional<T> best = made.apply(to);
        if (best.isPresent()) {
            return best;
        }
        double kept = from;
        double lost = to;
        for (int i = 0; i < halvings; i++) {
            double middle = (kept + lost) / 2;
            Optional<T> tried = made.apply(middle);
            kept = tried.isPresent() ? middle : kept;
            lost = tried.isPresent() ? lost : middle;
            best = tried.isPresent() ? tried : best;
        }
        return best;
    }
}
