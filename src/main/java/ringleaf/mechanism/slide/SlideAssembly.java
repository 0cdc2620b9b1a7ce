// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import ringleaf.geom.Point;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.BodyName;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Callout;
import ringleaf.part.Callout.Form;
import ringleaf.part.Member;
import ringleaf.part.Placing;
import ringleaf.part.Requirement;
import ringleaf.part.View;
import ringleaf.part.Way;
import ringleaf.part.Words;

/** Puts the slide together and says what it must hold to. */
final class SlideAssembly {
    private static final String START = "start";
    private static final String HALF = "half";
    private static final String END = "end";

    private final SlideLayout layout;
    private final SlideSpec spec;
    private final Members members;
    private final Joints joints;
    private final SlideMotion motion;

    SlideAssembly(SlideLayout layout, Members members, Joints joints, SlideMotion motion) {
        this.layout = layout;
        this.spec = layout.spec();
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
                BodyName.numbered("carriage", "horn", "link"));
    }

    private List<Requirement> requirements() {
        List<Requirement> all = new ArrayList<>(joints.requirements());
        List<Requirement.Pair> pairs = new ArrayList<>(joints.pairs());
        for (int rod : members.of(SlideRole.ROD)) {
            // bored through by what is seen here as a box
            for (SlideRole role : List.of(SlideRole.CARRIAGE, SlideRole.BEARING)) {
                for (int on : members.of(role)) {
                    pairs.add(new Requirement.Pair(rod, on, Double.NEGATIVE_INFINITY));
                }
            }
        }
        for (int end : members.of(SlideRole.END)) {
            for (SlideRole role : List.of(SlideRole.CARRIAGE, SlideRole.BEARING, SlideRole.BRIDGE)) {
                for (int on : members.of(role)) {
                    pairs.add(new Requirement.Pair(end, on, spec.stop().mm()));
                }
            }
        }
        TreeSet<String> webs = new TreeSet<>();
        for (Member member : members.all()) {
            if (!member.part().source().isBought() && webs.add(member.part().name())) {
                // the horn's own pattern may stand closer than the sheet would have it
                boolean arm = member.part().name().equals(SlideRole.ARM.label());
                double web = arm ? Math.min(layout.web(), layout.hornWeb()) : layout.web();
                all.add(new Requirement.LeastWeb("minimum-web", member.part().name(), web));
            }
        }
        all.add(new Requirement.StaysApart("clearance", spec.beside().mm(), pairs));
        spec.length().atMost().ifPresent(most -> {
            all.add(new Requirement.FitsWidth("overall-length", members.of(SlideRole.END), new Point(1, 0), most));
        });
        return all;
    }

    private List<BuildStep> steps() {
        int side = members.one(SlideRole.SIDE);
        int bridge = members.one(SlideRole.BRIDGE);
        int arm = members.one(SlideRole.ARM);
        int link = members.one(SlideRole.LINK);
        List<Integer> caps = members.of(SlideRole.CAP);
        String mm = Words.mm(layout.carriage());
        List<BuildStep> steps = new ArrayList<>();
        steps.add(BuildStep.of("Deburr every part; chamfer the ends of both rods and wipe them clean."));
        List<Integer> carriage = members.of(SlideRole.CARRIAGE);
        List<Integer> ends = members.of(SlideRole.END);
        List<Integer> rods = members.of(SlideRole.ROD);
        steps.add(BuildStep.of(
                "Put the tabs of the bridge into both carriage plates, its tongue downwards, and glue them square to it;"
                        + " over both plates it measures " + mm + ".",
                List.of(Placing.of(bridge, Placing.NOTHING, Way.DOWN), Placing.of(carriage, bridge, Way.ACROSS))));
        steps.add(BuildStep.of(
                "Push the four linear bearings into the carriage plates, flush with their outer faces, and slide both rods"
                        + " through before any glue sets: the rods line the bearings up.",
                List.of(
                        Placing.of(members.of(SlideRole.BEARING), carriage.get(0), Way.ACROSS),
                        Placing.of(rods, carriage.get(0), Way.ACROSS))));
        steps.add(BuildStep.of(
                "Glue the side plate's tabs into the rear end plate, put the carriage on its rods between both end plates,"
                        + " and seat the rods; the carriage must run by its own weight when the slide is tilted. Then glue"
                        + " side plate, rods and end plates, and wait.",
                List.of(Placing.of(ends, rods.get(0), Way.ACROSS), Placing.of(side, ends.get(0), Way.ACROSS))));
        steps.add(BuildStep.of("Screw the servo (" + spec.servo().name()
                + ") by its ears to the back of the side plate, its output through the window, and drive it to the end of"
                + " its travel from which it turns clockwise, seen onto its horn."));
        steps.add(BuildStep.of(
                "Press the pins into horn arm and bridge; "
                        + Words.mm(layout.thickness() + 2 * SlideLayout.AIR + layout.thickness())
                        + " stand out towards the link.",
                List.of(pressed(members.one(SlideRole.CARRIAGE_PIN), bridge))));
        steps.add(BuildStep.of(
                "Screw the arm to the horn, push the carriage to the rear, and put the horn on the output so that the arm"
                        + " leans back by " + Words.degrees(layout.startAngle() - Math.PI / 2, 1) + " from upright.",
                List.of(Placing.of(arm, side, Way.DOWN), pressed(members.one(SlideRole.HORN_PIN), arm))));
        steps.add(BuildStep.of(
                "Put the link on both pins, and a cap on each with a slip of paper under it; glue the caps to the pins"
                        + " alone and draw the paper out.",
                List.of(Placing.of(link, arm, Way.DOWN), pressed(caps.get(0), link), pressed(caps.get(1), link))));
        steps.add(BuildStep.of("Push it through by hand before any motor does; keep fingers out of the link and the end"
                + " plates, and stop the servo in software before the carriage meets a plate."));
        return steps;
    }

    /** Down onto or into something, on a pin that is a little thicker than its hole. */
    private Placing pressed(int what, int onto) {
        return new Placing(
                List.of(what),
                onto,
                Way.DOWN,
                Math.max(0, spec.pin() - spec.pinSet().width()));
    }

    private List<View> views() {
        int last = motion.states() - 1;
        return List.of(
                new View(START, 0, caption(0), Optional.empty(), List.of()),
                new View(HALF, last / 2, caption(last / 2), Optional.empty(), List.of()),
                new View(END, last, caption(last), Optional.empty(), List.of()));
    }

    private String caption(int state) {
        return "carriage at " + Words.mm(motion.way(state)) + ", horn turned by "
                + Words.degrees(layout.startAngle() - motion.angle(state), 1);
    }

    private List<Callout> callouts() {
        Point horn = layout.hornPin(layout.startAngle());
        Point pin = layout.carriagePin();
        double low = layout.bottom();
        double high = layout.top();
        double rear = layout.rear() - layout.thickness();
        double front = layout.front() + layout.thickness();
        return List.of(
                new Callout(
                        Form.DISTANCE,
                        START,
                        new Point(rear, low),
                        new Point(front, low),
                        Words.number(layout.overall(), 2)),
                new Callout(Form.DISTANCE, START, horn, pin, "link " + Words.number(layout.link(), 2)),
                new Callout(
                        Form.DISTANCE,
                        HALF,
                        new Point(rear, low),
                        new Point(rear, high),
                        Words.number(layout.height(), 2)),
                new Callout(
                        Form.DISTANCE,
                        END,
                        layout.axis(),
                        layout.hornPin(layout.angle(1)),
                        "arm " + Words.number(layout.arm(), 2)),
                new Callout(
                        Form.DISTANCE,
                        END,
                        new Point(0, layout.carriageHalf()),
                        new Point(spec.stroke(), layout.carriageHalf()),
                        "stroke " + Words.number(spec.stroke(), 2)));
    }
}
