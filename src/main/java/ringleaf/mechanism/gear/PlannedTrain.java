// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.Optional;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.RatioLaw;
import ringleaf.mechanism.ServoLaw;
import ringleaf.mechanism.Trial;
import ringleaf.part.Design;

/** A pair or a train that was read, and what can be asked of it. */
record PlannedTrain(TrainSpec spec) implements Kind.Planned {
    @Override
    public Design design(int states) {
        return TrainDesign.design(spec, states, true);
    }

    @Override
    public Trial trial(int states, Memo memo) {
        Design design = TrainDesign.design(spec, states, false);
        return spec.ratio().isPresent()
                ? Trial.of(
                        design, Trial.ratioError(spec.totalRatio(), spec.ratio().getAsDouble()))
                : Trial.of(design);
    }

    @Override
    public Optional<ServoLaw> servoLaw() {
        return spec.drive()
                .servo()
                .map(servo -> new RatioLaw(spec.travel(), spec.totalRatio(), servo, lostMotion(), "teeth"));
    }

    @Override
    public Optional<AsBuilt> asBuilt() {
        return Optional.of(new TrainBuilt(spec));
    }

    @Override
    public String servoHint() {
        return "drive: {servo: micro-180}";
    }

    /** The play of every mesh, brought back to the first driver, rad. */
    private double lostMotion() {
        double lost = 0;
        double turns = 1;
        for (StageSpec stage : spec.stages()) {
            Mesh mesh = stage.mesh();
            turns *= mesh.ratio();
            lost += Math.max(0, mesh.drivenPlay()) * turns;
        }
        return lost;
    }
}
