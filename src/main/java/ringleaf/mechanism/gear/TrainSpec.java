// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import ringleaf.curve.Circle;
import ringleaf.geom.Point;
import ringleaf.mechanism.Material;
import ringleaf.tooth.TeethRatio;

/**
 * A pair or a train, solved as far as teeth and distances go. Lengths in mm, angles in rad.
 *
 * @param name of the mechanism
 * @param kind its kind's name
 * @param stages in order, at least one
 * @param material of all gears
 * @param width of the teeth along the axis
 * @param gap between the gears of neighbouring stages
 * @param travel of the driver that is looked at
 * @param marks whether teeth and spaces are marked
 * @param drive what turns the driver
 * @param ratio asked for
 * @param ratioWithin share by which it may miss
 * @param overall greatest length over all gears
 * @param given paths of the fields that were given
 * @param others teeth of other trains of the same ratio, where the teeth were shared out, the next best first
 * @param tryout of changes before they are proposed
 */
record TrainSpec(
        String name,
        String kind,
        List<StageSpec> stages,
        Material material,
        double width,
        double gap,
        double travel,
        boolean marks,
        DriveData drive,
        OptionalDouble ratio,
        double ratioWithin,
        OptionalDouble overall,
        Set<String> given,
        List<List<TeethRatio>> others,
        Tryout tryout) {
    /** The same for a trial, which proposes nothing. */
    TrainSpec quiet() {
        return new TrainSpec(
                name,
                kind,
                stages,
                material,
                width,
                gap,
                travel,
                marks,
                drive,
                ratio,
                ratioWithin,
                overall,
                given,
                others,
                Tryout.NONE);
    }

    /** Whether nothing ends its turning: then the travel is a pitch, as all are alike. */
    boolean turnsOn() {
        boolean sector = stages.stream()
                .anyMatch(s ->
                        s.driver().sector().isPresent() || s.driven().sector().isPresent());
        return !given.contains("travel") && drive.servo().isEmpty() && !sector;
    }

    boolean isPair() {
        return stages.size() == 1;
    }

    /** Greatest length over all gears: between the two farthest circles, mm. */
    double length() {
        return length(stages);
    }

    /** The same of stages that are not yet a train. */
    static double length(List<StageSpec> stages) {
        List<Circle> circles = new ArrayList<>();
        Point axis = Point.ORIGIN;
        for (StageSpec stage : stages) {
            circles.add(new Circle(axis, stage.driverReach()));
            axis = stage.drivenAxis(axis);
            circles.add(new Circle(axis, stage.drivenReach()));
        }
        double most = 0;
        for (Circle a : circles) {
            for (Circle b : circles) {
                double apart = a.centre().distance(b.centre());
                most = Math.max(most, Math.max(apart + a.radius() + b.radius(), 2 * a.radius()));
            }
        }
        return most;
    }

    /** Turns of the driver to one of the last gear, unsigned. */
    double totalRatio() {
        double total = 1;
        for (StageSpec stage : stages) {
            total *= stage.mesh().ratio();
        }
        return total;
    }
}
