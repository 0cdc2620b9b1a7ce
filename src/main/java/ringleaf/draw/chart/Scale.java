// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.chart;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.Decimals;

/**
 * An axis of numbers, or of words at 0, 1, 2, …, with its ticks at round values.
 *
 * @param title what it shows, with its unit
 * @param from the least that is shown
 * @param to the greatest that is shown, above {@code from}
 * @param ticks values with a tick
 * @param labels of the ticks
 * @param logarithmic whether equal ratios, not equal differences, lie equally far apart; all is above 0 then
 */
public record Scale(
        String title, double from, double to, List<Double> ticks, List<String> labels, boolean logarithmic) {
    private static final int ABOUT = 6;
    private static final double AIR = 0.06;

    public Scale {
        ticks = List.copyOf(ticks);
        labels = List.copyOf(labels);
    }

    /** A scale that holds all these values with some air at both ends; steps are 1, 2 or 5 times a power of ten. */
    public static Scale of(String title, List<Double> values) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        if (!(least <= most)) {
            return of(title, List.of(0.0, 1.0));
        }
        boolean wide = most - least > 1e-9 * Math.max(1, Math.abs(most));
        double span = wide ? most - least : Math.max(1, Math.abs(most) * 0.1);
        double from = least - AIR * span - (most > least ? 0 : span / 2);
        double to = most + AIR * span + (most > least ? 0 : span / 2);
        double step = step((to - from) / ABOUT);
        List<Double> ticks = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        for (long k = (long) Math.ceil(from / step - 1e-9); k * step <= to + 1e-9 * step; k++) {
            ticks.add(k * step);
            labels.add(Decimals.significant(k * step, 9, 9));
        }
        return new Scale(title, from, to, ticks, labels, false);
    }

    /** A scale of words. */
    public static Scale ofWords(String title, List<String> words) {
        List<Double> ticks = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            ticks.add((double) i);
        }
        return new Scale(title, -0.5, words.size() - 0.5, ticks, words, false);
    }

    /**
     * A logarithmic scale that holds all these values, each above 0, with some air at both ends; its ticks are 1, 2 and
     * 5 times powers of ten.
     */
    public static Scale ofRatios(String title, List<Double> values) {
        Scale within = bare(title, values);
        List<Double> ticks = new ArrayList<>();
        for (int power = (int) Math.floor(Math.log10(within.from)); Math.pow(10, power) <= within.to; power++) {
            for (int digit : new int[] {1, 2, 5}) {
                // Dividing by a power of ten gives the double nearest to the decimal.
                double tick = power < 0 ? digit / Math.pow(10, -power) : digit * Math.pow(10, power);
                if (tick >= within.from && tick <= within.to) {
                    ticks.add(tick);
                }
            }
        }
        return within.withTicks(ticks);
    }

    /** The same scale with ticks at these values, in ascending order. */
    public Scale withTicks(List<Double> values) {
        List<String> words = new ArrayList<>();
        for (double value : values) {
            words.add(Decimals.significant(value, 9, 9));
        }
        return new Scale(title, from, to, values, words, logarithmic);
    }

    private static Scale bare(String title, List<Double> values) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (double value : values) {
            if (!(value > 0)) {
                throw new IllegalArgumentException("no ratio can be taken of " + value);
            }
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        if (most == 0) {
            return bare(title, List.of(1.0, 10.0));
        }
        double air = Math.max(Math.pow(most / least, AIR), most > least ? 1 : Math.sqrt(2));
        return new Scale(title, least / air, most * air, List.of(), List.of(), true);
    }

    private static double step(double rough) {
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double share = rough / power;
        return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }

    double share(double value) {
        return logarithmic ? Math.log(value / from) / Math.log(to / from) : (value - from) / (to - from);
    }
}
