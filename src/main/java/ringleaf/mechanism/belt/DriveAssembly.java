// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Material;
import ringleaf.part.Assembly;
import ringleaf.part.Callout;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Member;
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

    Assembly assembly() {
        List<Member> members = new ArrayList<>();
        for (Part part : plates.parts()) {
            boolean standoffs = part.name().equals(DriveFasteners.STANDOFF);
            members.add(new Member(part.name(), standoffs ? plates.placedStandoffs() : part, 0, Placement.IDENTITY));
        }
        List<Wheel> wheels = plan.path().wheels();
        for (int i = 0; i < wheels.size(); i++) {
            Optional<PulleySpec> pulley = plan.pulley(i);
            List<Part> own = pulley.isPresent()
                    ? plan.stack(pulley.get()).placed(wheels.get(i).centre(), plan.phase(i))
                    : List.of(roller(i, true));
            for (Part part : own) {
                members.add(new Member(part.name(), part, 1 + i, Placement.IDENTITY));
            }
        }
        Part band = motion.run().band(plan.beltBottom(), plan.beltTop());
        Rubber rubber = motion.run().addTo(members, band, motion.band(), motion.firstTooth());
        return new Assembly(
                spec.name(),
                members,
                motion,
                Optional.empty(),
                requirements(members, rubber),
                callouts(),
                new DriveSteps(plan, plates, members, rubber).all(),
                views(),
                bodies());
    }

    private Map<String, Integer> bodies() {
        Map<String, Integer> bodies = BodyName.numbered("driver");
        bodies.put("driven", 1 + plan.layout().driven());
        return bodies;
    }

    /** Belt and what it runs on touch; all else keeps its room. */
    private List<Requirement> requirements(List<Member> members, Rubber rubber) {
        List<Requirement.Pair> pairs = new ArrayList<>(rubber.onePiece());
        pairs.addAll(rubber.oneAfterAnother());
        for (int i : rubber.members()) {
            for (int j = 0; j < members.size(); j++) {
                if (members.get(j).part().family() == Family.PULLEY) {
                    pairs.add(Requirement.Pair.touching(i, j));
                }
            }
        }
        double room = Math.min(spec.beltRoom(), spec.pulleyRoom());
        List<Requirement> all = new ArrayList<>();
        all.add(new Requirement.StaysApart("clearance", Math.min(0.2, room), pairs));
        for (DriveSpec.Obstacle o : spec.obstacles()) {
            all.add(new Requirement.KeepsClear(
                    "obstacle-clearance", Region.disc(o.centre(), o.diameter() / 2 + spec.beltRoom()), List.of()));
        }
        all.addAll(PulleyStack.webs(members, spec.plate(), spec.driver().material()));
        return all;
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
