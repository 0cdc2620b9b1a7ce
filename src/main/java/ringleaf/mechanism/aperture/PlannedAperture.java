// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.List;
import java.util.Optional;
import ringleaf.leaf.BladePlan;
import ringleaf.leaf.Play;
import ringleaf.leaf.Sweep;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.ServoLaw;
import ringleaf.mechanism.Trial;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.part.Part;

/**
 * An aperture that was read, ready to be designed in full or tried in short.
 *
 * @param spec what was asked for
 */
record PlannedAperture(ApertureSpec spec) implements Kind.Planned {

    /** What a sweep depends on. */
    private record Swept(BladePlan plan, double clearRadius, int states, Play play) {}

    @Override
    public Design design(int states) {
        return LeafAperture.design(spec, states);
    }

    @Override
    public Trial trial(int states, Memo memo) {
        BladePlans plans = new BladePlans.Remembered(memo);
        List<ApertureDesigner.Candidate> candidates = new ApertureDesigner(spec, plans).candidates();
        ApertureDesign design = candidates.get(0).design();
        Swept swept = new Swept(design.plan(), spec.clearRadius(), states, spec.play());
        Sweep sweep = memo.get(swept, () -> LeafAperture.sweep(design, states, true));
        ApertureDimensions sizes = new ApertureDimensions(design, sweep);
        return new Tried(
                design,
                sizes.choices(ApertureDimensions.whyLayout(candidates)),
                sizes.compared(),
                new ApertureChecks(design, sweep).all());
    }

    @Override
    public Optional<Finding> refusal() {
        return ApertureScreen.refusal(spec);
    }

    @Override
    public int members() {
        return spec.blades();
    }

    @Override
    public Design trialPiece(int states, int members) {
        return LeafAperture.trialPiece(spec, states, members);
    }

    private ApertureDesign design() {
        return new ApertureDesigner(spec).candidates().get(0).design();
    }

    @Override
    public Optional<ServoLaw> servoLaw() {
        ApertureDesign design = spec.drive() instanceof DriveSpec.Hand ? null : design();
        return design == null ? Optional.empty() : design.pinionPlan().map(plan -> new ApertureServoLaw(design, plan));
    }

    @Override
    public Optional<AsBuilt> asBuilt() {
        return Optional.of(new ApertureBuilt(design()));
    }

    @Override
    public String servoHint() {
        return "drive: {servo: micro-180}";
    }

    /**
     * Sizes and checks of an aperture; parts are drawn when they are asked for.
     *
     * @param design with every size decided
     */
    private record Tried(
            ApertureDesign design, List<Choice> choices, List<Dimension> dimensions, List<Finding> findings)
            implements Trial {
        @Override
        public String bound() {
            return design.bound();
        }

        @Override
        public List<Part> parts() {
            List<Part> parts = new ApertureParts(design).parts();
            return design.spec().mirrored() ? Mirrored.parts(parts) : parts;
        }
    }
}
