// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.List;
import ringleaf.mechanism.Trial;
import ringleaf.part.Choice;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.part.Part;

/**
 * A belt drive tried: its sizes and checks, without assembly, views and a search for what would mend it.
 *
 * @param assembly from which parts are drawn when they are asked for
 */
record TriedBelt(List<Choice> choices, List<Dimension> dimensions, List<Finding> findings, DriveAssembly assembly)
        implements Trial {
    @Override
    public String bound() {
        return "";
    }

    @Override
    public List<Part> parts() {
        return assembly.parts();
    }
}
