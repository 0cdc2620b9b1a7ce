// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.BodyName;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Member;
import ringleaf.part.Placing;
import ringleaf.part.Requirement;
import ringleaf.part.Way;
import ringleaf.part.Words;

/** Puts the gears in their places and says what they must hold to. */
final class TrainAssembly {
    /** Kept between gears that do not mesh, mm; common practice, no source. */
    private static final double APART = 0.1;

    private final TrainDesign design;
    private final TrainSpec spec;
    private final Members members;
    private final Joints joints;
    private final TrainMotion motion;

    TrainAssembly(TrainDesign design, Members members, Joints joints, TrainMotion motion) {
        this.design = design;
        this.spec = design.spec();
        this.members = members;
        this.joints = joints;
        this.motion = motion;
    }

    Assembly assemble() {
        TrainViews views = new TrainViews(design, motion);
        return new Assembly(
                spec.name(),
                members.all(),
                motion,
                Optional.empty(),
                requirements(),
                views.callouts(),
                steps(),
                views.views(),
                bodies());
    }

    private Map<String, Integer> bodies() {
        if (spec.isPair()) {
            return BodyName.numbered("driver", "driven");
        }
        return BodyName.numbered(IntStream.rangeClosed(1, design.stages().size() + 1)
                .mapToObj(shaft -> "shaft-" + shaft)
                .toArray(String[]::new));
    }

    private List<Requirement> requirements() {
        List<Requirement> all = new ArrayList<>(joints.requirements());
        for (Member member : members.all()) {
            all.add(new Requirement.LeastWeb(
                    "minimum-web", member.part().name(), spec.material().leastWeb()));
        }
        all.add(new Requirement.StaysApart("clearance", APART, joints.pairs()));
        return all;
    }

    /** Gear after gear from above: each meets those that are there with its teeth in their spaces. */
    private List<BuildStep> steps() {
        List<BuildStep> steps = new ArrayList<>();
        steps.add(BuildStep.of("Deburr every gear; pull no more off the flanks than the burr."));
        for (int shaft = 0; shaft <= design.stages().size(); shaft++) {
            String name = TrainParts.name(spec, shaft);
            String words = "Put " + name + " on its axle at (" + Words.number(axis(shaft, true), 3) + ", "
                    + Words.number(axis(shaft, false), 3) + ") mm from the first"
                    + (shaft > 0 && spec.marks()
                            ? ", its mark facing the mark of " + TrainParts.name(spec, shaft - 1)
                            : "")
                    + ".";
            steps.add(BuildStep.of(words, List.of(Placing.of(shaft, shaft - 1, Way.DOWN))));
        }
        for (Stage stage : design.stages()) {
            if (stage.mesh() instanceof Mesh.Inner inner && inner.pair().trimmingMargin() < 0) {
                steps.add(BuildStep.of("The ring goes over its gear along the axis: from the side the tips collide."));
            }
        }
        steps.add(BuildStep.of(
                "Turn it through by hand before any motor does; keep fingers and sleeves out of the mesh."));
        return steps;
    }

    private double axis(int shaft, boolean x) {
        if (shaft == 0) {
            return 0;
        }
        Stage stage = design.stages().get(shaft - 1);
        double value = x ? stage.drivenAxis().x() : stage.drivenAxis().y();
        return Math.abs(value) < 5e-4 ? 0 : value;
    }
}
