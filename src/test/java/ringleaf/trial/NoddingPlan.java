// SPDX-License-Identifier: Apache-2.0
package ringleaf.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.ServoLaw;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Dimension.Origin;
import ringleaf.part.Family;
import ringleaf.part.Finding;
import ringleaf.part.FitRow;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.MotionTable;
import ringleaf.part.Part;
import ringleaf.part.Placing;
import ringleaf.part.Requirement;
import ringleaf.part.Way;
import ringleaf.part.Words;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Servo;

/** The arm that was read; lengths in mm, angles in rad. */
record NoddingPlan(String name, double length, double swing, Material material, Optional<Servo> servo)
        implements Kind.Planned {
    private static final double PIN = 4;
    private static final double BOSS = 8;
    private static final double UNDER = 0.3;

    private double bore() {
        return PIN + material.runningClearance();
    }

    /** Play all round the pin. */
    private double room() {
        return material.runningClearance() / 2;
    }

    @Override
    public Design design(int states) {
        NoddingMotion motion = new NoddingMotion(swing, states);
        double thick = material.thickness();
        double arm = thick + UNDER;
        Contour hole = Contour.circle(Point.ORIGIN, bore() / 2);
        Contour plate = Shapes.roundedRectangle(new Box(-20, -20, 20, 20), 3);
        Contour bar = Shapes.hull(Point.ORIGIN, BOSS, new Point(length - BOSS / 2, 0), BOSS / 2);
        Part.Source wire = new Part.Source("bought", "steel wire Ø" + Words.number(PIN, 2));
        List<Part> parts = List.of(
                part(
                        "stand",
                        Family.PLATE,
                        material.source(),
                        Region.of(plate, Contour.circle(Point.ORIGIN, PIN / 2)),
                        0,
                        thick),
                part("pin", Family.PIN, wire, Region.disc(Point.ORIGIN, PIN / 2), 0, arm + thick),
                part("arm", Family.PLATE, material.source(), Region.of(bar, hole), arm, arm + thick));
        List<Member> members = new ArrayList<>();
        for (Part part : parts) {
            members.add(new Member(part.name(), part, part.name().equals("arm") ? 1 : 0, Placement.IDENTITY));
        }
        List<Requirement> asked = List.of(
                new Requirement.PinInHole(
                        "pin-in-bore", List.of(new Requirement.Fit(1, Point.ORIGIN, PIN / 2, 2, hole)), room()),
                new Requirement.LeastWeb("minimum-web", "arm", material.leastWeb()),
                new Requirement.StaysApart(
                        "clearance",
                        0.1,
                        List.of(Requirement.Pair.touching(0, 1), new Requirement.Pair(1, 2, room()))));
        List<BuildStep> steps = List.of(
                BuildStep.of("Lay the stand on the table.", List.of(Placing.of(0, Placing.NOTHING, Way.DOWN))),
                BuildStep.of("Press the pin into the stand.", List.of(Placing.of(1, 0, Way.DOWN))),
                BuildStep.of("Put the arm on the pin.", List.of(Placing.of(2, 0, Way.DOWN))));
        Assembly assembly = new Assembly(name, members, motion, Optional.empty(), asked, List.of(), steps)
                .withBodies(BodyName.numbered("arm"));
        return new Design(
                name,
                NoddingArm.NAME,
                List.of(),
                dimensions(),
                parts,
                assembly,
                table(motion),
                List.of(Finding.of("arm-length")
                        .about("arm")
                        .atLeast(length, 2 * BOSS, "mm")
                        .says("trial.arm-length")),
                travel(states),
                List.of(),
                joints());
    }

    private static Part part(String name, Family family, Part.Source source, Region region, double from, double to) {
        return new Part(name, family, 1, source, List.of(Layer.of(region, from, to)), List.of(), "");
    }

    private List<Dimension> dimensions() {
        return List.of(
                new Dimension("length", length, "mm", Origin.GIVEN, ""),
                new Dimension("swing", Math.toDegrees(swing), "deg", Origin.DEFAULT, ""),
                new Dimension("reach", length + BOSS, "mm", Origin.SOLVED, "arm and boss"));
    }

    private List<FitRow> joints() {
        return List.of(
                new FitRow("pin", "pin", FitRow.Shape.SHAFT, FitName.RUNNING.label(), PIN, PIN, 1, ""),
                new FitRow("arm-bore", "arm", FitRow.Shape.HOLE, FitName.RUNNING.label(), PIN, bore(), 1, ""),
                new FitRow("pin-hole", "stand", FitRow.Shape.HOLE, FitName.PRESS.label(), PIN, PIN, 1, ""));
    }

    private static MotionTable table(NoddingMotion motion) {
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < motion.states(); i++) {
            rows.add(new double[] {Math.toDegrees(motion.turn(i))});
        }
        return new MotionTable(List.of("arm_deg"), rows, "", List.of());
    }

    private Map<String, Double> travel(int states) {
        Map<String, Double> travel = new LinkedHashMap<>();
        travel.put("states", (double) states);
        travel.put("arm", Math.toDegrees(swing));
        return travel;
    }

    @Override
    public Optional<ServoLaw> servoLaw() {
        return servo.map(s -> new NoddingLaw(s, swing));
    }

    @Override
    public Optional<AsBuilt> asBuilt() {
        return Optional.of(new NoddingBuilt(PIN, bore(), material));
    }
}
