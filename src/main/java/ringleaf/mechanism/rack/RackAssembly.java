// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
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
    /** Steps in which a pitch of the travel is rolled through, and the most in all. */
    private static final int STEPS = 24;

    private static final int MOST_STEPS = 600;
    /** What arcs in place of the pinion's two flanks may take from the play or add to it, mm. */
    private static final double PLAY_SLACK = 0.003;
    /** Kept between what has no figure of its own, mm; common practice, no source. */
    private static final double APART = 0.1;

    private static final String START = "start";
    private static final String HALF = "half";

    private final RackLayout layout;
    private final RackSpec spec;
    private final RackPlates plates;
    private final RackParts made;
    private final RackMotion motion;
    private final List<Member> members = new ArrayList<>();

    RackAssembly(RackLayout layout, RackPlates plates, RackParts made, RackMotion motion) {
        this.layout = layout;
        this.spec = layout.spec();
        this.plates = plates;
        this.made = made;
        this.motion = motion;
    }

    Assembly assemble() {
        for (Part part : made.drawn()) {
            int body =
                    switch (part.name()) {
                        case RackParts.RACK, RackParts.PIN -> RackMotion.RACK;
                        case RackParts.PINION, RackParts.AXLE -> RackMotion.PINION;
                        default -> 0;
                    };
            members.add(new Member(part.name(), part, body, Placement.IDENTITY));
        }
        return new Assembly(
                spec.name(),
                members,
                motion,
                Optional.empty(),
                requirements(),
                callouts(),
                steps(),
                views(),
                BodyName.numbered("rack", "pinion"));
    }

    private int index(String part) {
        for (int i = 0; i < members.size(); i++) {
            if (members.get(i).part().name().equals(part)) {
                return i;
            }
        }
        return -1;
    }

    private List<Requirement> requirements() {
        List<Requirement> all = new ArrayList<>();
        int rack = index(RackParts.RACK);
        int pinion = index(RackParts.PINION);
        double r = layout.pinion().referenceRadius();
        double play = layout.backlash() / r;
        int steps = (int) Math.ceil(Math.max(1, STEPS * layout.stroke() / layout.pitch()));
        all.add(new Requirement.Meshes(
                new Requirement.Sliding(rack, new Point(1, 0)),
                new Requirement.Turning(pinion, Point.ORIGIN),
                1 / r,
                new Requirement.Rolled(0, layout.stroke(), Math.min(MOST_STEPS, steps), "the whole travel"),
                0,
                play,
                PLAY_SLACK));
        List<Requirement.Pair> pairs = new ArrayList<>(List.of(new Requirement.Pair(rack, pinion, 0)));
        guided(all, pairs);
        if (spec.axle() > 0) {
            double turning = plates.axleHole() - spec.axle() / 2;
            for (String plate : List.of(RackParts.BASE, RackParts.FRONT)) {
                pairs.add(new Requirement.Pair(index(RackParts.AXLE), index(plate), turning));
            }
        }
        webs(all);
        all.add(new Requirement.StaysApart("clearance", APART, pairs));
        if (spec.depth().atMost().isPresent()) {
            List<Integer> stack = List.of(index(RackParts.BASE), index(RackParts.FRONT));
            all.add(new Requirement.FitsDepth(
                    "depth", stack, spec.depth().atMost().getAsDouble()));
        }
        return all;
    }

    /** Both pins in their slots, in both plates. */
    private void guided(List<Requirement> all, List<Requirement.Pair> pairs) {
        double room = Math.min(spec.rooms().lean(), spec.rooms().stop().mm());
        double y = layout.datum() - layout.pinDepth();
        List<Contour> slots = plates.slots();
        List<Requirement.Fit> fits = new ArrayList<>();
        int pins = index(RackParts.PIN);
        for (String plate : List.of(RackParts.BASE, RackParts.FRONT)) {
            for (int end = 0; end < 2; end++) {
                Point at = new Point((end == 0 ? -1 : 1) * layout.pinAt() - layout.stroke() / 2, y);
                Contour slot = slots.get(Math.min(end, slots.size() - 1));
                fits.add(new Requirement.Fit(pins, at, layout.pin() / 2, index(plate), slot));
            }
            pairs.add(new Requirement.Pair(pins, index(plate), room));
        }
        all.add(new Requirement.PinInHole("pin-in-slot", fits, room));
    }

    private void webs(List<Requirement> all) {
        for (Member member : members) {
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
        int base = index(RackParts.BASE);
        steps.add(BuildStep.of("Deburr every part; pull no more off flanks and slots than the burr."));
        double y = layout.datum() - layout.pinDepth();
        Point first = new Point(-layout.pinAt() - layout.stroke() / 2, y);
        steps.add(BuildStep.of(
                        "Set both guide pins into the rack, square to it, "
                                + Words.mm((plates.pinLength() - spec.width()) / 2) + " standing out on either face.",
                        List.of(
                                Placing.of(index(RackParts.RACK), Placing.NOTHING, Way.DOWN),
                                new Placing(
                                        List.of(index(RackParts.PIN)),
                                        index(RackParts.RACK),
                                        Way.DOWN,
                                        Math.max(0, -spec.pinAllowance()))))
                .withGlue("guide pins in the rack", List.of(first, first.plus(new Point(2 * layout.pinAt(), 0)))));
        spec.servo().ifPresent(servo -> servo(servo, steps));
        boolean laid = spec.servo().isPresent();
        List<Placing> rack = new ArrayList<>();
        if (!laid) {
            rack.add(Placing.of(base, Placing.NOTHING, Way.DOWN));
        }
        rack.add(Placing.of(index(RackParts.RACK), base, Way.DOWN));
        steps.add(BuildStep.of("Lay the rack on the base, its pins in the slots, and push it to the start.", rack));
        if (spec.axle() > 0) {
            steps.add(BuildStep.of(
                    "Put the pinion on its axle.",
                    List.of(
                            Placing.of(index(RackParts.PINION), Placing.NOTHING, Way.DOWN),
                            Placing.of(index(RackParts.AXLE), index(RackParts.PINION), Way.DOWN))));
        }
        String mark = spec.marks() ? ", its mark facing that of the rack" : "";
        steps.add(BuildStep.of(
                laid
                        ? "Put the pinion on the servo" + mark + ", and screw it to the horn."
                        : "Put it down" + mark + ".",
                List.of(Placing.of(index(RackParts.PINION), base, Way.DOWN))));
        steps.add(BuildStep.of(
                "Put the spacers and the front plate on, and tighten the "
                        + plates.screws().size() + " screws (" + spec.screw().name()
                        + "); the rack must still slide by its own weight.",
                List.of(
                        Placing.of(index(RackParts.SPACER), base, Way.DOWN),
                        Placing.of(index(RackParts.FRONT), base, Way.DOWN))));
        steps.add(BuildStep.of("Push it through by hand before any motor does; keep fingers out of the teeth and the"
                + " slots, and stop a servo in software before the pins meet the slots' ends."));
        return steps;
    }

    private void servo(Servo servo, List<BuildStep> steps) {
        int base = index(RackParts.BASE);
        steps.add(BuildStep.of("Drive the servo (" + servo.name() + ") to the end of its travel from which it turns"
                + " counter-clockwise, seen onto its horn."));
        List<Placing> placings = new ArrayList<>();
        String words;
        if (plates.hasServoPlate()) {
            int own = index(RackParts.SERVO_PLATE);
            placings.add(Placing.of(own, Placing.NOTHING, Way.DOWN));
            if (plates.packing() > 0) {
                placings.add(Placing.of(index(RackParts.PACKING), own, Way.DOWN));
            }
            placings.add(Placing.of(base, own, Way.DOWN));
            String clamped = plates.isClamped() ? ", clamped through the slots with washers and nuts" : "";
            words = "Screw the servo by its ears to the back of the servo plate" + clamped + ", and lay its spacers of "
                    + Words.mm(plates.packing()) + " and the base on it; the servo's body lies away from the slots.";
        } else {
            placings.add(Placing.of(base, Placing.NOTHING, Way.DOWN));
            if (plates.packing() > 0) {
                placings.add(Placing.of(index(RackParts.PACKING), base, Way.UP));
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
