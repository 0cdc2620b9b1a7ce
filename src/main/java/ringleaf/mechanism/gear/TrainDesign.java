// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Point;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.part.Assembly;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Part;

/**
 * A pair or a train with every gear made and in its place: the first driver's axis in the origin.
 *
 * @param spec as read and solved
 * @param stages in order
 */
record TrainDesign(TrainSpec spec, List<Stage> stages) {
    static TrainDesign of(TrainSpec spec) {
        List<Stage> stages = new ArrayList<>();
        Point axis = Point.ORIGIN;
        double turn = 1;
        double z = 0;
        for (StageSpec stage : spec.stages()) {
            Mesh mesh = stage.mesh();
            Wheel driver =
                    Wheel.of(mesh.driverRim(), stage.driver(), spec.material().leastWeb());
            Wheel driven =
                    Wheel.of(mesh.drivenRim(), stage.driven(), spec.material().leastWeb());
            double at = stage.at();
            Point next = stage.drivenAxis(axis);
            // A tooth of the driver points along the line of centres, and a space of the driven gear faces it.
            double facing = mesh instanceof Mesh.Inner ? at : at + Math.PI;
            double ownTravel = spec.travel() * turn;
            double driverPhase = phase(driver, at, ownTravel, at);
            double drivenPhase = phase(
                    driven,
                    facing,
                    ownTravel * mesh.turn(),
                    facing - driven.rim().pitchAngle() / 2);
            stages.add(new Stage(
                    stages.size() + 1,
                    stage,
                    driver,
                    driven,
                    axis,
                    next,
                    driverPhase,
                    drivenPhase,
                    turn,
                    z,
                    z + spec.width()));
            axis = next;
            turn *= mesh.turn();
            z += spec.width() + spec.gap();
        }
        return new TrainDesign(spec, stages);
    }

    /**
     * The turn of a wheel's frame: {@code base} for a full circle; for a sector whole pitches more, so that its middle
     * faces the mate in the middle of the travel.
     */
    private static double phase(Wheel wheel, double facing, double travel, double base) {
        if (wheel.spec().sector().isEmpty()) {
            return base;
        }
        double pitch = wheel.rim().pitchAngle();
        double wanted = facing - travel / 2 - wheel.sectorCentre();
        return base + pitch * Math.rint((wanted - base) / pitch);
    }

    Stage last() {
        return stages.get(stages.size() - 1);
    }

    /** Greatest distance of any arc from the curve it stands for, mm. */
    double deviation() {
        double worst = 0;
        for (Stage stage : stages) {
            worst = Math.max(
                    worst,
                    Math.max(
                            stage.driver().cut().deviation(),
                            stage.driven().cut().deviation()));
        }
        return worst;
    }

    /**
     * The design.
     *
     * @param told whether changes and other teeth are tried, to be told beside what was taken
     */
    static Design design(TrainSpec spec, int states, boolean told) {
        TrainDesign design = of(told ? spec : spec.quiet());
        TrainMotion motion = new TrainMotion(design, states);
        TrainParts made = new TrainParts(design);
        List<Part> parts = made.parts();
        Members members = made.members();
        Joints joints = TrainJoints.of(design, members);
        Assembly assembly = new TrainAssembly(design, members, joints, motion).assemble();
        Rolling rolling = Rolling.of(design, motion);
        List<Finding> findings = new TrainChecks(design, rolling).all();
        TrainDimensions dimensions = new TrainDimensions(design);
        return new Design(
                spec.name(),
                spec.kind(),
                dimensions.choices(told),
                dimensions.all(),
                parts,
                assembly,
                rolling.table(),
                findings,
                design.travel(states),
                told ? new TrainRemedies(design, findings).lines() : List.of(),
                joints.rows());
    }

    private Map<String, Double> travel(int states) {
        Map<String, Double> travel = new LinkedHashMap<>();
        travel.put("states", (double) states);
        travel.put("driver", Math.toDegrees(spec.travel()));
        travel.put("driven", Math.toDegrees(spec.travel() * last().drivenTurn()));
        spec.drive().servo().ifPresent(servo -> travel.put("servo", Math.toDegrees(servo.travel())));
        return travel;
    }
}
