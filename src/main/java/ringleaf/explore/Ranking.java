// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Puts rows in order and marks the undominated ones. */
final class Ranking {
    /** Figures nearer to each other than this count as equal: sizes are solved to a twentieth of a millimetre. */
    private static final double EQUAL = 1e-6;

    private final List<Integer> weighed;

    /**
     * A ranking.
     *
     * @param weighed places of the figures that are weighed against each other
     */
    Ranking(List<Integer> weighed) {
        this.weighed = List.copyOf(weighed);
    }

    /** The rows that work by the figure sought (the first), then by what is weighed, then as asked; then the others. */
    List<Row> sorted(List<Row> rows) {
        List<Row> sorted = new ArrayList<>(rows);
        sorted.sort(this::compare);
        return sorted;
    }

    private int compare(Row one, Row other) {
        int by = one.status().compareTo(other.status());
        if (by == 0 && one.works()) {
            by = compare(one.figures()[0], other.figures()[0]);
            for (int i = 0; by == 0 && i < weighed.size(); i++) {
                by = compare(one.figures()[weighed.get(i)], other.figures()[weighed.get(i)]);
            }
        }
        return by != 0 ? by : Integer.compare(one.index(), other.index());
    }

    /** By steps of {@link #EQUAL}, so that the order is one; what is no number comes last. */
    private static int compare(double one, double other) {
        return Double.compare(stepped(one), stepped(other));
    }

    private static double stepped(double value) {
        return Double.isNaN(value) ? value : Math.rint(value / EQUAL) + 0.0;
    }

    /** The rows with the undominated among those that work marked, in the same order. */
    List<Row> marked(List<Row> rows) {
        List<double[]> all = new ArrayList<>();
        for (Row row : rows) {
            all.add(row.works() ? weighed(row) : null);
        }
        boolean[] best = undominated(all);
        List<Row> marked = new ArrayList<>(rows.size());
        for (int i = 0; i < rows.size(); i++) {
            marked.add(rows.get(i).marked(best[i]));
        }
        return marked;
    }

    /** What is weighed of a row, equal for rows that count as equal. */
    List<Double> weights(Row row) {
        List<Double> list = new ArrayList<>();
        for (double weight : weighed(row)) {
            list.add(weight);
        }
        return list;
    }

    private double[] weighed(Row row) {
        double[] weights = new double[weighed.size()];
        for (int i = 0; i < weights.length; i++) {
            double value = row.figures()[weighed.get(i)];
            weights[i] = Double.isNaN(value) ? Double.POSITIVE_INFINITY : stepped(value);
        }
        return weights;
    }

    /**
     * Which points no other point is as good as in all and better than in some coordinates; less is better, null is
     * left out. Points are taken in lexicographic order: whatever dominates one stands before it, and some of these
     * are undominated themselves, so each is held against the undominated ones before it only.
     */
    static boolean[] undominated(List<double[]> points) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i) != null) {
                order.add(i);
            }
        }
        order.sort((a, b) -> Arrays.compare(points.get(a), points.get(b)));
        boolean[] best = new boolean[points.size()];
        List<double[]> front = new ArrayList<>();
        int last = -1;
        for (int i : order) {
            double[] point = points.get(i);
            if (last >= 0 && Arrays.equals(points.get(last), point)) {
                // Equals stand together and share their fate; a front of thousands of equals would take for ever.
                best[i] = best[last];
                continue;
            }
            last = i;
            boolean dominated = false;
            for (int k = front.size() - 1; k >= 0 && !dominated; k--) {
                dominated = dominates(front.get(k), point);
            }
            best[i] = !dominated;
            if (!dominated) {
                front.add(point);
            }
        }
        return best;
    }

    private static boolean dominates(double[] one, double[] other) {
        boolean better = false;
        for (int i = 0; i < one.length; i++) {
            if (one[i] > other[i]) {
                return false;
            }
            better |= one[i] < other[i];
        }
        return better;
    }
}
