// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Point;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.BodyName;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Callout;
import ringleaf.part.Callout.Form;
import ringleaf.part.Member;
import ringleaf.part.Part;
import ringleaf.part.Placing;
import ringleaf.part.Requirement;
import ringleaf.part.View;
import ringleaf.part.Way;
import ringleaf.part.Words;
import ringleaf.spec.shared.Servo;

/** Puts rack, pinion, pins and plates in their places and says what they must hold to. */
final class RackAssembly {
    /** Kept between what has no figure of its own, mm; common practice, no source. */
    private static final double APART = 0.1;

    private static final String START = "start";
    private static final String HALF = "half";

    private final RackLayout layout;
    private final RackSpec spec;
    private final RackPlates plates;
    private final Members members;
    private final Joints joints;
    private final RackMotion motion;

    RackAssembly(RackLayout layout, RackPlates plates, Members members, Joints joints, RackMotion motion) {
        this.layout = layout;
        this.spec = layout.spec();
        this.plates = plates;
        this.members = members;
        this.joints = joints;
        this.motion = motion;
    }

    Assembly assemble() {
        return new Assembly(
                spec.name(),
                members.all(),
                motion,
                Optional.empty(),
                requirements(),
                callouts(),
                steps(),
                views(),
                BodyName.numbered("rack", "pinion"));
    }

    private List<Requirement> requirements() {
        List<Requirement> all = new ArrayList<>(joints.requirements());
        webs(all);
        all.add(new Requirement.StaysApart("clearance", APART, joints.pairs()));
        if (spec.depth().atMost().isPresent()) {
            List<Integer> stack = List.of(members.one(RackRole.BASE), members.one(RackRole.FRONT));
            all.add(new Requirement.FitsDepth(
                    "depth", stack, spec.depth().atMost().getAsDouble()));
        }
        return all;
    }

    private void webs(List<Requirement> all) {
        for (Member member : members.all()) {
            Part part = member.part();
            if (part.source().isBought()) {
                continue;
            }
            double web =
                    switch (part.family()) {
                        case PLATE -> spec.plate().leastWeb();
                        case GEAR -> spec.gear().leastWeb();
                        default -> spec.spacer().leastWeb();
                    };
            // the teeth's own waists are checked by their strength
            all.add(new Requirement.LeastWeb("minimum-web", part.name(), web));
        }
    }

    private List<BuildStep> steps() {
        List<BuildStep> steps = new ArrayList<>();
        int base = members.one(RackRole.BASE);
        steps.add(BuildStep.of("Deburr every part; pull no more off flanks and slots than the burr."));
        steps.add(BuildStep.of(
                        "Set both guide pins into the rack, square to it, "
                                + Words.mm((plates.pinLength() - spec.width()) / 2) + " standing out on either face.",
                        List.of(
                                Placing.of(members.one(RackRole.RACK), Placing.NOTHING, Way.DOWN),
                                new Placing(
                                        List.of(members.one(RackRole.PIN)),
                                        members.one(RackRole.RACK),
                                        Way.DOWN,
                                        Math.max(0, -spec.pinAllowance()))))
                .withGlue("guide pins in the rack", layout.pins()));
        spec.servo().ifPresent(servo -> servo(servo, steps));
        boolean laid = spec.servo().isPresent();
        List<Placing> rack = new ArrayList<>();
        if (!laid) {
            rack.add(Placing.of(base, Placing.NOTHING, Way.DOWN));
        }
        rack.add(Placing.of(members.one(RackRole.RACK), base, Way.DOWN));
        steps.add(BuildStep.of("Lay the rack on the base, its pins in the slots, and push it to the start.", rack));
        if (spec.axle() > 0) {
            steps.add(BuildStep.of(
                    "Put the pinion on its axle.",
                    List.of(
                            Placing.of(members.one(RackRole.PINION), Placing.NOTHING, Way.DOWN),
                            Placing.of(members.one(RackRole.AXLE), members.one(RackRole.PINION), Way.DOWN))));
        }
        String mark = spec.marks() ? ", its mark facing that of the rack" : "";
        steps.add(BuildStep.of(
                laid
                        ? "Put the pinion on the servo" + mark + ", and screw it to the horn."
                        : "Put it down" + mark + ".",
                List.of(Placing.of(members.one(RackRole.PINION), base, Way.DOWN))));
        steps.add(BuildStep.of(
                "Put the spacers and the front plate on, and tighten the "
                        + plates.screws().size() + " screws (" + spec.screw().name()
                        + "); the rack must still slide by its own weight.",
                List.of(
                        Placing.of(members.one(RackRole.SPACER), base, Way.DOWN),
                        Placing.of(members.one(RackRole.FRONT), base, Way.DOWN))));
        steps.add(BuildStep.of("Push it through by hand before any motor does; keep fingers out of the teeth and the"
                + " slots, and stop a servo in software before the pins meet the slots' ends."));
        return steps;
    }

    private void servo(Servo servo, List<BuildStep> steps) {
        int base = members.one(RackRole.BASE);
        steps.add(BuildStep.of("Drive the servo (" + servo.name() + ") to the end of its travel from which it turns"
                + " counter-clockwise, seen onto its horn."));
        List<Placing> placings = new ArrayList<>();
        String words;
        if (plates.hasServoPlate()) {
            int own = members.one(RackRole.SERVO_PLATE);
            placings.add(Placing.of(own, Placing.NOTHING, Way.DOWN));
            if (plates.packing() > 0) {
                placings.add(Placing.of(members.one(RackRole.PACKING), own, Way.DOWN));
            }
            placings.add(Placing.of(base, own, Way.DOWN));
            String clamped = plates.isClamped() ? ", clamped through the slots with washers and nuts" : "";
            words = "Screw the servo by its ears to the back of the servo plate" + clamped + ", and lay its spacers of "
                    + Words.mm(plates.packing()) + " and the base on it; the servo's body lies away from the slots.";
        } else {
            placings.add(Placing.of(base, Placing.NOTHING, Way.DOWN));
            if (plates.packing() > 0) {
                placings.add(Placing.of(members.one(RackRole.PACKING), base, Way.UP));
            }
            words = "Screw the servo by its ears to the back of the base"
                    + (plates.packing() > 0 ? " on its spacers of " + Words.mm(plates.packing()) : "")
                    + ", its body away from the slots.";
        }
        steps.add(BuildStep.of(words, placings));
    }

    private List<View> views() {
        int last = motion.states() - 1;
        double cut = plates.frontBottom();
        return List.of(
                new View(START, 0, caption(0), Optional.empty(), List.of(), cut),
                new View(HALF, last / 2, caption(last / 2), Optional.empty(), List.of(), cut),
                new View("end", last, caption(last), Optional.empty(), List.of(), cut));
    }

    private String caption(int state) {
        return "rack at " + Words.mm(motion.way(state)) + ", pinion turned by " + Words.degrees(motion.turn(state), 1);
    }

    private List<Callout> callouts() {
        List<Callout> all = new ArrayList<>();
        double tip = layout.pinion().tipRadius();
        Point side = Point.polar(tip, Math.PI / 4);
        all.add(new Callout(Form.DIAMETER, START, Point.ORIGIN, side, "Ø" + Words.number(2 * tip, 2)));
        double low = layout.datum() - layout.back();
        double left = -layout.stroke() / 2 - layout.length() / 2;
        all.add(new Callout(
                Form.DISTANCE,
                START,
                new Point(left, low),
                new Point(left + layout.length(), low),
                Words.number(layout.length(), 2)));
        all.add(new Callout(
                Form.LABEL,
                HALF,
                new Point(0, plates.top() - 1),
                new Point(0, 0.35 * layout.pinion().rootRadius()),
                layout.pinion().teeth() + " teeth, module " + Words.number(layout.module(), 4)));
        double y = layout.datum() - layout.pinDepth();
        all.add(new Callout(
                Form.DISTANCE,
                "end",
                new Point(-layout.pinAt() + layout.stroke() / 2, y),
                new Point(layout.pinAt() + layout.stroke() / 2, y),
                "pins " + Words.number(2 * layout.pinAt(), 2)));
        return all;
    }
}
