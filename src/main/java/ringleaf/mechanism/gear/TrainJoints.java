// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Placement;
import ringleaf.machine.Joint;
import ringleaf.machine.Joint.Mover;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.body.Bought;
import ringleaf.part.Requirement;

/** The joints of a train: gears that roll on one another, and what they sit on. */
final class TrainJoints {
    /** Steps in which a pitch is rolled through. */
    private static final int STEPS = 24;
    /** Steps in which a whole travel is rolled through, at most. */
    private static final int MOST_STEPS = 600;
    /** What arcs in place of four flanks may take from a play or add to it, mm: four times half a micrometre, and
     * what a slanted line of action makes of it. */
    static final double PLAY_SLACK = 0.003;

    private TrainJoints() {}

    static Joints of(TrainDesign design, Members members) {
        List<Joint> all = new ArrayList<>();
        design.stages().forEach(stage -> all.add(mesh(design.spec(), stage)));
        for (int shaft = 0; shaft <= design.stages().size(); shaft++) {
            Shaft role = Shaft.of(design.spec(), shaft);
            Placement home = shaft == 0
                    ? design.stages().get(0).driverHome()
                    : design.stages().get(shaft - 1).drivenHome();
            TrainParts.bodies(design, shaft).forEach(body -> all.addAll(body.joints(role, Bought.AXLE, home)));
        }
        return new Joints(all, members);
    }

    private static Joint mesh(TrainSpec spec, Stage stage) {
        double relief = stage.driver().spec().finish().relief()
                + stage.driven().spec().finish().relief();
        return new Joint.Rolling(
                new Mover.Turns(Shaft.of(spec, stage.number() - 1), stage.driverAxis()),
                new Mover.Turns(Shaft.of(spec, stage.number()), stage.drivenAxis()),
                stage.mesh().turn(),
                true,
                Optional.of(new Joint.Mesh(rolled(spec, stage), 0, stage.mesh().drivenPlay(), PLAY_SLACK + relief)));
    }

    /** A pitch of the stage's driver, in the sense in which it turns; its whole travel where teeth end. */
    private static Requirement.Rolled rolled(TrainSpec spec, Stage stage) {
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
}
