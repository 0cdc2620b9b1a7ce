// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.plate;

import java.util.List;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Decision;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.spec.field.FieldSet;

/** The kind {@code plate}: one or two plates with seats for bought things. */
public final class SeatPlate implements Kind {
    public static final String NAME = "plate";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "one or two plates with seats for servos, bearings, boards, shafts and the like, and spacers between them";
    }

    @Override
    public FieldSet fields() {
        return PlateFields.ALL;
    }

    @Override
    public List<String> headline() {
        return List.of("seats", "overall-width", "overall-height", "plate-thickness", "gap", "depth");
    }

    @Override
    public List<String> weighed() {
        return List.of("overall-width", "overall-height");
    }

    @Override
    public List<Decision> decisions() {
        return List.of(Decision.mm("margin", 2, 3, 5), Decision.mm("plate-thickness", 3, 2, 4, 5));
    }

    @Override
    public List<BodyName> bodies() {
        return List.of(BodyName.frame("the plates"));
    }

    @Override
    public Planned read(Request request) {
        return new PlateReader(request).read();
    }
}
