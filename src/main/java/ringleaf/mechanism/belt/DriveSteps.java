package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Point;
import ringleaf.part.BuildStep;
import ringleaf.part.Member;
import ringleaf.part.Placing;
import ringleaf.part.Way;
import ringleaf.part.Words;

/** How a belt drive is put together: pulleys on the base, the belt round them, the front plate over all. */
final class DriveSteps {
    private final DrivePlan plan;
    private final DriveSpec spec;
    private final DrivePlates plates;
    private final List<Member> members;
    private final List<BuildStep> steps = new ArrayList<>();
    /** What the next wheel comes to: the base, or where there is none the first wheel. */
    private int onto;

    DriveSteps(DrivePlan plan, DrivePlates plates, List<Member> members) {
        this.plan = plan;
        this.spec = plan.spec();
        this.plates = plates;
        this.members = members;
        this.onto = PulleyStack.index(members, "base-plate");
    }

    List<BuildStep> all() {
        flanges();
        if (spec.servo().isPresent()) {
            servo(spec.servo().get().name());
        }
        bearings();
        wheels();
        belt();
        if (plan.driverTorque() > 0) {
            steps.add(BuildStep.of("Tighten until a push of " + Words.number(plan.pretension() / 16, 2)
                    + " N in the middle of a span bends it by 1/64 of its length ("
                    + Words.mm(plan.path().span(0).length() / 64) + " of the first span)."));
        }
        int front = PulleyStack.index(members, "front-plate");
        if (front >= 0) {
            steps.add(BuildStep.of(
                    "Put the front plate on its standoffs and draw the " + plates.screws().size() + " screws up.",
                    List.of(
                            Placing.of(PulleyStack.index(members, "standoff"), onto, Way.DOWN),
                            Placing.of(front, onto, Way.DOWN))));
        }
        steps.add(BuildStep.of("Keep fingers out of belt and pulleys while it moves; a stalled servo grows hot."));
        return steps;
    }

    private void flanges() {
        List<Placing> placings = new ArrayList<>();
        List<Point> at = new ArrayList<>();
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            Optional<PulleySpec> pulley = plan.pulley(i);
            if (pulley.isPresent() && pulley.get().flanges() > 0) {
                placings.addAll(PulleyStack.joining(members, pulley.get(), Placing.NOTHING));
                at.add(plan.path().wheels().get(i).centre());
            }
        }
        if (!placings.isEmpty()) {
            boolean screwed = spec.driver().joining().isPresent();
            BuildStep step = BuildStep.of(
                    screwed ? "Screw the flanges to their pulleys." : "Glue the flanges on their pulleys, in line.",
                    placings);
            steps.add(screwed ? step : step.withGlue("flanges on the rims", at));
        }
    }

    private void servo(String name) {
        steps.add(BuildStep.of("Drive the servo (" + name + ") to the end of its travel that is to mean start."));
        if (spec.plates() > 0) {
            steps.add(BuildStep.of("Screw the servo by its ears to the back of the base"
                    + (plates.packing() > 0 ? " on packing of " + Words.mm(plates.packing()) : "")
                    + ", its long side away from the driven pulley"
                    + (spec.fixed() ? "." : "; leave its screws loose in their slots.")));
        }
    }

    private void bearings() {
        if (spec.axles().seat().isEmpty()) {
            return;
        }
        double proud = spec.axles().seat().get().bearing().width() - spec.plate().thickness();
        Point at = plan.path().wheels().get(plan.layout().driven()).centre();
        steps.add(BuildStep.of("Set a bearing into each plate, flush with the side that faces the pulleys"
                        + (proud > 0 ? "; it stands " + Words.mm(proud) + " proud on the other." : "."))
                .withGlue("bearings in the plates", List.of(at)));
    }

    /** Those that are not put up together with the belt. */
    private void wheels() {
        boolean together = spec.fixed() && !plan.layout().hasIdler();
        List<Placing> placings = new ArrayList<>();
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            if (!(together && (i == 0 || i == plan.layout().driven()))) {
                // What moves stands off its place until the belt lies round it, and takes the belt along into it.
                boolean moves = i == 0 && !spec.fixed() || isIdler(i);
                Point off = isIdler(i)
                        ? plates.pressing().times(-plan.layout().inward())
                        : Point.polar(plan.layout().inward(), spec.at());
                placings.add(Placing.of(wheel(i), onto, moves ? new Way.Aside(off) : Way.DOWN));
                onto = onto < 0 ? wheel(i) : onto;
            }
        }
        String driver = spec.servo().isPresent() ? "Screw the driver to the servo's output and put up" : "Put up the driver and";
        steps.add(BuildStep.of(
                (together ? "Lay out" : driver) + " the driven pulley" + (plan.layout().hasIdler() ? " and the idler" : "")
                        + " with washers of " + Words.mm(plan.foot()) + " below, so that all rims stand level.",
                placings));
    }

    private void belt() {
        List<Integer> belt = new ArrayList<>();
        List<Integer> rounded = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            String part = members.get(i).part().name();
            if (part.equals("belt") || part.equals("belt-tooth")) {
                belt.add(i);
            } else if (members.get(i).part().family().equals("pulley")) {
                rounded.add(i);
            }
        }
        if (plan.layout().hasIdler()) {
            steps.add(BuildStep.of(
                    "Draw the idler back in its slot, lay the belt round, and press the idler in.",
                    List.of(Placing.of(belt, onto, new Way.Slack(rounded)))));
        } else if (!spec.fixed()) {
            steps.add(BuildStep.of(
                    "Push the driver towards the driven pulley, lay the belt round, and draw it back.",
                    List.of(Placing.of(belt, onto, new Way.Slack(rounded)))));
        } else {
            belt.add(wheel(0));
            belt.add(wheel(plan.layout().driven()));
            steps.add(BuildStep.of(
                    "Lay the belt round both pulleys and slide them onto their axles together; it has no slack.",
                    List.of(Placing.of(belt, onto, Way.DOWN))));
        }
    }

    private boolean isIdler(int wheel) {
        return plan.path().wheels().get(wheel).name().equals("idler");
    }

    /** Index of a wheel's rim; its flanges come along. */
    private int wheel(int i) {
        Optional<PulleySpec> pulley = plan.pulley(i);
        String name = pulley.isPresent() ? pulley.get().partName("pulley") : plan.path().wheels().get(i).name();
        return PulleyStack.index(members, name);
    }
}
