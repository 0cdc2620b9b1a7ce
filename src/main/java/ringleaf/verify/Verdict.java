// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.part.Finding;

/**
 * What the judge found.
 *
 * @param findings the worst case of each requirement, in the order of the requirements
 * @param states what was measured in each judged state, in order
 */
public record Verdict(List<Finding> findings, List<StateReport> states) {
    public Verdict {
        findings = List.copyOf(findings);
        states = List.copyOf(states);
    }

    /** Whether any requirement is broken. */
    public boolean failed() {
        for (Finding finding : findings) {
            if (finding.failed()) {
                return true;
            }
        }
        return false;
    }
}
