// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import ringleaf.explore.Axis;
import ringleaf.explore.Column;
import ringleaf.explore.Exploration;
import ringleaf.explore.Row;

/** Every combination that was looked at, the best first. */
public final class ExploreCsv {
    private ExploreCsv() {}

    /** The file, UTF-8: rank, the values, whether it works, the figures, what binds or fails it. */
    public static byte[] write(Exploration.Result result) {
        Csv csv = new Csv();
        csv.words("rank");
        for (Axis axis : result.grid().axes()) {
            csv.words(axis.path().shown());
        }
        csv.words("result").words("best-trade-off").words("verified");
        for (int c = 0; c < result.columns().all().size(); c++) {
            csv.words(heading(result, c));
        }
        for (Column way : result.columns().ways()) {
            csv.words(way.shown());
        }
        csv.words("limit").end();
        int rank = 0;
        for (Row row : result.rows()) {
            csv.number(++rank);
            for (int a = 0; a < result.grid().axes().size(); a++) {
                csv.words(result.grid().text(row.index(), a));
            }
            csv.words(row.status().label())
                    .words(row.undominated() ? "yes" : "")
                    .words(row.judgedBy());
            for (double figure : row.figures()) {
                csv.number(figure);
            }
            for (String way : row.ways()) {
                csv.words(way);
            }
            csv.words(row.limit()).end();
        }
        return csv.toBytes();
    }

    private static String heading(Exploration.Result result, int c) {
        String unit = result.columns().units().get(c);
        return result.columns().all().get(c).shown() + (unit.equals("1") ? "" : "_" + unit);
    }
}
