// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.List;
import ringleaf.part.Part;
import ringleaf.spec.Cutting;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;

/**
 * A part ready for its machine.
 *
 * @param part with the outlines to follow
 * @param process that makes it
 * @param stock it is made of
 * @param cutting what was asked for
 * @param kerf mm that are in the outlines; 0 for nominal ones
 * @param tabs bridges that sheets leave in the outline
 * @param leads where cuts begin
 * @param notes lines for people on what was done to the outline
 */
public record Prepared(
        Part part,
        MakingProcess process,
        Stock stock,
        Cutting cutting,
        double kerf,
        TabPlan tabs,
        LeadPlan leads,
        List<String> notes) {
    public Prepared {
        notes = List.copyOf(notes);
    }
}
