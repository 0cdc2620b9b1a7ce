// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.List;
import ringleaf.part.Design;
import ringleaf.part.Finding;

/**
 * A mechanism designed and judged.
 *
 * @param findings the kind's own, then the judge's
 */
record Judged(Design design, List<Finding> findings) {
    boolean failed() {
        for (Finding finding : findings) {
            if (finding.failed()) {
                return true;
            }
        }
        return false;
    }
}
