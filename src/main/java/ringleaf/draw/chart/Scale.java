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
 */
public record Scale(String title, double from, double to, List<Double> ticks, List<String> labels) {
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
        double span = most - least > 1e-9 * Math.max(1, Math.abs(most)) ? most - least : Math.max(1, Math.abs(most) * 0.1);
        double from = least - AIR * span - (most > least ? 0 : span / 2);
        double to = most + AIR * span + (most > least ? 0 : span / 2);
        double step = step((to - from) / ABOUT);
        List<Double> ticks = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        for (long k = (long) Math.ceil(from / step - 1e-9); k * step <= to + 1e-9 * step; k++) {
            ticks.add(k * step);
            labels.add(Decimals.significant(k * step, 9, 9));
        }
        return new Scale(title, from, to, ticks, labels);
    }

    /** A scale of words. */
    public static Scale ofWords(String title, List<String> words) {
        List<Double> ticks = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            ticks.add((double) i);
        }
        return new Scale(title, -0.5, words.size() - 0.5, ticks, words);
    }

    private static double step(double rough) {
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double share = rough / power;
        return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }

    double share(double value) {
        return (value - from) / (to - from);
    }
}
