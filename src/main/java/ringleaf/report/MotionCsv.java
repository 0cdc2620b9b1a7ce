// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import ringleaf.part.MotionTable;

/** The table of the travel, one row a state. */
public final class MotionCsv {
    private MotionCsv() {}

    /** The file, UTF-8: a header and a row a state; a value that is no finite number is left empty. */
    public static byte[] write(MotionTable table) {
        Csv csv = new Csv();
        boolean places = !table.placeColumn().isEmpty();
        for (String column : table.columns()) {
            csv.words(column);
        }
        if (places) {
            csv.words(table.placeColumn());
        }
        csv.end();
        for (int row = 0; row < table.rows().size(); row++) {
            for (double value : table.rows().get(row)) {
                csv.number(value);
            }
            if (places) {
                csv.words(table.places().get(row));
            }
            csv.end();
        }
        return csv.toBytes();
    }
}
