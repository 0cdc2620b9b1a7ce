// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.List;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Decision;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.spec.field.FieldSet;

/** The kind {@code gear-pair}: two gears that mesh, outside each other or one within a ring. */
public final class PairOfGears implements Kind {
    public static final String NAME = "gear-pair";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "two gears in mesh, or a gear in a ring, solved from ratio, teeth, module and centre distance";
    }

    @Override
    public FieldSet fields() {
        return GearFields.PAIR;
    }

    @Override
    public List<String> headline() {
        return List.of(
                "teeth",
                "ratio",
                "module",
                "centre-distance",
                "driver-tip-diameter",
                "driven-tip-diameter",
                "driven-ring-diameter",
                "overall-length",
                "depth",
                "backlash");
    }

    /** Coarser teeth first, as they are stronger and easier to make; then width; a steeper flank last. */
    @Override
    public List<Decision> decisions() {
        return List.of(
                Decision.numbers("module", 1, 1.25, 1.5, 2, 2.5, 3, 4, 0.8, 0.6, 0.5),
                Decision.mm("width", 5, 6, 8, 10, 12, 15, 20, 3),
                Decision.numbers("pressure-angle", 25));
    }

    @Override
    public List<String> weighed() {
        return List.of("overall-length", "ratio-error", "depth");
    }

    @Override
    public List<String> compared() {
        return List.of("centre-distance", "module", "contact-ratio");
    }

    @Override
    public List<BodyName> bodies() {
        return List.of(
                BodyName.frame("what holds the axles"),
                new BodyName("driver", "the driving gear"),
                new BodyName("driven", "the driven gear"));
    }

    @Override
    public Planned read(Request request) {
        TrainSpec spec = new PairReader(request).read();
        return new PlannedTrain(spec);
    }
}
