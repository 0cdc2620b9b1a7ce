// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.ArrayList;
import java.util.List;

/**
 * One row a state: numbers first, then at most one column of words.
 *
 * @param columns names of the number columns
 * @param rows a number for each column, in display units
 * @param placeColumn name of the column of words, or empty
 * @param places its words, one a row, empty when there is no such column
 */
public record MotionTable(List<String> columns, List<double[]> rows, String placeColumn, List<String> places) {

    /** The same with some of the number columns only. */
    public MotionTable only(List<Integer> kept) {
        List<String> names = new ArrayList<>();
        List<double[]> left = new ArrayList<>();
        for (int column : kept) {
            names.add(columns.get(column));
        }
        for (double[] row : rows) {
            double[] some = new double[kept.size()];
            for (int i = 0; i < some.length; i++) {
                some[i] = row[kept.get(i)];
            }
            left.add(some);
        }
        return new MotionTable(names, left, placeColumn, places);
    }
}
