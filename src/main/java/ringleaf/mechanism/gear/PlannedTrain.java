package ringleaf.mechanism.gear;

import java.util.Optional;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.ServoLaw;
import ringleaf.part.Design;

/** A pair or a train that was read, and what can be asked of it. */
record PlannedTrain(TrainSpec spec) implements Kind.Planned {
    @Override
    public Design design(int states) {
        return TrainDesign.design(spec, states);
    }

    @Override
    public Optional<ServoLaw> servoLaw() {
        return spec.drive().servo().map(servo -> new TrainServoLaw(spec, servo));
    }

    @Override
    public Optional<AsBuilt> asBuilt() {
        return Optional.of(new TrainBuilt(spec));
    }

    @Override
    public String servoHint() {
        return "drive: {servo: micro-180}";
    }
}
