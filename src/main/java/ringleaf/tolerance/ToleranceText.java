// SPDX-License-Identifier: Apache-2.0
package ringleaf.tolerance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.AsBuilt.Deviation;
import ringleaf.part.ShownUnit;
import ringleaf.part.Words;

/** What the studies found, as a table for a screen and as comma-separated values. */
public final class ToleranceText {
    private static final int DECIMALS = 3;

    private ToleranceText() {}

    /** A table, the size with the least reserve first; sizes that nothing minds are named below it. */
    public static List<String> drifts(List<Drift> drifts, ShownUnit unit) {
        List<Drift> sorted = new ArrayList<>();
        Set<String> alike = new HashSet<>();
        for (int i = 0; i < drifts.size(); i++) {
            Drift drift = drifts.get(i);
            if (i > 0 && drift.together() && drift.hasLimitsOf(drifts.get(i - 1))) {
                alike.add(drift.size().name());
            } else {
                sorted.add(drift);
            }
        }
        sorted.sort(Comparator.comparingDouble(Drift::reserve));
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"size", "drawn", "made within", "may fall by", "may grow by", "reserve", "gives way"});
        List<String> free = new ArrayList<>();
        for (Drift drift : sorted) {
            if (Double.isInfinite(drift.down()) && Double.isInfinite(drift.up())) {
                free.add(name(drift, alike));
                continue;
            }
            Deviation size = drift.size();
            rows.add(new String[] {
                name(drift, alike),
                size.nominal() == 0 ? "" : told(size.nominal(), size, unit),
                told(size.within(), size, unit),
                figure(drift.down(), size, unit),
                figure(drift.up(), size, unit),
                Words.number(drift.reserve(), 1) + "x",
                breaks(drift)
            });
        }
        List<String> lines = aligned(rows);
        if (!free.isEmpty()) {
            lines.add("nothing gives way when these drift: " + String.join(", ", free));
        }
        return lines;
    }

    private static String name(Drift drift, Set<String> alike) {
        int copies = drift.size().copies();
        String name = drift.size().name();
        String which = drift.together() ? ", all " : alike.contains(name) ? ", one or all of " : ", one of ";
        return name + (copies == 1 ? "" : which + copies);
    }

    private static String figure(double drift, Deviation size, ShownUnit unit) {
        return Double.isInfinite(drift) ? "any" : told(drift, size, unit);
    }

    /** Deviations are told a decimal finer than sizes. */
    private static String told(double value, Deviation size, ShownUnit unit) {
        return size.unit().equals("mm") ? unit.number(value, 1) : Words.number(value, DECIMALS);
    }

    private static String breaks(Drift drift) {
        if (drift.downBreaks().equals(drift.upBreaks()) || drift.upBreaks().isEmpty()) {
            return drift.downBreaks();
        }
        return drift.downBreaks().isEmpty() ? drift.upBreaks() : drift.downBreaks() + " / " + drift.upBreaks();
    }

    /** The share with its interval, and what gave way. */
    public static List<String> yield(Yield yield) {
        List<String> lines = new ArrayList<>();
        lines.add("of " + yield.builds() + " random builds (seed " + yield.seed() + ") " + yield.good() + " hold: "
                + percent(yield.share()) + " %, 95 % interval " + percent(yield.low()) + " to " + percent(yield.high())
                + " % (Clopper and Pearson)");
        if (!yield.failures().isEmpty()) {
            lines.add("commonest failure: " + yield.failures().get(0).check());
            List<String[]> rows = new ArrayList<>();
            rows.add(new String[] {"gives way", "builds", "alone"});
            for (Yield.Failure failure : yield.failures()) {
                rows.add(new String[] {
                    failure.check(), Integer.toString(failure.builds()), Integer.toString(failure.alone())
                });
            }
            lines.addAll(aligned(rows));
        }
        return lines;
    }

    private static String percent(double share) {
        return Words.number(100 * share, 1);
    }

    /** First column to the left, figures to the right, the last column as it is. */
    private static List<String> aligned(List<String[]> rows) {
        int columns = rows.get(0).length;
        int[] widths = new int[columns];
        for (String[] row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row[i].length());
            }
        }
        List<String> lines = new ArrayList<>();
        for (String[] row : rows) {
            StringBuilder line = new StringBuilder(row[0]).append(" ".repeat(widths[0] - row[0].length()));
            for (int i = 1; i < columns; i++) {
                boolean words = columns > 3 && i == columns - 1;
                line.append("  ")
                        .append(words ? "" : " ".repeat(widths[i] - row[i].length()))
                        .append(row[i]);
            }
            lines.add(line.toString());
        }
        return lines;
    }

    /** All drifts in the order of the sizes; a cell is empty where nothing gives way within what was looked at. */
    public static String driftCsv(List<Drift> drifts) {
        StringBuilder out = new StringBuilder(
                "size,what,copies,drifting,unit,drawn,made_within,made_by,may_fall_by,breaks_falling,may_grow_by,"
                        + "breaks_growing,looked_at_up_to\n");
        for (Drift drift : drifts) {
            Deviation size = drift.size();
            out.append(size.name())
                    .append(',')
                    .append(quoted(size.what()))
                    .append(',')
                    .append(size.copies());
            out.append(',')
                    .append(size.copies() == 1 ? "it" : drift.together() ? "all" : "one")
                    .append(',');
            out.append(size.unit()).append(',').append(size.nominal() == 0 ? "" : Words.number(size.nominal(), 5));
            out.append(',').append(Words.number(size.within(), 5)).append(',').append(quoted(size.source()));
            way(out, drift.down(), drift.downBreaks());
            way(out, drift.up(), drift.upBreaks());
            out.append(',').append(Words.number(size.most(), 3)).append('\n');
        }
        return out.toString();
    }

    private static void way(StringBuilder out, double drift, String breaks) {
        out.append(',')
                .append(Double.isInfinite(drift) ? "" : Words.number(drift, 5))
                .append(',')
                .append(breaks);
    }

    /** One line for the whole and one for each check, also those that never gave way. */
    public static String yieldCsv(Yield yield, AsBuilt built) {
        StringBuilder out = new StringBuilder(1024);
        out.append("check,builds,broken,alone,share_holding,low_95,high_95,seed,holds_when\n");
        row(out, yield, "all", yield.builds() - yield.good(), "", "everything below holds");
        for (AsBuilt.Limit limit : built.limits()) {
            int broken = 0;
            int alone = 0;
            for (Yield.Failure failure : yield.failures()) {
                if (failure.check().equals(limit.check())) {
                    broken = failure.builds();
                    alone = failure.alone();
                }
            }
            row(out, yield, limit.check(), broken, Integer.toString(alone), limit.holds());
        }
        return out.toString();
    }

    private static void row(StringBuilder out, Yield yield, String check, int broken, String alone, String holds) {
        int good = yield.builds() - broken;
        double[] interval = YieldStudy.interval(good, yield.builds());
        out.append(check)
                .append(',')
                .append(yield.builds())
                .append(',')
                .append(broken)
                .append(',')
                .append(alone);
        out.append(',').append(Words.number((double) good / yield.builds(), 5));
        out.append(',').append(Words.number(interval[0], 5)).append(',').append(Words.number(interval[1], 5));
        out.append(',').append(yield.seed()).append(',').append(quoted(holds)).append('\n');
    }

    private static String quoted(String words) {
        return words.indexOf(',') < 0 && words.indexOf('"') < 0 ? words : '"' + words.replace("\"", "\"\"") + '"';
    }
}
