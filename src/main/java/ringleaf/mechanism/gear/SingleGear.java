// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.spec.field.FieldSet;

/** The kind {@code gear}: one gear, outside or inside, whole or a sector. */
public final class SingleGear implements Kind {
    public static final String NAME = "gear";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "one gear or toothed ring, whole or a sector";
    }

    @Override
    public FieldSet fields() {
        return GearFields.SINGLE;
    }

    @Override
    public List<String> headline() {
        return List.of("teeth", "module", "gear-tip-diameter", "ring-diameter", "width", "backlash");
    }

    @Override
    public List<String> weighed() {
        return List.of("gear-tip-diameter", "width");
    }

    @Override
    public List<String> compared() {
        return List.of("ring-diameter", "module", "gear-root-diameter");
    }

    @Override
    public List<BodyName> bodies() {
        return List.of(
                BodyName.frame("what holds its axle"), new BodyName("gear", "the gear, which turns without end"));
    }

    @Override
    public Planned read(Request request) {
        Optional<SingleDesign> design = new SingleReader(request).read();
        return states -> design.orElseThrow().design(states);
    }
}
