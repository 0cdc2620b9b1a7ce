// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.List;
import ringleaf.mechanism.Trial;
import ringleaf.part.Choice;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.part.Part;

/** Sizes and calculated checks of a rack without drawing it. */
record RackTrial(RackLayout layout) implements Trial {
    @Override
    public List<Choice> choices() {
        return new RackDimensions(layout, new RackPlates(layout)).choices();
    }

    @Override
    public List<Dimension> dimensions() {
        return new RackDimensions(layout, new RackPlates(layout)).all();
    }

    @Override
    public List<Finding> findings() {
        return new RackChecks(layout).all();
    }

    @Override
    public String bound() {
        return "";
    }

    @Override
    public List<Part> parts() {
        RackParts parts = new RackParts(layout, new RackPlates(layout));
        return parts.parts(parts.members());
    }
}
