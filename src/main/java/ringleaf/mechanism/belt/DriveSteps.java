// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Point;
import ringleaf.machine.Members;
import ringleaf.part.BuildStep;
import ringleaf.part.Family;
import ringleaf.part.Placing;
import ringleaf.part.Way;
import ringleaf.part.Words;

/** How a belt drive is put together: pulleys on the base, the belt round them, the front plate over all. */
final class DriveSteps {
    private final DrivePlan plan;
    private final DriveSpec spec;
    private final DrivePlates plates;
    private final Members members;
    private final Rubber rubber;
    private final List<BuildStep> steps = new ArrayList<>();
    /** What the next wheel comes to: the base, or where there is none the first wheel. */
    private int onto;

    DriveSteps(DrivePlan plan, DrivePlates plates, Members members, Rubber rubber) {
        this.rubber = rubber;
        this.plan = plan;
        this.spec = plan.spec();
        this.plates = plates;
        this.members = members;
        this.onto = first(DrivePart.BASE);
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
        int front = first(DrivePart.FRONT);
        if (front >= 0) {
            steps.add(BuildStep.of(
                    "Put the front plate on its standoffs and tighten the "
                            + plates.screws().size() + " screws.",
                    List.of(
                            Placing.of(members.one(DrivePart.STANDOFF), onto, Way.DOWN),
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
                placings.addAll(PulleyStack.joining(members, pulley.get(), i, Placing.NOTHING));
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
                    + (plates.servoAlong() ? ", its long side away from the driven pulley" : ", its long side across")
                    + (spec.fixed() ? "." : "; leave its screws loose in their slots.")));
        }
    }

    private void bearings() {
        if (spec.axles().seat().isEmpty()) {
            return;
        }
        double proud =
                spec.axles().seat().get().bearing().width() - spec.plate().thickness();
        Point at = plan.path().wheels().get(plan.layout().driven()).centre();
        steps.add(BuildStep.of("Set a bearing into each plate, flush with the side that faces the pulleys"
                        + (proud > 0 ? "; it stands " + Words.mm(proud) + " proud on the other." : "."))
                .withGlue("bearings in the plates", List.of(at)));
    }

    /** Whether a wheel is put up together with the belt, as there is no slack to lay it round. */
    private boolean comesWithBelt(int wheel) {
        boolean together = plan.slot().moves() ? plan.slot().together() : spec.fixed();
        return together && plan.path().wheels().get(wheel).inside();
    }

    /** Those that are not put up together with the belt, what moves in its slot last. */
    private void wheels() {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            if (!comesWithBelt(i)) {
                order.add(i == plan.slot().wheel() ? order.size() : insertion(order), i);
            }
        }
        List<Placing> placings = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int i : order) {
            names.add(plan.path().wheels().get(i).name());
            // What moves stands off its place until the belt lies round it, and takes the belt along into it.
            boolean moves = i == plan.slot().wheel() && plan.slot().inward() > 0;
            Point off = plan.slot().tighten().times(-plan.slot().inward());
            placings.add(Placing.of(wheel(i), onto, moves ? new Way.Aside(off) : Way.DOWN));
            onto = onto < 0 ? wheel(i) : onto;
        }
        if (!placings.isEmpty()) {
            steps.add(BuildStep.of("Put up " + listed(names) + washers() + "." + horn(order.contains(0)), placings));
        }
    }

    private int insertion(List<Integer> order) {
        return order.contains(plan.slot().wheel()) ? order.size() - 1 : order.size();
    }

    /** In the words of the build order: the driver, the driven pulley and the idler. */
    private static String listed(List<String> wheels) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < wheels.size(); i++) {
            String name = wheels.get(i).equals("driven") ? "driven pulley" : wheels.get(i);
            words.append(i == 0 ? "the " : i == wheels.size() - 1 ? " and the " : ", the ")
                    .append(name);
        }
        return words.toString();
    }

    private String washers() {
        return plan.foot() > 0
                ? " with washers of " + Words.mm(plan.foot()) + " below, so that all rims stand level"
                : " so that all rims stand level";
    }

    private String horn(boolean driver) {
        return driver && spec.servo().isPresent() ? " Screw the driver to the servo's output." : "";
    }

    private void belt() {
        List<Integer> belt = rubber.members();
        List<Integer> rounded = new ArrayList<>();
        for (int i = 0; i < members.all().size(); i++) {
            if (members.all().get(i).part().family() == Family.PULLEY) {
                rounded.add(i);
            }
        }
        boolean idler = plan.layout().hasIdler();
        if (!comesWithBelt(0)) {
            steps.add(BuildStep.of(
                    idler
                            ? "Draw the idler back in its slot, lay the belt round, and press the idler in."
                            : "Push the driver towards the driven pulley, lay the belt round, and draw it back.",
                    List.of(Placing.of(belt, onto, new Way.Slack(rounded)))));
            return;
        }
        List<String> names = new ArrayList<>();
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            if (comesWithBelt(i)) {
                belt.add(wheel(i));
                names.add(plan.path().wheels().get(i).name());
            }
        }
        String loose = !plan.slot().moves()
                ? "; it has no slack"
                : idler ? ", the idler drawn back in its slot" : ", the driver's axle loose in its slot";
        steps.add(BuildStep.of(
                "Lay the belt round " + listed(names) + " and slide all onto their axles together" + loose + "."
                        + washersBelow() + horn(true),
                List.of(Placing.of(belt, onto, Way.DOWN))));
    }

    private String washersBelow() {
        return plan.foot() > 0
                ? " Washers of " + Words.mm(plan.foot()) + " lie below, so that all rims stand level."
                : "";
    }

    /** Index of a wheel's rim; its flanges come along. */
    private int wheel(int i) {
        Optional<PulleySpec> pulley = plan.pulley(i);
        return members.one(
                pulley.isPresent()
                        ? DrivePart.rim(pulley.get(), i)
                        : DrivePart.roller(plan.path().wheels().get(i), i));
    }

    private int first(DrivePart plate) {
        return members.has(plate) ? members.one(plate) : Placing.NOTHING;
    }
}
