// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import ringleaf.geom.Placement;
import ringleaf.mechanism.BodyName;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Member;
import ringleaf.part.Part;
import ringleaf.part.Placing;
import ringleaf.part.Requirement;
import ringleaf.part.Way;
import ringleaf.part.Words;

/** Puts the gears in their places and says what they must hold to. */
final class TrainAssembly {
    /** Steps in which a pitch is rolled through. */
    private static final int STEPS = 24;
    /** Steps in which a whole travel is rolled through, at most. */
    private static final int MOST_STEPS = 600;
    /** What arcs in place of four flanks may take from a play or add to it, mm: four times half a micrometre, and
     * what a slanted line of action makes of it. */
    static final double PLAY_SLACK = 0.003;
    /** Kept between gears that do not mesh, mm; common practice, no source. */
    private static final double APART = 0.1;

    private final TrainDesign design;
    private final TrainSpec spec;
    private final List<Part> parts;
    private final TrainMotion motion;

    TrainAssembly(TrainDesign design, List<Part> parts, TrainMotion motion) {
        this.design = design;
        this.spec = design.spec();
        this.parts = parts;
        this.motion = motion;
    }

    Assembly assemble() {
        List<Member> members = new ArrayList<>();
        for (Part part : parts) {
            if (part.isDrawn()) {
                members.add(new Member(part.name(), part, members.size() + 1, Placement.IDENTITY));
            }
        }
        TrainViews views = new TrainViews(design, motion);
        return new Assembly(
                spec.name(),
                members,
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
        List<Requirement> all = new ArrayList<>();
        List<Requirement.Pair> pairs = new ArrayList<>();
        for (Stage stage : design.stages()) {
            int driver = stage.number() - 1;
            int driven = stage.number();
            pairs.add(Requirement.Pair.touching(driver, driven));
            double relief = stage.driver().spec().finish().relief()
                    + stage.driven().spec().finish().relief();
            all.add(new Requirement.Meshes(
                    new Requirement.Turning(driver, stage.driverAxis()),
                    new Requirement.Turning(driven, stage.drivenAxis()),
                    stage.mesh().turn(),
                    rolled(stage),
                    0,
                    stage.mesh().drivenPlay(),
                    PLAY_SLACK + relief));
        }
        for (Part part : parts) {
            if (part.isDrawn()) {
                all.add(new Requirement.LeastWeb(
                        "minimum-web", part.name(), spec.material().leastWeb()));
            }
        }
        all.add(new Requirement.StaysApart("clearance", APART, pairs));
        return all;
    }

    /** A pitch of the stage's driver, in the sense in which it turns; its whole travel where teeth end. */
    private Requirement.Rolled rolled(Stage stage) {
        double pitch = stage.mesh().driver().pitchAngle();
        boolean sector = stage.driver().spec().sector().isPresent()
                || stage.driven().spec().sector().isPresent();
        if (!sector) {
            return new Requirement.Rolled(0, Math.signum(stage.turn()) * pitch, STEPS, "a pitch");
        }
        double travel = spec.travel() * stage.turn();
        int steps = (int) Math.ceil(Math.max(1, STEPS * Math.abs(travel) / pitch));
        return new Requirement.Rolled(0, travel, Math.min(MOST_STEPS, steps), "the whole travel");
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
