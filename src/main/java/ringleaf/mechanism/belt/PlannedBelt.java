package ringleaf.mechanism.belt;

import java.util.Optional;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.ServoLaw;
import ringleaf.part.Design;
import ringleaf.spec.field.Values;

/** A belt drive that was read, and what can be asked of it. */
record PlannedBelt(DrivePlan plan, Values values) implements Kind.Planned {
    @Override
    public Design design(int states) {
        return BeltDrive.design(plan, values, states);
    }

    @Override
    public Optional<ServoLaw> servoLaw() {
        return plan.spec().servo().map(servo -> new BeltServoLaw(plan, servo));
    }

    @Override
    public Optional<AsBuilt> asBuilt() {
        return Optional.of(BeltBuilt.of(plan));
    }

    @Override
    public String servoHint() {
        return "servo: micro-180";
    }
}
