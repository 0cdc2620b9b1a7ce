// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.part.Requirement;

/** Members fit into a depth; nothing moves up or down, so one look is enough. */
final class DepthCheck extends Check {
    private final Requirement.FitsDepth required;

    DepthCheck(Scene scene, Requirement.FitsDepth required) {
        super(scene);
        this.required = required;
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        return null;
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        String lowest = "";
        String highest = "";
        for (int member : required.members()) {
            Part part = scene.assembly.members().get(member).part();
            if (part.zFrom() < low) {
                low = part.zFrom();
                lowest = name(member);
            }
            if (part.zTo() > high) {
                high = part.zTo();
                highest = name(member);
            }
        }
        double depth = required.members().isEmpty() ? 0 : high - low;
        findings.add(still(required.check(), lowest.equals(highest) ? List.of(lowest) : List.of(lowest, highest))
                .atMost(depth, required.depth(), "mm")
                .says("verify.depth", Words.mm(depth), Words.mm(required.depth())));
    }
}
