package ringleaf.mechanism.gear;

import java.util.List;
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
    public List<String> weighed() {
        return List.of("overall-length", "depth", "ratio-error", "parts");
    }

    @Override
    public List<String> compared() {
        return List.of("ratio");
    }

    @Override
    public Planned read(Request request) {
        TrainSpec spec = new TrainReader(request).read();
        return new PlannedTrain(spec);
    }
}
