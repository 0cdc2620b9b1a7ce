// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.List;
import java.util.OptionalDouble;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/**
 * Diameters of pulleys as they are tabulated; mm. Rows without a flange stand last.
 *
 * @param teeth rising
 * @param outside outside diameter of each
 * @param flange diameter of its flange, for the first rows
 */
public record PulleyTable(List<Integer> teeth, List<Double> outside, List<Double> flange) {
    private static final Field<List<Integer>> TEETH = Field.count("table-teeth")
            .help("counts of teeth for which an outside diameter is tabulated, rising")
            .atLeast(6, "no pulley has fewer")
            .atMost(400, "no pulley has more")
            .list(200)
            .byDefaultWords("none; pitch diameter less twice the pitch line's height then holds");
    private static final Field<List<Double>> OUTSIDE = diameter("table-outside", "tabulated outside diameters");
    private static final Field<List<Double>> FLANGE =
            diameter("table-flange", "tabulated diameters of flanges, for the first rows");
    static final Field<?>[] FIELDS = {TEETH, OUTSIDE, FLANGE};

    private static Field<List<Double>> diameter(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(1, "no pulley is smaller")
                .atMost(2000, "no pulley here is larger")
                .list(200)
                .byDefaultWords("none");
    }

    static PulleyTable of(Values v, Place place, Problems problems) {
        List<Integer> teeth = v.get(TEETH).orElse(List.of());
        List<Double> outside = v.get(OUTSIDE).orElse(List.of());
        List<Double> flange = v.get(FLANGE).orElse(List.of());
        if (teeth.size() != outside.size() || flange.size() > teeth.size()) {
            problems.at(place, "the table of outside diameters has rows of different length", "as many as table-teeth");
            return new PulleyTable(List.of(), List.of(), List.of());
        }
        for (int i = 1; i < teeth.size(); i++) {
            if (teeth.get(i) <= teeth.get(i - 1)) {
                problems.at(place, "table-teeth does not rise at " + teeth.get(i));
            }
        }
        return new PulleyTable(teeth, outside, flange);
    }

    /** The tabulated outside diameter, if this count of teeth is in the table. */
    public OptionalDouble outside(int count) {
        int row = teeth.indexOf(count);
        return row < 0 ? OptionalDouble.empty() : OptionalDouble.of(outside.get(row));
    }

    /** The tabulated diameter of the flange, if it is in the table. */
    public OptionalDouble flange(int count) {
        int row = teeth.indexOf(count);
        return row < 0 || row >= flange.size() ? OptionalDouble.empty() : OptionalDouble.of(flange.get(row));
    }

    public boolean isEmpty() {
        return teeth.isEmpty();
    }

    /**
     * Pitch diameter less outside diameter of a pulley that is not in the table: between its neighbours' by their
     * counts of teeth, beyond the table that of its end.
     */
    public double difference(int count, double pitch) {
        int n = teeth.size();
        int above = 0;
        while (above < n && teeth.get(above) < count) {
            above++;
        }
        if (above == 0 || above == n) {
            return rowDifference(above == 0 ? 0 : n - 1, pitch);
        }
        double share = (count - teeth.get(above - 1)) / (double) (teeth.get(above) - teeth.get(above - 1));
        return (1 - share) * rowDifference(above - 1, pitch) + share * rowDifference(above, pitch);
    }

    private double rowDifference(int row, double pitch) {
        return teeth.get(row) * pitch / Math.PI - outside.get(row);
    }
}
