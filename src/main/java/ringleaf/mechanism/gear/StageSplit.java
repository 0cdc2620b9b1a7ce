// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.tooth.TeethRatio;

/**
 * Shares a ratio out to stages: of all teeth there are, those are looked for that make the ratio, or miss it by no more
 * than may be. Trains whose gears clear each other's axles come first; then, where room is left in the ratio, those of
 * which no stage's teeth have a common factor; then the shortest. Where no teeth make it, the share by which it may be
 * missed grows tenfold until some do.
 *
 * <p>The search is exact: it leaves out only what the means of numbers (arithmetic against geometric) shows to be
 * longer than the trains found already. The shortest way to share out what is left of a ratio r to k stages whose drivers have
 * F teeth at least, the last driven gear counted twice because it ends the train, is k F/2 (1 + (2 r)^(1/k)).
 *
 * @param ratio of the whole
 * @param within share by which it may miss
 * @param count of stages
 * @param fewest teeth of any gear
 * @param most teeth of any gear
 */
record StageSplit(double ratio, double within, int count, int fewest, int most) {
    /** Fewest and most teeth of a gear, of a train's own choice; common practice, no source. */
    static final int FEWEST = 14;

    static final int MOST = 240;
    /** Addendum, axle and room that a gear needs to pass the next axle, in modules; common practice, no source. */
    private static final double AXLE = 3.5;
    /** Trains that are kept of those alike in what they give up, the best first. */
    private static final int KEPT = 4;
    /** Ratios and lengths nearer than this share count as the same. */
    private static final double HAIR = 1e-9;
    /** Steps of a search after which it is taken that no teeth of so short a train make the ratio. */
    private static final int ENOUGH = 300_000;
    /** Lengths, as multiples of the least that a train can have, up to which trains are looked for, in turn. */
    private static final double[] CAPS = {1.02, 1.05, 1.1, 1.2, 1.4, 2, Double.POSITIVE_INFINITY};

    private static final int REMEMBERED = 64;
    /** Shares by which a ratio may be missed that no teeth make. */
    private static final double[] NEAR = {1e-4, 1e-3, 1e-2};

    /** What was found last, as an exploration asks for the same ratio again and again. */
    private static final Map<StageSplit, List<List<TeethRatio>>> FOUND = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<StageSplit, List<List<TeethRatio>>> eldest) {
            return size() > REMEMBERED;
        }
    };

    StageSplit(double ratio, double within, int count) {
        this(ratio, within, count, FEWEST, MOST);
    }

    /** The trains, the best first, each with its stages' teeth in order; none when no train comes near. */
    List<List<TeethRatio>> trains() {
        synchronized (FOUND) {
            List<List<TeethRatio>> known = FOUND.get(this);
            if (known != null) {
                return known;
            }
        }
        List<List<TeethRatio>> found = List.copyOf(searched());
        synchronized (FOUND) {
            FOUND.put(this, found);
        }
        return found;
    }

    private List<List<TeethRatio>> searched() {
        List<List<TeethRatio>> found = within(within + HAIR);
        for (int i = 0; found.isEmpty() && i < NEAR.length; i++) {
            if (NEAR[i] > within) {
                found = within(NEAR[i]);
            }
        }
        return found;
    }

    private List<List<TeethRatio>> within(double share) {
        boolean[][] wishes = within > 0
                ? new boolean[][] {{true, true}, {true, false}, {false, true}, {false, false}}
                : new boolean[][] {{true, false}, {false, false}};
        List<List<TeethRatio>> all = new ArrayList<>();
        for (boolean[] wish : wishes) {
            for (List<TeethRatio> train : new Search(share, wish[0], wish[1]).run()) {
                if (!all.contains(train)) {
                    all.add(train);
                }
            }
        }
        return all;
    }

    /** Whether no gear reaches over the axle of a neighbouring stage, so that all axles may run through. */
    static boolean clearsAxles(List<TeethRatio> train) {
        for (int i = 1; i < train.size(); i++) {
            if (!clears(train.get(i - 1), train.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean clears(TeethRatio before, TeethRatio after) {
        double own = (before.driver() + before.driven()) / 2.0;
        double next = (after.driver() + after.driven()) / 2.0;
        return before.driven() / 2.0 + AXLE <= next && after.driver() / 2.0 + AXLE <= own;
    }

    /** Whether no stage's teeth have a common factor. */
    static boolean hunts(List<TeethRatio> train) {
        return train.stream().allMatch(TeethRatio::isHunting);
    }

    /** Length of a train in a straight line without addenda, in modules: the sum of all radii and both ends. */
    static double length(List<TeethRatio> train) {
        double length = train.get(0).driver() / 2.0;
        for (TeethRatio one : train) {
            length += (one.driver() + one.driven()) / 2.0;
        }
        return length + train.get(train.size() - 1).driven() / 2.0;
    }

    /** One search; trains that step up are looked for from their other end, where they step down. */
    private final class Search {
        private final double share;
        private final boolean clear;
        private final boolean hunting;
        private final boolean up;
        private final List<List<TeethRatio>> best = new ArrayList<>();
        private final TeethRatio[] stages = new TeethRatio[count];
        private double cap;
        private int steps;

        Search(double share, boolean clear, boolean hunting) {
            this.share = share;
            this.clear = clear;
            this.hunting = hunting;
            this.up = ratio < 1;
        }

        List<List<TeethRatio>> run() {
            double whole = up ? 1 / ratio : ratio;
            int enough = -1;
            // All trains up to a length are found before longer ones are looked at, so the shortest is; one cap more
            // finds others beside it.
            for (int i = 0; i < CAPS.length && (enough < 0 || i <= enough + 1); i++) {
                cap = fewest / 2.0 + least(count, whole) * CAPS[i];
                steps = 0;
                best.clear();
                stage(0, whole, 0);
                enough = enough < 0 && !best.isEmpty() ? i : enough;
            }
            List<List<TeethRatio>> found = new ArrayList<>();
            for (List<TeethRatio> train : best) {
                found.add(up ? turned(train) : train);
            }
            return found;
        }

        private static List<TeethRatio> turned(List<TeethRatio> train) {
            List<TeethRatio> turned = new ArrayList<>();
            for (TeethRatio one : train) {
                turned.add(new TeethRatio(one.driven(), one.driver()));
            }
            Collections.reverse(turned);
            return turned;
        }

        /** Length beyond which nothing is of interest. */
        private double limit() {
            return best.size() < KEPT ? cap : Math.min(cap, length(best.get(KEPT - 1)) + HAIR);
        }

        /** Least length of so many stages that make a ratio, the train's end counted. */
        private double least(int left, double rest) {
            if (left == 0) {
                return 0;
            }
            double eased = Math.max(rest * (1 - share), 0);
            return left * fewest / 2.0 * (1 + Math.pow(2 * eased, 1.0 / left));
        }

        private void stage(int n, double rest, double length) {
            if (n == count - 1) {
                last(rest, length);
                return;
            }
            for (int driver = fewest; driver <= most && steps < ENOUGH; driver++) {
                int shortest = shortest(n, driver, rest);
                boolean any = false;
                for (int driven = shortest; driven >= fewest && tried(n, driver, driven, rest, length); driven--) {
                    any = true;
                }
                for (int driven = shortest + 1; driven <= most && tried(n, driver, driven, rest, length); driven++) {
                    any = true;
                }
                // More teeth of the driver only make it longer.
                if (!any) {
                    return;
                }
            }
        }

        /** The driven teeth with the least length of this stage and the rest; it is convex in them. */
        private int shortest(int n, int driver, double rest) {
            int left = count - n - 1;
            int at = (int) Math.rint(driver * Math.pow(2 * rest, 1.0 / (left + 1)));
            at = Math.max(fewest, Math.min(most, at));
            while (at > fewest && ahead(left, driver, at - 1, rest) < ahead(left, driver, at, rest)) {
                at--;
            }
            while (at < most && ahead(left, driver, at + 1, rest) < ahead(left, driver, at, rest)) {
                at++;
            }
            return at;
        }

        private double ahead(int left, int driver, int driven, double rest) {
            return driven / 2.0 + least(left, rest * driver / driven);
        }

        private boolean tried(int n, int driver, int driven, double rest, double length) {
            steps++;
            double left = rest * driver / driven;
            double own = (n == 0 ? driver : driver / 2.0) + driven / 2.0;
            if (length + own + least(count - n - 1, left) >= limit()) {
                return false;
            }
            stages[n] = new TeethRatio(driver, driven);
            if ((!hunting || stages[n].isHunting()) && (!clear || n == 0 || clears(stages[n - 1], stages[n]))) {
                stage(n + 1, left, length + own);
            }
            return true;
        }

        private void last(double rest, double length) {
            int n = count - 1;
            for (int driver = fewest; driver <= most; driver++) {
                steps++;
                double own = n == 0 ? driver : driver / 2.0;
                if (length + own + driver * rest * (1 - share) >= limit()) {
                    return;
                }
                int low = (int) Math.max(fewest, Math.ceil(driver * rest * (1 - share) - HAIR));
                int high = (int) Math.min(most, Math.floor(driver * rest * (1 + share) + HAIR));
                for (int driven = low; driven <= high; driven++) {
                    stages[n] = new TeethRatio(driver, driven);
                    boolean fits = (!hunting || stages[n].isHunting())
                            && (!clear || n == 0 || clears(stages[n - 1], stages[n]));
                    if (fits && Math.abs(stages[n].error(rest)) <= share) {
                        offer(List.of(stages));
                    }
                }
            }
        }

        /** Keeps a train among the best; of those of the same stages in another order the better one. */
        private void offer(List<TeethRatio> train) {
            for (int i = 0; i < best.size(); i++) {
                if (sorted(best.get(i)).equals(sorted(train))) {
                    if (!better(train, best.get(i))) {
                        return;
                    }
                    best.remove(i);
                    break;
                }
            }
            int at = best.size();
            while (at > 0 && better(train, best.get(at - 1))) {
                at--;
            }
            best.add(at, train);
            if (best.size() > KEPT) {
                best.remove(KEPT);
            }
        }

        private static List<TeethRatio> sorted(List<TeethRatio> train) {
            List<TeethRatio> sorted = new ArrayList<>(train);
            sorted.sort(Comparator.comparingInt(TeethRatio::driver).thenComparingInt(TeethRatio::driven));
            return sorted;
        }

        private boolean better(List<TeethRatio> a, List<TeethRatio> b) {
            double shorter = length(a) - length(b);
            if (Math.abs(shorter) > HAIR) {
                return shorter < 0;
            }
            return hunted(a) > hunted(b);
        }

        private static int hunted(List<TeethRatio> train) {
            int n = 0;
            for (TeethRatio one : train) {
                n += one.isHunting() ? 1 : 0;
            }
            return n;
        }
    }
}
