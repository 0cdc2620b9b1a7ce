// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import ringleaf.part.ShownUnit;
import ringleaf.space.Vector;
import ringleaf.verify.Clearance;

/** How near the mechanisms of one spec come to one another over all settings of their drives, nearest first. */
public final class ClearancesCsv {
    private ClearancesCsv() {}

    /**
     * The file, UTF-8, lengths in mm: both things, the least that is asked for, the least that was found, the bound that
     * is proved, the state, the drives' settings at the nearest, and the place there in the second one's own frame.
     */
    public static byte[] write(List<Clearance> clearances, ShownUnit unit) {
        Csv csv = new Csv();
        for (String column :
                new String[] {"first", "second", "asked_mm", "found_mm", "proved_mm", "state", "when", "x", "y", "z"}) {
            csv.words(column);
        }
        csv.end();
        List<Clearance> nearest = clearances.stream()
                .sorted(Comparator.comparingDouble(c -> Double.isNaN(c.found()) ? Double.POSITIVE_INFINITY : c.found()))
                .toList();
        for (Clearance each : nearest) {
            csv.words(each.firstBody().words()).words(each.secondBody().words());
            csv.number(each.asked()).number(each.found()).number(each.bound());
            csv.words(each.state().name().toLowerCase(Locale.ROOT)).words(Sentences.of(each.when(), unit));
            Vector at = each.at().orElse(new Vector(Double.NaN, Double.NaN, Double.NaN));
            csv.number(at.x()).number(at.y()).number(at.z()).end();
        }
        return csv.toBytes();
    }
}
