package ringleaf.report;

import java.util.List;
import java.util.Map;
import ringleaf.part.Design;
import ringleaf.part.Finding;

/**
 * A mechanism as it is reported.
 *
 * @param design what was resolved
 * @param findings of all checks, the kind's own and the judge's, in the order in which they are to be read
 * @param files by name of part: paths relative to the output folder; parts that are missing have none
 */
public record MechanismReport(Design design, List<Finding> findings, Map<String, List<String>> files) {
    public MechanismReport {
        findings = List.copyOf(findings);
    }
}
