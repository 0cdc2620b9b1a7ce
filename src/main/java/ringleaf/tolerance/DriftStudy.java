// SPDX-License-Identifier: Apache-2.0
package ringleaf.tolerance;

import java.util.ArrayList;
import java.util.List;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.AsBuilt.Bench;
import ringleaf.mechanism.AsBuilt.Deviation;

/**
 * Lets one size drift at a time, both ways, and judges the thing anew at each step: outwards in growing steps until
 * something gives way, then by halving. The place is found to {@value #PRECISION} of what the process keeps the size
 * within (or of a hundredth of a mm); what holds again further out is not looked for, and what gives way and holds
 * again within one step is missed: steps begin at an eighth of what the process keeps and grow by half.
 */
public final class DriftStudy {
    static final double PRECISION = 1e-3;
    private static final double FIRST = 0.125;
    private static final double GROWTH = 1.5;
    private static final double LEAST_SCALE = 0.01;

    private final AsBuilt built;

    public DriftStudy(AsBuilt built) {
        this.built = built;
    }

    /** What does not hold although everything is as drawn; nothing can be said of drifts then. */
    public List<String> brokenAsDrawn() {
        double[] margins = built.bench().margins(asDrawn());
        List<String> broken = new ArrayList<>();
        for (int i = 0; i < margins.length; i++) {
            if (margins[i] < -AsBuilt.ROUNDING) {
                broken.add(built.limits().get(i).check());
            }
        }
        return broken;
    }

    /** Every size, those with copies first one alone and then all alike; the same on any number of threads. */
    public List<Drift> all(int threads, Ticker ticker) {
        List<Deviation> sizes = built.deviations();
        List<int[]> tasks = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            tasks.add(new int[] {i, 0});
            if (sizes.get(i).copies() > 1) {
                tasks.add(new int[] {i, 1});
            }
        }
        Drift[] found = new Drift[tasks.size()];
        Spread.over(tasks.size(), threads, ticker, () -> {
            Bench bench = built.bench();
            return task -> {
                boolean together =
                        tasks.get(task)[1] == 1 || sizes.get(tasks.get(task)[0]).copies() == 1;
                found[task] = drift(bench, sizes, tasks.get(task)[0], together);
            };
        });
        return List.of(found);
    }

    private Drift drift(Bench bench, List<Deviation> sizes, int size, boolean together) {
        Deviation deviation = sizes.get(size);
        Way down = way(bench, size, together, -1, deviation);
        Way up = way(bench, size, together, 1, deviation);
        return new Drift(deviation, together, down.distance, down.breaks, up.distance, up.breaks);
    }

    private record Way(double distance, String breaks) {}

    private Way way(Bench bench, int size, boolean together, int sense, Deviation deviation) {
        double[][] off = asDrawn();
        double scale = Math.max(deviation.within(), LEAST_SCALE);
        double holds = 0;
        double step = FIRST * scale;
        double fails = 0;
        int broken = -1;
        while (broken < 0) {
            if (holds >= deviation.most()) {
                return new Way(Double.POSITIVE_INFINITY, "");
            }
            fails = Math.min(deviation.most(), holds + step);
            broken = broken(bench, off, size, together, sense * fails);
            if (broken < 0) {
                holds = fails;
                step *= GROWTH;
            }
        }
        while (fails - holds > PRECISION * scale) {
            double middle = (holds + fails) / 2;
            int found = broken(bench, off, size, together, sense * middle);
            if (found < 0) {
                holds = middle;
            } else {
                fails = middle;
                broken = found;
            }
        }
        return new Way(holds, built.limits().get(broken).check());
    }

    /** The first limit that is broken, or -1. */
    private int broken(Bench bench, double[][] off, int size, boolean together, double value) {
        for (int k = 0; k < (together ? off[size].length : 1); k++) {
            off[size][k] = value;
        }
        double[] margins = bench.margins(off);
        for (int i = 0; i < margins.length; i++) {
            if (margins[i] < -AsBuilt.ROUNDING) {
                return i;
            }
        }
        return -1;
    }

    private double[][] asDrawn() {
        List<Deviation> sizes = built.deviations();
        double[][] off = new double[sizes.size()][];
        for (int i = 0; i < off.length; i++) {
            off[i] = new double[sizes.get(i).copies()];
        }
        return off;
    }
}
