// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.FitSize;
import ringleaf.part.Stand;

/**
 * A mechanism as it is reported.
 *
 * @param design what was resolved
 * @param findings of all checks, the kind's own and the judge's, in the order in which they are to be read
 * @param files by name of part: paths relative to the output folder; parts that are missing have none
 * @param fits the joints' sizes
 * @param kerfs by name of part: the kerf that is in its files, mm; parts that are missing have none
 * @param stand where it stands, where the spec says so or there are several
 */
public record MechanismReport(
        Design design,
        List<Finding> findings,
        Map<String, List<String>> files,
        List<FitSize> fits,
        Map<String, Double> kerfs,
        Optional<Stand> stand) {
    public MechanismReport {
        findings = List.copyOf(findings);
        fits = List.copyOf(fits);
    }

    /** A report of nominal outlines without joints. */
    public MechanismReport(Design design, List<Finding> findings, Map<String, List<String>> files) {
        this(design, findings, files, List.of(), Map.of(), Optional.empty());
    }
}
