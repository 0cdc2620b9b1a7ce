// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import ringleaf.draw.Decimals;
import ringleaf.mechanism.ServoLaw;

/**
 * Fits zero and pin offset to measured outputs by least squares (Levenberg–Marquardt of Commons Math). Intervals: the
 * covariance s² (J'J)^-1 of the linearised fit and Student's t with as many degrees of freedom as points are left over
 * (JCGM 100:2008, H.3 and G.3, from memory). Measuring errors are assumed independent and alike.
 */
public final class ServoFit {
    /** Fewest turns of the servo that tell zero, pin offset and an error apart. */
    public static final int FEWEST = 4;
    /** Least share of the travel over which they must spread. */
    private static final double LEAST_SPAN = 1.0 / 3;
    /** Turns nearer than this are one, rad. */
    private static final double SAME_TURN = 1e-4;
    /** An output that grows against the travel by more is no measuring error, as a share of the travel's output. */
    private static final double BACKWARDS = 0.02;
    /** A point counts as an outlier when it misses what the others say by so many of their spreads, */
    private static final double OUTLYING = 6;
    /** and by this share of the travel's output. */
    private static final double OUTLYING_SHARE = 0.01;
    /** A zero further off than this would have been noticed, rad; so would a pin that stands so far off, mm. */
    private static final double MOST_ZERO = Math.toRadians(30);

    private static final double MOST_PIN = 5;
    /** Where its interval is wider than this, the pin's offset is not told by the points and is left as drawn, mm. */
    private static final double USEFUL_PIN = 1;

    /** Measurements that scatter by more of the travel's output are not of this design. */
    private static final double WILD = 0.04;

    private static final double STEP = 1e-6;
    private static final int MOST_STEPS = 200;
    private static final double CONFIDENCE = 0.975;

    private final ServoLaw law;
    private final double span;

    public ServoFit(ServoLaw law) {
        this.law = law;
        ServoLaw.Build drawn = ServoLaw.Build.AS_DRAWN;
        this.span = Math.abs(law.output(law.travel(), drawn) - law.output(0, drawn));
    }

    /**
     * Fits; what speaks against the points is told by line (0 where it is the whole file) and the answer is null then.
     */
    public Fitted fit(List<MeasuredPoint> measured, BiConsumer<Integer, String> problems) {
        List<MeasuredPoint> points = new ArrayList<>(measured);
        points.sort(Comparator.comparingDouble(MeasuredPoint::turn));
        if (!spread(points, problems) || !oneWay(points, problems)) {
            return null;
        }
        Fitted both = law.hasPin() ? solve(points, true) : null;
        boolean pin = both != null && both.pinWithin() <= USEFUL_PIN && isPlausible(both);
        Fitted fitted = pin ? both : solve(points, false);
        if (fitted == null || !isPlausible(fitted)) {
            problems.accept(
                    0,
                    "no zero within " + Decimals.of(Math.toDegrees(MOST_ZERO), 0) + "° makes these " + law.output()
                            + "s those of this design: they are of another one, or in another unit");
            return null;
        }
        if (outlying(points, pin, problems)) {
            return null;
        }
        if (fitted.spread() > WILD * span) {
            problems.accept(
                    0,
                    "whatever the zero, these " + law.output() + "s scatter by " + shown(fitted.spread())
                            + " about what this design gives: they are of another one, or in another unit");
            return null;
        }
        return fitted;
    }

    private boolean spread(List<MeasuredPoint> points, BiConsumer<Integer, String> problems) {
        int different = 0;
        for (int i = 0; i < points.size(); i++) {
            different += i == 0 || points.get(i).turn() - points.get(i - 1).turn() > SAME_TURN ? 1 : 0;
        }
        if (different < FEWEST) {
            problems.accept(
                    0,
                    different + (different == 1 ? " turn" : " different turns") + " of the servo "
                            + (different == 1 ? "is" : "are") + " too few: measure at " + FEWEST
                            + " or more, best six spread from open to closed");
            return false;
        }
        double wide = points.get(points.size() - 1).turn() - points.get(0).turn();
        if (wide < LEAST_SPAN * law.travel()) {
            problems.accept(
                    0,
                    "the measured turns lie within " + Decimals.of(Math.toDegrees(wide), 1)
                            + "°; spread them over a third of the travel of "
                            + Decimals.of(Math.toDegrees(law.travel()), 1)
                            + "° at least");
            return false;
        }
        return true;
    }

    private boolean oneWay(List<MeasuredPoint> points, BiConsumer<Integer, String> problems) {
        double sense =
                Math.signum(law.output(law.travel(), ServoLaw.Build.AS_DRAWN) - law.output(0, ServoLaw.Build.AS_DRAWN));
        boolean fine = true;
        for (int i = 1; i < points.size(); i++) {
            MeasuredPoint before = points.get(i - 1);
            MeasuredPoint point = points.get(i);
            double back = sense * (before.output() - point.output());
            if (back > BACKWARDS * span) {
                problems.accept(
                        point.line(),
                        "the " + law.output() + " of " + shown(point.output()) + " is "
                                + (sense < 0 ? "larger" : "smaller") + " than " + shown(before.output()) + " in line "
                                + before.line() + ", though the servo has turned further; the " + law.output()
                                + " runs one way");
                fine = false;
            }
        }
        return fine;
    }

    private static boolean isPlausible(Fitted fitted) {
        return Math.abs(fitted.build().zero()) <= MOST_ZERO
                && Math.abs(fitted.build().pinOffset()) <= MOST_PIN;
    }

    /** Leaves out each point in turn; the worst that the others disown is told. */
    private boolean outlying(List<MeasuredPoint> points, boolean pin, BiConsumer<Integer, String> problems) {
        MeasuredPoint worst = null;
        double most = 1;
        double miss = 0;
        for (int i = 0; i < points.size(); i++) {
            List<MeasuredPoint> others = new ArrayList<>(points);
            MeasuredPoint point = others.remove(i);
            // With hardly a point to spare the others agree with anything.
            if (others.size() < FEWEST) {
                return false;
            }
            Fitted rest = solve(others, pin);
            if (rest == null) {
                continue;
            }
            double off = point.output() - law.output(point.turn(), rest.build());
            double share = Math.abs(off) / Math.max(OUTLYING * rest.spread(), OUTLYING_SHARE * span);
            if (share > most) {
                most = share;
                worst = point;
                miss = off;
            }
        }
        if (worst == null) {
            return false;
        }
        problems.accept(
                worst.line(),
                shown(worst.output()) + " lies " + shown(Math.abs(miss))
                        + " off what all other lines say together; measure it again, or strike the line");
        return true;
    }

    private Fitted solve(List<MeasuredPoint> points, boolean pin) {
        int n = points.size();
        double[] measured = new double[n];
        for (int i = 0; i < n; i++) {
            measured[i] = points.get(i).output();
        }
        try {
            Optimum optimum = new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .start(new double[pin ? 2 : 1])
                            .model(at -> model(points, at))
                            .target(measured)
                            .lazyEvaluation(false)
                            .maxEvaluations(MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .build());
            RealVector found = optimum.getPoint();
            ServoLaw.Build build = build(found);
            double[] residuals = new double[n];
            double squares = 0;
            double before = 0;
            for (int i = 0; i < n; i++) {
                residuals[i] = measured[i] - law.output(points.get(i).turn(), build);
                squares += residuals[i] * residuals[i];
                double drawn = law.output(points.get(i).turn(), ServoLaw.Build.AS_DRAWN);
                before = Math.max(before, Math.abs(measured[i] - drawn));
            }
            int free = n - found.getDimension();
            double spread = Math.sqrt(squares / free);
            double t = new TDistribution(null, free).inverseCumulativeProbability(CONFIDENCE);
            RealVector sigma = optimum.getSigma(1e-14);
            return new Fitted(
                    points,
                    build,
                    residuals,
                    spread,
                    t * spread * sigma.getEntry(0),
                    pin ? t * spread * sigma.getEntry(1) : 0,
                    pin,
                    before);
        } catch (MathIllegalStateException | MathIllegalArgumentException e) {
            // No minimum was found, or the points do not tell the two apart.
            return null;
        }
    }

    private static ServoLaw.Build build(RealVector at) {
        return new ServoLaw.Build(at.getEntry(0), at.getDimension() > 1 ? at.getEntry(1) : 0);
    }

    /** Outputs and their derivatives by central differences. */
    private Pair<RealVector, RealMatrix> model(List<MeasuredPoint> points, RealVector at) {
        int n = points.size();
        RealVector value = new ArrayRealVector(n);
        RealMatrix slope = new Array2DRowRealMatrix(n, at.getDimension());
        for (int i = 0; i < n; i++) {
            double turn = points.get(i).turn();
            value.setEntry(i, law.output(turn, build(at)));
            for (int k = 0; k < at.getDimension(); k++) {
                RealVector more = at.copy();
                more.addToEntry(k, STEP);
                RealVector less = at.copy();
                less.addToEntry(k, -STEP);
                slope.setEntry(i, k, (law.output(turn, build(more)) - law.output(turn, build(less))) / (2 * STEP));
            }
        }
        return new Pair<>(value, slope);
    }

    private String shown(double output) {
        return Decimals.of(output, 3) + (law.unit().equals("deg") ? "°" : " " + law.unit());
    }
}
