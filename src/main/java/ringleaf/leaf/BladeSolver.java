// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the blades of least cavity radius for which every limit holds at every state, or, where there are none, those
 * that break the fewest limits by the least.
 *
 * <p>For a span (and a lever) the least width that holds is found on a grid of 0.05 mm by bisection, since a wider
 * band laps more; the spans are tried coarsely from the middle outwards and then every half degree, where a span is
 * left at once when it does not hold at the width that would beat the best so far. Nothing is assumed about how the
 * result changes with the span or with the number of blades. The search looks at a few states; the winner is
 * held against all of them, and a state that fails joins the few and the search is run again.
 */
public final class BladeSolver {
    /** States at which a plan is held to be good; the same as those of the motion table. */
    public static final int STATES = 181;

    /** Widths are multiples of 0.05 mm; dividing keeps them the nearest doubles to the decimal. */
    static final int WIDTHS_PER_MM = 20;

    private static final double DEGREE = Math.PI / 180;
    private static final double LEAST_SPAN = 90;
    private static final double MOST_SPAN = 178;
    private static final double COARSE = 3;
    private static final double FINE = 0.5;
    /** Spans are tried from here outwards, degrees: most solutions lie near. */
    private static final double MIDDLE = 142;
    /** How much longer a lever may be than its pin needs to stand clear of the open blades, in pin diameters. */
    private static final double[] EXCESS = {0, 0.25, 0.5, 1, 1.5, 2, 3, 4, 6, 8};
    /** Lever angles tried for linear slots, degrees: clear of the radial, where the pin's radius turns back. */
    static final double[] LINEAR_ANGLES = {75, 290, 50, 315};

    private static final int MOST_ROUNDS = 8;
    /** Pressure angle that a linear slot is taken to have until its law is found, rad. */
    private static final double LINEAR_PRESSURE = 0.4;
    /** Fewer for linear slots, whose law is dear to find. */
    private static final int LINEAR_ROUNDS = 4;
    /** Widths tried on the way down for one that holds, each this share of the one before. */
    private static final int PROBES = 5;

    private static final double PROBE_STEP = 0.7;
    /** A winner that fails by a hair between the states looked at is widened by up to so many steps. */
    private static final int MOST_WIDENING = 4;
    /** The coarse spans may miss by this share what the fine ones then find; measured on random cases. */
    private static final double FIRST_STEP = 1.02;

    private final BladeNeeds needs;
    private final BladeTrial trial;
    private TrialStates states;
    private double pressureLimit;
    /** Only cavities below this are of use. */
    private double ceiling = Double.MAX_VALUE;

    private double bestCavity;
    private double bestPressure;
    private int bestWidth;
    private double bestSpan;
    private double bestExcess;

    private BladeSolver(BladeNeeds needs) {
        this.needs = needs;
        this.trial = new BladeTrial(needs);
    }

    /** The best plan of one layout; it holds, or breaks the fewest limits by the least. */
    public static BladePlan solve(BladeNeeds needs, Layout layout) {
        BladeSolver solver = new BladeSolver(needs);
        BladePlan plan = solver.within(layout, Double.MAX_VALUE);
        if (plan == null && layout.isLever() && needs.given().hasLever()) {
            // A lever as given may stand in the way at whatever width: then the rest is to hold.
            solver.trial.anywhere = true;
            plan = solver.within(layout, Double.MAX_VALUE);
        }
        return plan == null ? new NearestBlades(needs).find(layout) : plan;
    }

    /** The best plan of one layout that holds with a cavity radius below {@code cavity} mm, or null. */
    public static BladePlan below(BladeNeeds needs, Layout layout, double cavity) {
        BladePlan plan = new BladeSolver(needs).within(layout, cavity * FIRST_STEP);
        return plan != null && plan.cavityRadius() < cavity ? plan : null;
    }

    /** The best plan of one layout at the gentler limit of pressure that can be held, or null. */
    private BladePlan within(Layout layout, double below) {
        for (double limit : new double[] {needs.pins().pressure(), needs.pins().pressureAtMost()}) {
            pressureLimit = limit;
            ceiling = below;
            BladePlan plan = needs.linear()
                            && layout.isLever()
                            && Double.isNaN(needs.given().leverAngle())
                    ? overAngles(layout)
                    : search(layout, Double.NaN);
            if (plan != null) {
                return plan;
            }
        }
        return null;
    }

    private BladePlan overAngles(Layout layout) {
        BladePlan best = null;
        for (double degrees : LINEAR_ANGLES) {
            BladePlan plan = search(layout, degrees * DEGREE);
            if (plan != null) {
                best = plan;
                ceiling = plan.cavityRadius();
            }
        }
        return best;
    }

    private BladePlan search(Layout layout, double angle) {
        trial.angle = angle;
        trial.linearPressure = LINEAR_PRESSURE;
        states = new TrialStates(MOST_ROUNDS);
        boolean again = false;
        int rounds = needs.linear() ? LINEAR_ROUNDS : MOST_ROUNDS;
        for (int round = 0; round < rounds; round++) {
            double span = bestSpan;
            double out = bestExcess;
            bestCavity = ceiling;
            if (again) {
                // The last winner, widened, is a good bound for the rest.
                consider(layout, span, out, true);
            }
            scan(layout);
            if (bestCavity == ceiling) {
                return null;
            }
            again = true;
            double share = -1;
            int apart = 1;
            double steepest = 0;
            int wider = Double.isNaN(needs.given().width()) ? MOST_WIDENING : 0;
            for (int up = 0; up <= wider; up++) {
                setBest(layout, up);
                SlotLaw law = trial.law();
                if (trial.holdsThroughout(law, STATES, pressureLimit)) {
                    if (up > 0) {
                        // So that what bounds the width is found where it failed.
                        states.add(share, apart);
                    }
                    return plan(law);
                }
                share = up == 0 ? trial.failing : share;
                apart = up == 0 ? trial.failingApart : apart;
                steepest = up == 0 ? law.pressure(trial.failing * trial.closed) : steepest;
            }
            if (needs.linear()) {
                if (trial.steep) {
                    return null;
                }
                trial.linearPressure = Math.max(trial.linearPressure, steepest);
            }
            // Failing again where it was held already: no half measures.
            states.add(share, states.has(share, apart) ? needs.blades() / 2 : apart);
        }
        return null;
    }

    private void setBest(Layout layout, int wider) {
        trial.set(layout, width(bestWidth + wider), bestSpan, bestExcess);
    }

    /** Width of a step of the grid, or the given one. */
    private double width(int steps) {
        double given = needs.given().width();
        return Double.isNaN(given) ? steps / (double) WIDTHS_PER_MM : given;
    }

    private void scan(Layout layout) {
        double[] outs = layout.isLever() && Double.isNaN(needs.given().lever()) ? EXCESS : new double[1];
        // With a bound from the round before the fine pass alone is enough.
        double[] coarse = bestCavity < ceiling ? new double[0] : spans(LEAST_SPAN, MOST_SPAN, COARSE);
        for (double out : outs) {
            for (double span : coarse) {
                consider(layout, span, onGrid(out * needs.pins().diameter()), true);
            }
        }
        if (bestCavity == ceiling) {
            return;
        }
        for (double span : spans(LEAST_SPAN, MOST_SPAN, FINE)) {
            consider(layout, span, bestExcess, false);
        }
        if (outs.length > 1) {
            double[] near = spans(Math.max(LEAST_SPAN, bestSpan / DEGREE - COARSE), bestSpan / DEGREE + COARSE, FINE);
            double step = onGrid(needs.pins().diameter() / 8);
            double middle = bestExcess;
            for (int i = -2; i <= 2; i++) {
                for (double span : i != 0 && middle + i * step >= 0 ? near : new double[0]) {
                    consider(layout, span, middle + i * step, false);
                }
            }
        }
        if (!layout.isLever() && Double.isNaN(needs.given().span())) {
            settle(layout);
        }
    }

    private static double onGrid(double length) {
        return Math.ceil(length * WIDTHS_PER_MM - 1e-9) / WIDTHS_PER_MM;
    }

    /** Spans from the middle outwards, rad; only the given one when the user has fixed it. */
    private double[] spans(double from, double to, double step) {
        double given = needs.given().span();
        if (!Double.isNaN(given)) {
            return new double[] {given};
        }
        int n = (int) Math.floor((to - from) / step + 1e-9) + 1;
        double[] spans = new double[n];
        int low = (int) Math.max(0, Math.min(n - 1, Math.rint((MIDDLE - from) / step)));
        int high = low + 1;
        for (int i = 0; i < n; i++) {
            boolean takeLow = low >= 0 && (high >= n || i % 2 == 0);
            int k = takeLow ? low-- : high++;
            spans[i] = (from + k * step) * DEGREE;
        }
        return spans;
    }

    /** Looks for the least width that holds and beats the best so far. */
    private void consider(Layout layout, double span, double out, boolean probe) {
        double given = needs.given().width();
        if (!Double.isNaN(given)) {
            if (holds(layout, 0, span, out)) {
                take(0, span, out);
            }
            return;
        }
        double open = needs.clearRadius() + needs.opensBy();
        BladeNeeds.PinNeeds pins = needs.pins();
        double forBores = (pins.plateWeb() + pins.bore()) / Math.sin(Math.PI / needs.blades()) - 2 * open;
        int least = (int) Math.ceil(Math.max(needs.widthForHole(), forBores) * WIDTHS_PER_MM - 1e-9);
        boolean first = bestCavity == Double.MAX_VALUE;
        double room = first ? 2 * open : bestCavity - needs.endClearance() - open - besideBand(layout, out) - 1e-9;
        int most = (int) Math.floor(room * WIDTHS_PER_MM);
        if (first) {
            most = Math.max(most, least + (int) Math.ceil(10 * needs.pins().diameter() * WIDTHS_PER_MM));
        }
        most = first ? most : largest(layout, span, out, least, most);
        if (most < least) {
            return;
        }
        int good = -1;
        int tries = probe ? PROBES : 1;
        double k = most;
        for (int i = 0; i < tries && good < 0 && k >= least; i++, k *= PROBE_STEP) {
            good = holds(layout, (int) k, span, out) ? (int) k : -1;
        }
        if (good < 0) {
            return;
        }
        int bad = least - 1;
        while (good - bad > 1) {
            int middle = (good + bad) / 2;
            if (holds(layout, middle, span, out)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        trial.set(layout, width(good), span, out);
        take(good, span, out);
        // A wider band turns less far, so where the end swings out it can need less room; look a little way up.
        for (int up = 1; up <= 8 && trial.reach > trial.band.outerRadius() + 1e-9; up *= 2) {
            if (holds(layout, good + up, span, out)) {
                take(good + up, span, out);
            }
        }
    }

    /** The least by which a cavity has to be larger than its band because a lever's ear stands out of it, mm. */
    private double besideBand(Layout layout, double out) {
        BladeNeeds.PinNeeds pins = needs.pins();
        if (!layout.isLever() || !Double.isNaN(needs.given().lever())) {
            return 0;
        }
        // A lever of the solver's own angle points outward at half the travel, others perhaps never.
        boolean outward = Double.isNaN(needs.given().leverAngle()) && !needs.linear();
        return pins.diameter() / 2 + needs.endClearance() + pins.hole() / 2 + pins.edge() + (outward ? out : 0);
    }

    /** The widest band whose cavity is smaller than the best so far; the end's swing can need more than the width. */
    private int largest(Layout layout, double span, double out, int least, int most) {
        int good = least - 1;
        int bad = most + 1;
        for (int k = most; bad - good > 1; k = (good + bad) / 2) {
            if (trial.set(layout, width(k), span, out).cavity < bestCavity - 1e-9) {
                good = k;
            } else {
                bad = k;
            }
        }
        return good;
    }

    private boolean holds(Layout layout, int steps, double span, double out) {
        trial.set(layout, width(steps), span, out);
        return trial.cavity < bestCavity && trial.firstBroken(states, pressureLimit) == null;
    }

    private void take(int width, double span, double out) {
        if (trial.cavity < bestCavity - 1e-9) {
            bestCavity = trial.cavity;
            bestWidth = width;
            bestSpan = span;
            bestExcess = out;
            bestPressure = trial.endPressure();
        }
    }

    /** Among spans with the same cavity takes the one with the gentlest slot. */
    private void settle(Layout layout) {
        double limit = bestCavity;
        double width = width(bestWidth);
        for (double span : spans(LEAST_SPAN, MOST_SPAN, FINE)) {
            trial.set(layout, width, span, 0);
            double pressure = trial.endPressure();
            if (trial.cavity <= limit + 1e-9
                    && pressure < bestPressure - 1e-6
                    && trial.firstBroken(states, pressureLimit) == null) {
                bestSpan = span;
                bestPressure = pressure;
            }
        }
    }

    private BladePlan plan(SlotLaw law) {
        List<BladePlan.Shortfall> broken = trial.audit(law, 2, pressureLimit);
        double cavity = trial.cavity;
        double reach = trial.reach;
        double ear = trial.ear;
        double closed = trial.closed;
        Layout layout = trial.layout;
        List<BladeLimit> bounds = bounds(layout, cavity);
        return new BladePlan(layout, law, closed, reach, cavity, ear, pressureLimit, bounds, broken);
    }

    /** What stands in the way of a smaller cavity: the limits that its nearest smaller neighbours break. */
    private List<BladeLimit> bounds(Layout layout, double cavity) {
        List<BladeLimit> bounds = new ArrayList<>();
        double width = trial.width;
        double span = trial.span;
        double out = trial.excess;
        boolean swings = trial.ear == 0 && trial.reach > trial.band.outerRadius() + 1e-9;
        double[][] steps = {{-1, 0}, {0, -1}, {0, 1}, {-1, -1}, {-1, 1}};
        for (double[] step : steps) {
            double narrower = width + step[0] / WIDTHS_PER_MM;
            if (narrower > 0) {
                trial.set(layout, narrower, span + step[1] * FINE * DEGREE, out);
                BladeLimit limit = trial.cavity < cavity - 1e-9 ? trial.firstBroken(states, pressureLimit) : null;
                limit = trial.reason(limit);
                if (limit != null && !bounds.contains(limit)) {
                    bounds.add(limit);
                }
            }
        }
        if (swings) {
            bounds.add(BladeLimit.SWING);
        }
        return bounds;
    }
}
