package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.tooth.TeethRatio;

/**
 * Shares a ratio out to stages: all but the last are alike and near the root of it, the last makes up the rest. Of all
 * such trains the one is taken that misses the ratio least, or by no more than may be; of those one whose gears
 * clear each other's axles; of those the shortest.
 *
 * @param ratio of the whole
 * @param within share by which it may miss
 * @param count of stages
 */
record StageSplit(double ratio, double within, int count) {
    /** Fewest and most teeth of a stage's smaller gear, of its own choice; common practice, no source. */
    private static final int FEWEST = 14;

    /** Addendum, axle and room that a gear needs to pass the next axle, in modules; common practice, no source. */
    private static final double AXLE = 3.5;

    private static final int MOST_SMALL = 30;
    private static final int MOST = 240;
    /** How far from even a stage's ratio may be. */
    private static final double UNEVEN = 0.25;

    /** The stages' teeth in order; none when no train comes near. */
    List<TeethRatio> best() {
        if (count == 1) {
            List<TeethRatio> near = TeethRatio.near(ratio, within, FEWEST, MOST);
            return near.isEmpty() ? near : near.subList(0, 1);
        }
        double even = Math.pow(ratio, 1.0 / count);
        List<TeethRatio> best = List.of();
        for (int small = FEWEST; small <= MOST_SMALL; small++) {
            int low = (int) Math.floor(small * Math.max(even, 1 / even) * (1 - UNEVEN));
            int high = (int) Math.ceil(small * Math.max(even, 1 / even) * (1 + UNEVEN));
            for (int large = Math.max(FEWEST, low); large <= Math.min(MOST, high); large++) {
                TeethRatio one = even >= 1 ? new TeethRatio(small, large) : new TeethRatio(large, small);
                double rest = ratio / Math.pow(one.ratio(), count - 1);
                for (TeethRatio last : TeethRatio.near(rest, within, FEWEST, MOST)) {
                    List<TeethRatio> train = train(one, last);
                    best = best.isEmpty() || better(train, best) ? train : best;
                }
            }
        }
        return best;
    }

    private List<TeethRatio> train(TeethRatio alike, TeethRatio last) {
        List<TeethRatio> train = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            train.add(alike);
        }
        train.add(last);
        return train;
    }

    private boolean better(List<TeethRatio> a, List<TeethRatio> b) {
        double missA = miss(a);
        double missB = miss(b);
        if (Math.abs(missA - missB) > 1e-9) {
            return missA < missB;
        }
        boolean clearA = clearsAxles(a);
        if (clearA != clearsAxles(b)) {
            return clearA;
        }
        return length(a, 1) < length(b, 1) - 1e-9;
    }

    /** Whether no gear reaches over the axle of the next stage's, so that all axles may run through. */
    private static boolean clearsAxles(List<TeethRatio> train) {
        for (int i = 1; i < train.size(); i++) {
            double reach = train.get(i - 1).driven() / 2.0 + AXLE;
            if (reach > (train.get(i).driver() + train.get(i).driven()) / 2.0) {
                return false;
            }
        }
        return true;
    }

    private double miss(List<TeethRatio> train) {
        double total = 1;
        for (TeethRatio one : train) {
            total *= one.ratio();
        }
        return Math.max(0, Math.abs(total / ratio - 1) - within);
    }

    /** Length of a train in a straight line, in modules. */
    static double length(List<TeethRatio> train, double addendum) {
        double at = 0;
        double low = 0;
        double high = 0;
        for (TeethRatio one : train) {
            low = Math.min(low, at - one.driver() / 2.0 - addendum);
            high = Math.max(high, at + one.driver() / 2.0 + addendum);
            at += (one.driver() + one.driven()) / 2.0;
            low = Math.min(low, at - one.driven() / 2.0 - addendum);
            high = Math.max(high, at + one.driven() / 2.0 + addendum);
        }
        return high - low;
    }
}
