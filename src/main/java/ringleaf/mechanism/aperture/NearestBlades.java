package ringleaf.mechanism.aperture;

import java.util.List;

/**
 * When no blades hold every limit: those that break the fewest, and among these by the least share of what is asked.
 * A coarse grid over span, width and lever, then steps of falling size around the best.
 */
final class NearestBlades {
    private static final double DEGREE = Math.PI / 180;
    private static final double[] SPANS = {100, 115, 130, 145, 160, 172};
    /** Widths tried, as shares of the inner radius, beside the least that holds the pin's hole. */
    private static final double[] WIDTHS = {0.12, 0.18, 0.27, 0.4, 0.6};
    private static final int FEW_STATES = 7;
    private static final int MOST_STEPS = 60;

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
        bestCount = Integer.MAX_VALUE;
        bestMiss = Double.MAX_VALUE;
        double open = needs.clearRadius() + needs.opensBy();
        boolean leverOpen = layout == Layout.LEVER_OUTWARD && Double.isNaN(needs.given().lever());
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
        double step = BladeSolver.WIDTH_STEP;
        double width = Double.isNaN(needs.given().width()) ? Math.ceil(bestWidth / step - 1e-9) * step : bestWidth;
        trial.set(layout, width, bestSpan, bestExcess);
        SlotLaw law = trial.law();
        double limit = needs.pins().pressureAtMost();
        List<BladePlan.Shortfall> broken = trial.audit(law, BladeSolver.STATES, limit);
        return new BladePlan(
                layout, law, trial.closed, trial.reach, trial.cavity, trial.ear, limit, List.of(), broken);
    }

    private void refine(double open, boolean leverOpen) {
        double spanStep = 8 * DEGREE;
        double widthStep = 0.08 * open;
        double outStep = 2 * needs.pins().diameter();
        for (int i = 0; i < MOST_STEPS && widthStep > BladeSolver.WIDTH_STEP / 2; i++) {
            double span = bestSpan;
            double width = bestWidth;
            double out = bestExcess;
            boolean better = look(span + spanStep, width, out) | look(span - spanStep, width, out);
            better |= look(span, width + widthStep, out) | look(span, width - widthStep, out);
            if (leverOpen) {
                better |= look(span, width, out + outStep) | look(span, width, Math.max(0, out - outStep));
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
        double span = Double.isNaN(given.span()) ? Math.max(80 * DEGREE, Math.min(178 * DEGREE, askedSpan)) : given.span();
        double width = Double.isNaN(given.width()) ? Math.max(needs.widthForHole(), askedWidth) : given.width();
        trial.set(layout, width, span, excess);
        SlotLaw law = new SlotLaw.Radial(trial.band, trial.pin);
        List<BladePlan.Shortfall> broken = trial.audit(law, FEW_STATES, needs.pins().pressureAtMost());
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
