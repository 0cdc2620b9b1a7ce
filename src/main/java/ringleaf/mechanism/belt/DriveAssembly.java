// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Material;
import ringleaf.part.Assembly;
import ringleaf.part.Callout;
import ringleaf.part.Family;
import ringleaf.part.FitRow;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Requirement;
import ringleaf.part.View;
import ringleaf.part.Words;
import ringleaf.spec.shared.Bearing;

/** Parts of a belt drive and how they stand together. */
final class DriveAssembly {
    private final DrivePlan plan;
    private final DriveSpec spec;
    private final DrivePlates plates;
    private final BeltMotion motion;
    private final Members members = new Members();
    private final Rubber rubber;
    private final Joints joints;

    DriveAssembly(DrivePlan plan, int states) {
        this.plan = plan;
        this.spec = plan.spec();
        this.plates = new DrivePlates(plan);
        BeltPath path = plan.path();
        BeltRun run = new BeltRun(
                path, spec.choice(), plan.land(), path.middle(0), plan.layout().beltTeeth());
        double travel = plan.travel() * spec.driven().rim().pitchRadius();
        boolean endless = spec.travel().isEmpty() && spec.servo().isEmpty();
        this.motion = new BeltMotion(run, path.wheels().size(), travel, states, endless);
        place();
        Part band = motion.run().band(plan.beltBottom(), plan.beltTop());
        this.rubber = motion.run().addTo(members, band, motion.band(), motion.firstTooth());
        this.joints = DriveJoints.of(plan, plates, members);
    }

    BeltMotion motion() {
        return motion;
    }

    DrivePlates plates() {
        return plates;
    }

    /** Everything that is made or bought. */
    List<Part> parts() {
        List<Part> parts = new ArrayList<>(plates.parts());
        List<Wheel> wheels = plan.path().wheels();
        for (int i = 0; i < wheels.size(); i++) {
            Optional<PulleySpec> pulley = plan.pulley(i);
            if (pulley.isPresent()) {
                parts.addAll(plan.stack(pulley.get()).parts(wheels.get(i).centre(), plan.phase(i)));
            } else {
                parts.add(roller(i, false));
            }
        }
        parts.add(Part.bought(
                "belt",
                1,
                "belt " + spec.choice().beltWords() + ", " + plan.layout().beltTeeth()
                        + " teeth, "
                        + Words.number(
                                plan.layout().beltTeeth() * spec.choice().belt().pitch(), 3)
                        + " mm long on the pitch line, "
                        + Words.mm(spec.choice().width()) + " wide"));
        spec.servo().ifPresent(s -> parts.add(Part.bought("servo", 1, s.words())));
        if (spec.axles().seat().isPresent()) {
            Bearing bearing = spec.axles().seat().get().bearing();
            parts.add(Part.bought(DriveFasteners.BEARING, spec.plates(), bearing.words()));
        }
        for (PulleySpec pulley : List.of(spec.driver(), spec.driven())) {
            pulley.body()
                    .axle()
                    .bearing()
                    .ifPresent(b -> parts.add(Part.bought(pulley.partName("bearing"), 1, b.words())));
        }
        parts.addAll(new DriveFasteners(plan).parts(plates));
        return parts;
    }

    private Part roller(int wheel, boolean stacked) {
        Wheel w = plan.path().wheels().get(wheel);
        DriveSpec.Roller roller = plan.roller(w.name());
        Material material = spec.driver().material();
        PulleyStack level = plan.stack(spec.driver());
        Region ring = Region.ring(w.centre(), (roller.axle() + material.runningClearance()) / 2, roller.diameter() / 2);
        double from = level.faceBottom();
        double height = material.sheet() && !stacked ? material.thickness() : level.face();
        int quantity = material.sheet() && !stacked ? level.plates() : 1;
        return new Part(
                w.name(),
                Family.PULLEY,
                quantity,
                material.source(),
                List.of(Layer.of(ring, from, from + height)),
                List.of(),
                quantity > 1 ? quantity + " sheets in line" : "");
    }

    /** Rows of the table of fits. */
    List<FitRow> fits() {
        return joints.rows();
    }

    Assembly assembly() {
        return new Assembly(
                spec.name(),
                members.all(),
                motion,
                Optional.empty(),
                requirements(),
                callouts(),
                new DriveSteps(plan, plates, members, rubber).all(),
                views(),
                bodies());
    }

    /** What is drawn, in its place; the belt last. */
    private void place() {
        if (spec.plates() > 0) {
            members.add(DrivePart.BASE, plates.base(), 0);
        }
        if (spec.plates() > 1) {
            members.add(DrivePart.STANDOFF, plates.placedStandoffs(), 0);
            members.add(DrivePart.FRONT, plates.front(), 0);
        }
        List<Wheel> wheels = plan.path().wheels();
        for (int i = 0; i < wheels.size(); i++) {
            Optional<PulleySpec> pulley = plan.pulley(i);
            if (pulley.isPresent()) {
                plan.stack(pulley.get()).addTo(members, i, 1 + i, wheels.get(i).centre(), plan.phase(i));
            } else {
                members.add(DrivePart.roller(wheels.get(i), i), roller(i, true), 1 + i);
            }
        }
    }

    private Map<String, Integer> bodies() {
        Map<String, Integer> bodies = BodyName.numbered("driver");
        bodies.put("driven", 1 + plan.layout().driven());
        return bodies;
    }

    /** Belt and what it runs on touch; all else keeps its room. */
    private List<Requirement> requirements() {
        List<Requirement.Pair> pairs = new ArrayList<>(joints.pairs());
        pairs.addAll(rubber.onePiece());
        pairs.addAll(rubber.oneAfterAnother());
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            int wheel = i;
            plan.pulley(i)
                    .ifPresent(pulley -> List.of(DrivePart.flange(pulley, wheel), DrivePart.flangeAbove(pulley, wheel))
                            .forEach(flange -> pairs.addAll(along(flange))));
        }
        double room = Math.min(spec.beltRoom(), spec.pulleyRoom());
        List<Requirement> all = new ArrayList<>(joints.requirements());
        all.add(new Requirement.StaysApart("clearance", Math.min(0.2, room), pairs));
        for (DriveSpec.Obstacle o : spec.obstacles()) {
            all.add(new Requirement.KeepsClear(
                    "obstacle-clearance", Region.disc(o.centre(), o.diameter() / 2 + spec.beltRoom()), List.of()));
        }
        all.addAll(PulleyStack.webs(members.all(), spec.plate(), spec.driver().material()));
        return all;
    }

    /** The belt runs along a flange and touches it. */
    private List<Requirement.Pair> along(DrivePart flange) {
        List<Requirement.Pair> pairs = new ArrayList<>();
        for (int at : members.of(flange)) {
            rubber.members().forEach(piece -> pairs.add(Requirement.Pair.touching(piece, at)));
        }
        return pairs;
    }

    private List<Callout> callouts() {
        List<Callout> all = new ArrayList<>();
        BeltPath path = plan.path();
        int driven = plan.layout().driven();
        Point end = path.wheels().get(driven).centre();
        for (String view : List.of("start", "end")) {
            all.add(new Callout(
                    Callout.Form.DISTANCE,
                    view,
                    Point.ORIGIN,
                    end,
                    "centres " + Words.number(plan.layout().distance(), 3)));
            for (int i = 0; i < path.wheels().size(); i++) {
                Wheel w = path.wheels().get(i);
                Point edge = w.centre().plus(Point.polar(plan.reach(i), Math.toRadians(i == 0 ? -40 : 40)));
                String teeth = w.teeth() > 0
                        ? w.teeth() + " teeth, " + Words.number(path.teethInMesh(i), 1) + " in mesh"
                        : "Ø" + Words.number(plan.roller(w.name()).diameter(), 2);
                all.add(new Callout(Callout.Form.LABEL, view, w.centre(), edge, w.name() + " " + teeth));
            }
        }
        for (int i = 0; i < spec.obstacles().size(); i++) {
            DriveSpec.Obstacle o = spec.obstacles().get(i);
            Point edge = o.centre().plus(Point.polar(o.diameter() / 2, Math.toRadians(40)));
            String text = "obstacle " + (i + 1) + " Ø" + Words.number(o.diameter(), 2);
            all.add(new Callout(Callout.Form.LABEL, "start", o.centre(), edge, text));
        }
        Point on = path.span(path.wheels().size() - 1).pointAt(0.5);
        all.add(new Callout(
                Callout.Form.LABEL,
                "start",
                on,
                on,
                "belt " + plan.layout().beltTeeth() + " teeth, " + Words.number(path.length(), 2) + " mm"));
        return all;
    }

    private List<View> views() {
        List<Path> lines = new ArrayList<>();
        lines.add(new Path(plan.path().beside(0).segments()));
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            Wheel w = plan.path().wheels().get(i);
            if (w.teeth() > 0) {
                lines.add(new Path(Contour.circle(w.centre(), w.radius()).segments()));
            }
        }
        for (DriveSpec.Obstacle o : spec.obstacles()) {
            lines.add(new Path(Contour.circle(o.centre(), o.diameter() / 2).segments()));
        }
        double pitch = spec.choice().belt().pitch();
        double r = spec.driver().rim().pitchRadius() + spec.choice().belt().beltHeight() + pitch;
        Box near = new Box(-r, -r, r, r);
        int last = motion.states() - 1;
        double cut = (plan.beltBottom() + plan.beltTop()) / 2;
        return List.of(
                new View("start", 0, "", Optional.empty(), lines, cut),
                new View("end", last, "", Optional.empty(), lines, cut),
                new View("mesh", last / 2, "the belt on the driver, under way", Optional.of(near), lines, cut));
    }
}
