// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import java.util.List;

/**
 * When no blades hold every limit: those that break the fewest, and among these by the least share of what is asked.
 * A coarse grid over span, width and lever, then steps of falling size around the best.
 */
final class NearestBlades {
    private static final double DEGREE = Math.PI / 180;
    private static final double LEAST_SPAN = 80 * DEGREE;
    private static final double MOST_SPAN = 178 * DEGREE;
    private static final double[] SPANS = {100, 115, 130, 145, 160, 172};
    /** Widths tried, as shares of the inner radius, beside the least that holds the pin's hole. */
    private static final double[] WIDTHS = {0.12, 0.2, 0.33, 0.55, 0.9};

    private static final int FEW_STATES = 5;
    private static final int MOST_STEPS = 24;

    private final BladeNeeds needs;
    private final BladeTrial trial;
    private Layout layout;
    private int bestCount;
    private double bestMiss;
    private double bestSpan;
    private double bestWidth;
    private double bestExcess;

    NearestBlades(BladeNeeds needs) {
        this.needs = needs;
        this.trial = new BladeTrial(needs);
    }

    BladePlan find(Layout where) {
        layout = where;
        if (needs.linear() && layout.isLever() && Double.isNaN(needs.given().leverAngle())) {
            trial.angle = BladeSolver.LINEAR_ANGLES[0] * DEGREE;
        }
        bestCount = Integer.MAX_VALUE;
        bestMiss = Double.MAX_VALUE;
        double open = needs.clearRadius() + needs.opensBy();
        boolean leverOpen = layout.isLever() && Double.isNaN(needs.given().lever());
        for (double degrees : SPANS) {
            look(degrees * DEGREE, needs.widthForHole(), 0);
            for (double share : WIDTHS) {
                look(degrees * DEGREE, share * open, 0);
                if (leverOpen) {
                    look(degrees * DEGREE, share * open, 4 * needs.pins().diameter());
                }
            }
        }
        refine(open, leverOpen);
        double perMm = BladeSolver.WIDTHS_PER_MM;
        double width = Double.isNaN(needs.given().width()) ? Math.ceil(bestWidth * perMm - 1e-9) / perMm : bestWidth;
        trial.set(layout, width, bestSpan, bestExcess);
        SlotLaw law = trial.law();
        double limit = needs.pins().pressureAtMost();
        List<BladePlan.Shortfall> broken = trial.audit(law, BladeSolver.STATES, limit);
        return new BladePlan(layout, law, trial.closed, trial.reach, trial.cavity, trial.ear, limit, List.of(), broken);
    }

    private void refine(double open, boolean leverOpen) {
        double spanStep = 8 * DEGREE;
        double widthStep = 0.08 * open;
        double outStep = 2 * needs.pins().diameter();
        for (int i = 0; i < MOST_STEPS && widthStep > 0.5 / BladeSolver.WIDTHS_PER_MM; i++) {
            double span = bestSpan;
            double width = bestWidth;
            double out = bestExcess;
            boolean better = look(span + spanStep, width, out) | look(span - spanStep, width, out);
            better |= look(span, width + widthStep, out) | look(span, width - widthStep, out);
            if (leverOpen) {
                double most = 8 * needs.pins().diameter();
                better |= look(span, width, Math.min(out + outStep, most));
                better |= look(span, width, Math.max(0, out - outStep));
            }
            if (!better) {
                spanStep /= 2;
                widthStep /= 2;
                outStep /= 2;
            }
        }
    }

    private boolean look(double askedSpan, double askedWidth, double excess) {
        BladeNeeds.Given given = needs.given();
        double inside = Math.max(LEAST_SPAN, Math.min(MOST_SPAN, askedSpan));
        double span = Double.isNaN(given.span()) ? inside : given.span();
        double width = Double.isNaN(given.width()) ? Math.max(needs.widthForHole(), askedWidth) : given.width();
        trial.set(layout, width, span, excess);
        if (trial.staticBroken() > bestCount) {
            return false;
        }
        SlotLaw law = new SlotLaw.Radial(trial.band, trial.pin);
        List<BladePlan.Shortfall> broken =
                trial.audit(law, FEW_STATES, needs.pins().pressureAtMost());
        double miss = 1e-3 * trial.cavity / needs.clearRadius();
        for (BladePlan.Shortfall shortfall : broken) {
            miss += shortfall.share();
        }
        if (broken.size() > bestCount || broken.size() == bestCount && miss >= bestMiss - 1e-6) {
            return false;
        }
        bestCount = broken.size();
        bestMiss = miss;
        bestSpan = span;
        bestWidth = width;
        bestExcess = excess;
        return true;
    }
}
