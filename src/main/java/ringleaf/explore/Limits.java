// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.Trial;
import ringleaf.part.Finding;
import ringleaf.part.Words;

/** Names the limit that binds a design. */
final class Limits {
    /** Figures nearer to their limit than this share are held by construction and bind nothing by themselves. */
    private static final double HELD = 1e-6;

    private Limits() {}

    /** The check that fails by the largest share of its limit. */
    static Optional<Finding> worst(List<Finding> findings) {
        Finding worst = null;
        for (Finding finding : findings) {
            if (finding.failed() && (worst == null || miss(finding) > miss(worst))) {
                worst = finding;
            }
        }
        return Optional.ofNullable(worst);
    }

    /** By how much a check is missed, as a share of its limit, or of 1 where that is less. */
    static double miss(Finding finding) {
        double miss = Math.abs(finding.measured() - finding.limit()) / Math.max(1, Math.abs(finding.limit()));
        return Double.isNaN(miss) ? Double.MAX_VALUE : miss;
    }

    /** What keeps a design that works from being smaller: as the kind says, or the check with the least to spare. */
    static String binding(Trial trial) {
        if (!trial.bound().isEmpty()) {
            return trial.bound();
        }
        Finding nearest = null;
        for (Finding finding : trial.findings()) {
            double spare = spare(finding);
            if (spare > HELD && (nearest == null || spare < spare(nearest))) {
                nearest = finding;
            }
        }
        return nearest == null ? "" : words(nearest);
    }

    /** What a check has to spare, as a share of its limit; endless where that is no measure, as with a limit of 0. */
    private static double spare(Finding finding) {
        double spare = Math.abs(finding.measured() - finding.limit()) / Math.abs(finding.limit());
        return Double.isNaN(spare) ? Double.POSITIVE_INFINITY : spare;
    }

    /** A check with what was measured and what was asked. */
    static String words(Finding finding) {
        String unit = finding.unit().equals("1") ? "" : finding.unit().equals("deg") ? "°" : " " + finding.unit();
        return finding.check() + ": " + Words.number(finding.measured(), 4) + unit + " against "
                + Words.number(finding.limit(), 4) + unit;
    }
}
