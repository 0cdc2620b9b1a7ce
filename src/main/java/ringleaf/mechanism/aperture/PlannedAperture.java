package ringleaf.mechanism.aperture;

import java.util.Optional;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.ServoLaw;
import ringleaf.part.Design;

/** An aperture that was read, and what can be asked of it. */
record PlannedAperture(ApertureSpec spec) implements Kind.Planned {
    @Override
    public Design design(int states) {
        return LeafAperture.design(spec, states);
    }

    private ApertureDesign design() {
        return new ApertureDesigner(spec).candidates().get(0).design();
    }

    @Override
    public Optional<ServoLaw> servoLaw() {
        ApertureDesign design = spec.drive() instanceof DriveSpec.Hand ? null : design();
        return design == null
                ? Optional.empty()
                : design.pinionPlan().map(plan -> new ApertureServoLaw(design, plan));
    }

    @Override
    public Optional<AsBuilt> asBuilt() {
        return Optional.of(new ApertureBuilt(design()));
    }

    @Override
    public String servoHint() {
        return "drive: {servo: micro-180}";
    }
}
