// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Decision;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.spec.field.FieldSet;

/** The kind {@code gear-train}: stages of gears on shared shafts. */
public final class TrainOfGears implements Kind {
    public static final String NAME = "gear-train";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "gears in several stages on shared shafts, with total ratio, speed and torque";
    }

    @Override
    public FieldSet fields() {
        return GearFields.TRAIN;
    }

    @Override
    public List<String> headline() {
        return List.of(
                "ratio",
                "teeth",
                "module",
                "stage-1-teeth",
                "stage-1-module",
                "stage-2-teeth",
                "stage-2-module",
                "stage-3-teeth",
                "stage-3-module",
                "stage-4-teeth",
                "stage-4-module",
                "overall-length",
                "depth",
                "output-travel");
    }

    /** Coarser teeth first, as they are stronger and easier to make; then width, and other shares of the ratio; a steeper flank last. */
    @Override
    public List<Decision> decisions() {
        return List.of(
                Decision.numbers("module", 1, 1.25, 1.5, 2, 2.5, 3, 4, 0.8, 0.6, 0.5),
                Decision.mm("width", 5, 6, 8, 10, 12, 15, 20, 3),
                Decision.numbers("pressure-angle", 25),
                Decision.numbers("stage-count", 2, 3, 4, 1));
    }

    @Override
    public List<String> weighed() {
        return List.of("overall-length", "depth", "ratio-error", "parts");
    }

    @Override
    public List<String> compared() {
        return List.of("ratio");
    }

    @Override
    public List<BodyName> bodies() {
        List<BodyName> bodies = new ArrayList<>(List.of(BodyName.frame("what holds the axles")));
        for (int shaft = 1; shaft <= GearFields.MOST_STAGES + 1; shaft++) {
            bodies.add(new BodyName("shaft-" + shaft, "shaft " + shaft + " with its gears, where there is one"));
        }
        return bodies;
    }

    @Override
    public Planned read(Request request) {
        TrainSpec spec = new TrainReader(request).read();
        return new PlannedTrain(spec);
    }
}
