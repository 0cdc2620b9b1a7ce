// SPDX-License-Identifier: Apache-2.0
package ringleaf.tolerance;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.special.Erf;
import ringleaf.machine.RoomLaw;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.AsBuilt.Bench;
import ringleaf.mechanism.AsBuilt.Deviation;

/**
 * Makes up builds in which every copy of every size is off by itself, and counts those in which everything holds. Each
 * deviation is normal about the drawing; what a process keeps a size within is taken as two standard deviations (a
 * coverage factor of 2, some 95 %: JCGM 100:2008, 6.3.3, from memory). Random numbers come from the seed and the
 * build's own number, so the same seed gives the same builds in any order and on any number of threads.
 */
public final class YieldStudy {
    /** What a process keeps a size within, in standard deviations. */
    public static final double COVERAGE = RoomLaw.COVERAGE;
    /** Share of intervals that hold the true share. */
    private static final double CONFIDENCE = 0.95;

    private static final double TO_UNIT = 0x1.0p-52;
    private static final double SQRT2 = Math.sqrt(2);

    private final AsBuilt built;

    public YieldStudy(AsBuilt built) {
        this.built = built;
    }

    /** Judges so many builds, at least one. */
    public Yield of(int builds, long seed, int threads, Ticker ticker) {
        List<Deviation> sizes = built.deviations();
        int limits = built.limits().size();
        boolean[][] broken = new boolean[builds][];
        Spread.over(builds, threads, ticker, () -> {
            Bench bench = built.bench();
            double[][] off = new double[sizes.size()][];
            for (int i = 0; i < off.length; i++) {
                off[i] = new double[sizes.get(i).copies()];
            }
            return build -> {
                draw(sizes, seed, build, off);
                double[] margins = bench.margins(off);
                boolean[] own = new boolean[limits];
                for (int i = 0; i < limits; i++) {
                    own[i] = !(margins[i] >= -AsBuilt.ROUNDING);
                }
                broken[build] = own;
            };
        });
        return count(broken, seed, limits);
    }

    private Yield count(boolean[][] broken, long seed, int limits) {
        int good = 0;
        int[] failed = new int[limits];
        int[] alone = new int[limits];
        for (boolean[] own : broken) {
            int count = 0;
            int last = 0;
            for (int i = 0; i < limits; i++) {
                if (own[i]) {
                    failed[i]++;
                    count++;
                    last = i;
                }
            }
            good += count == 0 ? 1 : 0;
            alone[last] += count == 1 ? 1 : 0;
        }
        List<Yield.Failure> failures = new ArrayList<>();
        for (int i = 0; i < limits; i++) {
            if (failed[i] > 0) {
                failures.add(new Yield.Failure(built.limits().get(i).check(), failed[i], alone[i]));
            }
        }
        failures.sort((a, b) -> b.builds() - a.builds());
        double[] interval = interval(good, broken.length);
        return new Yield(broken.length, seed, good, interval[0], interval[1], failures);
    }

    /**
     * The interval of Clopper and Pearson (Biometrika 26, 1934, 404-413; from memory) for a share seen as {@code good}
     * of {@code all}: by quantiles of the beta distribution; it covers at least as often as it says.
     */
    static double[] interval(int good, int all) {
        double tail = (1 - CONFIDENCE) / 2;
        double low =
                good == 0 ? 0 : new BetaDistribution(null, good, all - good + 1.0).inverseCumulativeProbability(tail);
        double high = good == all
                ? 1
                : new BetaDistribution(null, good + 1.0, all - good).inverseCumulativeProbability(1 - tail);
        return new double[] {low, high};
    }

    private static void draw(List<Deviation> sizes, long seed, int build, double[][] off) {
        long state = mixed(seed + 0x9E3779B97F4A7C15L * (build + 1L));
        for (int i = 0; i < off.length; i++) {
            double sigma = sizes.get(i).within() / COVERAGE;
            for (int k = 0; k < off[i].length; k++) {
                state += 0x9E3779B97F4A7C15L;
                off[i][k] = sigma * normal(mixed(state));
            }
        }
    }

    /** A normal deviate from 64 random bits, by the inverse of the distribution. */
    static double normal(long bits) {
        double unit = ((bits >>> 12) + 0.5) * TO_UNIT;
        return SQRT2 * Erf.erfInv(2 * unit - 1);
    }

    /** The finalising mix of SplitMix64 (Steele, Lea and Flood, OOPSLA 2014; from memory). */
    private static long mixed(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
